/** Inspects a store without changing anything: whether it answers, what is wrong with it, and its clock. */

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { readEmbedded } from './embedded.ts';
import { MACHINE_CLOCK, withinTime } from './engine.ts';
import { redisDoubts } from './redis.ts';
import type { StorePlace } from './store.ts';

const OPERATION = 5_000;

export interface StoreLook {
  readonly doubts: readonly string[];
  /** Whether anything of ours is stored there yet. */
  readonly made: boolean;
  /** The server's clock in milliseconds since 1970; a folder doesn't have one. */
  readonly clock?: number;
}

/** Rejects with the server's or folder's error, or with Lost if no answer comes. */
export async function lookAtStore({ url, folder, space = 'floorhand', patience }: StorePlace): Promise<StoreLook> {
  const { operation = OPERATION } = patience ?? {};
  if (url === '') return lookAtFolder(folder, operation);
  return /^postgres/.test(url) ? lookAtPostgres(url, space, operation) : lookAtRedis(url, space, operation);
}

async function lookAtFolder(folder: string, operation: number): Promise<StoreLook> {
  if (!existsSync(join(folder, 'store'))) return { doubts: [], made: false };
  const engine = await readEmbedded({ folder, clock: MACHINE_CLOCK, operation });
  try {
    await engine.ping();
    return { doubts: await engine.doubts(), made: true };
  } finally {
    await engine.close();
  }
}

async function lookAtPostgres(url: string, space: string, operation: number): Promise<StoreLook> {
  const { default: pg } = await import('pg');
  const terms = { connectionTimeoutMillis: operation, query_timeout: operation };
  const client = new pg.Client({ connectionString: url, ...terms });
  // If the connection ends, the next query reports it.
  client.on('error', () => {});
  try {
    await client.connect();
    const { rows } = await client.query<{ clock: string; made: boolean; may: boolean; fsync: string }>(
      `SELECT (extract(epoch FROM clock_timestamp()) * 1000)::bigint::text AS clock,
        to_regclass($1) IS NOT NULL AS made, has_database_privilege(current_database(), 'CREATE') AS may,
        current_setting('fsync') AS fsync`,
      [`${space}.records`],
    );
    const [row] = rows;
    if (!row) throw new Error('The server gave no row.');
    const unable = row.made || row.may ? [] : ['This role may not create the schema that projects are kept in.'];
    const flush =
      row.fsync === 'on' ? [] : ['This Postgres does not flush to disk (fsync is off): a power cut loses all.'];
    return { doubts: [...unable, ...flush], made: row.made, clock: Number(row.clock) };
  } finally {
    await client.end().catch(() => undefined);
  }
}

async function lookAtRedis(url: string, space: string, operation: number): Promise<StoreLook> {
  const { createClient } = await import('@keyv/redis');
  const socket = { connectTimeout: operation, reconnectStrategy: false } as const;
  const client = createClient({ url, socket, disableOfflineQueue: true });
  client.on('error', () => {});
  const look = async (): Promise<StoreLook> => {
    await client.connect();
    const [seconds, micros] = (await client.sendCommand(['TIME'])) as unknown as readonly [string, string];
    const doubts = await redisDoubts((name) => client.configGet(name));
    let found = await client.scan('0', { MATCH: `${space}:*`, COUNT: 1000 });
    // The server may hold many keys that aren't ours.
    while (found.keys.length === 0 && found.cursor !== '0')
      found = await client.scan(found.cursor, { MATCH: `${space}:*`, COUNT: 1000 });
    return { doubts, made: found.keys.length > 0, clock: Number(seconds) * 1000 + Number(micros) / 1000 };
  };
  try {
    // The client doesn't treat a connection that is accepted and never answered as a failure.
    return await withinTime(operation, look());
  } finally {
    // A refused connection is already closed, and destroying it would replace the reason with another error.
    if (client.isOpen) client.destroy();
  }
}
