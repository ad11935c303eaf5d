/** The flow of offcuts as a linear and an integer program: a bound on the planks, and the places of the joints that reach it. */

import type { Highs } from 'highs';
import type { FlowArc } from '../core/floor/flow-arc.ts';
import type { FlowTable } from '../core/floor/flow-table.ts';

/** HiGHS's model status for a program solved to its optimum. */
const OPTIMAL = 7;

type Model = ReturnType<Highs['createModel']>;

export interface Flow {
  /** The objective, or what the integer program proved so far. */
  readonly bound: number;
  /** Rows by block and option; whole only after `integer`. */
  readonly used: readonly (readonly number[])[];
  /** What an offcut of r units is worth, by r: the duals of the linear program. */
  readonly worth: readonly number[];
  /** The arcs that hold, each with its price. */
  readonly arcs: readonly (FlowArc & { readonly price: number })[];
}

/** Rows of the program: one a node, one a block, one a kind of short piece. Columns: options, steps down the line, fresh planks, shorts. */
export class FlowModel {
  readonly #model: Model;
  readonly #table: FlowTable;
  readonly #arcs: FlowArc[] = [];
  readonly #firstColumns: number[] = [];
  readonly #arcRows: number;

  constructor(solver: Highs, table: FlowTable) {
    this.#table = table;
    this.#model = solver.createModel();
    this.#model.options.set({ output_flag: false });
    const { nodes, blocks, shorts } = table;
    const free = Number.POSITIVE_INFINITY;
    const cost: number[] = [];
    const upper: number[] = [];
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    const column = (price: number, most: number, entries: readonly (readonly [row: number, value: number])[]): void => {
      cost.push(price);
      upper.push(most);
      for (const [row, value] of entries) {
        indices.push(row);
        values.push(value);
      }
      starts.push(indices.length);
    };
    blocks.forEach(({ runs, options }, b) => {
      this.#firstColumns.push(cost.length);
      for (const { need, give, cost: price } of options) {
        const flow: (readonly [number, number])[] =
          need === give ? [] : [...(need < 0 ? [] : [[need, -1] as const]), ...(give < 0 ? [] : [[give, 1] as const])];
        column(price, runs.length, [...flow, [nodes + 1 + b, 1]]);
      }
    });
    for (let node = 1; node <= nodes; node++)
      column(0, free, [
        [node, -1],
        [node - 1, 1],
      ]);
    column(1, free, [[nodes, 1]]);
    shorts.forEach(({ least, size, count }, s) => {
      for (let node = least; node <= nodes; node++) {
        const left: (readonly [number, number])[] = node >= size ? [[node - size, 1]] : [];
        column(0, count, [[node, -1], ...left, [nodes + 1 + blocks.length + s, 1]]);
      }
    });
    const rows = [
      ...new Array<number>(nodes + 1).fill(0),
      ...blocks.map(({ runs }) => runs.length),
      ...shorts.map(({ count }) => count),
    ];
    this.#arcRows = rows.length;
    this.#model.passModel({
      numCols: cost.length,
      numRows: rows.length,
      offset: table.whole,
      colCost: cost,
      colLower: cost.map(() => 0),
      colUpper: upper,
      rowLower: rows,
      rowUpper: rows.map((value, i) => (i <= nodes ? free : value)),
      matrix: { format: 'csc', numRows: rows.length, numCols: cost.length, starts, indices, values },
    });
  }

  /** Rules of the rows that the program is to keep from now on. */
  hold(arcs: readonly FlowArc[]): void {
    for (const arc of arcs) {
      const from = (this.#firstColumns[arc.block] ?? 0) + arc.first;
      const indices = Array.from({ length: arc.last - arc.first + 1 }, (_, i) => from + i);
      this.#model.addRow(Number.NEGATIVE_INFINITY, arc.most, { indices, values: indices.map(() => 1) });
      this.#arcs.push(arc);
    }
  }

  /** The linear program; undefined when the rules held leave no way. */
  relaxed(): Flow | undefined {
    this.#model.run();
    if (this.#model.getModelStatus() !== OPTIMAL) return undefined;
    const { colValue, rowDual } = this.#model.getSolution();
    return {
      bound: this.#model.getObjectiveValue(),
      used: this.#used(colValue),
      worth: [...rowDual.subarray(0, this.#table.nodes + 1)],
      arcs: this.#arcs.map((arc, i) => ({ ...arc, price: -(rowDual[this.#arcRows + i] ?? 0) })),
    };
  }

  /** The program with whole rows, for at most so many nodes of its search; undefined when nothing was found. */
  integer(nodes: number, target: number, caps: readonly number[]): Flow | undefined {
    let first = 0;
    this.#table.blocks.forEach(({ options }, b) => {
      options.forEach((_, i) => {
        this.#model.changeColIntegrality(first + i, 1);
        this.#model.changeColBounds(first + i, 0, caps[b] ?? 0);
      });
      first += options.length;
    });
    this.#model.options.set({
      mip_max_nodes: nodes,
      mip_rel_gap: 0,
      mip_abs_gap: 0.99,
      objective_target: target + 1e-6,
    });
    this.#model.run();
    const { colValue } = this.#model.getSolution();
    const bound = Number(this.#model.info.get('mip_dual_bound'));
    if (colValue.length === 0 || !Number.isFinite(bound)) return undefined;
    return { bound, used: this.#used(colValue).map((row) => row.map(Math.round)), worth: [], arcs: [] };
  }

  dispose(): void {
    this.#model.dispose();
  }

  #used(values: ArrayLike<number>): number[][] {
    let first = 0;
    return this.#table.blocks.map(({ options }) => {
      const own = options.map((_, i) => values[first + i] ?? 0);
      first += options.length;
      return own;
    });
  }
}
