/** Each engine's own put, with nothing of ours before it: what the store's changes are set against. */

import { createClient } from '@keyv/redis';
import { open } from 'lmdb';
import pg from 'pg';

/** Puts a text under a key, for good. */
export interface BarePut {
  put(key: string, text: string): Promise<unknown>;
  close(): Promise<void>;
}

export function bareEmbedded(folder: string): BarePut {
  const root = open({ path: `${folder}/bare`, overlappingSync: false, encoding: 'string' });
  return { put: (key, text) => root.put(key, text), close: () => root.close() };
}

/** On Postgres, in a schema that is dropped at the end with all that is in it. */
export async function barePostgres(url: string, schema: string): Promise<BarePut> {
  const pool = new pg.Pool({ connectionString: url, max: 10 });
  await pool.query(`CREATE SCHEMA ${schema}; CREATE TABLE ${schema}.bare (key text PRIMARY KEY, body text)`);
  const put = `INSERT INTO ${schema}.bare VALUES ($1, $2) ON CONFLICT (key) DO UPDATE SET body = excluded.body`;
  return {
    put: (key, text) => pool.query(put, [key, text]),
    async close() {
      await pool.query(`DROP SCHEMA ${schema} CASCADE`);
      await pool.end();
    },
  };
}

/** On Redis, under a prefix of which nothing is left at the end. */
export async function bareRedis(url: string, prefix: string): Promise<BarePut> {
  const client = createClient({ url });
  await client.connect();
  return {
    put: (key, text) => client.set(`${prefix}:bare:${key}`, text),
    async close() {
      for await (const keys of client.scanIterator({ MATCH: `${prefix}:*`, COUNT: 500 }))
        if (keys.length > 0) await client.unlink(keys);
      await client.close();
    },
  };
}
