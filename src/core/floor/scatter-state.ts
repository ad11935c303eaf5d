/** One layout under search: start pieces, what they cost, and the change of cost when one of them moves. */

import { endOf, tooNear } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';
import type { Triple } from './scatter-rule.ts';
import { breachesOf } from './scatter-rule.ts';
import { ScatterStock } from './scatter-stock.ts';

/** What a layout costs: a broken rule outweighs any plank, and a plank any looks. */
export const WEIGHTS = { rule: 1000, pattern: 400, plank: 100, near: 3 } as const;

export class ScatterState {
  readonly floor: ScatterFloor;
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
  ) {
    this.floor = floor;
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
    return this.faults + WEIGHTS.plank * this.planks;
  }

  /** Moves one run's joints. */
  move(run: number, start: number): void {
    this.faults -= this.#around(run, false);
    this.#take(run);
    this.starts[run] = start;
    this.#put(run);
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
    let cost = endsKept(run.length, start, floor.plank, floor.minEnd) ? 0 : WEIGHTS.rule;
    for (const j of floor.beside[i] ?? []) {
      if (before && j > i) continue;
      const other = floor.runs[j];
      if (other && tooNear(run, start, other, starts[j] as number, floor.plank, floor.stagger).length > 0)
        cost += WEIGHTS.rule;
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
    if ((lined || stepped) && breachesOf(floor.runs, starts, triple, floor.plank).length > 0) return WEIGHTS.pattern;
    return apart < floor.stagger ? WEIGHTS.near : 0;
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
    const { plank } = this.floor;
    const length = this.floor.runs[i]?.length ?? 0;
    if (length > plank) {
      const start = this.starts[i] as number;
      const end = endOf(length, start, plank);
      this.#stock.whole += Math.round((length - start - end) / plank);
      if (start === plank) this.#stock.whole++;
      else this.#stock.addStart(start);
      if (end === plank) this.#stock.whole++;
      else this.#stock.addEnd(end);
    } else if (length === plank) this.#stock.whole++;
    else if (this.asStart[i]) this.#stock.addStart(length);
    else this.#stock.addEnd(length);
  }

  #take(i: number): void {
    const { plank } = this.floor;
    const length = this.floor.runs[i]?.length ?? 0;
    if (length > plank) {
      const start = this.starts[i] as number;
      const end = endOf(length, start, plank);
      this.#stock.whole -= Math.round((length - start - end) / plank);
      if (start === plank) this.#stock.whole--;
      else this.#stock.removeStart(start);
      if (end === plank) this.#stock.whole--;
      else this.#stock.removeEnd(end);
    } else if (length === plank) this.#stock.whole--;
    else if (this.asStart[i]) this.#stock.removeStart(length);
    else this.#stock.removeEnd(length);
  }
}
