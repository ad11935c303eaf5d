/** The embedded back end: lmdb in one data folder, with every write in a transaction that is flushed before it returns. */

import { EventEmitter } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, statfsSync } from 'node:fs';
import { join } from 'node:path';
import type { KeyvEntry, KeyvStoreAdapter } from 'keyv';
import { type Database, open, type RootDatabase, type Transaction } from 'lmdb';
import { damagedFile } from './backup.ts';
import { checkDataFile, dataFileOf } from './data-file.ts';
import {
  type Clock,
  type Engine,
  type HeldValue,
  type StoredRecord,
  type StoredRow,
  type Values,
  withinTime,
} from './engine.ts';
import { FolderAccess, FolderTaken, type FolderUse, heard, SEEN_EVERY } from './folder-users.ts';
import { Outage, StoreUnusable } from './types.ts';

/** The version of a value that never expires; that of any other is its expiry in milliseconds. */
const FOR_GOOD = 1;
const PAGE = 256;
/** Expired values removed per value written with an expiry: more than one, so that they don't pile up. */
const SWEPT = 4;

type Answer = <T>(work: () => Promise<T>) => Promise<T>;

/** Keyv adds the namespace to the keys itself; here it only limits `clear` and `iterator`. */
export class EmbeddedValues extends EventEmitter implements KeyvStoreAdapter {
  namespace?: string | undefined;
  readonly opts = { dialect: 'lmdb', url: '' };
  readonly #values: Database<string, string>;
  /** Expiry index: [millisecond, key]. */
  readonly #due: Database<string, [number, string]>;
  readonly #clock: Pick<Clock, 'now'>;
  readonly #answer: Answer;

  /** `answer` limits the time of a write and turns failures into the store's own errors. */
  constructor(root: RootDatabase, clock: Pick<Clock, 'now'>, answer: Answer) {
    super();
    this.#answer = answer;
    this.#values = root.openDB({ name: 'values', encoding: 'string', useVersions: true });
    this.#due = root.openDB({ name: 'due', encoding: 'string' });
    this.#clock = clock;
  }

  get<Value>(key: string): Promise<Value | undefined> {
    // Keyv passes in text and gets back the same.
    return Promise.resolve(this.#live(key)?.value as Value | undefined);
  }

  async getMany<Value>(keys: string[]): Promise<(Value | undefined)[]> {
    return Promise.all(keys.map((key) => this.get<Value>(key)));
  }

  async set(key: string, value: string, ttl?: number): Promise<void> {
    await this.#put(key, value, ttl);
  }

  async setMany(entries: KeyvEntry[]): Promise<void> {
    await Promise.all(entries.map(({ key, value, ttl }) => this.#put(key, String(value), ttl)));
  }

  async delete(key: string): Promise<boolean> {
    for (;;) {
      const found = this.#values.getEntry(key);
      if (!found) return false;
      const live = this.#isLive(found.version);
      const version = found.version ?? FOR_GOOD;
      if (await this.#answer(() => this.#values.remove(key, version))) return live;
    }
  }

  async deleteMany(keys: string[]): Promise<boolean> {
    return (await Promise.all(keys.map((key) => this.delete(key)))).some(Boolean);
  }

  has(key: string): Promise<boolean> {
    return Promise.resolve(this.#live(key) !== undefined);
  }

  hasMany(keys: string[]): Promise<boolean[]> {
    return Promise.all(keys.map((key) => this.has(key)));
  }

  async clear(): Promise<void> {
    for await (const page of this.#pages(this.namespace)) {
      await this.#answer(() => Promise.all(page.map(({ key }) => heard(this.#values.remove(key)))));
    }
  }

  async *iterator<Value>(namespace?: string): AsyncGenerator<[string, Value], void> {
    for await (const page of this.#pages(namespace)) {
      for (const { key, value, version } of page) if (this.#isLive(version)) yield [key, value as Value];
    }
  }

  /** Every live value as a backup stores it, as of the transaction. */
  *entries(transaction: Transaction): Generator<HeldValue> {
    for (const { key, value, version } of this.#values.getRange({ transaction, versions: true })) {
      if (!this.#isLive(version)) continue;
      yield version === undefined || version === FOR_GOOD
        ? { key, text: value }
        : { key, text: value, expires: version };
    }
  }

  async restore({ key, text, expires }: HeldValue): Promise<void> {
    await (expires === undefined ? this.#put(key, text, undefined) : this.#putUntil(key, text, expires));
  }

  /** Stores the value unless there is a live one. Exact, because lmdb checks and writes in one step. */
  async claim(key: string, value: string, milliseconds: number): Promise<boolean> {
    const found = this.#values.getEntry(key);
    if (found && this.#isLive(found.version)) return false;
    const expires = this.#expiry(milliseconds);
    const put = () => {
      heard(this.#values.put(key, value, expires));
      heard(this.#due.put([expires, key], ''));
    };
    return this.#answer(() =>
      found ? this.#values.ifVersion(key, found.version ?? FOR_GOOD, put) : this.#values.ifNoExists(key, put),
    );
  }

  /** Keyv closes through this; the folder is closed by its engine. */
  async disconnect(): Promise<void> {
    await this.#values.flushed;
  }

  async #put(key: string, value: string, ttl: number | undefined): Promise<void> {
    if (ttl !== undefined) await this.#putUntil(key, value, this.#expiry(ttl));
    else await this.#answer(() => this.#values.put(key, value, FOR_GOOD));
  }

  async #putUntil(key: string, value: string, expires: number): Promise<void> {
    const put = () => [this.#values.put(key, value, expires), this.#due.put([expires, key], ''), ...this.#sweep()];
    await this.#answer(() => Promise.all(put().map(heard)));
  }

  #sweep(): Promise<boolean>[] {
    const over = [...this.#due.getKeys({ end: [this.#clock.now()] as never, limit: SWEPT })];
    return over.flatMap((due) => [this.#values.remove(due[1], due[0]), this.#due.remove(due)]);
  }

  #live(key: string): { readonly value: string } | undefined {
    const found = this.#values.getEntry(key);
    return found && this.#isLive(found.version) ? found : undefined;
  }

  #isLive(version: number | undefined): boolean {
    return version === undefined || version === FOR_GOOD || version > this.#clock.now();
  }

  #expiry(milliseconds: number): number {
    return Math.max(FOR_GOOD + 1, this.#clock.now() + Math.ceil(milliseconds));
  }

  async *#pages(namespace: string | undefined): AsyncGenerator<{ key: string; value: string; version?: number }[]> {
    const prefix = namespace === undefined ? '' : `${namespace}:`;
    let after: string | undefined;
    for (;;) {
      const from =
        after === undefined ? (prefix === '' ? {} : { start: prefix }) : { start: after, exclusiveStart: true };
      const page = [...this.#values.getRange({ ...from, limit: PAGE, versions: true })];
      const own = page.filter(({ key }) => key.startsWith(prefix));
      if (own.length > 0) yield own;
      after = page.at(-1)?.key;
      if (page.length < PAGE || own.length < page.length) return;
    }
  }
}

/** How often, and how many milliseconds apart, a folder in use is tried again: its user may be about to end. */
const TRIES = 5;
const BETWEEN_TRIES = 100;

type Key = [kind: string, id: string];

export interface EmbeddedTerms {
  readonly folder: string;
  readonly clock: Clock;
  /** What it is opened for; a bot if absent. */
  readonly use?: FolderUse;
  /** Milliseconds allowed for one write. */
  readonly operation: number;
  /** Free bytes on the folder's disk; asks the system if absent. */
  readonly left?: () => number;
}

/**
 * Free bytes below which nothing is written. lmdb corrupts its process's memory when a disk takes only part of a
 * commit; commits are much smaller than this.
 */
const SPARE = 8 * 1024 * 1024;

/**
 * Opens the folder, and says so to others. Throws StoreUnusable if its data file is damaged or it can't be opened,
 * FolderTaken if another process is in the way.
 */
export async function openEmbedded(terms: EmbeddedTerms): Promise<Engine> {
  const root = await openRoot(terms.folder, false);
  for (let tries = 1; ; tries++) {
    try {
      return new Embedded(root, new FolderAccess(root, terms.folder, terms.use ?? 'bot', terms.clock), terms);
    } catch (cause) {
      if (cause instanceof FolderTaken && tries < TRIES) {
        await terms.clock.wait(BETWEEN_TRIES);
        continue;
      }
      await root.close();
      throw cause instanceof StoreUnusable ? cause : unusable(terms.folder, cause);
    }
  }
}

/**
 * Opens the folder read-only, whoever uses it: lmdb lets readers and writers work side by side. Rejects with
 * StoreUnusable if it doesn't exist or is damaged.
 */
export async function readEmbedded(terms: EmbeddedTerms): Promise<Engine> {
  return new Embedded(await openRoot(terms.folder, true), undefined, terms);
}

// Without overlapping sync, a commit is flushed before its promise resolves.
const OPTIONS = { overlappingSync: false, encoding: 'string', maxDbs: 8 } as const;

async function openRoot(folder: string, readOnly: boolean): Promise<RootDatabase> {
  try {
    const found = await checkDataFile(folder);
    if (found.state === 'damaged') throw damagedFile(folder, found.why);
    if (found.state === 'none') {
      // lmdb would create the folder itself, empty.
      if (readOnly) throw new Error(`There is no ${dataFileOf(folder)}.`);
      await makeStore(folder);
    }
    return open({ path: join(folder, 'store'), readOnly, ...OPTIONS });
  } catch (cause) {
    throw cause instanceof StoreUnusable ? cause : unusable(folder, cause);
  }
}

/** Makes an empty store beside its place and moves it there whole, so that an empty data file is always a damaged one. */
async function makeStore(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = mkdtempSync(join(folder, 'new-store-'));
  try {
    await open({ path, ...OPTIONS }).close();
    renameSync(path, join(folder, 'store'));
  } catch (cause) {
    rmSync(path, { recursive: true, force: true });
    // Another process made one meanwhile.
    if (!existsSync(dataFileOf(folder))) throw cause;
  }
}

const WHY: Readonly<Record<string, string>> = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'its disk is read-only',
  ENOTDIR: 'a file is in the way',
  EEXIST: 'a file is in the way',
  ENOSPC: 'its disk is full',
  EMFILE: 'too many files are open',
};

/** lmdb gives errors of the system by number, with the system's words as the message. */
function unusable(folder: string, cause: unknown): StoreUnusable {
  const { code = '', message } = cause as NodeJS.ErrnoException;
  const why = WHY[code] ?? (message ? message.replace(/\.$/, '') : 'unknown');
  const todo = 'Let this user write to it, or set FLOORHAND_DATA to another folder.';
  return new StoreUnusable(`The data folder ${folder} cannot be opened: ${why}. ${todo}`, { cause });
}

class Embedded implements Engine {
  readonly values: Values;
  readonly #adapter: EmbeddedValues;
  readonly #root: RootDatabase;
  readonly #access: FolderAccess | undefined;
  readonly #said: NodeJS.Timeout | undefined;
  readonly #operation: number;
  readonly #left: () => number;
  readonly #records: Database<string, Key>;

  constructor(root: RootDatabase, access: FolderAccess | undefined, { folder, clock, operation, left }: EmbeddedTerms) {
    this.#root = root;
    this.#left = left ?? (() => leftIn(folder));
    this.#access = access;
    this.#operation = operation;
    this.#records = root.openDB({ name: 'records', encoding: 'string', useVersions: true });
    const adapter = new EmbeddedValues(root, clock, (work) => this.#write(work));
    this.#adapter = adapter;
    this.values = {
      adapter: () => adapter,
      run: (work) => work(),
      claim: (key, value, milliseconds) => adapter.claim(key, JSON.stringify({ value }), milliseconds),
    };
    if (!access) return;
    this.#said = setInterval(() => {
      // A terminal killed while it read would keep lmdb from using freed pages again.
      root.readerCheck();
      // If a full disk rejects this report, the next one will do.
      void this.#write(() => access.say()).catch(() => {});
    }, SEEN_EVERY);
    this.#said.unref();
  }

  read(kind: string, id: string): Promise<StoredRow | undefined> {
    return this.#answer(async () => {
      const found = this.#records.getEntry([kind, id]);
      return found && { rev: found.version ?? 0, text: found.value };
    });
  }

  create(kind: string, id: string, { rev, text }: StoredRow): Promise<boolean> {
    const key: Key = [kind, id];
    return this.#write(() => this.#records.ifNoExists(key, () => heard(this.#records.put(key, text, rev))));
  }

  put(kind: string, id: string, { rev, text }: StoredRow, after: number): Promise<boolean> {
    return this.#write(() => this.#records.put([kind, id], text, rev, after));
  }

  remove(kind: string, id: string): Promise<boolean> {
    const key: Key = [kind, id];
    return this.#write(async () => {
      for (;;) {
        const found = this.#records.getEntry(key);
        if (!found) return false;
        if (await this.#records.remove(key, found.version ?? 0)) return true;
      }
    });
  }

  /** There is no connection to lose, so no caller needs this. */
  async landed(): Promise<boolean> {
    return false;
  }

  async *ids(kind: string): AsyncGenerator<string> {
    for await (const [found, id] of this.#keys([kind])) {
      if (found !== kind) return;
      yield id;
    }
  }

  async ping(): Promise<void> {
    await this.read('ping', 'ping');
  }

  async doubts(): Promise<readonly string[]> {
    return [];
  }

  /** As of one moment: a read transaction stays open to the end. */
  async *all(): AsyncGenerator<StoredRecord> {
    const transaction = this.#root.useReadTransaction();
    try {
      for (const { key, value, version } of this.#records.getRange({ transaction, versions: true })) {
        yield { record: { kind: key[0], id: key[1], rev: version ?? 0, text: value } };
      }
      for (const kept of this.#adapter.entries(transaction)) yield { kept };
    } finally {
      transaction.done();
    }
  }

  async empty(): Promise<boolean> {
    for await (const _ of this.all()) return false;
    return true;
  }

  async fill(held: readonly StoredRecord[]): Promise<void> {
    await this.#write(() =>
      Promise.all(
        held.map((one) =>
          'record' in one
            ? heard(this.#records.put([one.record.kind, one.record.id], one.record.text, one.record.rev))
            : this.#adapter.restore(one.kept),
        ),
      ),
    );
  }

  async close(): Promise<void> {
    clearInterval(this.#said);
    try {
      const access = this.#access;
      if (access) await this.#write(() => access.release());
    } catch {
      // A process that has ended no longer owns the folder, whatever the record says.
    } finally {
      await this.#root.close();
    }
  }

  /** Doesn't try to write when the disk is nearly full: reads still work, and the data stays intact. */
  #write<T>(work: () => Promise<T>): Promise<T> {
    // Synchronous, so that writes stay in order.
    return this.#answer(() => {
      const left = this.#left();
      if (left < SPARE) throw new Error(`The disk has ${left} bytes left.`);
      return heard(work());
    });
  }

  /** A write rejected by the disk wasn't made; one that hangs may have been, but was never acknowledged. */
  async #answer<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await withinTime(this.#operation, work());
    } catch (cause) {
      throw new Outage('The data folder does not take it.', { cause });
    }
  }

  async *#keys(start?: [kind: string]): AsyncGenerator<Key> {
    let from: { start?: [string] | Key; exclusiveStart?: boolean } = start ? { start } : {};
    for (;;) {
      // In pages, so that no read transaction stays open while the reader takes its time.
      const page = [...this.#records.getKeys({ ...from, limit: PAGE })];
      yield* page;
      const last = page.at(-1);
      if (!last || page.length < PAGE) return;
      from = { start: last, exclusiveStart: true };
    }
  }
}

/** Bytes left for this user on the folder's disk. */
function leftIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}
