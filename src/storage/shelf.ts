/** Records of one kind in the store. An unreadable one is copied aside and reported, and doesn't affect the others. */

import { randomBytes, randomInt } from 'node:crypto';
import {
  backoff,
  type Clock,
  Lost,
  type OpenedEngine,
  type Patience,
  patiently,
  type StoredRow,
  settledWrite,
} from './engine.ts';
import { type Changed, type Codec, Outage, RecordDamaged, type RecordStore, RecordTooNew } from './types.ts';

// Changes to one record that arrive while another is being written are applied in order and written together.

interface Texts<T> {
  read(id: string, row: StoredRow): Promise<T>;
  write(value: T): string;
}

interface AnsweredRequest<T> {
  /**
   * Applies the change; returns the value to write, if any, and a function that reports the outcome once that is
   * durable.
   */
  make(value: T): { readonly put?: T | undefined; tell(): void };
  tell(found: { readonly cause: unknown } | undefined): void;
}

export function nameWrite(): string {
  return randomBytes(12).toString('base64url');
}

class Changes<T> {
  readonly #waiting = new Map<string, AnsweredRequest<T>[]>();
  readonly #open: OpenedEngine;
  readonly #kind: string;
  readonly #texts: Texts<T>;
  readonly #clock: Clock;
  readonly #patience: Patience;

  constructor(open: OpenedEngine, kind: string, texts: Texts<T>, clock: Clock, patience: Patience) {
    this.#open = open;
    this.#kind = kind;
    this.#texts = texts;
    this.#clock = clock;
    this.#patience = patience;
  }

  /** See Shelf.change. Throws Outage, RecordDamaged, RecordTooNew, or what the change throws. */
  change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined> {
    return new Promise((resolve, reject) => {
      const requested: AnsweredRequest<T> = {
        make(value) {
          try {
            const { put, result } = change(value);
            return { put, tell: () => resolve(result) };
          } catch (cause) {
            return { tell: () => reject(cause) };
          }
        },
        tell: (found) => (found ? reject(found.cause) : resolve(undefined)),
      };
      const waiting = this.#waiting.get(id);
      if (waiting) waiting.push(requested);
      else {
        this.#waiting.set(id, [requested]);
        void this.#work(id);
      }
    });
  }

  async #work(id: string): Promise<void> {
    for (;;) {
      const together = this.#waiting.get(id) ?? [];
      if (together.length === 0) break;
      this.#waiting.set(id, []);
      try {
        await this.#make(id, together);
      } catch (cause) {
        for (const requested of together) requested.tell({ cause });
      }
    }
    this.#waiting.delete(id);
  }

  async #make(id: string, together: readonly AnsweredRequest<T>[]): Promise<void> {
    const began = this.#clock.passed();
    for (let tries = 0; ; tries++) {
      const row = await patiently(this.#clock, this.#patience, async () => (await this.#open()).read(this.#kind, id));
      if (!row) {
        for (const requested of together) requested.tell(undefined);
        return;
      }
      let value: T = await this.#texts.read(id, row);
      let changed = false;
      const made = together.map((requested) => {
        const one = requested.make(value);
        if (one.put !== undefined) {
          value = one.put;
          changed = true;
        }
        return one;
      });
      if (!changed || (await this.#put(id, row.rev, this.#texts.write(value)))) {
        for (const one of made) one.tell();
        return;
      }
      if (this.#clock.passed() - began >= this.#patience.contended) throw new Outage(`Others kept changing ${id}.`);
      await backoff(this.#clock, Math.min(tries, 3));
    }
  }

  #put(id: string, after: number, text: string): Promise<boolean> {
    const write = nameWrite();
    const row = { rev: after + 1, text };
    return settledWrite(
      this.#clock,
      this.#patience,
      async () => (await this.#open()).put(this.#kind, id, row, after, write),
      async () => (await this.#open()).landed(write),
    );
  }
}

export interface ShelfTerms {
  readonly clock: Clock;
  readonly patience: Patience;
  fault(cause: unknown): void;
}

const ASIDE = 'aside';

/** Names every engine accepts: 1 to 200 printable ASCII characters without spaces. */
const NAME = /^[!-~]{1,200}$/;
const HIGHEST_FIRST_REV = 2 ** 40;

/** Throws a RangeError for a kind that isn't all lowercase letters, or for a new id that not every engine accepts. */
export function shelfOn<T>(open: OpenedEngine, kind: string, codec: Codec<T>, terms: ShelfTerms): RecordStore<T> {
  if (!/^[a-z]{1,20}$/.test(kind)) throw new RangeError(`“${kind}” is no name for a kind of record`);
  const { clock, patience } = terms;
  const texts = { read: (id: string, row: StoredRow) => readRow(id, row), write: (value: T) => written(codec, value) };
  const changes = new Changes<T>(open, kind, texts, clock, patience);

  async function readRow(id: string, row: StoredRow): Promise<T> {
    try {
      return codec.read(JSON.parse(row.text));
    } catch (cause) {
      if (cause instanceof RecordTooNew) throw cause;
      const damage = new RecordDamaged(`The ${kind} ${id} cannot be read.`, { cause });
      if (await copyAside(id, row, cause)) terms.fault(damage);
      throw damage;
    }
  }

  /** Whether this revision was copied for the first time. An unavailable engine must not hide the damage. */
  async function copyAside(id: string, row: StoredRow, cause: unknown): Promise<boolean> {
    const copy = {
      kind,
      id,
      rev: row.rev,
      text: row.text,
      why: String(cause),
      at: new Date(clock.now()).toISOString(),
    };
    try {
      return await created(ASIDE, `${kind}:${row.rev}:${id}`, JSON.stringify(copy));
    } catch (failed) {
      if (failed instanceof Outage) return true;
      throw failed;
    }
  }

  function created(under: string, id: string, text: string): Promise<boolean> {
    const write = nameWrite();
    // A record recreated under an old id starts at a different revision, so that a late write to the old one doesn't
    // match.
    const row = { rev: randomInt(1, HIGHEST_FIRST_REV), text };
    const create = async () => (await open()).create(under, id, row, write);
    return settledWrite(clock, patience, create, async () => (await open()).landed(write));
  }

  return {
    async load(id) {
      if (!NAME.test(id)) return undefined;
      const row = await patiently(clock, patience, async () => (await open()).read(kind, id));
      return row && readRow(id, row);
    },
    async create(id, value) {
      if (!NAME.test(id)) throw new RangeError(`“${id}” is no id for a record`);
      return created(kind, id, written(codec, value));
    },
    change: async (id, change) => (NAME.test(id) ? changes.change(id, change) : undefined),
    async remove(id) {
      if (!NAME.test(id)) return false;
      const write = nameWrite();
      const remove = async () => (await open()).remove(kind, id, write);
      return settledWrite(clock, patience, remove, async () => (await open()).landed(write));
    },
    ids: () => idsOf(open, kind),
  };
}

function written<T>(codec: Codec<T>, value: T): string {
  return JSON.stringify(codec.write(value));
}

async function* idsOf(open: OpenedEngine, kind: string): AsyncGenerator<string> {
  try {
    yield* (await open()).ids(kind);
  } catch (cause) {
    // Ids already listed can't be taken back, so an interrupted listing isn't restarted.
    throw cause instanceof Lost ? new Outage('The store does not answer.', { cause }) : cause;
  }
}
