/** A layout improved by small random moves that get stricter: the same seed and steps give the same layout. */

import { seeded } from '../seeded.ts';
import { withinPlank } from './run.ts';
import { endsKept } from './scatter-floor.ts';
import { ScatterState, WEIGHTS } from './scatter-state.ts';

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
  const movable = floor.jointed;
  if (movable.length === 0) return from;
  const random = seeded(seed);
  const state = new ScatterState(floor, from.starts, from.asStart);
  let best: Pick<ScatterState, 'starts' | 'asStart'> = from;
  let least = from.cost;
  const pick = (list: readonly number[]): number => list[Math.floor(random() * list.length)] ?? 0;
  const isDone = (): boolean => state.planks <= target && state.faults < WEIGHTS.near;
  const chill = (cool / warm) ** (1 / steps);
  let heat = warm;
  for (let step = 0; step < steps && !isDone(); step++, heat *= chill) {
    const before = state.cost;
    const undo = change(state, random, pick);
    const worse = state.cost - before;
    if (worse > 0 && random() >= Math.exp(-worse / heat)) undo();
    else if (state.cost < least) {
      least = state.cost;
      best = { starts: [...state.starts], asStart: [...state.asStart] };
    }
  }
  return new ScatterState(floor, best.starts, best.asStart);
}

/** Makes one move; what is handed back takes it back. */
function change(state: ScatterState, random: () => number, pick: (list: readonly number[]) => number): () => void {
  const { floor } = state;
  const run = pick(floor.jointed);
  const was = state.starts[run] as number;
  const kind = random();
  if (kind < 0.06 && floor.short.length > 0) {
    const short = pick(floor.short);
    state.turn(short);
    return () => state.turn(short);
  }
  if (kind < 0.3) {
    const other = pick(floor.jointed);
    const its = state.starts[other] as number;
    if (floor.runs[other]?.length === floor.runs[run]?.length && its !== was) {
      state.move(run, its);
      state.move(other, was);
      return () => {
        state.move(run, was);
        state.move(other, its);
      };
    }
  }
  state.move(run, kind < 0.75 ? fitted(state, run, random, pick) : pick(floor.places[run] ?? [was]));
  return () => state.move(run, was);
}

/** A start piece that makes a run just fit another: from its offcut, or leaving an offcut for it. */
function fitted(
  state: ScatterState,
  run: number,
  random: () => number,
  pick: (list: readonly number[]) => number,
): number {
  const { floor, starts } = state;
  const { plank, kerf, minEnd } = floor;
  const other = random() * floor.runs.length < floor.short.length ? pick(floor.short) : pick(floor.jointed);
  const length = floor.runs[run]?.length ?? 0;
  const its = floor.runs[other]?.length ?? 0;
  const room = plank - kerf;
  const start =
    random() < 0.5
      ? room - (its > plank ? withinPlank(its - (starts[other] as number), plank) : its)
      : withinPlank(length - (room - (its > plank ? (starts[other] as number) : its)), plank);
  return endsKept(length, start, plank, minEnd) ? start : (starts[run] as number);
}
