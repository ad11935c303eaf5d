/** The back-end interface (conditional record writes, plain values, full export) and how long callers wait for one. */

import type { KeyvStoreAdapter } from 'keyv';
import type { RateLimiterAbstract } from 'rate-limiter-flexible';
import { Outage } from './types.ts';

export interface StoredRow {
  readonly rev: number;
  readonly text: string;
}

export interface HeldRecord extends StoredRow {
  readonly kind: string;
  readonly id: string;
}

/** A stored plain value; `expires` in milliseconds since 1970. */
export interface HeldValue {
  readonly key: string;
  readonly text: string;
  readonly expires?: number;
}

export type StoredRecord = { readonly record: HeldRecord } | { readonly kept: HeldValue };

/** Plain values through Keyv, plus the one write Keyv doesn't offer. */
export interface Values {
  /** An adapter for one Keyv, which sets its namespace on it. */
  adapter(): KeyvStoreAdapter;
  readonly namespace?: string;
  /**
   * Runs what Keyv does on the adapter, within time limits. Throws Lost or Outage if the adapter throws its own errors.
   */
  run<T>(work: () => Promise<T>): Promise<T>;
  /** Stores the text unless there is a live value. One atomic step of the engine. */
  claim(key: string, value: string, milliseconds: number): Promise<boolean>;
}

/** A named rate limit: points per number of seconds. */
export interface CountTerms {
  readonly keyPrefix: string;
  readonly points: number;
  readonly duration: number;
}

/**
 * A back end. Every write is one atomic step and returns only once it is durable. Throws Lost if no answer came, and
 * Outage if it is certain that nothing was written. `write` identifies a write, so that `landed` can tell later whether
 * it was made.
 */
export interface Engine {
  readonly values: Values;
  read(kind: string, id: string): Promise<StoredRow | undefined>;
  /** Only if there is no such record; returns whether it was written. */
  create(kind: string, id: string, row: StoredRow, write: string): Promise<boolean>;
  /** Only if the record's revision is `after`; returns whether it was written. */
  put(kind: string, id: string, row: StoredRow, after: number, write: string): Promise<boolean>;
  /** Returns whether there was such a record. */
  remove(kind: string, id: string, write: string): Promise<boolean>;
  /** Whether this write was made, within the last hour. */
  landed(write: string): Promise<boolean>;
  ids(kind: string): AsyncIterable<string>;
  /** Throws Lost or Outage if the engine doesn't answer. */
  ping(): Promise<void>;
  /** Sentences for the operator on what puts acknowledged data at risk; empty if nothing does. */
  doubts(): Promise<readonly string[]>;
  /** All records and values, as of one moment if the engine can. */
  all(): AsyncIterable<StoredRecord>;
  /** A rate limiter shared by all processes; absent if one process alone has the engine. Rejects with any error. */
  counter?(terms: CountTerms): RateLimiterAbstract;
  empty(): Promise<boolean>;
  /** Writes entries, replacing existing ones. */
  fill(held: readonly StoredRecord[]): Promise<void>;
  close(): Promise<void>;
}

/**
 * The back end, opened by the first caller. Rejects with Lost or Outage if it can't be, and tries again the next time.
 */
export type OpenedEngine = () => Promise<Engine>;

/** A single opening shared by all callers. */
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

// Waiting for an engine: operations are retried with jittered delays while the connection is lost, but not forever.

/** Injected so that tests can supply their own. */
export interface Clock {
  /** Milliseconds since 1970 by the machine's clock. */
  now(): number;
  /** Monotonic milliseconds, unaffected by changes of the machine's date. */
  passed(): number;
  wait(milliseconds: number): Promise<void>;
  /** In [0, 1): spreads the retries of many callers. */
  random(): number;
}

/** Maximum waits in milliseconds. */
export interface Patience {
  /** For one answer of the engine. */
  readonly operation: number;
  /** For a lost connection to come back, counted from the first loss. */
  readonly lost: number;
  /** For a change that keeps losing to other writers. */
  readonly contended: number;
}

export const MACHINE_CLOCK: Clock = {
  now: () => Date.now(),
  passed: () => performance.now(),
  wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
  random: () => Math.random(),
};

export const PATIENCE: Patience = { operation: 8_000, lost: 5_000, contended: 30_000 };

/** No answer came, so the request may or may not have been carried out. */
export class Lost extends Error {
  override readonly name = 'Lost';
}

const FIRST_WAIT = 20;
const LONGEST_WAIT = 1_000;

/** Waits before a retry: doubled each time up to a second, then a random time between half of that and all of it. */
export function backoff(clock: Clock, tries: number): Promise<void> {
  const whole = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** tries);
  return clock.wait(whole * (0.5 + clock.random() / 2));
}

/** Retries until an answer comes. Throws Outage if none came for `patience.lost`; throws any other error at once. */
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
 * Retries a conditional write until its outcome is known. A retry that is refused after a loss may have been refused by
 * the very write it repeats; `landed` tells, and by then that can no longer change.
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

/** The promise's outcome, or Lost after this many milliseconds. Any later outcome is ignored. */
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
