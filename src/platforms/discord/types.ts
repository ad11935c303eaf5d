/** What the Discord room is handed: the pipeline, the commands, what keeps answers, the wire, the clock, the pictures. */

import type { Buffer } from 'node:buffer';
import { API } from '@discordjs/core/http-only';
import type { RawFile, REST } from '@discordjs/rest';
import {
  type APIApplicationCommandOptionChoice,
  type APIAttachment,
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  MessageFlags,
  type RESTAPIAttachment,
  type RESTAPIPoll,
} from 'discord-api-types/v10';
import type { Asker } from '../../accounts/asker.ts';
import type { Command } from '../../chat/command.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Ports, Request } from '../../chat/ports.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import type { KeyValueStore } from '../../storage/types.ts';
import type { Saves } from '../session.ts';
import type { Came } from './interaction.ts';

// Whose missed answers were looked for lately, so that not every ask of a person looks again.

interface Looks {
  /** Whether it is time to look, at the moment of an interaction; then it counts as looked. */
  due(account: string, at: number): boolean;
  /** There is something to be found. */
  again(account: string): void;
}

/** Another process may have noted something since. */
const LOOK_EVERY = 10 * 60 * 1000;
const REMEMBERED = 20_000;

export function looksFor(): Looks {
  const looked = new Map<string, number>();
  return {
    due(account, at) {
      const before = looked.get(account);
      if (before !== undefined && Math.abs(at - before) < LOOK_EVERY) return false;
      looked.delete(account);
      looked.set(account, at);
      const [oldest] = looked.keys();
      if (looked.size > REMEMBERED && oldest !== undefined) looked.delete(oldest);
      return true;
    },
    again: (account) => void looked.delete(account),
  };
}

// The way out: first responses, edits and further messages, by Discord's REST interface.

/** A message as it is sent. Files are new; `attachments` lists them, and those of before that stay. */
export interface Outgoing {
  readonly components: readonly APIMessageTopLevelComponent[];
  readonly attachments: readonly RESTAPIAttachment[];
  readonly files: readonly RawFile[];
}

/** How a first response goes: a message of its own, or in place of the one whose button was pressed. */
export interface ResponseChannel {
  readonly ephemeral: boolean;
  readonly update: boolean;
}

/** Every call rejects with what Discord refused it with. */
interface Wire {
  /** The first response; gives the attachments of the message where they are asked for. */
  respond(to: Came, message: Outgoing, way: ResponseChannel, attachments: boolean): Promise<readonly APIAttachment[]>;
  /** Says that an answer is on its way. */
  defer(to: Came, way: ResponseChannel): Promise<void>;
  modal(to: Came, modal: APIModalInteractionResponseCallbackData): Promise<void>;
  choices(to: Came, choices: readonly APIApplicationCommandOptionChoice<string>[]): Promise<void>;
  poll(to: Came, poll: RESTAPIPoll): Promise<void>;
  /** Puts a message in place of the first response. */
  edit(to: Came, message: Outgoing): Promise<void>;
  followUp(to: Came, message: Outgoing, ephemeral: boolean): Promise<void>;
}

/** Nobody is ever pinged by an answer. */
const NOBODY = { parse: [] };

/** The wire over a REST client: the gateway's own, or one that only has the HTTP interface. */
export function wireOf(rest: REST): Wire {
  const { interactions } = new API(rest);
  return {
    async respond(to, message, { ephemeral, update }, attachments) {
      const body = { ...bodyOf(message), flags: flagsOf(update ? false : ephemeral) };
      const response = update
        ? await interactions.updateMessage(to.id, to.token, { ...body, with_response: attachments })
        : await interactions.reply(to.id, to.token, { ...body, with_response: attachments });
      return response?.resource?.message?.attachments ?? [];
    },
    async defer(to, { ephemeral, update }) {
      if (update) await interactions.deferMessageUpdate(to.id, to.token);
      else await interactions.defer(to.id, to.token, ephemeral ? { flags: MessageFlags.Ephemeral } : undefined);
    },
    async modal(to, modal) {
      await interactions.createModal(to.id, to.token, modal);
    },
    async choices(to, choices) {
      await interactions.createAutocompleteResponse(to.id, to.token, { choices: [...choices] });
    },
    async poll(to, poll) {
      await interactions.reply(to.id, to.token, { poll, allowed_mentions: NOBODY });
    },
    async edit(to, message) {
      await interactions.editReply(to.application, to.token, { ...bodyOf(message), flags: flagsOf(false) });
    },
    async followUp(to, message, ephemeral) {
      await interactions.followUp(to.application, to.token, { ...bodyOf(message), flags: flagsOf(ephemeral) });
    },
  };
}

function bodyOf({ components, attachments, files }: Outgoing) {
  return {
    components: [...components],
    attachments: [...attachments],
    files: [...files],
    allowed_mentions: NOBODY,
  };
}

function flagsOf(ephemeral: boolean): number {
  return ephemeral ? MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral : MessageFlags.IsComponentsV2;
}

/** A wait that can be given up. */
interface Wait {
  readonly over: Promise<void>;
  cancel(): void;
}

export interface DiscordContext {
  answer(request: Request): AsyncIterable<Answer>;
  readonly commands: readonly Command[];
  readonly preferences: Request['preferences'];
  readonly kept: KeyValueStore;
  /** Whether other processes are sent the same interactions. */
  readonly shared: boolean;
  /** Whether an id has not been seen by this process. */
  isFresh(id: string): boolean;
  readonly saves: Saves;
  readonly looks: Looks;
  readonly fault: Ports['fault'];
  readonly wire: Wire;
  toPng(drawing: Drawing): Promise<Buffer>;
  /** Makes a file of an answer's data; without it answers say that there is none. */
  makeFile?(data: Result, as: FileForm): Promise<Buffer>;
  wait(milliseconds: number): Wait;
  /** What may be typed for an option, the likeliest first. */
  suggest(asker: Asker, command: Command, option: string, typed: string): Promise<readonly string[]>;
}

/** A wait on the machine's clock. */
export function waitOnClock(milliseconds: number): Wait {
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, milliseconds);
  });
  return { over, cancel: () => clearTimeout(timer) };
}

// A request on its way into the pipeline, with what is known of it already.

export interface Ask extends Pick<Request, 'text' | 'written' | 'given'> {
  /** The command that was chosen with nothing told: where it needs something, its form opens at once. */
  readonly bare?: Command;
}
