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

/** Runs that a lower bound leaves out, for they may lie beside another: every far one that fits some near one. */
export function ripsBeside(regions: readonly Cutting[], plank: Plank, rules: Pick<Rules, 'kerf'>): ReadonlySet<number> {
  const ripped = rippedRuns(regions, plank);
  const near = ripped.filter(({ edge }) => edge === 'near');
  const far = ripped.filter((run) => run.edge === 'far' && near.some((other) => fits(other, run, plank, rules)));
  return new Set(far.map(({ index }) => index));
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
      if (height < plank.width) ripped.push({ index: first + i, length, height, edge: row === 0 ? 'near' : 'far' });
    });
    first += runs.length;
  }
  return ripped;
}
