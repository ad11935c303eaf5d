/** Starts the Discord bot: by the gateway, or by HTTP where the application's public key is set. */

import {
  type APIInteraction,
  type APIWebhookEvent,
  ApplicationWebhookEventType,
  Client,
  type ClientOptions,
  Events,
  GatewayDispatchEvents,
  GatewayIntentBits,
  InteractionType,
  Options,
  REST,
} from 'discord.js';
import { InteractionResponseType, verifyKey } from 'discord-interactions';
import { Agent } from 'undici';
import { freshIds } from '../../chat/rate-limit.ts';
import { asRequest } from '../../chat/request-id.ts';
import { suggestRead } from '../../chat/suggest.ts';
import { GOODBYE, type PlatformContext, type RunningPlatform } from '../platform.ts';
import { missedAnswers, savesUnderway } from '../session.ts';
import { tellFault } from './fault.ts';
import { greetInstaller, sayRestarting } from './forms.ts';
import { cameOf, isSnowflake } from './interaction.ts';
import { REPLAY_WINDOW } from './limits.ts';
import { forget, hearMessage, type MessageEvent } from './listen.ts';
import { receive } from './receive.ts';
import { channelLimit, type DiscordContext, menuEntries, preferencesIn, waitOnClock, wireOf } from './types.ts';

/**
 * Of the undici that the REST client is made for. Another version loaded first, such as the one of Slack's socket, would send
 * its requests otherwise, and none that has a file goes through that one.
 */
const OWN_AGENT = new Agent();

// The gateway: Discord's own connection, which reconnects, resumes and keeps to its rate limits by itself.

/** Which shards this process runs, of how many there are in all. */
export interface Shards {
  readonly first: number;
  readonly last: number;
  readonly of: number;
}

export interface GatewaySettings {
  readonly token: string;
  readonly shards?: Shards;
  /** Where Discord's REST interface is; its own address without one. */
  readonly api?: string;
  /** Told of every interaction as it came, whether or not its server or person is known. */
  onInteraction(interaction: APIInteraction, client: Client): void;
  /** Told of messages that are new or were edited, and of those that were deleted. */
  onMessage(message: MessageEvent, client: Client, deleted: boolean): void;
  /** Told of what goes wrong with the connection; it is mended by itself. */
  onTrouble(cause: unknown): void;
}

/** A connection. */
export interface Gateway {
  readonly client: Client;
  close(): Promise<void>;
}

/** A client for interactions, direct messages and mentions: other messages come without their words. */
export function clientOf({ shards, api }: Pick<GatewaySettings, 'shards' | 'api'>): Client {
  const options: ClientOptions = {
    // Neither needs Discord's leave: both bring the words of direct messages and of mentions, and no others.
    intents: [GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
    allowedMentions: { parse: [] },
    // Interactions bring all that is needed: what they mention is not remembered.
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      GuildMemberManager: 0,
      MessageManager: 0,
      UserManager: 0,
    }),
    ...(shards
      ? {
          shards: Array.from({ length: shards.last - shards.first + 1 }, (_, i) => shards.first + i),
          shardCount: shards.of,
        }
      : {}),
    rest: { agent: OWN_AGENT, ...(api === undefined ? {} : { api }) },
  };
  return new Client(options);
}

/** Connects. Rejects when the token is refused or no shard comes up. */
export async function connect(settings: GatewaySettings): Promise<Gateway> {
  const client = clientOf(settings);
  client.on(Events.Error, settings.onTrouble);
  client.on(Events.ShardError, settings.onTrouble);
  client.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction: APIInteraction) =>
    settings.onInteraction(interaction, client),
  );
  const { MessageCreate, MessageUpdate, MessageDelete } = GatewayDispatchEvents;
  for (const event of [MessageCreate, MessageUpdate])
    client.ws.on(event, (message: MessageEvent) => settings.onMessage(message, client, false));
  client.ws.on(MessageDelete, (message: MessageEvent) => settings.onMessage(message, client, true));
  await client.login(settings.token);
  return { client, close: () => client.destroy() };
}

// Interactions by HTTP: signed by Discord, recent, and answered by its REST interface, by any number of
// processes.

interface Signing {
  /** The application's public key, in hexadecimal. */
  readonly publicKey: string;
  /** Milliseconds since 1970. */
  now(): number;
}

export interface HttpSettings extends Signing {
  /** Told of every interaction that is truly Discord's. */
  onInteraction(interaction: APIInteraction): void;
}

/** Where Discord sends interactions. */
export const INTERACTIONS_PATH = '/discord/interactions';
/** Where Discord tells who installed the application, if that is set in its portal. */
export const EVENTS_PATH = '/discord/events';

/**
 * Answers one request: 401 where it is not signed for this application or not recent, a pong for a ping, else 202 at once.
 * The answer itself goes by the callback address, for a file in the body of this response is refused by Discord from about
 * 150 kB on (github.com/discord/discord-api-docs issues 5250 and 5933).
 */
export async function handleHttp(request: Request, settings: HttpSettings): Promise<Response> {
  const interaction = await signedBody(request, settings);
  if (interaction instanceof Response) return interaction;
  if (interaction.type === InteractionType.Ping) return Response.json({ type: InteractionResponseType.PONG });
  settings.onInteraction(interaction as APIInteraction);
  return new Response(null, { status: 202 });
}

/** Answers an event: 401 as for interactions, else 204, as Discord wants it. */
export async function handleEvent(
  request: Request,
  settings: Signing & { onInstalled(person: string): void },
): Promise<Response> {
  const came = await signedBody(request, settings);
  if (came instanceof Response) return came;
  const { event } = came as APIWebhookEvent;
  if (event?.type === ApplicationWebhookEventType.ApplicationAuthorized && isSnowflake(event.data?.user?.id))
    settings.onInstalled(event.data.user.id);
  return new Response(null, { status: 204 });
}

/** What Discord signed, or the response to what it did not. */
async function signedBody(request: Request, settings: Signing): Promise<Response | { readonly type: number }> {
  const signature = request.headers.get('x-signature-ed25519') ?? '';
  const timestamp = request.headers.get('x-signature-timestamp') ?? '';
  const body = new Uint8Array(await request.arrayBuffer());
  if (!isRecent(timestamp, settings.now()) || !(await isSigned(body, signature, timestamp, settings.publicKey))) {
    return new Response('Not signed for this application.', { status: 401 });
  }
  return parsed(body) ?? new Response('No interaction.', { status: 400 });
}

/** A signature proves who wrote, not when: an old one may be somebody's copy. */
function isRecent(timestamp: string, now: number): boolean {
  return /^\d{1,12}$/.test(timestamp) && Math.abs(now - Number(timestamp) * 1000) <= REPLAY_WINDOW;
}

async function isSigned(body: Uint8Array, signature: string, timestamp: string, publicKey: string): Promise<boolean> {
  if (!/^[0-9a-f]{128}$/i.test(signature)) return false;
  try {
    return await verifyKey(body, signature, timestamp, publicKey);
  } catch {
    return false;
  }
}

function parsed(body: Uint8Array): { readonly type: number } | undefined {
  try {
    const read: unknown = JSON.parse(new TextDecoder().decode(body));
    return typeof read === 'object' && read !== null && 'type' in read ? (read as { type: number }) : undefined;
  } catch {
    return undefined;
  }
}

/** What whoever runs the bot has set. */
export interface DiscordSettings {
  readonly token: string;
  /** Set: interactions come by HTTP, and there is no gateway. */
  readonly publicKey?: string;
  readonly shards?: Shards;
  /** Where Discord's REST interface is; its own address without one. */
  readonly api?: string;
}

/** What the bot is made of, besides the way out and the clock. */
export type Parts = Omit<
  DiscordContext,
  'wire' | 'entries' | 'hears' | 'wait' | 'shared' | 'isFresh' | 'channels' | 'saves' | 'missed'
> &
  Partial<Pick<DiscordContext, 'wait'>>;

/** A path for the one HTTP server, as it wants it. */
export interface DiscordRoute {
  readonly method: 'POST';
  readonly path: string;
  handle(request: Request): Promise<Response>;
}

export interface Running {
  /** By HTTP: what the server must route here. */
  readonly routes: readonly DiscordRoute[];
  /** Whether interactions reach it: by HTTP they do while the server listens. */
  connected(): boolean;
  /** Takes no more: who asks from now on is told that the bot is being started again. */
  refuse(): void;
  /** Takes no more, and resolves when what was begun is answered, or its asker told that it will not be. */
  close(): Promise<void>;
}

/** Milliseconds that what was begun has to be answered once no more is taken. */
const LONGEST_END = 6_000;

/** Starts. By the gateway it rejects when the token is refused. */
export async function startDiscord(settings: DiscordSettings, parts: Parts): Promise<Running> {
  const begun = new Map<Promise<void>, APIInteraction>();
  let access: DiscordContext | undefined;
  const shared = settings.publicKey !== undefined;
  const state = {
    shared,
    isFresh: freshIds(),
    channels: channelLimit(),
    saves: savesUnderway(),
    missed: missedAnswers(parts.kept),
  };
  let open = true;
  const hears = !shared;
  const accessBy = (rest: REST): DiscordContext => {
    access ??= { wait: waitOnClock, ...parts, ...state, hears, wire: wireOf(rest), entries: menuEntries(rest) };
    return access;
  };
  const take = (interaction: APIInteraction, rest: REST): void => {
    const here = accessBy(rest);
    const done = asRequest(() => (open ? receive(interaction, here) : tellRestarting(interaction, here)));
    begun.set(done, interaction);
    void done.finally(() => begun.delete(done));
  };
  const heard = new Set<Promise<void>>();
  const hear = (message: MessageEvent, { rest, user }: Client, deleted: boolean): void => {
    // A question that comes while the bot stops is answered by whoever takes over, or stays unanswered.
    if (!open || !user) return;
    const here = accessBy(rest);
    const listening = { self: user.id, rest };
    const done = asRequest(() => (deleted ? forget(message, here, listening) : hearMessage(message, here, listening)));
    heard.add(done);
    void done.finally(() => heard.delete(done));
  };
  const refuse = (): void => {
    open = false;
  };
  const ended = async (): Promise<void> => {
    refuse();
    const long = (parts.wait ?? waitOnClock)(LONGEST_END);
    await Promise.race([allOf(begun).then(() => Promise.all(heard)), long.over]);
    long.cancel();
    await Promise.all([...begun.values()].map((interaction) => access && tellRestarting(interaction, access)));
  };
  const { publicKey } = settings;
  if (publicKey === undefined) {
    const gateway = await connect({
      ...settings,
      onInteraction: (interaction, client) => take(interaction, client.rest),
      onMessage: hear,
      onTrouble: (cause) => tellFault(parts, cause),
    });
    return {
      routes: [],
      connected: () => gateway.client.isReady(),
      refuse,
      close: () => ended().then(() => gateway.close()),
    };
  }
  const rest = restOf(settings);
  const onInteraction = (interaction: APIInteraction): void => take(interaction, rest);
  const signing = { publicKey, now: Date.now };
  const onInstalled = (person: string): void => {
    const done = asRequest(() => greetInstaller(person, accessBy(rest)));
    heard.add(done);
    void done.finally(() => heard.delete(done));
  };
  const routes: readonly DiscordRoute[] = [
    { method: 'POST', path: INTERACTIONS_PATH, handle: (one) => handleHttp(one, { ...signing, onInteraction }) },
    { method: 'POST', path: EVENTS_PATH, handle: (one) => handleEvent(one, { ...signing, onInstalled }) },
  ];
  return { routes, connected: () => open, refuse, close: ended };
}

/** A REST client with the bot's token. */
export function restOf({ token, api }: Pick<DiscordSettings, 'token' | 'api'>): REST {
  return new REST({ version: '10', agent: OWN_AGENT, ...(api === undefined ? {} : { api }) }).setToken(token);
}

/** Tells whoever set it off that it is not answered now; not for what is typed ahead, which nobody waits for. */
async function tellRestarting(interaction: APIInteraction, access: DiscordContext): Promise<void> {
  const came = interaction.type === InteractionType.ApplicationCommandAutocomplete ? undefined : cameOf(interaction);
  if (came) await sayRestarting(came, access);
}

/** Resolves when nothing is left, of what is added meanwhile too. */
async function allOf(begun: ReadonlyMap<Promise<void>, unknown>): Promise<void> {
  while (begun.size > 0) await Promise.all(begun.keys());
}

/** Connects the bot as it is configured. Rejects as `startDiscord` does. */
export async function connectDiscord(context: PlatformContext): Promise<RunningPlatform> {
  const { config, ports, answer, toPng, makeFile, wait } = context;
  const commands = await context.commands();
  const { units, decimal, currency } = config;
  const preferences = { units, decimal, currency };
  const { token, publicKey, shards, api } = config.discord;
  const settings = {
    token,
    ...(publicKey === '' ? {} : { publicKey }),
    ...(shards ? { shards } : {}),
    ...(api ? { api } : {}),
  };
  const running = await startDiscord(settings, {
    answer,
    commands,
    preferences,
    kept: ports.store.kept,
    fault: ports.fault,
    toPng,
    makeFile,
    suggest: ({ asker, locale }, command, option, typed) =>
      suggestRead(asker, { command, option, commands, preferences: preferencesIn(locale, preferences) }, typed, ports),
  });
  const close = async (): Promise<void> => {
    running.refuse();
    // What is on its way from Discord already still gets a word.
    await wait(GOODBYE);
    await running.close();
  };
  return { routes: running.routes, connected: running.connected, close };
}
