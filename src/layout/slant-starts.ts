/** Start pieces for rows with slanted ends: the joint line placed, or offcuts used, so that the slanted cuts nest. */

import { countPairs } from './cut-pool.ts';
import type { Plank, Rules } from './floor.ts';
import { jointLine, lineStagger } from './pattern.ts';
import { endOf, isJointed, type Run, withinPlank } from './run.ts';
import { faultsAt, GRID, placesFor } from './start-place.ts';
import { laid, repairStarts } from './start-repair.ts';

/** A run and how far from its outer ends the walls cut either edge of its first and last board. */
export interface SlantRun extends Run {
  readonly leftNear: number;
  readonly leftFar: number;
  readonly rightNear: number;
  readonly rightFar: number;
}

/** Start pieces by run, and those the pattern asks for where it asks for any. */
export interface SlantStarts {
  readonly starts: readonly number[];
  readonly patterned: readonly number[] | undefined;
}

/** Ways to start one region that are worth cutting out to count: the best few placings of the joint line, or the one chain of offcuts. */
export function slantStarts(
  runs: readonly SlantRun[],
  plank: Plank,
  rules: Rules,
  keep: number,
): readonly SlantStarts[] {
  const line = jointLine(rules.pattern, plank);
  if (!line) return [{ starts: offcutChain(runs, plank, rules), patterned: undefined }];
  const mend = { stagger: lineStagger(line, plank.length) < rules.stagger ? 0 : rules.stagger, minEnd: rules.minEnd };
  const origin = runs.find((run) => isJointed(run, plank.length))?.from ?? 0;
  const placings: { starts: number[]; short: number; planks: number }[] = [];
  for (const way of [-1, 1]) {
    for (let back = 0; back < plank.length; back += GRID) {
      const starts = runs.map((run) =>
        isJointed(run, plank.length)
          ? withinPlank(origin + plank.length - back + way * (run.row % line.rows) * line.step - run.from, plank.length)
          : run.length,
      );
      placings.push({ starts, ...judged(runs, starts, plank, rules) });
    }
  }
  placings.sort((a, b) => a.short - b.short || a.planks - b.planks);
  return placings.slice(0, keep).map(({ starts: patterned }) => ({
    starts: repairStarts(runs, patterned, plank.length, mend),
    patterned,
  }));
}

/** Too short ends, and planks by lengths along the middle of the boards: exact for parallel cuts, a little hopeful for others. */
function judged(runs: readonly SlantRun[], starts: readonly number[], plank: Plank, rules: Rules) {
  const cuts = { starts: [] as number[], ends: [] as number[], whole: 0 };
  let short = 0;
  runs.forEach((run, i) => {
    if (!isJointed(run, plank.length)) return;
    const start = starts[i] ?? 0;
    const end = endOf(run.length, start, plank.length);
    if (Math.min(start, end) < rules.minEnd) short++;
    cuts.whole += Math.round((run.length - start - end) / plank.length);
    cuts.starts.push(start - (run.leftNear + run.leftFar) / 2);
    cuts.ends.push(end - (run.rightNear + run.rightFar) / 2);
  });
  const pairs = countPairs(cuts.starts, cuts.ends, plank.length, rules.kerf);
  return { short, planks: cuts.whole + cuts.starts.length + cuts.ends.length - pairs };
}

interface Offcut {
  readonly near: number;
  readonly far: number;
}

/** Each run begun with the offcut that nests best and keeps the rules, else with a new plank. */
function offcutChain(runs: readonly SlantRun[], plank: Plank, rules: Rules): readonly number[] {
  const starts: number[] = [];
  let kept: Offcut[] = [];
  for (const run of runs) {
    if (!isJointed(run, plank.length)) {
      starts.push(run.length);
      continue;
    }
    const beside = laid(runs, starts, run.touching);
    // The longest start piece that what is left after an earlier end piece still gives, cut at this run's slant.
    const longest = kept.map((offcut) => longestFrom(offcut, run, plank, rules.kerf));
    const options = new Set([
      ...placesFor(run, beside, plank.length, rules),
      ...longest.filter((most) => most > 0 && most < plank.length),
    ]);
    let best: { start: number; score: readonly number[]; from: number } | undefined;
    for (const start of options) {
      let from = -1;
      longest.forEach((most, k) => {
        if (start < plank.length && most >= start && (from < 0 || most < (longest[from] ?? 0))) from = k;
      });
      const faults = faultsAt(run, start, beside, plank.length, rules);
      const score = [faults, from < 0 ? 1 : 0, (longest[from] ?? plank.length) - start, -start];
      if (!best || isLess(score, best.score)) best = { start, score, from };
    }
    const start = best?.start ?? plank.length;
    starts.push(start);
    kept = kept.filter((_, k) => k !== best?.from);
    const end = endOf(run.length, start, plank.length);
    kept.push({ near: end - run.rightNear, far: end - run.rightFar });
  }
  return starts;
}

function longestFrom({ near, far }: Offcut, run: SlantRun, plank: Plank, kerf: number): number {
  const rise = Math.max(Math.abs(near - far), Math.abs(run.leftNear - run.leftFar)) / plank.width;
  const clear = Math.ceil(kerf * Math.hypot(1, rise));
  return plank.length - clear - Math.max(near - run.leftNear, far - run.leftFar);
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
}
