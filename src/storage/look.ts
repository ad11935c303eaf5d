/** Inspects a store without changing anything: whether it answers, what is wrong with it, and its clock. */

import { readFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { backupsIn, checkBackup, damagedFile, type FoundBackup, linesIn } from './backup.ts';
import { checkDataFile } from './data-file.ts';
import { readEmbedded } from './embedded.ts';
import { MACHINE_CLOCK, withinTime } from './engine.ts';
import { FolderTaken } from './folder-users.ts';
import { redisDoubts } from './redis.ts';
import type { StorePlace } from './store.ts';

const OPERATION = 5_000;

export interface StoreLook {
  readonly doubts: readonly string[];
  /** Whether anything of ours is stored there yet. */
  readonly made: boolean;
  /** The server's clock in milliseconds since 1970; a folder doesn't have one. */
  readonly clock?: number;
  /** What a data folder holds: pages of its file, and texts in them. */
  readonly file?: { readonly pages: number; readonly texts: number };
  /** A data folder's newest backup, and what is wrong with it, if anything. */
  readonly backup?: FoundBackup & { readonly flaw?: string };
}

/** Rejects with the server's or folder's error, or with Lost if no answer comes. */
export async function lookAtStore({ url, folder, space = 'floorhand', patience }: StorePlace): Promise<StoreLook> {
  const { operation = OPERATION } = patience ?? {};
  if (url === '') return lookAtFolder(folder, operation);
  return /^postgres/.test(url) ? lookAtPostgres(url, space, operation) : lookAtRedis(url, space, operation);
}

/** Reads every page and every text. */
async function lookAtFolder(folder: string, operation: number): Promise<StoreLook> {
  const backup = await newestBackup(folder);
  const found = await checkDataFile(folder);
  if (found.state === 'damaged') throw damagedFile(folder, found.why);
  if (found.state === 'none') return { doubts: [], made: false, ...backup };
  const engine = await readEmbedded({ folder, clock: MACHINE_CLOCK, operation });
  const doubts = [...(await engine.doubts())];
  let [texts, unreadable, aside] = [0, 0, 0];
  try {
    await engine.ping();
    for await (const one of engine.all()) {
      texts++;
      const { text } = 'record' in one ? one.record : one.kept;
      if ('record' in one && one.record.kind === 'aside') aside++;
      else if (!isJson(text)) unreadable++;
    }
  } finally {
    await engine.close();
  }
  if (unreadable > 0) doubts.push(`${unreadable} of ${texts} texts in the data file cannot be read.`);
  if (aside > 0) doubts.push(`Damaged records copied aside: ${aside}.`);
  return { doubts, made: true, file: { pages: found.pages, texts }, ...backup };
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

async function newestBackup(folder: string): Promise<Pick<StoreLook, 'backup'>> {
  const [newest] = backupsIn(folder);
  if (!newest) return {};
  try {
    await checkBackup(linesIn(newest.path));
    return { backup: newest };
  } catch (cause) {
    return { backup: { ...newest, flaw: cause instanceof Error ? cause.message : String(cause) } };
  }
}

/**
 * Moves a damaged store out of the way and returns where to; undefined if it isn't damaged. Throws FolderTaken if a
 * process has it open (known on Linux only).
 */
export async function setAsideDamaged(folder: string): Promise<string | undefined> {
  const found = await checkDataFile(folder);
  if (found.state !== 'damaged') return undefined;
  const store = join(folder, 'store');
  const [user] = lockersOf(join(store, 'lock.mdb'));
  if (user !== undefined)
    throw new FolderTaken(`The data folder ${folder} is in use by process ${user}. Stop that process, then try again.`);
  const aside = join(folder, `damaged-store-${new Date().toISOString().slice(0, 19).replaceAll(':', '-')}`);
  renameSync(store, aside);
  return aside;
}

/** Processes with a lock on the file: lmdb holds one on its lock file while it is open (proc(5), /proc/locks). */
function lockersOf(path: string): readonly string[] {
  try {
    const { ino } = statSync(path);
    const lines = readFileSync('/proc/locks', 'utf8')
      .split('\n')
      .map((line) => line.trim().split(/\s+/));
    return lines.flatMap(([, , , , pid = '', file = '']) => (file.endsWith(`:${ino}`) ? [pid] : []));
  } catch {
    return [];
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
