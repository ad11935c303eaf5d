/** The servers that tests use: where they are, and whether they answer. */

import { connect } from 'node:net';
import { createClient } from '@keyv/redis';
import pg from 'pg';
import { describe, expect, it } from 'vitest';

export const POSTGRES = process.env.FLOORHAND_TEST_POSTGRES ?? 'postgres://postgres@127.0.0.1:5432/test';
export const REDIS = process.env.FLOORHAND_TEST_REDIS ?? 'redis://127.0.0.1:6379/9';

/** Runs `suite` when the server answers. Without one it says so in one line, and fails where servers are required. */
export async function withServer(name: string, url: string, suite: () => void): Promise<void> {
  if (await answers(url)) {
    suite();
    return;
  }
  const { host } = new URL(url);
  describe(`the store on ${name}`, () => {
    if (process.env.FLOORHAND_REQUIRE_SERVICES === '1') {
      it('has a server', () => expect.fail(`${name} does not answer at ${host}`));
    } else {
      it.skip(`no ${name} answers at ${host}`, () => {});
    }
  });
}

function answers(url: string): Promise<boolean> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve) => {
    const socket = connect({ host: hostname, port: Number(port) });
    const end = (found: boolean) => {
      socket.destroy();
      resolve(found);
    };
    socket.once('connect', () => end(true)).once('error', () => end(false));
  });
}

/** Real milliseconds, for what a server's own clock decides; never more than a tenth of a second. */
export function pass(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, Math.min(100, milliseconds)));
}

/** Leaves nothing of a schema. */
export async function clearPostgres(space: string): Promise<void> {
  const client = new pg.Client({ connectionString: POSTGRES });
  await client.connect();
  await client.query(`DROP SCHEMA IF EXISTS ${space} CASCADE`);
  await client.end();
}

/** Leaves nothing under a prefix. */
export async function clearRedis(space: string): Promise<void> {
  const client = createClient({ url: REDIS });
  await client.connect();
  for await (const keys of client.scanIterator({ MATCH: `${space}:*`, COUNT: 500 })) {
    if (keys.length > 0) await client.unlink(keys);
  }
  await client.close();
}
