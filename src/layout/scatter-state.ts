/** One layout under search: start pieces, what they cost, and the change of cost when one of them moves. */

import { endOf, isJointed, type Run, tooNear } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';
import { breachesOf, type Triple } from './scatter-rule.ts';
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
  /** Where the joints of a run lie, but for whole planks. */
  readonly #phases: number[];
  readonly #jointed: readonly boolean[];
  #planks: number | undefined;
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
    this.#phases = this.starts.map((start, i) => rest((floor.runs[i]?.from ?? 0) + start, floor.plank));
    this.#jointed = floor.runs.map((run) => isJointed(run, floor.plank));
    for (const i of floor.jointed) this.faults += this.#around(i, true);
  }

  get planks(): number {
    this.#planks ??= this.#stock.planks();
    return this.#planks;
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
    this.#set(run, start);
    this.#put(run);
    if (far !== undefined) this.#put(far);
    this.faults += this.#around(run, false);
    this.#planks = undefined;
  }

  /** Lets two runs of one length change places; where no strip lies beside either, their pieces stay the same. */
  swap(one: number, other: number): void {
    const { near, far } = this.floor;
    const [its, was] = [this.starts[other] as number, this.starts[one] as number];
    const isBeside = [one, other].some((i) => near[i] !== undefined || far[i] !== undefined);
    for (const [run, start] of [
      [one, its],
      [other, was],
    ] as const) {
      if (isBeside) this.move(run, start);
      else {
        this.faults -= this.#around(run, false);
        this.#set(run, start);
        this.faults += this.#around(run, false);
      }
    }
  }

  /** What the rules that a run breaks cost. */
  faultsOf(run: number): number {
    return this.#around(run, false);
  }

  /** Cuts a piece with walls at both ends from the other part of a plank. */
  turn(run: number): void {
    this.#take(run);
    this.asStart[run] = !this.asStart[run];
    this.#put(run);
    this.#planks = undefined;
  }

  #set(run: number, start: number): void {
    this.starts[run] = start;
    this.#phases[run] = rest((this.floor.runs[run]?.from ?? 0) + start, this.floor.plank);
  }

  /** Cost of the rules a run takes part in; `before` leaves out what later runs will count themselves. */
  #around(i: number, before: boolean): number {
    const { floor, starts, weights } = this;
    const { plank, stagger } = floor;
    const run = floor.runs[i];
    if (!run) return 0;
    const start = starts[i] as number;
    const phase = this.#phases[i] as number;
    let cost = endsKept(run.length, start, plank, floor.minEnd) ? 0 : weights.rule;
    for (const j of floor.beside[i] as readonly number[]) {
      if ((before && j > i) || !this.#jointed[j]) continue;
      if (circle(phase - (this.#phases[j] as number), plank) >= stagger) continue;
      const other = floor.runs[j] as Run;
      if (tooNear(run, start, other, starts[j] as number, plank, stagger).length > 0) cost += weights.rule;
    }
    for (const triple of floor.threes[i] as readonly Triple[])
      if (!before || triple[2] === i) cost += this.#three(triple);
    return cost;
  }

  #three(triple: Triple): number {
    const { floor, starts, weights } = this;
    const { plank } = floor;
    const below = this.#phases[triple[0]] as number;
    const above = this.#phases[triple[2]] as number;
    const apart = circle(above - below, plank);
    const lined = apart < floor.inLine;
    const stepped = circle(2 * (this.#phases[triple[1]] as number) - below - above, plank) < floor.inLine;
    if ((lined || stepped) && breachesOf(floor.runs, starts, triple, plank).length > 0) return weights.pattern;
    return apart < floor.stagger ? weights.near : 0;
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

function rest(value: number, plank: number): number {
  const over = value % plank;
  return over < 0 ? over + plank : over;
}

/** The distance of a place from the nearest whole number of planks. */
function circle(difference: number, plank: number): number {
  const over = Math.abs(difference) % plank;
  return Math.min(over, plank - over);
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
