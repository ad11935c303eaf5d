/** Processor time of this process, so that a loaded machine makes nothing slow. */

import { readWithin } from '../../src/workers/time-limits.ts';

/** Milliseconds of processor time that some work takes: the least of a few runs, for the first one compiles it and garbage is collected when it suits. */
export function cpuOf(work: () => unknown, enough = 50, runs = 4): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= enough; run++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

/** The same for work that may never end: infinite where it was still at it after `hold` milliseconds each time. */
export function cpuWithin(work: () => unknown, enough = 50, { hold = 200, runs = 3 } = {}): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= enough; run++) {
    const spent = readWithin(() => cpuOf(work, enough, 1), { hold, used });
    if (spent) least = Math.min(least, spent.value);
  }
  return least;
}

function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
