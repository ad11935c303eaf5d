/** Backups: everything in a store, one line each, between a header and a final line that proves it is complete; one a day. */

import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createWriteStream, existsSync, mkdirSync, readdirSync, statSync } from 'node:fs';
import { link, open, readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { checkDataFile, dataFileOf } from './data-file.ts';
import type { Engine, StoredRecord } from './engine.ts';
import { StoreUnusable } from './types.ts';

const FORMAT = 'floorhand backup';
const VERSION = 1;
const BATCH = 200;

interface Counts {
  readonly records: number;
  readonly kept: number;
}

/** A backup that can't be used: not ours, of a later version, truncated, or modified. */
export class BackupUnusable extends Error {
  override readonly name = 'BackupUnusable';
}

/** The lines of a backup, without line endings, of everything the engine holds. */
export async function* backupLines(engine: Pick<Engine, 'all'>, now: Date): AsyncGenerator<string, Counts> {
  const hash = createHash('sha256');
  const counts = { records: 0, kept: 0 };
  const hashed = (value: unknown): string => {
    // Line readers treat these two as line endings, but JSON doesn't escape them.
    const line = JSON.stringify(value).replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029');
    hash.update(`${line}\n`);
    return line;
  };
  yield hashed({ format: FORMAT, version: VERSION, made: now.toISOString() });
  for await (const held of engine.all()) {
    counts['record' in held ? 'records' : 'kept']++;
    yield hashed(held);
  }
  yield JSON.stringify({ ...counts, sha256: hash.digest('hex') });
  return counts;
}

/**
 * Writes a backup to a new file and returns what it holds. A file under its name is a whole one: it is written beside,
 * flushed and checked before it gets the name. Rejects with EEXIST if the name is taken, or another process is at it.
 */
export async function writeBackup(
  lines: ReturnType<typeof backupLines>,
  name: string,
  check: (part: string) => Promise<unknown> = async () => {},
): Promise<Counts> {
  const part = `${name}.part`;
  const output = createWriteStream(part, { flags: 'wx', mode: 0o600, flush: true });
  const closed = once(output, 'close');
  try {
    await once(output, 'open');
    for (;;) {
      const { done, value } = await lines.next();
      if (done) {
        output.end();
        await closed;
        await check(part);
        // Unlike a rename, it refuses a name that is taken.
        await link(part, name);
        await rm(part);
        return value;
      }
      if (!output.write(`${value}\n`)) await once(output, 'drain');
    }
  } catch (cause) {
    output.destroy();
    const { code, syscall } = cause as NodeJS.ErrnoException;
    // A part that was there before belongs to another process.
    if (code !== 'EEXIST' || syscall !== 'open') await rm(part, { force: true });
    throw cause;
  }
}

/** Reads all lines and throws BackupUnusable unless they are a complete, unmodified backup. */
export async function checkBackup(lines: AsyncIterable<string>): Promise<Counts> {
  const hash = createHash('sha256');
  const counts = { records: 0, kept: 0 };
  let number = 0;
  let ended = false;
  for await (const line of lines) {
    number++;
    if (ended) throw new BackupUnusable(`Line ${number} stands after the end.`);
    const value = parse(line, number);
    if (number === 1) checkHeading(value);
    else if ('sha256' in value) {
      ended = true;
      if (value.sha256 !== hash.digest('hex')) throw new BackupUnusable('Its checksum does not fit: it was changed.');
      if (value.records !== counts.records || value.kept !== counts.kept)
        throw new BackupUnusable('Its last line counts otherwise.');
    } else counts['record' in heldOf(value, number) ? 'records' : 'kept']++;
    if (!ended) hash.update(`${line}\n`);
  }
  if (!ended) throw new BackupUnusable('It is cut short: its last line is missing.');
  return counts;
}

/** Writes a verified backup to the engine, replacing whatever has the same names. */
export async function restoreLines(engine: Pick<Engine, 'fill'>, lines: AsyncIterable<string>): Promise<void> {
  let batch: StoredRecord[] = [];
  let number = 0;
  for await (const line of lines) {
    const value = parse(line, ++number);
    if (number === 1 || 'sha256' in value) continue;
    batch.push(heldOf(value, number));
    if (batch.length < BATCH) continue;
    await engine.fill(batch);
    batch = [];
  }
  if (batch.length > 0) await engine.fill(batch);
}

type Fields = Readonly<Record<string, unknown>>;

function parse(line: string, number: number): Fields {
  try {
    const value: unknown = JSON.parse(line);
    if (isFields(value)) return value;
  } catch {
    // Handled below together with other values that aren't objects.
  }
  throw new BackupUnusable(`Line ${number} cannot be read.`);
}

function checkHeading({ format, version }: Fields): void {
  if (format !== FORMAT) throw new BackupUnusable('It does not begin as a backup of floorhand.');
  if (version !== VERSION) throw new BackupUnusable(`It is of version ${version}; this floorhand reads ${VERSION}.`);
}

function heldOf({ record, kept }: Fields, number: number): StoredRecord {
  if (isFields(record)) {
    const { kind, id, rev, text } = record;
    if (isText(kind) && isText(id) && Number.isSafeInteger(rev) && isText(text))
      return { record: { kind, id, rev: Number(rev), text } };
  }
  if (isFields(kept)) {
    const { key, text, expires } = kept;
    if (isText(key) && isText(text))
      return { kept: Number.isSafeInteger(expires) ? { key, text, expires: Number(expires) } : { key, text } };
  }
  throw new BackupUnusable(`Line ${number} holds nothing of a store.`);
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

// A backup of the data folder each day, in the folder itself; the last seven are kept.

const KEPT = 7;
const NAME = /^floorhand-\d{4}-\d\d-\d\d\.jsonl$/;
/** A part that hasn't grown for so many milliseconds was left by a process that was killed. */
const LEFT_OVER = 3_600_000;

export interface FoundBackup {
  readonly path: string;
  /** When it was finished, in milliseconds since 1970. */
  readonly made: number;
}

export function backupFolder(folder: string): string {
  return join(folder, 'backups');
}

/** The folder's own backups, newest first; every one of them was read back when it was made. */
export function backupsIn(folder: string): readonly FoundBackup[] {
  const place = backupFolder(folder);
  if (!existsSync(place)) return [];
  const names = readdirSync(place).filter((name) => NAME.test(name));
  const newestFirst = names.sort().reverse();
  return newestFirst.map((name) => ({ path: join(place, name), made: statSync(join(place, name)).mtimeMs }));
}

/**
 * Makes today's backup, by the calendar of UTC, unless it is there, and removes those beyond the last seven. Returns
 * when the newest was made. Rejects, and leaves earlier ones alone, if the data file is damaged or the backup doesn't
 * read back.
 */
export async function backUpToday(
  folder: string,
  engine: Pick<Engine, 'all'>,
  now: number,
): Promise<number | undefined> {
  const name = `floorhand-${new Date(now).toISOString().slice(0, 10)}.jsonl`;
  const path = join(backupFolder(folder), name);
  if (!existsSync(path)) {
    // lmdb would end the process at a damaged page.
    const found = await checkDataFile(folder);
    if (found.state === 'damaged') throw damagedFile(folder, found.why);
    mkdirSync(backupFolder(folder), { recursive: true, mode: 0o700 });
    await sweep(backupFolder(folder), now);
    try {
      await writeBackup(backupLines(engine, new Date(now)), path, (part) => checkBackup(linesIn(part)));
    } catch (cause) {
      // Another process on this folder makes it, or has made it.
      if ((cause as NodeJS.ErrnoException).code !== 'EEXIST') throw cause;
    }
    for (const old of backupsIn(folder).slice(KEPT)) await rm(old.path, { force: true });
  }
  return backupsIn(folder)[0]?.made;
}

/** How often to look whether the day's backup is there. */
const LOOK_EVERY = 3_600_000;

/** Backs up now and once a day; the function returned stops it, and waits for a backup under way. */
export function backUpDaily(backUp: () => Promise<unknown>, fault: (cause: unknown) => void): () => Promise<void> {
  let last = Promise.resolve();
  const next = (): void => {
    last = last.then(async () => void (await backUp())).catch(fault);
  };
  next();
  const timer = setInterval(next, LOOK_EVERY);
  timer.unref();
  return () => {
    clearInterval(timer);
    return last;
  };
}

async function sweep(place: string, now: number): Promise<void> {
  for (const name of await readdir(place)) {
    if (!name.endsWith('.part')) continue;
    const part = join(place, name);
    const found = await stat(part).catch(() => undefined);
    if (found && now - found.mtimeMs > LEFT_OVER) await rm(part, { force: true });
  }
}

/** The lines of a backup file. */
export async function* linesIn(path: string): AsyncGenerator<string> {
  yield* (await open(path)).readLines();
}

/** What is wrong with the folder's data file, the newest backup, and how to go back to it. */
export function damagedFile(folder: string, why: string): StoreUnusable {
  const [newest] = backupsIn(folder);
  const todo = newest
    ? [
        `Newest backup: ${newest.path}, made ${new Date(newest.made).toISOString().slice(0, 16).replace('T', ' ')} UTC.`,
        `To go back to it, stop every floorhand that uses this folder, then run: npm run restore -- ${newest.path}`,
        `That moves the damaged file into a folder beside it, where it stays until you delete it.`,
      ]
    : [
        `There is no backup in ${backupFolder(folder)}. If you have one elsewhere, stop every floorhand that uses this folder, then run: npm run restore -- FILE`,
        `To start with nothing instead, move ${join(folder, 'store')} to another place.`,
      ];
  const said = `The data file ${dataFileOf(folder)} is damaged: ${why}. Nothing was changed.`;
  return new StoreUnusable([said, ...todo].join('\n'));
}
