/** What a back end does for the store: records put under a condition, plain values, and the whole of both for a backup. */

import type { KeyvStoreAdapter } from 'keyv';
import type { RateLimiterAbstract } from 'rate-limiter-flexible';

/** A record as it is kept: its revision, and the text of its value. */
export interface Row {
  readonly rev: number;
  readonly text: string;
}

export interface HeldRecord extends Row {
  readonly kind: string;
  readonly id: string;
}

/** A plain value as it is kept; `expires` in milliseconds since 1970. */
export interface HeldValue {
  readonly key: string;
  readonly text: string;
  readonly expires?: number;
}

/** One thing that a store holds, as a backup writes it. */
export type Held = { readonly record: HeldRecord } | { readonly kept: HeldValue };

/** Plain values for Keyv, and the one write that Keyv has no word for. */
export interface Values {
  /** An adapter for one Keyv, which keeps its namespace in it. */
  adapter(): KeyvStoreAdapter;
  /** What the adapter is told to put before its keys. */
  readonly namespace?: string;
  /** Does what Keyv does on the adapter, within bounds. Throws Lost or Outage where the adapter throws its own errors. */
  run<T>(work: () => Promise<T>): Promise<T>;
  /** Keeps the text only where there is none whose time is not over: one atomic step of the engine. */
  claim(key: string, value: string, milliseconds: number): Promise<boolean>;
}

/** What is counted under one name: so many points in so many seconds. */
export interface CountTerms {
  readonly keyPrefix: string;
  readonly points: number;
  readonly duration: number;
}

/**
 * A back end. Every write is one atomic step and answered only once it is durable. Throws Lost when no answer came, and
 * Outage when it is known that nothing was done. `write` names a write, so that `landed` can tell later whether it was done.
 */
export interface Engine {
  readonly values: Values;
  read(kind: string, id: string): Promise<Row | undefined>;
  /** Where there is no such record; whether it was put. */
  create(kind: string, id: string, row: Row, write: string): Promise<boolean>;
  /** Where the record's revision is `after`; whether it was put. */
  put(kind: string, id: string, row: Row, after: number, write: string): Promise<boolean>;
  /** Whether there was such a record. */
  remove(kind: string, id: string, write: string): Promise<boolean>;
  /** Whether this write was done, within the last hour. */
  landed(write: string): Promise<boolean>;
  ids(kind: string): AsyncIterable<string>;
  /** Whether it answers. Throws Lost or Outage when it does not. */
  ping(): Promise<void>;
  /** What stands in the way of keeping what was acknowledged, in sentences for whoever runs the bot; none when nothing does. */
  doubts(): Promise<readonly string[]>;
  /** All records and values, as of one moment where the engine can. */
  all(): AsyncIterable<Held>;
  /** Counts for all processes together; absent where one process alone has the engine. Rejects with whatever it likes. */
  counter?(terms: CountTerms): RateLimiterAbstract;
  empty(): Promise<boolean>;
  /** Puts things in place of whatever is there. */
  fill(held: readonly Held[]): Promise<void>;
  close(): Promise<void>;
}

/** The back end, opened by the first who asks for it. Rejects with Lost or Outage when it cannot be, and tries anew the next time. */
export type Opened = () => Promise<Engine>;

/** One opening for all who ask. */
export function openedOnce(open: () => Promise<Engine>): { readonly open: Opened; close(): Promise<void> } {
  let engine: Promise<Engine> | undefined;
  return {
    open() {
      engine ??= open().catch((cause) => {
        engine = undefined;
        throw cause;
      });
      return engine;
    },
    async close() {
      const opened = engine;
      engine = undefined;
      await (await opened?.catch(() => undefined))?.close();
    },
  };
}
