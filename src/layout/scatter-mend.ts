/** Start pieces by length that reach a bound, put in an order that keeps the rules. */

import { anneal } from './scatter-anneal.ts';
import { MENDING, ScatterState, WEIGHTS } from './scatter-state.ts';

/** Start pieces for the runs of a block, any way round. */
export interface Dealt {
  readonly runs: readonly number[];
  readonly starts: readonly number[];
}

/** How often, and how long, an order is looked for; each time with a seed of its own, from `first` on. */
export interface Effort {
  readonly first: number;
  readonly seeds: number;
  readonly steps: number;
}

/** Layouts that begin with the dealt start pieces, the other runs as in `base`, and lose their broken rules; each with another seed. */
export function* mended(
  base: ScatterState,
  dealt: readonly Dealt[],
  target: number,
  { first, seeds, steps }: Effort,
): Generator<ScatterState> {
  const { floor } = base;
  const starts = [...base.starts];
  for (const { runs, starts: given } of dealt) {
    const third = Math.ceil(given.length / 3);
    // Ascending start pieces dealt in thirds: neighbours lie about a third of all apart.
    const order = Array.from({ length: third }, (_, i) =>
      [i, i + third, i + 2 * third].filter((k) => k < given.length),
    ).flat();
    const sorted = [...given].sort((a, b) => a - b);
    runs.forEach((run, i) => {
      starts[run] = sorted[order[i] ?? 0] ?? starts[run] ?? 0;
    });
  }
  const from = new ScatterState(floor, starts, base.asStart, MENDING);
  for (let seed = first; seed < first + seeds; seed++) {
    const { starts: found, asStart } = anneal(from, { seed, steps, target, warm: 60, cool: 4 });
    yield new ScatterState(floor, found, asStart, WEIGHTS);
  }
}
