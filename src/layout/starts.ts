/** Start pieces for every region of a floor, chosen so that offcuts serve from room to room. */

import { countPairs } from './cut-pool.ts';
import type { Plank, Rules } from './floor.ts';
import { jointLine, lineStagger } from './pattern.ts';
import { type Cuts, cutsOf, type Run } from './run.ts';
import { offcutStarts } from './start-offcut.ts';
import { faultsAt } from './start-place.ts';
import { laid, repairStarts } from './start-repair.ts';
import { placeLine } from './start-search.ts';

/** Placings of the joint line that are repaired and compared, a region. */
const KEPT = 6;

/** Start pieces by run, and the ones the pattern asks for (undefined when it asks for none). */
export interface Starts {
  readonly starts: readonly number[];
  readonly patterned: readonly number[] | undefined;
}

/** Start pieces for the runs of each region. */
export function chooseStarts(regions: readonly (readonly Run[])[], plank: Plank, rules: Rules): readonly Starts[] {
  const line = jointLine(rules.pattern, plank);
  if (!line) {
    const kept: number[] = [];
    return regions.map((runs) => ({ starts: offcutStarts(runs, plank, rules, kept), patterned: undefined }));
  }
  const mend = { stagger: lineStagger(line, plank.length) < rules.stagger ? 0 : rules.stagger, minEnd: rules.minEnd };
  let cuts: Cuts = { starts: [], ends: [], whole: 0 };
  return regions.map((runs) => {
    let best: (Starts & { all: Cuts; score: readonly [faults: number, moved: number, planks: number] }) | undefined;
    for (const { starts: patterned } of placeLine(runs, line, plank, rules, KEPT)) {
      const starts = repairStarts(runs, patterned, plank.length, mend);
      const more = cutsOf(runs, starts, plank.length);
      const all = {
        starts: [...cuts.starts, ...more.starts],
        ends: [...cuts.ends, ...more.ends],
        whole: cuts.whole + more.whole,
      };
      const score = [
        faultsOf(runs, starts, plank.length, mend),
        starts.filter((start, i) => start !== patterned[i]).length,
        all.whole + all.starts.length + all.ends.length - countPairs(all.starts, all.ends, plank.length, rules.kerf),
      ] as const;
      if (!best || isLess(score, best.score)) best = { starts, patterned, all, score };
    }
    if (!best) return { starts: [], patterned: [] };
    cuts = best.all;
    return { starts: best.starts, patterned: best.patterned };
  });
}

function faultsOf(
  runs: readonly Run[],
  starts: readonly number[],
  plank: number,
  rules: { stagger: number; minEnd: number },
): number {
  return runs.reduce(
    (sum, run, i) => sum + faultsAt(run, starts[i] ?? 0, laid(runs, starts, run.touching), plank, rules),
    0,
  );
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
}
