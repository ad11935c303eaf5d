/** Linear and integer programs for cutting sticks, solved by column generation over ways to fill a stick. */

import type { Highs } from 'highs';
import { type Counts, mostValuableByTable, type StickNumbers } from '../trim/sticks.ts';

export interface StickWay {
  readonly supply: number;
  readonly counts: Counts;
}

/** Duals (kinds ≥ 0, supplies ≤ 0), the objective, and how much each way is used. */
interface Solved {
  readonly objective: number;
  readonly kindDuals: readonly number[];
  readonly supplyDuals: readonly number[];
  readonly used: readonly number[];
}

type Model = ReturnType<Highs['createModel']>;

/**
 * `cost`: lowest cost that covers every kind, with sticks on hand limited. `mix`: fewest pieces left uncovered for a
 * given number of sticks of each supply. Keeps its model warm: ways are added, limits change, and it is solved again.
 */
export class StickModel {
  readonly #model: Model;
  readonly #numbers: StickNumbers;
  readonly #mode: 'cost' | 'mix';
  readonly #slacks: number;
  readonly ways: StickWay[] = [];

  constructor(solver: Highs, numbers: StickNumbers, mode: 'cost' | 'mix') {
    this.#model = solver.createModel();
    this.#numbers = numbers;
    this.#mode = mode;
    // Presolve would discard the last basis, and each solve starts from it.
    this.#model.options.set({ output_flag: false, presolve: 'off', solver: 'simplex' });
    const nothing = { indices: [], values: [] };
    for (const { ids } of numbers.kinds) this.#model.addRow(ids.length, Number.POSITIVE_INFINITY, nothing);
    for (const { limit } of numbers.supplies) this.#model.addRow(0, limit ?? Number.POSITIVE_INFINITY, nothing);
    this.#slacks = mode === 'mix' ? numbers.kinds.length : 0;
    for (let kind = 0; kind < this.#slacks; kind++) {
      this.#model.addCol(1, 0, Number.POSITIVE_INFINITY, { indices: [kind], values: [1] });
    }
  }

  add(way: StickWay): void {
    const { kinds, supplies } = this.#numbers;
    const indices: number[] = [];
    const values: number[] = [];
    way.counts.forEach((count, kind) => {
      if (count === 0) return;
      indices.push(kind);
      values.push(count);
    });
    indices.push(kinds.length + way.supply);
    values.push(1);
    const cost = this.#mode === 'cost' ? (supplies[way.supply]?.cents ?? 0) : 0;
    this.#model.addCol(cost, 0, Number.POSITIVE_INFINITY, { indices, values });
    this.ways.push(way);
  }

  limit(mix: readonly number[]): void {
    mix.forEach((sticks, supply) => {
      this.#model.changeRowBounds(this.#numbers.kinds.length + supply, 0, sticks);
    });
  }

  solve(): Solved {
    this.#model.run();
    const { colValue, rowDual } = this.#model.getSolution();
    const kinds = this.#numbers.kinds.length;
    return {
      objective: this.#model.getObjectiveValue(),
      kindDuals: [...rowDual.subarray(0, kinds)].map((dual) => Math.max(0, dual)),
      supplyDuals: [...rowDual.subarray(kinds)].map((dual) => Math.min(0, dual)),
      used: [...colValue.subarray(this.#slacks)],
    };
  }

  dispose(): void {
    this.#model.dispose();
  }
}

// Column generation, and exact cuts derived from its duals.

/** Σⱼ worthⱼ·sticksⱼ ≥ need holds for every mix of sticks that can yield all pieces. In integers, so it is exact. */
export interface MixCut {
  readonly worth: readonly number[];
  readonly need: number;
}

/** Duals are scaled by this and rounded down: that weakens the cut but never makes it wrong. */
const SCALE = 1_000_000;
const ROUNDS = 400;
/** Ways added per round, as a multiple of the number of supplies. */
const PASSES = 8;
const TOLERANCE = 1e-7;

/**
 * Adds ways until none would improve the program. Returns the last solution, or undefined when a fill is too large to
 * price.
 */
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
        // The next pass looks for ways with other pieces, because together they can make an integral solution.
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

/** The cut from a solution's duals, priced again in integers rather than trusting floating point. */
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

/** True when this cut proves that a mix of sticks can't yield all pieces. */
export function violates(mix: readonly number[], { worth, need }: MixCut): boolean {
  return mix.reduce((sum, sticks, supply) => sum + sticks * (worth[supply] ?? 0), 0) < need;
}

// Whole sticks: integer programs over known ways, or over all of them if they are few.

/** Node limit of an integer program. Not a time limit, so that the same task gives the same answer. */
const NODES = 1500;
/** HiGHS model status: infeasible. */
const INFEASIBLE = 8;
/** Up to this many ways are enumerated. */
const MOST_WAYS = 4000;

/** How an integer program ended: a choice of ways, certainly none, or unknown. */
export type Chosen = { readonly ways: readonly StickWay[] } | 'none' | 'unknown';

/** Ways that cover every kind with the sticks of a mix; `none` is certain only if `ways` is complete. */
export function chooseWays(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly StickWay[],
  mix: readonly number[],
  areAll: boolean,
): Chosen {
  const { kinds } = numbers;
  const usable = ways.filter(({ supply }) => (mix[supply] ?? 0) > 0);
  if (usable.length === 0) return 'unknown';
  const model = solver.createModel();
  try {
    model.options.set({ output_flag: false, presolve: 'off', mip_max_nodes: NODES, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    const nothing = { indices: [], values: [] };
    for (const { ids } of kinds) model.addRow(ids.length, Number.POSITIVE_INFINITY, nothing);
    for (const sticks of mix) model.addRow(0, sticks, nothing);
    usable.forEach(({ supply, counts }, column) => {
      const indices = counts.flatMap((count, kind) => (count > 0 ? [kind] : []));
      const values = indices.map((kind) => counts[kind] ?? 0);
      model.addCol(0, 0, mix[supply] ?? 0, { indices: [...indices, kinds.length + supply], values: [...values, 1] });
      model.changeColIntegrality(column, 1);
    });
    model.run();
    if (model.getModelStatus() === INFEASIBLE) return areAll ? 'none' : 'unknown';
    const used = [...model.getSolution().colValue].map(Math.round);
    if (!covers(usable, used, numbers, mix)) return 'unknown';
    return { ways: usable.flatMap((way, i) => new Array<StickWay>(used[i] ?? 0).fill(way)) };
  } finally {
    model.dispose();
  }
}

/** The rounded choice, checked in integers. */
function covers(
  ways: readonly StickWay[],
  used: readonly number[],
  { kinds }: StickNumbers,
  mix: readonly number[],
): boolean {
  if (used.length !== ways.length) return false;
  const given = kinds.map(() => 0);
  const sticks = mix.map(() => 0);
  ways.forEach(({ supply, counts }, i) => {
    const times = used[i] ?? 0;
    sticks[supply] = (sticks[supply] ?? 0) + times;
    counts.forEach((count, kind) => {
      given[kind] = (given[kind] ?? 0) + count * times;
    });
  });
  return (
    kinds.every(({ ids }, kind) => (given[kind] ?? 0) >= ids.length) &&
    mix.every((most, supply) => (sticks[supply] ?? 0) <= most)
  );
}

/**
 * Every way to fill a stick that has no room for another piece, for each supply of a mix; undefined when there are too
 * many.
 */
export function everyWay({ kinds, supplies }: StickNumbers, mix: readonly number[]): readonly StickWay[] | undefined {
  const ways: StickWay[] = [];
  for (let supply = 0; supply < supplies.length; supply++) {
    if ((mix[supply] ?? 0) === 0) continue;
    const found = fullest(kinds, supplies[supply]?.capacity ?? 0, MOST_WAYS - ways.length);
    if (!found) return undefined;
    ways.push(...found.map((counts) => ({ supply, counts })));
  }
  return ways;
}

function fullest(kinds: StickNumbers['kinds'], capacity: number, most: number): readonly Counts[] | undefined {
  const found: Counts[] = [];
  const counts = kinds.map(() => 0);
  let steps = 0;
  const place = (kind: number, rest: number): boolean => {
    if (found.length > most || steps++ > most * 50) return false;
    const own = kinds[kind];
    if (!own) {
      const isFull = kinds.every(({ size, ids }, i) => (counts[i] ?? 0) === ids.length || size > rest);
      if (isFull) found.push([...counts]);
      return true;
    }
    for (let count = Math.min(own.ids.length, Math.floor(rest / own.size)); count >= 0; count--) {
      counts[kind] = count;
      if (!place(kind + 1, rest - count * own.size)) return false;
    }
    counts[kind] = 0;
    return true;
  };
  return place(0, capacity) && found.length <= most ? found : undefined;
}

// Diving: take the most used way of the relaxed program, price the rest again, and repeat until nothing is left.

/** Pieces still to cut, and the sticks left. */
interface Rest {
  readonly pieces: readonly number[];
  readonly sticks: readonly number[];
}

/**
 * Ways that yield every piece from exactly these sticks; undefined when this dive fails. `turn` starts with a different
 * way.
 */
export function dive(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly StickWay[],
  mix: readonly number[],
  turn: number,
): readonly StickWay[] | undefined {
  let rest: Rest = { pieces: numbers.kinds.map(({ ids }) => ids.length), sticks: mix };
  const taken: StickWay[] = [];
  for (let depth = 0; rest.pieces.some((count) => count > 0); depth++) {
    const next = mostUsed(solver, numbers, ways, rest, depth === 0 ? turn : 0);
    if (!next) return undefined;
    for (const way of next) {
      const counts = way.counts.map((count, kind) => Math.min(count, rest.pieces[kind] ?? 0));
      if ((rest.sticks[way.supply] ?? 0) < 1) return undefined;
      taken.push({ supply: way.supply, counts });
      rest = {
        pieces: rest.pieces.map((count, kind) => count - (counts[kind] ?? 0)),
        sticks: rest.sticks.map((count, supply) => (supply === way.supply ? count - 1 : count)),
      };
    }
  }
  return taken;
}

/**
 * Every way used at least once in the relaxed program, or else the most used one; undefined when pieces have to be left
 * over.
 */
function mostUsed(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly StickWay[],
  rest: Rest,
  turn: number,
): readonly StickWay[] | undefined {
  const kept = rest.pieces.flatMap((count, kind) => (count > 0 ? [kind] : []));
  const residual: StickNumbers = {
    kinds: kept.map((kind) => ({
      size: numbers.kinds[kind]?.size ?? 0,
      ids: (numbers.kinds[kind]?.ids ?? []).slice(0, rest.pieces[kind] ?? 0),
    })),
    supplies: numbers.supplies.map((supply, i) => ({
      ...supply,
      capacity: (rest.sticks[i] ?? 0) > 0 ? supply.capacity : 0,
    })),
  };
  const model = new StickModel(solver, residual, 'mix');
  try {
    for (const { supply, counts } of ways) {
      if ((rest.sticks[supply] ?? 0) === 0) continue;
      const cut = kept.map((kind) => Math.min(counts[kind] ?? 0, rest.pieces[kind] ?? 0));
      if (cut.some((count) => count > 0)) model.add({ supply, counts: cut });
    }
    model.limit(rest.sticks);
    const solved = generateWays(
      model,
      residual,
      residual.supplies.map(() => 0),
    );
    if (!solved || solved.objective > 1e-6) return undefined;
    const whole = (way: StickWay): StickWay => {
      const counts = numbers.kinds.map(() => 0);
      kept.forEach((kind, i) => {
        counts[kind] = way.counts[i] ?? 0;
      });
      return { supply: way.supply, counts };
    };
    const sure = solved.used.flatMap((used, i) =>
      used > 1 - 1e-6 ? new Array<number>(Math.floor(used + 1e-6)).fill(i) : [],
    );
    const byUse = solved.used.map((used, i) => ({ used, i })).sort((a, b) => b.used - a.used || a.i - b.i);
    const chosen = sure.length > 0 && turn === 0 ? sure : [byUse[Math.min(turn, byUse.length - 1)]?.i ?? -1];
    return chosen.flatMap((i) => {
      const way = model.ways[i];
      return way ? [whole(way)] : [];
    });
  } finally {
    model.dispose();
  }
}
