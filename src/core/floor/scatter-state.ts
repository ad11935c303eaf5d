/** One layout under search: start pieces, what they cost, and the change of cost when one of them moves. */

import { endOf, tooNear } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';
import type { Triple } from './scatter-rule.ts';
import { breachesOf } from './scatter-rule.ts';
import { ScatterStock } from './scatter-stock.ts';

/** What a layout costs: a broken rule outweighs any plank, and a plank any looks. */
export const WEIGHTS = { rule: 1000, pattern: 400, plank: 100, near: 3 } as const;

/** For a layout whose planks are few enough already and whose rules are to be mended: a plank more must not pay. */
export const MENDING = { rule: 200, pattern: 100, plank: 400, near: 2 } as const;

export type Weights = Record<keyof typeof WEIGHTS, number>;

export class ScatterState {
  readonly floor: ScatterFloor;
  readonly weights: Weights;
  /** Start pieces by run, in ticks. */
  readonly starts: number[];
  /** By run: whether a piece with walls at both ends is cut like a start piece or like an end piece. */
  readonly asStart: boolean[];
  readonly #stock: ScatterStock;
  planks: number;
  /** The cost of broken rules and of looks. */
  faults = 0;

  constructor(
    floor: ScatterFloor,
    starts: readonly number[],
    asStart: readonly boolean[] = floor.runs.map(() => true),
    weights: Weights = WEIGHTS,
  ) {
    this.floor = floor;
    this.weights = weights;
    this.starts = [...starts];
    this.asStart = [...asStart];
    this.#stock = new ScatterStock(2 * floor.runs.length + 2, floor.plank - floor.kerf);
    floor.runs.forEach((_, i) => {
      this.#put(i);
    });
    this.planks = this.#stock.planks();
    for (const i of floor.jointed) this.faults += this.#around(i, true);
  }

  get cost(): number {
    return this.faults + this.weights.plank * this.planks;
  }

  /** Moves one run's joints. */
  move(run: number, start: number): void {
    this.faults -= this.#around(run, false);
    const far = this.floor.far[run];
    if (far !== undefined) this.#take(far);
    this.#take(run);
    this.starts[run] = start;
    this.#put(run);
    if (far !== undefined) this.#put(far);
    this.faults += this.#around(run, false);
    this.planks = this.#stock.planks();
  }

  /** Cuts a piece with walls at both ends from the other part of a plank. */
  turn(run: number): void {
    this.#take(run);
    this.asStart[run] = !this.asStart[run];
    this.#put(run);
    this.planks = this.#stock.planks();
  }

  /** Cost of the rules a run takes part in; `before` leaves out what later runs will count themselves. */
  #around(i: number, before: boolean): number {
    const { floor, starts } = this;
    const run = floor.runs[i];
    if (!run) return 0;
    const start = starts[i] as number;
    let cost = endsKept(run.length, start, floor.plank, floor.minEnd) ? 0 : this.weights.rule;
    for (const j of floor.beside[i] ?? []) {
      if (before && j > i) continue;
      const other = floor.runs[j];
      if (other && tooNear(run, start, other, starts[j] as number, floor.plank, floor.stagger).length > 0)
        cost += this.weights.rule;
    }
    for (const triple of floor.threes[i] ?? []) if (!before || triple[2] === i) cost += this.#three(triple);
    return cost;
  }

  #three(triple: Triple): number {
    const { floor, starts } = this;
    const [lower, middle, upper] = triple;
    const below = this.#phase(lower);
    const above = this.#phase(upper);
    const apart = this.#circle(above - below);
    const lined = apart < floor.inLine;
    const stepped = this.#circle(2 * this.#phase(middle) - below - above) < floor.inLine;
    if ((lined || stepped) && breachesOf(floor.runs, starts, triple, floor.plank).length > 0)
      return this.weights.pattern;
    return apart < floor.stagger ? this.weights.near : 0;
  }

  #phase(i: number): number {
    return (this.floor.runs[i]?.from ?? 0) + (this.starts[i] as number);
  }

  /** The distance of a place from the nearest whole number of planks. */
  #circle(difference: number): number {
    const { plank } = this.floor;
    const rest = ((difference % plank) + plank) % plank;
    return Math.min(rest, plank - rest);
  }

  #put(i: number): void {
    this.#stockOf(i, 1);
  }

  #take(i: number): void {
    this.#stockOf(i, -1);
  }

  /** Puts a run's pieces into the stock, or takes them out; what lies beside a piece of a near run takes no plank. */
  #stockOf(i: number, sign: 1 | -1): void {
    const { floor, starts } = this;
    const { plank } = floor;
    const stock = this.#stock;
    const near = floor.near[i];
    const length = floor.runs[i]?.length ?? 0;
    const host = near === undefined ? NOTHING : cutOf(floor.runs[near]?.length ?? 0, starts[near] as number, plank);
    const own = cutOf(length, starts[i] as number, plank);
    stock.whole += sign * Math.max(0, own.whole - host.whole);
    if (length < plank) {
      if (own.start <= host.start && (floor.runs[near ?? -1]?.length ?? 0) < plank) return;
      stock.change(this.asStart[i] ? 'start' : 'end', length, sign);
      return;
    }
    if (own.start > host.start) stock.change('start', own.start, sign);
    if (own.end > host.end) stock.change('end', own.end, sign);
  }
}

const NOTHING = { start: 0, end: 0, whole: 0 };

/** A run's pieces: 0 for a start or an end that is none or whole; a piece from wall to wall is a start. */
function cutOf(length: number, start: number, plank: number): typeof NOTHING {
  if (length < plank) return { start: length, end: 0, whole: 0 };
  if (length === plank) return { start: 0, end: 0, whole: 1 };
  const end = endOf(length, start, plank);
  const whole = Math.round((length - start - end) / plank) + (start === plank ? 1 : 0) + (end === plank ? 1 : 0);
  return { start: start === plank ? 0 : start, end: end === plank ? 0 : end, whole };
}
