/** How long an engine is waited for: operations are tried again while the connection is lost, with jittered waits, and not for ever. */

import { Outage } from './types.ts';

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
export function settled(
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
export async function within<T>(milliseconds: number, promise: Promise<T>): Promise<T> {
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
