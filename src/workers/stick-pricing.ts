/** Column generation over ways to fill a stick, and exact whole-number cuts read off its duals. */

import { mostValuableByTable, type StickNumbers } from '../trim/sticks.ts';
import type { Solved, StickModel } from './stick-model.ts';

/** Σⱼ worthⱼ·sticksⱼ ≥ need holds for every mix of sticks that can give all pieces: whole numbers, so exact. */
export interface MixCut {
  readonly worth: readonly number[];
  readonly need: number;
}

/** Duals are scaled by this and cut to whole numbers: what is lost only weakens the cut, never makes it wrong. */
const SCALE = 1_000_000;
const ROUNDS = 400;
/** Ways added a round, as many times over as there are supplies. */
const PASSES = 8;
const TOLERANCE = 1e-7;

/** Adds ways until none would improve the program; the last solution, or undefined when a fill is too large to price. */
export function generateWays(model: StickModel, numbers: StickNumbers, costs: readonly number[]): Solved | undefined {
  const sizes = numbers.kinds.map(({ size }) => size);
  const most = numbers.kinds.map(({ ids }) => ids.length);
  const capacities = numbers.supplies.map(({ capacity }) => capacity);
  for (let round = 0; round < ROUNDS; round++) {
    const solved = model.solve();
    const worth = [...solved.kindDuals];
    let improved = false;
    for (let pass = 0; pass < PASSES; pass++) {
      const filled = mostValuableByTable(sizes, worth, most, capacities);
      if (!filled) return undefined;
      let added = false;
      filled.forEach(({ value, counts }, supply) => {
        if ((costs[supply] ?? 0) - value - (solved.supplyDuals[supply] ?? 0) >= -TOLERANCE) return;
        model.add({ supply, counts });
        added = true;
        // The next pass looks for ways with other pieces: together they can make a whole cut.
        counts.forEach((count, kind) => {
          if (count > 0) worth[kind] = 0;
        });
      });
      if (!added) break;
      improved = true;
    }
    if (!improved) return solved;
  }
  return undefined;
}

/** The cut of a solution's duals, priced again in whole numbers: no trust in floating point. */
export function mixCut(solved: Solved, numbers: StickNumbers): MixCut | undefined {
  const worths = solved.kindDuals.map((dual) => Math.floor(dual * SCALE));
  const filled = mostValuableByTable(
    numbers.kinds.map(({ size }) => size),
    worths,
    numbers.kinds.map(({ ids }) => ids.length),
    numbers.supplies.map(({ capacity }) => capacity),
  );
  const need = worths.reduce((sum, worth, kind) => sum + worth * (numbers.kinds[kind]?.ids.length ?? 0), 0);
  return filled && { worth: filled.map(({ value }) => value), need };
}

/** True when a mix of sticks cannot give all pieces by this cut. */
export function violates(mix: readonly number[], { worth, need }: MixCut): boolean {
  return mix.reduce((sum, sticks, supply) => sum + sticks * (worth[supply] ?? 0), 0) < need;
}
