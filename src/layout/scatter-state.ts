/** One layout during the scatter search: its start pieces, their cost, and the moves that change them. */

import { endOf, isJointed, type Run, tooNear } from './runs.ts';
import { breachesOf, endsKept, GRID, type ScatterFloor, type Triple } from './starts.ts';

/** A sorted list of lengths in ticks with insert and remove. */
class Ordered {
  readonly lengths: Int32Array;
  size = 0;

  constructor(most: number) {
    this.lengths = new Int32Array(most);
  }

  add(length: number): void {
    const at = this.#place(length);
    this.lengths.copyWithin(at + 1, at, this.size);
    this.lengths[at] = length;
    this.size++;
  }

  remove(length: number): void {
    const at = this.#place(length);
    this.lengths.copyWithin(at, at + 1, this.size);
    this.size--;
  }

  #place(length: number): number {
    let low = 0;
    let high = this.size;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.lengths[middle] as number) < length) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** The cut pieces of a layout. A piece with walls at both ends counts on whichever side the search puts it. */
export class ScatterStock {
  readonly #starts: Ordered;
  readonly #ends: Ordered;
  readonly #room: number;
  whole = 0;

  /** `room` is the most that two pieces of one plank may add up to: its length minus a kerf. */
  constructor(most: number, room: number) {
    this.#starts = new Ordered(most);
    this.#ends = new Ordered(most);
    this.#room = room;
  }

  /** Adds a piece of this length (`sign` 1) or removes one (−1). */
  change(side: 'start' | 'end', length: number, sign: 1 | -1): void {
    const list = side === 'start' ? this.#starts : this.#ends;
    if (sign > 0) list.add(length);
    else list.remove(length);
  }

  /** Whole planks, plus one for every start and end piece minus the pairs that share one (see countPairs). */
  planks(): number {
    const up = this.#starts.lengths;
    const down = this.#ends.lengths;
    const most = this.#starts.size;
    let pairs = 0;
    let fitting = 0;
    for (let i = this.#ends.size - 1; i >= 0; i--) {
      const room = this.#room - (down[i] as number);
      while (fitting < most && (up[fitting] as number) <= room) fitting++;
      if (fitting > pairs) pairs++;
    }
    return this.whole + most + this.#ends.size - pairs;
  }
}

/** A broken rule outweighs any number of planks, and a plank outweighs any looks. */
export const WEIGHTS = { rule: 1000, pattern: 400, plank: 100, near: 3 } as const;

/** For a layout that already has few enough planks and has rules to fix: an extra plank must not pay off. */
export const MENDING = { rule: 200, pattern: 100, plank: 400, near: 2 } as const;

type Weights = Record<keyof typeof WEIGHTS, number>;

export class ScatterState {
  readonly floor: ScatterFloor;
  readonly weights: Weights;
  readonly starts: number[];
  /** By run: whether a piece with walls at both ends is cut like a start piece or an end piece. */
  readonly asStart: boolean[];
  readonly #stock: ScatterStock;
  /** Joint positions of each run, modulo the plank. */
  readonly #phases: number[];
  readonly #jointed: readonly boolean[];
  #planks: number | undefined;
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

  /** Swaps two runs of one length; their pieces stay the same if no strip lies beside either. */
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

  /** Cost of the rules a run takes part in; `before` leaves out those that later runs count themselves. */
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

  /** Adds a run's pieces to the stock or removes them; a piece ripped beside one of a near run takes no plank. */
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

/** The distance of a position from the nearest whole number of planks. */
function circle(difference: number, plank: number): number {
  const over = Math.abs(difference) % plank;
  return Math.min(over, plank - over);
}

const NOTHING = { start: 0, end: 0, whole: 0 };

/**
 * A run's cut pieces: 0 for a start or an end that is absent or a whole plank; a piece from wall to wall counts as a
 * start.
 */
function cutOf(length: number, start: number, plank: number): typeof NOTHING {
  if (length < plank) return { start: length, end: 0, whole: 0 };
  if (length === plank) return { start: 0, end: 0, whole: 1 };
  const end = endOf(length, start, plank);
  const whole = Math.round((length - start - end) / plank) + (start === plank ? 1 : 0) + (end === plank ? 1 : 0);
  return { start: start === plank ? 0 : start, end: end === plank ? 0 : end, whole };
}

type Random = () => number;

/** Probability of each move: turning short pieces, swapping rows, shifting chains, making one run fit another. */
const SHARES = { turn: 0.06, swap: 0.25, chain: 0.05, fit: 0.39 } as const;
/** While rules are being fixed, swapping rows of equal length and shifting whole chains keeps the plank count low. */
const MENDING_SHARES = { turn: 0.02, swap: 0.6, chain: 0.15, fit: 0.15 } as const;
const CHOOSY = 2;
/** A chain shifts by at most this many grid positions. */
const FARTHEST = 12;
/** An offcut up to this much longer than the start piece cut from it still continues a chain. */
const SLACK = GRID / 4;

/** Makes one move and returns a function that undoes it. */
export function change(state: ScatterState, random: Random): () => void {
  const { floor } = state;
  const shares = state.weights === MENDING ? MENDING_SHARES : SHARES;
  const pick = (list: readonly number[]): number => list[Math.floor(random() * list.length)] ?? 0;
  let run = pick(floor.jointed);
  // While rules are being fixed, runs that break one are picked more often.
  for (let k = 0; k < CHOOSY && state.weights === MENDING && state.faultsOf(run) < MENDING.pattern; k++)
    run = pick(floor.jointed);
  const was = state.starts[run] as number;
  let kind = random();
  if (kind < shares.turn && floor.short.length > 0) {
    const short = pick(floor.short);
    state.turn(short);
    return () => state.turn(short);
  }
  kind -= shares.turn;
  if (kind < shares.swap) {
    const other = pick(floor.alike[run] ?? []);
    const its = state.starts[other] as number;
    if (its !== was) {
      state.swap(run, other);
      return () => state.swap(run, other);
    }
  }
  kind -= shares.swap;
  if (kind < shares.chain) {
    const by = (1 + Math.floor(random() * FARTHEST)) * (random() < 0.5 ? GRID : -GRID) * (random() < 0.5 ? 1 : 0.25);
    return shift(state, run, by, random);
  }
  kind -= shares.chain;
  return moveAll(state, [run], [kind < shares.fit ? fitted(state, run, random) : pick(floor.places[run] ?? [was])]);
}

function moveAll(state: ScatterState, runs: readonly number[], to: readonly number[]): () => void {
  const were = runs.map((run) => state.starts[run] as number);
  runs.forEach((run, i) => {
    state.move(run, to[i] as number);
  });
  return () => {
    for (let i = runs.length - 1; i >= 0; i--) state.move(runs[i] as number, were[i] as number);
  };
}

function offcut({ runs, plank, kerf }: ScatterFloor, run: number, start: number): number {
  return plank - kerf - endOf(runs[run]?.length ?? 0, start, plank);
}

/** Moves runs cut from each other's offcuts by the same amount, so that each still fits the next. */
function shift(state: ScatterState, run: number, by: number, random: Random): () => void {
  const { floor, starts } = state;
  const { jointed, runs, plank, minEnd } = floor;
  const can = (i: number): boolean => endsKept(runs[i]?.length ?? 0, (starts[i] as number) + by, plank, minEnd);
  if (!can(run)) return () => {};
  const chain = [run];
  const skip = Math.floor(random() * jointed.length);
  const next = (fits: (i: number) => number): number | undefined => {
    for (let k = 0; k < jointed.length; k++) {
      const i = jointed[(k + skip) % jointed.length] as number;
      const slack = fits(i);
      if (slack >= 0 && slack <= SLACK && !chain.includes(i)) return i;
    }
    return undefined;
  };
  for (let last = run; ; ) {
    const left = offcut(floor, last, starts[last] as number);
    const after = next((i) => left - (starts[i] as number));
    if (after === undefined || !can(after)) break;
    chain.push(after);
    last = after;
  }
  for (let first = run; ; ) {
    const need = starts[first] as number;
    const before = next((i) => offcut(floor, i, starts[i] as number) - need);
    if (before === undefined || !can(before)) break;
    chain.push(before);
    first = before;
  }
  return moveAll(
    state,
    chain,
    chain.map((i) => (starts[i] as number) + by),
  );
}

/** A start piece that makes a run just fit another: cut from its offcut, or leaving an offcut for it. */
function fitted(state: ScatterState, run: number, random: Random): number {
  const { floor, starts } = state;
  const { runs, plank, kerf, minEnd, short, jointed } = floor;
  const beside = floor.near[run];
  if (beside !== undefined && random() < 0.5) return starts[beside] as number;
  const pool = random() * runs.length < short.length ? short : jointed;
  const other = pool[Math.floor(random() * pool.length)] ?? run;
  const length = runs[run]?.length ?? 0;
  const its = runs[other]?.length ?? 0;
  const isShort = its <= plank;
  const start =
    random() < 0.5
      ? isShort
        ? plank - kerf - its
        : offcut(floor, other, starts[other] as number)
      : endOf(length, plank - kerf - (isShort ? its : (starts[other] as number)), plank);
  return endsKept(length, start, plank, minEnd) ? start : (starts[run] as number);
}
