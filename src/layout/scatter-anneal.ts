/** A layout improved by small random moves that get stricter: the same seed and steps give the same layout. */

import { change } from './scatter-move.ts';
import { ScatterState } from './scatter-state.ts';
import { seeded } from './seeded.ts';

export interface Annealing {
  readonly seed: number;
  readonly steps: number;
  /** The search ends when it has this many planks and breaks no rule. */
  readonly target: number;
  /** What a move may cost at first and at last. */
  readonly warm: number;
  readonly cool: number;
}

/** The best layout found on the way from `from`; its cost is never higher. */
export function anneal(from: ScatterState, { seed, steps, target, warm, cool }: Annealing): ScatterState {
  const { floor } = from;
  if (floor.jointed.length === 0) return from;
  const random = seeded(seed);
  const state = new ScatterState(floor, from.starts, from.asStart, from.weights);
  let best: Pick<ScatterState, 'starts' | 'asStart'> = from;
  let least = from.cost;
  const isDone = (): boolean => state.planks <= target && state.faults < state.weights.near;
  const chill = (cool / warm) ** (1 / steps);
  let heat = warm;
  for (let step = 0; step < steps && !isDone(); step++, heat *= chill) {
    const before = state.cost;
    const undo = change(state, random);
    const worse = state.cost - before;
    if (worse > 0 && random() >= Math.exp(-worse / heat)) undo();
    else if (state.cost < least) {
      least = state.cost;
      best = { starts: [...state.starts], asStart: [...state.asStart] };
    }
  }
  return new ScatterState(floor, best.starts, best.asStart, from.weights);
}
