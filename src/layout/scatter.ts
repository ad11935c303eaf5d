/** Scattered joints: row lines and start pieces searched together for the fewest planks, the same ask giving the same answer. */

import type { Bound, Plank, Rules } from './floor.ts';
import { ripPairs } from './rip-share.ts';
import { rowChoices } from './row-choice.ts';
import { anneal } from './scatter-anneal.ts';
import { bestChain } from './scatter-chain.ts';
import { type ScatterFloor, scatterFloor } from './scatter-floor.ts';
import type { ScatterState } from './scatter-state.ts';
import type { Sliced } from './sliced.ts';
import type { Starts } from './starts.ts';

/** Regions with their row lines chosen, and the start pieces of their runs. */
export interface Scattered {
  readonly sliced: readonly Sliced[];
  readonly starts: readonly Starts[];
}

const FIRST_STEPS = 3000;
/** Other ways to cut the rows are looked at in floors of up to so many runs. */
const SMALL = 80;

/** A first layout, within a few milliseconds a room. */
export function scatterFirst(
  sliced: readonly Sliced[],
  plank: Plank,
  rules: Rules,
  bound: Pick<Bound, 'best'>,
): Scattered {
  const runs = sliced.reduce((sum, region) => sum + region.runs.length, 0);
  const { choices } = runs <= SMALL ? rowChoices(sliced, plank, rules) : { choices: [sliced] };
  let best: { choice: readonly Sliced[]; state: ScatterState } | undefined;
  for (const choice of choices) {
    const floor = scatterFloor(
      choice.map((region) => region.runs),
      plank,
      rules,
      ripPairs(choice, plank, rules),
    );
    const state = bestChain(floor);
    if (!best || state.cost < best.state.cost) best = { choice, state };
  }
  if (!best) return { sliced, starts: [] };
  const { choice, state } = best;
  return { sliced: choice, starts: startsBy(choice, shortAnneal(state, bound.best)) };
}

/** A layout of one way to cut the rows. */
export function quickScatter(floor: ScatterFloor, target: number): ScatterState {
  return shortAnneal(bestChain(floor), target);
}

function shortAnneal(state: ScatterState, target: number): ScatterState {
  return anneal(state, { seed: 1, steps: FIRST_STEPS, target, warm: 60, cool: 4 });
}

/** The start pieces of a layout by region. */
export function startsBy(
  sliced: readonly Pick<Sliced, 'runs'>[],
  { starts }: Pick<ScatterState, 'starts'>,
): readonly Starts[] {
  let first = 0;
  return sliced.map(({ runs }) => {
    const own = starts.slice(first, first + runs.length);
    first += runs.length;
    return { starts: own, patterned: undefined };
  });
}
