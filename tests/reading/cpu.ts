/** Processor time of this thread, so that neither other threads nor a loaded machine make anything slow. */

import { readFileSync } from 'node:fs';
import { readWithin } from '../../src/workers/time-limits.ts';

/** Milliseconds of processor time that this thread has used: by its own clock where there is one, else the process's. */
const used: () => number = (() => {
  const path = '/proc/thread-self/schedstat';
  const ofThread = (): number => Number(readFileSync(path, 'utf8').split(' ')[0]) / 1_000_000;
  try {
    if (ofThread() > 0) return ofThread;
  } catch {
    // Not Linux.
  }
  return () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  };
})();

/**
 * Milliseconds of processor time that some work takes: the least of a few runs, for the first one compiles it, garbage is
 * collected when it suits, and two threads on one core slow each other. It is run again only while it takes `enough` or more.
 */
export function cpuOf(work: () => unknown, enough = 50, runs = 8): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= enough; run++) {
    const before = used();
    work();
    least = Math.min(least, used() - before);
  }
  return least;
}

/** The same for work that may never end: infinite where it was still at it after `hold` milliseconds each time. */
export function cpuWithin(work: () => unknown, enough = 50, { hold = 200, runs = 5 } = {}): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= enough; run++) {
    const spent = readWithin(() => cpuOf(work, enough, 1), { hold, used });
    if (spent) least = Math.min(least, spent.value);
  }
  return least;
}
