/** What the Discord room is handed: the pipeline, the commands, what keeps answers, the wire, the clock, the pictures. */

import type { Buffer } from 'node:buffer';
import {
  type APIApplicationCommand,
  type APIApplicationCommandOptionChoice,
  type APIAttachment,
  type APIDMChannel,
  type APIMessage,
  type APIMessageReferenceSend,
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  type APIThreadChannel,
  ChannelType,
  InteractionResponseType,
  type InternalRequest,
  MessageFlags,
  type RawFile,
  type REST,
  type RESTAPIAttachment,
  type RESTAPIPoll,
  type RESTPostAPIInteractionCallbackWithResponseResult,
  Routes,
} from 'discord.js';
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
  const channels = channelsOf(rest);
  // A response is let in by its token, not by the bot's.
  const auth = false;
  const respond = (to: Came, body: object, { files, query }: Partial<InternalRequest> = {}) =>
    rest.post(Routes.interactionCallback(to.id, to.token), {
      auth,
      body,
      ...(files && { files }),
      ...(query && { query }),
    });
  const original = (to: Came) => Routes.webhookMessage(to.application, to.token, '@original');
  return {
    async respond(to, message, { ephemeral, update }, attachments) {
      const { files, ...data } = { ...bodyOf(message), flags: flagsOf(update ? false : ephemeral) };
      const type = update ? InteractionResponseType.UpdateMessage : InteractionResponseType.ChannelMessageWithSource;
      const query = new URLSearchParams({ with_response: String(attachments) });
      const response = (await respond(to, { type, data }, { files, query })) as
        | RESTPostAPIInteractionCallbackWithResponseResult
        | undefined;
      return response?.resource?.message?.attachments ?? [];
    },
    async defer(to, { ephemeral, update }) {
      if (update) await respond(to, { type: InteractionResponseType.DeferredMessageUpdate });
      else
        await respond(to, {
          type: InteractionResponseType.DeferredChannelMessageWithSource,
          ...(ephemeral ? { data: { flags: MessageFlags.Ephemeral } } : {}),
        });
    },
    async modal(to, data) {
      await respond(to, { type: InteractionResponseType.Modal, data });
    },
    async choices(to, choices) {
      await respond(to, { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data: { choices } });
    },
    async poll(to, poll) {
      const data = { poll, allowed_mentions: NOBODY };
      await respond(to, { type: InteractionResponseType.ChannelMessageWithSource, data });
    },
    async edit(to, message) {
      const { files, ...body } = bodyOf(message);
      await rest.patch(original(to), { auth, files, body: { ...body, flags: flagsOf(false) } });
    },
    async followUp(to, message, ephemeral) {
      const { files, ...body } = bodyOf(message);
      await rest.post(Routes.webhook(to.application, to.token), {
        auth,
        files,
        body: { ...body, flags: flagsOf(ephemeral) },
      });
    },
    async takeAway(to) {
      await rest.delete(original(to), { auth });
    },
    async direct(person, message) {
      const body = { recipient_id: person };
      const { id } = (await rest.post(Routes.userChannels(), { body })) as APIDMChannel;
      await channels.post(id, message);
    },
    post: async (channel, message) => (await channels.post(channel, message)).id,
    async change(channel, id, message) {
      await channels.change(channel, id, message);
    },
    async thread(channel, name, person) {
      const body = { name, type: ChannelType.PrivateThread, invitable: true };
      const { id } = (await rest.post(Routes.threads(channel), { body })) as APIThreadChannel;
      await rest.put(Routes.threadMembers(id, person));
      return id;
    },
    async pin(channel, id) {
      await rest.put(Routes.channelMessagesPin(channel, id));
    },
  };
}

/** Messages of the bot's own in a channel. Every call rejects with what Discord refused it with. */
export function channelsOf(rest: REST) {
  const sent = (message: Outgoing, to?: APIMessageReferenceSend) => {
    const { files, ...body } = bodyOf(message);
    return { files, body: { ...body, flags: flagsOf(false), ...(to && { message_reference: to }) } };
  };
  return {
    /** `to`: the message that it replies to. */
    post: async (channel: string, message: Outgoing, to?: APIMessageReferenceSend) =>
      (await rest.post(Routes.channelMessages(channel), sent(message, to))) as APIMessage,
    change: async (channel: string, id: string, message: Outgoing) =>
      (await rest.patch(Routes.channelMessage(channel, id), sent(message))) as APIMessage,
    async remove(channel: string, id: string) {
      await rest.delete(Routes.channelMessage(channel, id));
    },
    async typing(channel: string) {
      await rest.post(Routes.channelTyping(channel));
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
      const there = (await rest.get(Routes.applicationCommands(application))) as readonly APIApplicationCommand[];
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
