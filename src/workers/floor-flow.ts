/** The flow of offcuts as a linear and an integer program: a bound on the planks, and joint positions that reach it. */

import highsModule, { type Highs } from 'highs';
import type { Lane } from '../layout/cutting.ts';
import type { Bound, Plan } from '../layout/floor.ts';
import { brokenArcs, type FlowArc, type FlowTable, flowBound, type Worth } from '../layout/offcut-flow.ts';
import { seeded } from '../layout/scatter.ts';
import type { ScatterFloor } from '../layout/starts.ts';

const MOST_STEPS = 120;
const MOST_FAILURES = 6;
/** HiGHS model status: solved to optimality. */
const OPTIMAL = 7;

type Model = ReturnType<Highs['createModel']>;

export interface OffcutFlow {
  /** The objective, or what the integer program has proved so far. */
  readonly bound: number;
  /** Rows by block and option; integral only after `integer`. */
  readonly used: readonly (readonly number[])[];
  /** What an offcut is worth: the duals of the linear program. */
  readonly worth: Worth;
  readonly arcs: readonly (FlowArc & { readonly price: number })[];
}

type Entry = readonly [row: number, value: number];

/**
 * Rows of the program: one per node of each line, one per block, one per kind of short piece. Columns: options, steps
 * down a line, fresh planks, shorts. If ripped rows may share planks there are two lines, one for each edge of an
 * offcut, and full rows use both.
 */
export class FlowModel {
  readonly #model: Model;
  readonly #table: FlowTable;
  readonly #arcs: FlowArc[] = [];
  taken = 0;
  readonly #firstColumns: number[] = [];
  readonly #arcRows: number;
  /** First rows of the lines. */
  readonly #lines: readonly number[];

  constructor(solver: Highs, table: FlowTable) {
    this.#table = table;
    this.#model = solver.createModel();
    this.#model.options.set({ output_flag: false });
    const { nodes, blocks, shorts, wholes } = table;
    const isShared = [...blocks, ...shorts, ...wholes].some(({ lane }) => lane !== 'full');
    this.#lines = isShared ? [0, nodes + 1] : [0];
    const linesOf = (lane: Lane): readonly number[] =>
      lane === 'full' ? this.#lines : lane === 'none' ? [] : [lane === 'near' ? 0 : nodes + 1];
    const blockRows = this.#lines.length * (nodes + 1);
    const shortRows = blockRows + blocks.length;
    const free = Number.POSITIVE_INFINITY;
    const cost: number[] = [];
    const upper: number[] = [];
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    const column = (price: number, most: number, entries: readonly Entry[]): void => {
      cost.push(price);
      upper.push(most);
      for (const [row, value] of entries) {
        indices.push(row);
        values.push(value);
      }
      starts.push(indices.length);
    };
    blocks.forEach(({ runs, lane, options }, b) => {
      this.#firstColumns.push(cost.length);
      for (const { need, give, cost: planks } of options) {
        // A full row pays for its planks; a ripped row takes plank-length strips from its line.
        const strips = lane === 'full' ? 0 : planks;
        const flow = linesOf(lane).flatMap((line) =>
          summed([
            [line + nodes, -strips],
            [line + need, need < 0 ? 0 : -1],
            [line + give, give < 0 ? 0 : 1],
          ]),
        );
        column(planks - strips, runs.length, [...flow, [blockRows + b, 1]]);
      }
    });
    for (const line of this.#lines) {
      for (let node = 1; node <= nodes; node++)
        column(0, free, [
          [line + node, -1],
          [line + node - 1, 1],
        ]);
    }
    column(
      1,
      free,
      this.#lines.map((line): Entry => [line + nodes, 1]),
    );
    shorts.forEach(({ lane, least, size, count }, s) => {
      for (let node = least; node <= nodes; node++) {
        const flow = linesOf(lane).flatMap((line): Entry[] => [
          [line + node, -1],
          ...(node >= size ? [[line + node - size, 1] as const] : []),
        ]);
        column(0, count, [...flow, [shortRows + s, 1]]);
      }
    });
    const taken = new Array<number>(blockRows).fill(0);
    for (const { lane, count } of wholes)
      if (lane !== 'full') for (const line of linesOf(lane)) taken[line + nodes] = (taken[line + nodes] ?? 0) + count;
    const rows = [...taken, ...blocks.map(({ runs }) => runs.length), ...shorts.map(({ count }) => count)];
    this.#arcRows = rows.length;
    this.#model.passModel({
      numCols: cost.length,
      numRows: rows.length,
      offset: wholes.reduce((sum, { lane, count }) => sum + (lane === 'full' ? count : 0), 0),
      colCost: cost,
      colLower: cost.map(() => 0),
      colUpper: upper,
      rowLower: rows,
      rowUpper: rows.map((value, i) => (i < blockRows ? free : value)),
      matrix: { format: 'csc', numRows: rows.length, numCols: cost.length, starts, indices, values },
    });
  }

  /** Adds constraints for rows to keep. */
  hold(arcs: readonly FlowArc[]): void {
    for (const arc of arcs) {
      const indices = arc.blocks.flatMap((block) => arc.options.map((i) => (this.#firstColumns[block] ?? 0) + i));
      this.#model.addRow(Number.NEGATIVE_INFINITY, arc.most, { indices, values: indices.map(() => 1) });
      this.#arcs.push(arc);
    }
  }

  relaxed(): OffcutFlow | undefined {
    this.#model.run();
    if (this.#model.getModelStatus() !== OPTIMAL) return undefined;
    const { colValue, rowDual } = this.#model.getSolution();
    return {
      bound: this.#model.getObjectiveValue(),
      used: this.#used(colValue),
      worth: { near: this.#worth(rowDual, this.#lines[0]), far: this.#worth(rowDual, this.#lines[1]) },
      arcs: this.#arcs.map((arc, i) => ({ ...arc, price: -(rowDual[this.#arcRows + i] ?? 0) })),
    };
  }

  /**
   * Integral rows: the linear program's solution rounded up step by step; undefined if that leads to more than `most`
   * planks. At most `caps` rows of a block start alike. Each seed rounds in a different order.
   */
  rounded(caps: readonly number[], most: number, seed: number): OffcutFlow | undefined {
    const random = seeded(seed);
    const columns = this.#table.blocks.flatMap(({ options }, b) =>
      options.map((_, i) => ({ at: (this.#firstColumns[b] ?? 0) + i, low: 0, high: caps[b] ?? 0 })),
    );
    const bind = (column: { readonly at: number; readonly low: number; readonly high: number }): void => {
      this.#model.changeColBounds(column.at, column.low, column.high);
    };
    columns.forEach(bind);
    let failures = 0;
    let last: { readonly column: (typeof columns)[number]; readonly low: number } | undefined;
    for (let step = 0; step < MOST_STEPS; step++) {
      this.#model.run();
      this.taken += Number(this.#model.info.get('simplex_iteration_count'));
      const fails = this.#model.getModelStatus() !== OPTIMAL || this.#model.getObjectiveValue() > most + 1e-6;
      if (fails) {
        if (!last || ++failures > MOST_FAILURES) return undefined;
        last.column.high = last.column.low - 1;
        last.column.low = last.low;
        bind(last.column);
        last = undefined;
        continue;
      }
      const { colValue } = this.#model.getSolution();
      let next: (typeof columns)[number] | undefined;
      let greatest = 0;
      for (const column of columns) {
        const value = colValue[column.at] ?? 0;
        const whole = Math.floor(value + 1e-6);
        if (whole > column.low) {
          column.low = whole;
          bind(column);
        }
        const part = value - whole;
        if (part < 1e-6) continue;
        const score = part * (0.5 + random());
        if (score > greatest) [next, greatest] = [column, score];
      }
      if (!next) {
        return {
          bound: this.#model.getObjectiveValue(),
          used: this.#used(colValue).map((row) => row.map(Math.round)),
          worth: { near: [], far: [] },
          arcs: [],
        };
      }
      last = { column: next, low: next.low };
      next.low = Math.ceil((colValue[next.at] ?? 0) - 1e-6);
      bind(next);
    }
    return undefined;
  }

  dispose(): void {
    this.#model.dispose();
  }

  #worth(duals: Float64Array, line: number | undefined): readonly number[] {
    return line === undefined ? [] : [...duals.subarray(line, line + this.#table.nodes + 1)];
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

/** Sums the entries of one row and drops those that cancel. */
function summed(entries: readonly Entry[]): readonly Entry[] {
  const sums = new Map<number, number>();
  for (const [row, value] of entries) if (value !== 0) sums.set(row, (sums.get(row) ?? 0) + value);
  return [...sums].filter(([, value]) => value !== 0);
}

/** Rounds of constraints added to a linear program. */
const ROUNDS = 8;

/**
 * `loose` applies to layouts that keep the shortest end; `tight` to those that also keep the stagger and their looks.
 */
export interface FlowBounds {
  readonly loose: number;
  readonly tight: number;
}

/** The bounds for one choice of row lines; rules between stacked rows are added as the program violates them. */
export function bounded(model: FlowModel, table: FlowTable, floor: ScatterFloor): FlowBounds {
  let loose: number | undefined;
  let tight = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const flow = model.relaxed();
    if (!flow) break;
    tight = Math.max(tight, flowBound(table, flow.worth, flow.arcs));
    loose ??= tight;
    const broken = table.exact ? brokenArcs(table, floor, flow.used) : [];
    if (broken.length === 0) break;
    model.hold(broken);
  }
  return { loose: loose ?? 0, tight };
}

export function leastOf(all: readonly FlowBounds[]): FlowBounds {
  return {
    loose: Math.min(...all.map(({ loose }) => loose)),
    tight: Math.min(...all.map(({ tight }) => tight)),
  };
}

/** True when a plan keeps every rule its joints decide; a narrow strip depends only on the rows. */
export function breaksNone({ broken }: Plan): boolean {
  return broken.every(({ rule }) => rule === 'minRip');
}

/**
 * The plan with the best bound that applies to it: a plan that breaks a rule may need fewer planks than those that keep
 * it.
 */
export function proved(plan: Plan, plain: Omit<Bound, 'proven'>, flow: FlowBounds | undefined): Plan {
  const endsKept = plan.broken.every(({ rule }) => rule !== 'minEnd');
  if (!flow || !endsKept) return { ...plan, bound: { ...plain, proven: plan.planks === plain.best } };
  const least = breaksNone(plan) ? flow.tight : flow.loose;
  const best = Math.max(plain.best, least);
  return { ...plan, bound: { area: plain.area, row: plain.row, flow: least, best, proven: plan.planks === best } };
}

// HiGHS, loaded once per thread (MIT, WebAssembly).

let loading: Promise<Highs> | undefined;

export function highs(): Promise<Highs> {
  // The package is CommonJS with its own default export: Node gives the function, its types the namespace around it.
  const load = highsModule as unknown as () => Promise<Highs>;
  loading ??= load();
  return loading;
}
