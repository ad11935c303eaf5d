/** What a back end does for the store: records put under a condition, plain values, and the whole of both for a backup. */

import type { KeyvStoreAdapter } from 'keyv';
import type { RateLimiterAbstract } from 'rate-limiter-flexible';
import { Outage } from './types.ts';

/** A record as it is kept: its revision, and the text of its value. */
export interface StoredRow {
  readonly rev: number;
  readonly text: string;
}

export interface HeldRecord extends StoredRow {
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
export type StoredRecord = { readonly record: HeldRecord } | { readonly kept: HeldValue };

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
  read(kind: string, id: string): Promise<StoredRow | undefined>;
  /** Where there is no such record; whether it was put. */
  create(kind: string, id: string, row: StoredRow, write: string): Promise<boolean>;
  /** Where the record's revision is `after`; whether it was put. */
  put(kind: string, id: string, row: StoredRow, after: number, write: string): Promise<boolean>;
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
  all(): AsyncIterable<StoredRecord>;
  /** Counts for all processes together; absent where one process alone has the engine. Rejects with whatever it likes. */
  counter?(terms: CountTerms): RateLimiterAbstract;
  empty(): Promise<boolean>;
  /** Puts things in place of whatever is there. */
  fill(held: readonly StoredRecord[]): Promise<void>;
  close(): Promise<void>;
}

/** The back end, opened by the first who asks for it. Rejects with Lost or Outage when it cannot be, and tries anew the next time. */
export type OpenedEngine = () => Promise<Engine>;

/** One opening for all who ask. */
export function openedOnce(open: () => Promise<Engine>): { readonly open: OpenedEngine; close(): Promise<void> } {
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

// How long an engine is waited for: operations are tried again while the connection is lost, with jittered
// waits, and not for ever.

/** Time as the store knows it; tests hand in their own. */
export interface Clock {
  /** Milliseconds since 1970, as the machine believes. */
  now(): number;
  /** Milliseconds that only ever go forward, whatever is done to the machine's date. */
  passed(): number;
  wait(milliseconds: number): Promise<void>;
  /** From 0 to below 1: spreads the tries of many. */
  random(): number;
}

/** Milliseconds that are waited at most. */
export interface Patience {
  /** For one answer of the engine. */
  readonly operation: number;
  /** For a lost connection to come back, from the first loss on. */
  readonly lost: number;
  /** For a change that others keep getting ahead of. */
  readonly contended: number;
}

export const MACHINE_CLOCK: Clock = {
  now: () => Date.now(),
  passed: () => performance.now(),
  wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
  random: () => Math.random(),
};

export const PATIENCE: Patience = { operation: 8_000, lost: 5_000, contended: 30_000 };

/** No answer came: what was sent may have been done or not. */
export class Lost extends Error {
  override readonly name = 'Lost';
}

const FIRST_WAIT = 20;
const LONGEST_WAIT = 1_000;

/** A wait before a next try: doubled each time up to a second, and drawn between half of that and the whole. */
export function backoff(clock: Clock, tries: number): Promise<void> {
  const whole = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** tries);
  return clock.wait(whole * (0.5 + clock.random() / 2));
}

/** Tries until an answer comes. Throws Outage when none came for `patience.lost`; any other error at once. */
export async function patiently<T>(clock: Clock, patience: Patience, attempt: () => Promise<T>): Promise<T> {
  let since: number | undefined;
  for (let tries = 0; ; tries++) {
    try {
      return await attempt();
    } catch (cause) {
      if (!(cause instanceof Lost)) throw cause;
      since ??= clock.passed();
      if (clock.passed() - since >= patience.lost) throw new Outage('The store does not answer.', { cause });
      await backoff(clock, tries);
    }
  }
}

/**
 * Tries a conditional write until it is known whether it was done. A try after a loss that is refused may have been
 * refused by the very write it repeats: `landed` then tells, and by that time the answer can no longer change.
 */
export function settledWrite(
  clock: Clock,
  patience: Patience,
  attempt: () => Promise<boolean>,
  landed: () => Promise<boolean>,
): Promise<boolean> {
  let lost = false;
  return patiently(clock, patience, async () => {
    try {
      return (await attempt()) || (lost && (await landed()));
    } catch (cause) {
      lost ||= cause instanceof Lost;
      throw cause;
    }
  });
}

/** The promise's outcome, or Lost after so many milliseconds. What the promise does later is nobody's concern. */
export async function withinTime<T>(milliseconds: number, promise: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Lost(`no answer in ${milliseconds} ms`)), milliseconds);
  });
  try {
    return await Promise.race([promise, late]);
  } finally {
    clearTimeout(timer);
  }
}
