/** The embedded back end: lmdb in one data folder, every write in a transaction that is flushed before it is answered. */

import { existsSync, mkdirSync, statfsSync } from 'node:fs';
import { join } from 'node:path';
import { type Database, open, type RootDatabase } from 'lmdb';
import { FolderTaken, Ownership, SEEN_EVERY } from './embedded-owner.ts';
import { EmbeddedValues } from './embedded-values.ts';
import { heard } from './embedded-write.ts';
import type { Engine, Held, Row, Values } from './engine.ts';
import { type Clock, within } from './patience.ts';
import { Outage } from './types.ts';

const PAGE = 256;
/** How often, and after how many milliseconds, a folder that is in use is tried again before giving up. */
const TRIES = 10;
const BETWEEN_TRIES = 100;

type Key = [kind: string, id: string];

/** What the embedded back end is told. */
export interface EmbeddedTerms {
  readonly folder: string;
  readonly clock: Clock;
  /** Milliseconds that the disk may take for one write. */
  readonly operation: number;
  /** Bytes that the folder's disk has left; what the system says without it. */
  readonly left?: () => number;
}

/**
 * Bytes below which nothing is written. lmdb damages its process's memory where a disk takes only part of a commit, which are
 * far smaller than this.
 */
const SPARE = 8 * 1024 * 1024;

/** Opens the folder and takes it for this process. Throws Outage when it cannot be opened, FolderTaken when another process has it. */
export async function openEmbedded(terms: EmbeddedTerms): Promise<Engine> {
  const root = openRoot(terms.folder, false);
  for (let tries = 1; ; tries++) {
    try {
      return new Embedded(root, new Ownership(root, terms.folder, terms.clock), terms);
    } catch (cause) {
      if (cause instanceof FolderTaken && tries < TRIES) {
        await terms.clock.wait(BETWEEN_TRIES);
        continue;
      }
      await root.close();
      throw cause;
    }
  }
}

/** Opens the folder to read it only, whoever has it: lmdb keeps readers and the writer apart. Rejects with Outage when there is none. */
export async function readEmbedded(terms: EmbeddedTerms): Promise<Engine> {
  return new Embedded(openRoot(terms.folder, true), undefined, terms);
}

function openRoot(folder: string, readOnly: boolean): RootDatabase {
  const path = join(folder, 'store');
  try {
    if (!readOnly) mkdirSync(path, { recursive: true, mode: 0o700 });
    // It would make the folder itself, with nothing in it to read.
    else if (!existsSync(path)) throw new Error(`There is no ${path}.`);
    // Without overlapping, a commit is flushed before its promise resolves.
    return open({ path, readOnly, overlappingSync: false, encoding: 'string', maxDbs: 8 });
  } catch (cause) {
    throw new Outage(`The data folder ${folder} cannot be opened.`, { cause });
  }
}

class Embedded implements Engine {
  readonly values: Values;
  readonly #adapter: EmbeddedValues;
  readonly #root: RootDatabase;
  readonly #owned: Ownership | undefined;
  readonly #said: NodeJS.Timeout | undefined;
  readonly #operation: number;
  readonly #left: () => number;
  readonly #records: Database<string, Key>;

  constructor(root: RootDatabase, owned: Ownership | undefined, { folder, clock, operation, left }: EmbeddedTerms) {
    this.#root = root;
    this.#left = left ?? (() => leftIn(folder));
    this.#owned = owned;
    this.#operation = operation;
    this.#records = root.openDB({ name: 'records', encoding: 'string', useVersions: true });
    const adapter = new EmbeddedValues(root, clock, (work) => this.#write(work));
    this.#adapter = adapter;
    this.values = {
      adapter: () => adapter,
      run: (work) => work(),
      claim: (key, value, milliseconds) => adapter.claim(key, JSON.stringify({ value }), milliseconds),
    };
    if (!owned) return;
    // What a full disk does not take now is said the next time.
    this.#said = setInterval(() => void this.#write(() => owned.say()).catch(() => {}), SEEN_EVERY);
    this.#said.unref();
  }

  read(kind: string, id: string): Promise<Row | undefined> {
    return this.#answer(async () => {
      const found = this.#records.getEntry([kind, id]);
      return found && { rev: found.version ?? 0, text: found.value };
    });
  }

  create(kind: string, id: string, { rev, text }: Row): Promise<boolean> {
    const key: Key = [kind, id];
    return this.#write(() => this.#records.ifNoExists(key, () => heard(this.#records.put(key, text, rev))));
  }

  put(kind: string, id: string, { rev, text }: Row, after: number): Promise<boolean> {
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

  /** There is no connection to be lost, so nobody needs to ask. */
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

  /** As of one moment: a read transaction that stays open to the end. */
  async *all(): AsyncGenerator<Held> {
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

  async fill(held: readonly Held[]): Promise<void> {
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
      const owned = this.#owned;
      if (owned) await this.#write(() => owned.release());
    } catch {
      // A process that has ended has its folder no more, whatever is written there.
    } finally {
      await this.#root.close();
    }
  }

  /** Where the disk is all but full nothing is tried: reading goes on, and what is there stays whole. */
  #write<T>(work: () => Promise<T>): Promise<T> {
    // At once, so that writes stay in their order.
    return this.#answer(() => {
      const left = this.#left();
      if (left < SPARE) throw new Error(`The disk has ${left} bytes left.`);
      return heard(work());
    });
  }

  /** A write that a disk does not take is not done; one that hangs may be, and then nobody was told that it is. */
  async #answer<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await within(this.#operation, work());
    } catch (cause) {
      throw new Outage('The data folder does not take it.', { cause });
    }
  }

  async *#keys(start?: [kind: string]): AsyncGenerator<Key> {
    let from: { start?: [string] | Key; exclusiveStart?: boolean } = start ? { start } : {};
    for (;;) {
      // Pages, so that no read transaction stays open while the reader takes its time.
      const page = [...this.#records.getKeys({ ...from, limit: PAGE })];
      yield* page;
      const last = page.at(-1);
      if (!last || page.length < PAGE) return;
      from = { start: last, exclusiveStart: true };
    }
  }
}

/** Bytes that the disk of a folder has left for this user. */
function leftIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}
