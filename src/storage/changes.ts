/** Changes to records: those that come while another is under way are made one after the other and put together. */

import { randomBytes } from 'node:crypto';
import type { Opened, Row } from './engine.ts';
import { backoff, type Clock, type Patience, patiently, settled } from './patience.ts';
import { type Changed, Outage } from './types.ts';

/** How a kind of record becomes text and is read again. */
export interface Texts<T> {
  read(id: string, row: Row): Promise<T>;
  write(value: T): string;
}

interface Asked<T> {
  /** Makes the change; gives the value it puts, if any, and how to tell its outcome once that is durable. */
  make(value: T): { readonly put?: T | undefined; tell(): void };
  tell(found: { readonly cause: unknown } | undefined): void;
}

/** A name for a write, that no other write has. */
export function nameWrite(): string {
  return randomBytes(12).toString('base64url');
}

/** The changes to records of one kind. */
export class Changes<T> {
  readonly #waiting = new Map<string, Asked<T>[]>();
  readonly #open: Opened;
  readonly #kind: string;
  readonly #texts: Texts<T>;
  readonly #clock: Clock;
  readonly #patience: Patience;

  constructor(open: Opened, kind: string, texts: Texts<T>, clock: Clock, patience: Patience) {
    this.#open = open;
    this.#kind = kind;
    this.#texts = texts;
    this.#clock = clock;
    this.#patience = patience;
  }

  /** As Shelf.change. Throws Outage, RecordDamaged, RecordTooNew, or what the change throws. */
  change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined> {
    return new Promise((resolve, reject) => {
      const asked: Asked<T> = {
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
      if (waiting) waiting.push(asked);
      else {
        this.#waiting.set(id, [asked]);
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
        for (const asked of together) asked.tell({ cause });
      }
    }
    this.#waiting.delete(id);
  }

  async #make(id: string, together: readonly Asked<T>[]): Promise<void> {
    const began = this.#clock.passed();
    for (let tries = 0; ; tries++) {
      const row = await patiently(this.#clock, this.#patience, async () => (await this.#open()).read(this.#kind, id));
      if (!row) {
        for (const asked of together) asked.tell(undefined);
        return;
      }
      let value: T = await this.#texts.read(id, row);
      let changed = false;
      const made = together.map((asked) => {
        const one = asked.make(value);
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
    return settled(
      this.#clock,
      this.#patience,
      async () => (await this.#open()).put(this.#kind, id, row, after, write),
      async () => (await this.#open()).landed(write),
    );
  }
}
