/** Ripped rows that share planks: one keeps the plank's near edge, the other its far edge, a kerf between them. */

import type { Plank, Rules } from './floor.ts';
import type { Sliced } from './sliced.ts';

/** Runs of two ripped rows, by their indices among all runs of all regions: each piece of `far` may lie beside one of `near`. */
export interface RipPair {
  readonly near: number;
  readonly far: number;
}

interface RippedRun {
  readonly index: number;
  readonly length: number;
  readonly height: number;
  readonly edge: 'near' | 'far';
  /** True in a region of one row, where no other row locks to it. */
  readonly alone: boolean;
}

type Cutting = Pick<Sliced, 'rows' | 'runs'>;

/** Pairs of runs that fit beside one another in a plank's width, longest first, each run in one pair at most. */
export function ripPairs(regions: readonly Cutting[], plank: Plank, rules: Pick<Rules, 'kerf'>): readonly RipPair[] {
  const ripped = [...rippedRuns(regions, plank)].sort((a, b) => b.length - a.length);
  const left = ripped.filter(({ edge }) => edge === 'far');
  const pairs: RipPair[] = [];
  for (const near of ripped) {
    if (near.edge !== 'near') continue;
    const at = left.findIndex((far) => fits(near, far, plank, rules));
    const [far] = at < 0 ? [] : left.splice(at, 1);
    if (far) pairs.push({ near: near.index, far: far.index });
  }
  return pairs;
}

/** What a lower bound takes of a run's planks: the whole width, the strip along one edge, or nothing where it may lie beside any. */
export type Lane = 'full' | 'near' | 'far' | 'none';

/** Lanes of all runs: near and far ones only where some run across fits beside them, none where neither edge must be kept. */
export function lanesOf(regions: readonly Cutting[], plank: Plank, rules: Pick<Rules, 'kerf'>): readonly Lane[] {
  const lanes = regions.flatMap(({ runs }) => runs.map((): Lane => 'full'));
  const ripped = rippedRuns(regions, plank);
  for (const run of ripped) {
    const beside = ripped.filter((other) => other !== run && fits(other, run, plank, rules));
    if (run.alone) lanes[run.index] = beside.length > 0 ? 'none' : 'full';
    else if (beside.some((other) => !other.alone && other.edge !== run.edge)) lanes[run.index] = run.edge;
  }
  return lanes;
}

function fits(one: RippedRun, other: RippedRun, plank: Plank, { kerf }: Pick<Rules, 'kerf'>): boolean {
  return one.height + other.height + kerf <= plank.width;
}

function rippedRuns(regions: readonly Cutting[], plank: Plank): readonly RippedRun[] {
  const ripped: RippedRun[] = [];
  let first = 0;
  for (const { rows, runs } of regions) {
    runs.forEach(({ row, length }, i) => {
      const height = rows[row]?.height ?? plank.width;
      if (height < plank.width)
        ripped.push({ index: first + i, length, height, edge: row === 0 ? 'near' : 'far', alone: rows.length === 1 });
    });
    first += runs.length;
  }
  return ripped;
}
