/** The gateway: Discord's own connection, which reconnects, resumes and keeps to its rate limits by itself. */

import { Client, type ClientOptions, Events, GatewayDispatchEvents, Options } from 'discord.js';
import type { APIInteraction } from 'discord-api-types/v10';

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
  /** Told of what goes wrong with the connection; it is mended by itself. */
  onTrouble(cause: unknown): void;
}

/** A connection. */
export interface Gateway {
  readonly client: Client;
  close(): Promise<void>;
}

/** A client that asks for no intent: interactions come without any, and nobody's messages or names are seen. */
export function clientOf({ shards, api }: Pick<GatewaySettings, 'shards' | 'api'>): Client {
  const options: ClientOptions = {
    intents: [],
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
    ...(api === undefined ? {} : { rest: { api } }),
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
  await client.login(settings.token);
  return { client, close: () => client.destroy() };
}
