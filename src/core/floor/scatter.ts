/** Scattered joints: row lines and start pieces searched together for the fewest planks, the same ask giving the same answer. */

import type { Bound, Plank, Rules } from './floor.ts';
import { anneal } from './scatter-anneal.ts';
import { bestChain } from './scatter-chain.ts';
import { scatterFloor } from './scatter-floor.ts';
import type { ScatterState } from './scatter-state.ts';
import type { Sliced } from './sliced.ts';
import type { Starts } from './starts.ts';

/** Regions with their row lines chosen, and the start pieces of their runs. */
export interface Scattered {
  readonly sliced: readonly Sliced[];
  readonly starts: readonly Starts[];
}

const FIRST_STEPS = 3000;

/** A first layout, within a few milliseconds a room. */
export function scatterFirst(
  sliced: readonly Sliced[],
  plank: Plank,
  rules: Rules,
  bound: Pick<Bound, 'best'>,
): Scattered {
  const floor = scatterFloor(
    sliced.map(({ runs }) => runs),
    plank,
    rules,
  );
  const chain = bestChain(floor);
  const found = anneal(chain, { seed: 1, steps: FIRST_STEPS, target: bound.best, warm: 60, cool: 4 });
  return { sliced, starts: startsBy(sliced, found) };
}

/** The start pieces of a layout by region. */
export function startsBy(sliced: readonly Sliced[], { starts }: Pick<ScatterState, 'starts'>): readonly Starts[] {
  let first = 0;
  return sliced.map(({ runs }) => {
    const own = starts.slice(first, first + runs.length);
    first += runs.length;
    return { starts: own, patterned: undefined };
  });
}
