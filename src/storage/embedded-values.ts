/** Plain values in the embedded store: a storage adapter for Keyv on lmdb, with times to live, namespaces and an iterator. */

import { EventEmitter } from 'node:events';
import type { KeyvEntry, KeyvStoreAdapter } from 'keyv';
import type { Database, RootDatabase, Transaction } from 'lmdb';
import { heard } from './embedded-write.ts';
import type { HeldValue } from './engine.ts';
import type { Clock } from './patience.ts';

/** The version of a value that lives for good; that of any other is the millisecond at which its time is over. */
const FOR_GOOD = 1;
const PAGE = 256;
/** Values whose time is over that each value with a time removes: more than come in, so that none pile up. */
const SWEPT = 4;

type Answer = <T>(work: () => Promise<T>) => Promise<T>;

/** The adapter. Keyv puts the namespace before its keys; here it only bounds `clear` and `iterator`. */
export class EmbeddedValues extends EventEmitter implements KeyvStoreAdapter {
  namespace?: string | undefined;
  readonly opts = { dialect: 'lmdb', url: '' };
  readonly #values: Database<string, string>;
  /** What is over when: [millisecond, key]. */
  readonly #due: Database<string, [number, string]>;
  readonly #clock: Pick<Clock, 'now'>;
  readonly #answer: Answer;

  /** `answer` bounds a write, and says in the store's own way that it failed. */
  constructor(root: RootDatabase, clock: Pick<Clock, 'now'>, answer: Answer) {
    super();
    this.#answer = answer;
    this.#values = root.openDB({ name: 'values', encoding: 'string', useVersions: true });
    this.#due = root.openDB({ name: 'due', encoding: 'string' });
    this.#clock = clock;
  }

  get<Value>(key: string): Promise<Value | undefined> {
    // Keyv hands in text and asks for what it handed in.
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

  /** Every live value as a backup holds it, as of the transaction. */
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

  /** Keeps the value where no live one is: exact, as lmdb checks and puts in one step. */
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

  /** Keyv closes through this; the folder is closed by the engine it belongs to. */
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
