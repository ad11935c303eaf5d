/** Scattered joints: row lines and start pieces searched together for the fewest planks, deterministic for a given request. */

import { rowChoices, type Sliced } from './covered-area.ts';
import { ripPairs } from './cutting.ts';
import type { Bound, Plank, Rules } from './floor.ts';
import { endOf, isJointed, withinPlank } from './runs.ts';
import { change, MENDING, ScatterState, WEIGHTS } from './scatter-state.ts';
import { endsKept, type ScatterFloor, type Starts, scatterFloor } from './starts.ts';

/** The mulberry32 generator (public domain, from memory): numbers in [0, 1) from a 32-bit state. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

// Simulated annealing, deterministic for a given seed and number of steps.

interface Annealing {
  readonly seed: number;
  readonly steps: number;
  /** The search ends once it has this many planks and breaks no rule. */
  readonly target: number;
  /** Temperature at the start and at the end. */
  readonly warm: number;
  readonly cool: number;
}

/** The best layout seen from `from` on; its cost is never higher than where it started. */
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

// Where the search starts: rows laid in order, each starting with the offcut of an earlier one.

/**
 * Offcuts are used one to three rows later, so that neighbors belong to different chains; each count is tried from
 * several first positions.
 */
const CHAINS = [1, 2, 3];
const SET_OUTS = 16;
/** Chains tried in all; a large floor tries fewer first positions. */
const MOST_RUNS = 640;

function bestChain(floor: ScatterFloor): ScatterState {
  let best: ScatterState | undefined;
  const outs = Math.max(2, Math.min(SET_OUTS, Math.floor(MOST_RUNS / Math.max(1, floor.runs.length))));
  for (const chains of CHAINS) {
    for (let k = 0; k < outs; k++) {
      const state = new ScatterState(floor, chained(floor, chains, Math.round(((k + 1) * floor.plank) / outs)));
      if (!best || state.cost < best.cost) best = state;
    }
  }
  return best ?? new ScatterState(floor, []);
}

/**
 * Each run starts with the offcut of the run `chains` before it, trimmed to the nearest position that keeps the rules.
 */
function chained(floor: ScatterFloor, chains: number, first: number): readonly number[] {
  const { runs, plank, kerf, stagger, minEnd, inLine } = floor;
  const starts: number[] = [];
  const circle = (difference: number): number => {
    const rest = ((difference % plank) + plank) % plank;
    return Math.min(rest, plank - rest);
  };
  const left: number[] = [];
  runs.forEach((run, i) => {
    if (!isJointed(run, plank)) {
      starts.push(run.length);
      return;
    }
    const offcut = left.length >= chains ? (left.shift() ?? 0) : withinPlank(first + i * Math.floor(plank / 3), plank);
    const phase = (j: number): number => (runs[j]?.from ?? 0) + (starts[j] ?? 0);
    const keeps = (start: number): boolean =>
      endsKept(run.length, start, plank, minEnd) &&
      run.touching.every(
        (j) =>
          circle(run.from + start - phase(j)) >= stagger &&
          (runs[j]?.touching ?? []).every(
            (k) =>
              circle(run.from + start - phase(k)) >= inLine &&
              circle(run.from + start - 2 * phase(j) + phase(k)) >= inLine,
          ),
      );
    const fitting = (floor.places[i] ?? []).filter((start) => start <= offcut && keeps(start));
    const trimmed = keeps(offcut) ? offcut : Math.max(...fitting, 0);
    const start = trimmed > 0 ? trimmed : ((floor.places[i] ?? []).find(keeps) ?? floor.places[i]?.[0] ?? plank);
    starts.push(start);
    left.push(plank - kerf - endOf(run.length, start, plank));
  });
  return starts;
}

interface Scattered {
  readonly sliced: readonly Sliced[];
  readonly starts: readonly Starts[];
}

const FIRST_STEPS = 3000;
/** Other row lines are tried only in floors with at most this many runs. */
const SMALL = 80;

/** A first layout, within a few milliseconds per room. */
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

export function quickScatter(floor: ScatterFloor, target: number): ScatterState {
  return shortAnneal(bestChain(floor), target);
}

function shortAnneal(state: ScatterState, target: number): ScatterState {
  return anneal(state, { seed: 1, steps: FIRST_STEPS, target, warm: 60, cool: 4 });
}

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

// Reordering start pieces that reach the bound so that they keep the rules.

export interface Dealt {
  readonly runs: readonly number[];
  readonly starts: readonly number[];
}

/** How often and how long to look for an order; each try has its own seed, counting from `first`. */
export interface Effort {
  readonly first: number;
  readonly seeds: number;
  readonly steps: number;
}

/**
 * Layouts that take the dealt start pieces, with the other runs as in `base`, and fix their broken rules; each with
 * another seed.
 */
export function* scatterMended(
  base: ScatterState,
  dealt: readonly Dealt[],
  target: number,
  { first, seeds, steps }: Effort,
): Generator<ScatterState> {
  const { floor } = base;
  const starts = [...base.starts];
  for (const { runs, starts: given } of dealt) {
    const third = Math.ceil(given.length / 3);
    // Sorted start pieces dealt in thirds, so that neighbors are about a third of the list apart.
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
