/** Starts the Discord bot: by the gateway, or by HTTP where the application's public key is set. */

import { REST } from '@discordjs/rest';
import type { APIInteraction } from 'discord-api-types/v10';
import { freshIds } from '../bot/fresh-ids.ts';
import { asRequest } from '../bot/request.ts';
import type { Desk } from './desk.ts';
import { waitOnClock } from './desk.ts';
import { tellFault } from './fault.ts';
import { connect, type Shards } from './gateway.ts';
import { handleHttp, INTERACTIONS_PATH } from './http.ts';
import { keepings } from './keeping.ts';
import { looksFor } from './looks.ts';
import { receive } from './receive.ts';
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
  /** Takes no more, and resolves when what was begun is answered. */
  close(): Promise<void>;
}

/** Starts. By the gateway it rejects when the token is refused. */
export async function startDiscord(settings: DiscordSettings, parts: Parts): Promise<Running> {
  const begun = new Set<Promise<void>>();
  let desk: Desk | undefined;
  const shared = settings.publicKey !== undefined;
  const state = { shared, isFresh: freshIds(), keeping: keepings(), looks: looksFor() };
  let open = true;
  const take = (interaction: APIInteraction, rest: REST): void => {
    if (!open) return;
    desk ??= { wait: waitOnClock, ...parts, ...state, wire: wireOf(rest) };
    const here = desk;
    const done = asRequest(() => receive(interaction, here)).finally(() => begun.delete(done));
    begun.add(done);
  };
  const ended = async (): Promise<void> => {
    open = false;
    await Promise.all(begun);
  };
  const { publicKey } = settings;
  if (publicKey === undefined) {
    const gateway = await connect({
      ...settings,
      onInteraction: (interaction, client) => take(interaction, client.rest),
      onTrouble: (cause) => tellFault(parts, cause),
    });
    return { routes: [], close: () => ended().then(() => gateway.close()) };
  }
  const rest = restOf(settings);
  const onInteraction = (interaction: APIInteraction): void => take(interaction, rest);
  const handle = (request: Request) => handleHttp(request, { publicKey, now: Date.now, onInteraction });
  return { routes: [{ method: 'POST', path: INTERACTIONS_PATH, handle }], close: ended };
}

/** A REST client with the bot's token. */
export function restOf({ token, api }: Pick<DiscordSettings, 'token' | 'api'>): REST {
  return new REST({ version: '10', ...(api === undefined ? {} : { api }) }).setToken(token);
}
