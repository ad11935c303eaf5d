/** Starts the Discord bot: by the gateway, or by HTTP where the application's public key is set. */

import { REST } from '@discordjs/rest';
import { type APIInteraction, InteractionType } from 'discord-api-types/v10';
import { freshIds } from '../../chat/rate-limit.ts';
import { asRequest } from '../../chat/request-id.ts';
import { cameOf } from './came.ts';
import { type Desk, waitOnClock } from './desk.ts';
import { tellFault } from './fault.ts';
import { connect, type Shards } from './gateway.ts';
import { handleHttp, INTERACTIONS_PATH } from './http.ts';
import { keepings } from './keeping.ts';
import { looksFor } from './looks.ts';
import { receive } from './receive.ts';
import { sayRestarting } from './say.ts';
import { wireOf } from './wire.ts';

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
export type Parts = Omit<Desk, 'wire' | 'wait' | 'shared' | 'isFresh' | 'keeping' | 'looks'> &
  Partial<Pick<Desk, 'wait'>>;

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
  let desk: Desk | undefined;
  const shared = settings.publicKey !== undefined;
  const state = { shared, isFresh: freshIds(), keeping: keepings(), looks: looksFor() };
  let open = true;
  const take = (interaction: APIInteraction, rest: REST): void => {
    desk ??= { wait: waitOnClock, ...parts, ...state, wire: wireOf(rest) };
    const here = desk;
    const done = asRequest(() => (open ? receive(interaction, here) : tellRestarting(interaction, here)));
    begun.set(done, interaction);
    void done.finally(() => begun.delete(done));
  };
  const refuse = (): void => {
    open = false;
  };
  const ended = async (): Promise<void> => {
    refuse();
    const long = (parts.wait ?? waitOnClock)(LONGEST_END);
    await Promise.race([allOf(begun), long.over]);
    long.cancel();
    await Promise.all([...begun.values()].map((interaction) => desk && tellRestarting(interaction, desk)));
  };
  const { publicKey } = settings;
  if (publicKey === undefined) {
    const gateway = await connect({
      ...settings,
      onInteraction: (interaction, client) => take(interaction, client.rest),
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
  const handle = (request: Request) => handleHttp(request, { publicKey, now: Date.now, onInteraction });
  return { routes: [{ method: 'POST', path: INTERACTIONS_PATH, handle }], connected: () => open, refuse, close: ended };
}

/** A REST client with the bot's token. */
export function restOf({ token, api }: Pick<DiscordSettings, 'token' | 'api'>): REST {
  return new REST({ version: '10', ...(api === undefined ? {} : { api }) }).setToken(token);
}

/** Tells whoever set it off that it is not answered now; not for what is typed ahead, which nobody waits for. */
async function tellRestarting(interaction: APIInteraction, desk: Desk): Promise<void> {
  const came = interaction.type === InteractionType.ApplicationCommandAutocomplete ? undefined : cameOf(interaction);
  if (came) await sayRestarting(came, desk);
}

/** Resolves when nothing is left, of what is added meanwhile too. */
async function allOf(begun: ReadonlyMap<Promise<void>, unknown>): Promise<void> {
  while (begun.size > 0) await Promise.all(begun.keys());
}
