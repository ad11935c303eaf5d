/** What the Discord room is handed: the pipeline, the commands, what keeps answers, the wire, the clock, the pictures. */

import type { Buffer } from 'node:buffer';
import { API } from '@discordjs/core/http-only';
import type { RawFile, REST } from '@discordjs/rest';
import {
  type APIApplicationCommandOptionChoice,
  type APIAttachment,
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  ChannelType,
  MessageFlags,
  type RESTAPIAttachment,
  type RESTAPIPoll,
} from 'discord-api-types/v10';
import type { Command } from '../../chat/command.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Ports, Request } from '../../chat/ports.ts';
import type { Completion } from '../../chat/suggest.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import type { KeyValueStore } from '../../storage/types.ts';
import type { MissedAnswers, Saves } from '../session.ts';
import type { CardName } from './cards.ts';
import type { Came } from './interaction.ts';

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
  /** Short id of the answer whose place it takes. */
  readonly back?: string;
}

/** Every call rejects with what Discord refused it with. */
export interface Wire {
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
  /** Sends a message to a person. */
  direct(person: string, message: Outgoing): Promise<void>;
  /** Opens a thread that only a person and whom they invite can see; gives its id. */
  thread(channel: string, name: string, person: string): Promise<string>;
  /** Sends a message to a channel; gives its id. */
  post(channel: string, message: Outgoing): Promise<string>;
  /** Puts a message in place of one of the bot's own. */
  change(channel: string, id: string, message: Outgoing): Promise<void>;
  pin(channel: string, id: string): Promise<void>;
  /** Deletes the message whose button was pressed, or the first response. */
  takeAway(to: Came): Promise<void>;
}

/** Nobody is ever pinged by an answer. */
const NOBODY = { parse: [] };

/** The wire over a REST client: the gateway's own, or one that only has the HTTP interface. */
export function wireOf(rest: REST): Wire {
  const { interactions, users, channels, threads } = new API(rest);
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
    async thread(channel, name, person) {
      const { id } = await channels.createThread(channel, { name, type: ChannelType.PrivateThread, invitable: true });
      await threads.addMember(id, person);
      return id;
    },
    async post(channel, message) {
      const { id } = await channels.createMessage(channel, { ...bodyOf(message), flags: MessageFlags.IsComponentsV2 });
      return id;
    },
    async change(channel, id, message) {
      await channels.editMessage(channel, id, { ...bodyOf(message), flags: MessageFlags.IsComponentsV2 });
    },
    pin: (channel, id) => channels.pinMessage(channel, id),
    async takeAway(to) {
      await interactions.deleteReply(to.application, to.token);
    },
    async direct(person, message) {
      const { id } = await users.createDM(person);
      await channels.createMessage(id, { ...bodyOf(message), flags: flagsOf(false) });
    },
  };
}

export function bodyOf({ components, attachments, files }: Outgoing) {
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
  /** Counts the answers that a channel sees. */
  readonly channels: ChannelLimit;
  readonly saves: Saves;
  readonly missed: MissedAnswers;
  readonly fault: Ports['fault'];
  readonly wire: Wire;
  toPng(drawing: Drawing): Promise<Buffer>;
  /** Makes a file of an answer's data; without it answers say that there is none. */
  makeFile?(data: Result, as: FileForm): Promise<Buffer>;
  wait(milliseconds: number): Wait;
  /** What may be typed for an option, the likeliest first. */
  suggest(came: Came, command: Command, option: string, typed: string): Promise<readonly Completion[]>;
  /** An entry of the menu as Discord's words for it: pressed, it is typed. */
  readonly entries: MenuEntries;
  /** Whether messages reach it, besides interactions. */
  readonly hears: boolean;
}

export interface MenuEntries {
  /** Looks the ids up, once. Never rejects. */
  ready(application: string): Promise<void>;
  mention(name: string): string;
}

/** Entries by their ids, which Discord gave them; until those are known, by their names. */
export function menuEntries(rest: REST): MenuEntries {
  const ids = new Map<string, string>();
  let looked: Promise<void> | undefined;
  const look = async (application: string): Promise<void> => {
    try {
      const there = await new API(rest).applicationCommands.getGlobalCommands(application);
      for (const { name, id } of there) ids.set(name, id);
    } catch {
      looked = undefined;
    }
  };
  return {
    ready(application) {
      looked ??= look(application);
      return looked;
    },
    mention: (name) => (ids.has(name) ? `</${name}:${ids.get(name)}>` : `/${name}`),
  };
}

/** What a person's language says of units and figures; what they set themselves counts before it. */
export function preferencesIn(locale: string | undefined, preferences: Request['preferences']): Request['preferences'] {
  if (locale === undefined || locale === 'en-US') return preferences;
  const parts = new Intl.NumberFormat(locale).formatToParts(1.5);
  const decimal = parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
  return { ...preferences, units: 'metric', decimal };
}

/** A wait on the machine's clock. */
export function waitOnClock(milliseconds: number): Wait {
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, milliseconds);
  });
  return { over, cancel: () => clearTimeout(timer) };
}

// A channel is for people: the bot speaks up only so often.

/** Answers in one channel within a minute. */
const MOST_ANSWERS = 12;
const MINUTE = 60_000;
const MOST_CHANNELS = 5_000;

export interface ChannelLimit {
  /** Whether an answer more is fine there; `at` in milliseconds since 1970. */
  takes(channel: string, at: number): boolean;
}

export function channelLimit(): ChannelLimit {
  const answers = new Map<string, readonly number[]>();
  return {
    takes(channel, at) {
      const recent = (answers.get(channel) ?? []).filter((one) => at - one < MINUTE);
      if (recent.length >= MOST_ANSWERS) return false;
      answers.delete(channel);
      answers.set(channel, [...recent, at]);
      const [oldest] = answers.keys();
      if (answers.size > MOST_CHANNELS && oldest !== undefined) answers.delete(oldest);
      return true;
    },
  };
}

// A request on its way into the pipeline, with what is known of it already.

export interface Ask extends Pick<Request, 'text' | 'written' | 'given' | 'mistaken' | 'open'> {
  /** The person whose question somebody else added to. */
  readonly added?: string;
  /** The person whose question it is, where somebody else has it answered. */
  readonly author?: string;
  /** Whether a form that was filled in puts its answer in place of one that others see. */
  readonly filled?: true;
  /** The card that the answer is worked from, and stays. */
  readonly stays?: CardName;
  /** The command that was chosen with nothing told: where it needs something, its form opens at once. */
  readonly bare?: Command;
}
