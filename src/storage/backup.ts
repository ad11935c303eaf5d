/** Backups: everything in a store, one line each, between a header and a final line that proves it is complete. */

import { createHash } from 'node:crypto';
import type { Engine, StoredRecord } from './engine.ts';

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
