/** Runs whose pattern place breaks a rule, moved off the pattern by as little as keeps the rules. */

import type { Run } from './run.ts';
import { faultsAt, type Laid, placesFor, type StartRules } from './start-place.ts';

const PASSES = 8;

/**
 * Start pieces with as few broken rules as moving runs one at a time can reach; unbroken runs keep their place.
 * A stagger that the asked pattern itself cannot keep is passed as 0: it is told, not mended.
 */
export function repairStarts(
  runs: readonly Run[],
  placed: readonly number[],
  plank: number,
  rules: StartRules,
): readonly number[] {
  const starts = [...placed];
  const neighbours = neighboursOf(runs);
  for (let pass = 0; pass < PASSES; pass++) {
    let moved = false;
    runs.forEach((run, i) => {
      const beside = laid(runs, starts, neighbours[i] ?? []);
      let least = faultsAt(run, starts[i] ?? 0, beside, plank, rules);
      if (least === 0) return;
      const place = placed[i] ?? 0;
      const away = (start: number): number => apart(start, place, plank);
      for (const option of [...placesFor(run, beside, plank, rules)].sort((a, b) => away(a) - away(b))) {
        const faults = faultsAt(run, option, beside, plank, rules);
        if (faults >= least) continue;
        least = faults;
        starts[i] = option;
        moved = true;
        if (faults === 0) return;
      }
    });
    if (!moved) break;
  }
  return starts;
}

/** Runs that lie against each run, before and after it. */
function neighboursOf(runs: readonly Run[]): readonly (readonly number[])[] {
  const neighbours: number[][] = runs.map((run) => [...run.touching]);
  runs.forEach((run, i) => {
    for (const other of run.touching) neighbours[other]?.push(i);
  });
  return neighbours;
}

/** The runs at `indices` with their start pieces. */
export function laid(runs: readonly Run[], starts: readonly number[], indices: readonly number[]): readonly Laid[] {
  return indices.flatMap((i) => {
    const run = runs[i];
    const start = starts[i];
    return run && start !== undefined ? [{ run, start }] : [];
  });
}

/** How far two phases of a plank-long repeat lie apart. */
function apart(a: number, b: number, plank: number): number {
  const rest = (((a - b) % plank) + plank) % plank;
  return Math.min(rest, plank - rest);
}
