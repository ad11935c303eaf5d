/** The usual way, done right: each row starts with the best kept offcut that keeps the rules, else with a new plank. */

import type { Plank, Rules } from './floor.ts';
import { endOf, isJointed, type Run } from './run.ts';
import { faultsAt, placesFor } from './start-place.ts';
import { laid } from './start-repair.ts';

type OffcutRules = Pick<Rules, 'stagger' | 'minEnd' | 'kerf'>;

/** Start pieces by run, laid in order; `kept` are the offcuts (right parts of planks) at hand, in ascending order, changed as they are used. */
export function offcutStarts(
  runs: readonly Run[],
  plank: Plank,
  rules: OffcutRules,
  kept: number[],
): readonly number[] {
  const starts: number[] = [];
  for (const run of runs) {
    if (!isJointed(run, plank.length)) {
      starts.push(run.length);
      continue;
    }
    const start = choose(run, runs, starts, plank, rules, kept);
    starts.push(start);
    const used = start < plank.length ? firstNotBelow(kept, start) : kept.length;
    if (used < kept.length) kept.splice(used, 1);
    const left = plank.length - endOf(run.length, start, plank.length) - rules.kerf;
    if (left > 0 && left >= rules.minEnd) kept.splice(firstNotBelow(kept, left), 0, left);
  }
  return starts;
}

/** Fewest broken rules, then an offcut before a new plank, then the least trimmed off, then the longest. */
function choose(
  run: Run,
  runs: readonly Run[],
  starts: readonly number[],
  plank: Plank,
  rules: OffcutRules,
  kept: readonly number[],
): number {
  const beside = laid(runs, starts, run.touching);
  let best = plank.length as number;
  let bestScore: readonly number[] | undefined;
  const offer = (start: number): void => {
    const offcut = start < plank.length ? kept[firstNotBelow(kept, start)] : undefined;
    const score = [
      faultsAt(run, start, beside, plank.length, rules),
      offcut === undefined ? 1 : 0,
      (offcut ?? plank.length) - start,
      -start,
    ];
    if (bestScore && !isLess(score, bestScore)) return;
    best = start;
    bestScore = score;
  };
  for (const start of placesFor(run, beside, plank.length, rules)) offer(start);
  for (const start of new Set(kept)) if (start < run.length) offer(start);
  return best;
}

/** Index of the first length not below `start` in ascending lengths. */
function firstNotBelow(lengths: readonly number[], start: number): number {
  let low = 0;
  let high = lengths.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lengths[middle] ?? 0) < start) low = middle + 1;
    else high = middle;
  }
  return low;
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return false;
}
