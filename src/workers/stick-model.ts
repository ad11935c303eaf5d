/** The linear programs over ways to fill a stick: kinds covered, sticks of each supply limited. */

import type { Highs } from 'highs';
import type { Counts, StickNumbers } from '../trim/sticks.ts';

/** A way to fill one stick of a supply. */
export interface Way {
  readonly supply: number;
  readonly counts: Counts;
}

/** Duals (kinds ≥ 0, supplies ≤ 0), the objective and how much of each way is used. */
export interface Solved {
  readonly objective: number;
  readonly kindDuals: readonly number[];
  readonly supplyDuals: readonly number[];
  readonly used: readonly number[];
}

type Model = ReturnType<Highs['createModel']>;

/**
 * `cost`: least cost that covers every kind, sticks at hand limited. `mix`: least number of pieces left uncovered when the
 * sticks of each supply are given. Keeps its model warm: ways are added, limits changed, and it is solved again.
 */
export class StickModel {
  readonly #model: Model;
  readonly #numbers: StickNumbers;
  readonly #mode: 'cost' | 'mix';
  readonly #slacks: number;
  readonly ways: Way[] = [];

  constructor(solver: Highs, numbers: StickNumbers, mode: 'cost' | 'mix') {
    this.#model = solver.createModel();
    this.#numbers = numbers;
    this.#mode = mode;
    // Presolve would throw the last basis away, and each solve starts from it.
    this.#model.options.set({ output_flag: false, presolve: 'off', solver: 'simplex' });
    const nothing = { indices: [], values: [] };
    for (const { ids } of numbers.kinds) this.#model.addRow(ids.length, Number.POSITIVE_INFINITY, nothing);
    for (const { limit } of numbers.supplies) this.#model.addRow(0, limit ?? Number.POSITIVE_INFINITY, nothing);
    this.#slacks = mode === 'mix' ? numbers.kinds.length : 0;
    for (let kind = 0; kind < this.#slacks; kind++) {
      this.#model.addCol(1, 0, Number.POSITIVE_INFINITY, { indices: [kind], values: [1] });
    }
  }

  add(way: Way): void {
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

  /** How many sticks of each supply there are. */
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
