/** The start pieces of a patterned region: the joint line placed for the fewest rows off it and the fewest planks. */

import { countPairs } from './cut-pool.ts';
import type { Plank, Rules } from './floor.ts';
import type { JointLine } from './pattern.ts';
import { cutsOf, isJointed, type Run, withinPlank } from './run.ts';
import { faultsAt, GRID } from './start-place.ts';

/** A placing of the line: start pieces by run, and how it does. */
export interface Placing {
  readonly starts: readonly number[];
  readonly short: number;
  readonly planks: number;
}

/** The start piece a joint line at `base` gives each run; a run no longer than a plank is one piece. */
function startsOn(runs: readonly Run[], line: JointLine, base: number, direction: 1 | -1, plank: number): number[] {
  return runs.map((run) =>
    isJointed(run, plank)
      ? withinPlank(base + direction * (run.row % line.rows) * line.step - run.from, plank)
      : run.length,
  );
}

/** Placings of the line worth keeping, best first: fewest too short pieces, then fewest planks, then the longest first piece. */
export function placeLine(
  runs: readonly Run[],
  line: JointLine,
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'kerf'>,
  keep: number,
): readonly Placing[] {
  const origin = runs.find((run) => isJointed(run, plank.length))?.from ?? 0;
  const placings: Placing[] = [];
  for (const direction of [-1, 1] as const) {
    for (let back = 0; back < plank.length; back += GRID) {
      const starts = startsOn(runs, line, origin + plank.length - back, direction, plank.length);
      placings.push(judge(runs, starts, plank, rules));
    }
  }
  return placings.sort((a, b) => a.short - b.short || a.planks - b.planks).slice(0, keep);
}

function judge(
  runs: readonly Run[],
  starts: readonly number[],
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'kerf'>,
): Placing {
  const ends = { stagger: 0, minEnd: rules.minEnd };
  const short = runs.filter((run, i) => faultsAt(run, starts[i] ?? 0, [], plank.length, ends) > 0).length;
  const cuts = cutsOf(runs, starts, plank.length);
  const pairs = countPairs(cuts.starts, cuts.ends, plank.length, rules.kerf);
  return { starts, short, planks: cuts.whole + cuts.starts.length + cuts.ends.length - pairs };
}
