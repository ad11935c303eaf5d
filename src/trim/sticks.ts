/** Cutting sticks: the pieces, the stock to buy or on hand, and a first plan. Lengths in ticks, money in cents. */

import { type Length, ticks } from '../units/length.ts';

/** A piece to cut: its long-point length and the kerf of the single cut that separates it from the next. */
export interface StickPiece {
  readonly id: string;
  readonly length: number;
  /** Kerf measured along the stick; it grows with the setting of the cut. */
  readonly kerf: number;
}

/** A stock length. `have` sticks are on hand and free; without `have`, any number can be bought at `cents` each. */
export interface Stock {
  readonly length: number;
  readonly cents: number;
  readonly have?: number;
}

/** `endTrim` is cut off each stick first. The last piece of a stick needs no kerf behind it. */
export interface StickTask {
  readonly pieces: readonly StickPiece[];
  readonly stock: readonly Stock[];
  readonly endTrim: number;
}

export interface Stick {
  readonly stock: number;
  readonly pieces: readonly string[];
  readonly leftover: number;
}

/**
 * Sticks that yield every piece once. No way to cut the pieces costs less than `bound`; `proven` when the cost equals
 * it.
 */
export interface StickPlan {
  readonly sticks: readonly Stick[];
  readonly cents: number;
  readonly bound: number;
  readonly proven: boolean;
}

/** Identical pieces: `size` is length + the widest kerf. Kinds are sorted longest first. */
interface Kind {
  readonly size: number;
  readonly ids: readonly string[];
}

/**
 * Identical stock. `capacity` = length − end trim + the one kerf the last piece doesn't need; `limit` undefined means
 * any number.
 */
interface Supply {
  readonly stock: number;
  readonly capacity: number;
  readonly cents: number;
  readonly limit: number | undefined;
}

export interface StickNumbers {
  readonly kinds: readonly Kind[];
  readonly supplies: readonly Supply[];
}

/**
 * Converts a task to integers. Every piece of a stick except the last needs its kerf. Each counts with the widest kerf
 * K, so a stick takes Σ(length + K) ≤ length − end trim + K. That holds whichever piece comes last, lets a single piece
 * fill a stick completely, and is exact when kerfs are equal; otherwise it wastes at most K − kerf per cut between two
 * pieces. Throws a RangeError if a piece fits no stock.
 */
export function numbersOf({ pieces, stock, endTrim }: StickTask): StickNumbers {
  const widest = Math.max(0, ...pieces.map(({ kerf }) => kerf));
  const bySize = new Map<number, string[]>();
  for (const { id, length } of pieces) {
    const same = bySize.get(length + widest);
    if (same) same.push(id);
    else bySize.set(length + widest, [id]);
  }
  const kinds = [...bySize].map(([size, ids]) => ({ size, ids })).sort((a, b) => b.size - a.size);
  const supplies = stock
    .map(({ length, cents, have }, index) => ({
      stock: index,
      capacity: length - endTrim + widest,
      cents: have === undefined ? cents : 0,
      limit: have,
    }))
    .filter(({ capacity, limit }) => capacity > 0 && limit !== 0);
  const longest = Math.max(0, ...supplies.filter(({ limit }) => limit === undefined).map(({ capacity }) => capacity));
  const largest = kinds[0]?.size ?? 0;
  if (largest > longest && !supplies.some(({ capacity }) => capacity >= largest)) {
    throw new RangeError(`a piece of ${largest} ticks fits no stock`);
  }
  return { kinds, supplies };
}

// The most valuable stick: an exact knapsack over kinds of pieces, keeping only undominated states.

export type Counts = readonly number[];

interface Filled {
  readonly value: number;
  readonly counts: Counts;
}

interface State {
  readonly size: number;
  readonly value: number;
  readonly last: number;
  readonly before: State | undefined;
}

/** Beyond this many states the search gives up and returns undefined. */
const MOST_STATES = 200_000;

/**
 * The most valuable stick for each capacity: max Σ valueᵢ·aᵢ subject to Σ sizeᵢ·aᵢ ≤ capacity and aᵢ ≤ mostᵢ. Exact for
 * whole numbers; values must not be negative. Undefined when the task is too large.
 */
export function mostValuableByValue(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacities: readonly number[],
): readonly Filled[] | undefined {
  const largest = Math.max(0, ...capacities);
  let states: State[] = [{ size: 0, value: 0, last: -1, before: undefined }];
  for (let kind = 0; kind < sizes.length; kind++) {
    const [size, value] = [sizes[kind] ?? 0, values[kind] ?? 0];
    if (value <= 0 || size > largest) continue;
    for (let copy = 0; copy < (most[kind] ?? 0); copy++) {
      const before = states.length;
      states = withOneMore(states, kind, size, value, largest, copy);
      if (states.length > MOST_STATES) return undefined;
      if (states.length === before && states.every(({ last }) => last !== kind)) break;
    }
  }
  return capacities.map((capacity) => {
    let best = states[0];
    for (const state of states) {
      if (state.size > capacity) break;
      best = state;
    }
    return { value: best?.value ?? 0, counts: countsOf(best, sizes.length) };
  });
}

/**
 * States with one more of a kind (from those that hold `copy` of it), without those that are larger and worth no more.
 */
function withOneMore(
  states: readonly State[],
  kind: number,
  size: number,
  value: number,
  largest: number,
  copy: number,
): State[] {
  const more: State[] = [];
  for (const state of states) {
    if (state.size + size > largest) break;
    if (copy === 0 || (state.last === kind && copiesOf(state, kind) === copy)) {
      more.push({ size: state.size + size, value: state.value + value, last: kind, before: state });
    }
  }
  const merged: State[] = [];
  let worth = -1;
  let [i, j] = [0, 0];
  for (;;) {
    const [a, b] = [states[i], more[j]];
    const next = !b || (a && (a.size < b.size || (a.size === b.size && a.value >= b.value))) ? a : b;
    if (!next) return merged;
    if (next === a) i++;
    else j++;
    if (next.value > worth) {
      merged.push(next);
      worth = next.value;
    }
  }
}

function copiesOf(state: State, kind: number): number {
  let copies = 0;
  for (let at: State | undefined = state; at && at.last === kind; at = at.before) copies++;
  return copies;
}

function countsOf(state: State | undefined, kinds: number): Counts {
  const counts = new Array<number>(kinds).fill(0);
  for (let at = state; at && at.last >= 0; at = at.before) counts[at.last] = (counts[at.last] ?? 0) + 1;
  return counts;
}

// An instant, valid plan: best-fit decreasing, then each bought stick as short as its pieces allow.

export interface Filling {
  readonly supply: number;
  readonly counts: readonly number[];
}

/** Best-fit decreasing. The bound is the cheapest stock by length, so it is rarely proven. Throws like numbersOf. */
export function firstSticks(task: StickTask): StickPlan {
  const numbers = numbersOf(task);
  const fillings = bestFit(numbers);
  return stickPlan(task, numbers, fillings, lengthBound(numbers));
}

/**
 * Best-fit decreasing: leftovers first, then the stock with the lowest cost per tick; bought sticks shrink to the
 * cheapest that holds their pieces.
 */
export function bestFit({ kinds, supplies }: StickNumbers): readonly Filling[] {
  const open: { supply: number; rest: number; counts: number[] }[] = [];
  const left = supplies.map(({ limit }) => limit ?? Number.POSITIVE_INFINITY);
  const start = (supply: number): void => {
    left[supply] = (left[supply] ?? 0) - 1;
    open.push({ supply, rest: supplies[supply]?.capacity ?? 0, counts: new Array<number>(kinds.length).fill(0) });
  };
  supplies.forEach(({ limit }, supply) => {
    for (let i = 0; limit !== undefined && i < limit; i++) start(supply);
  });
  kinds.forEach(({ size, ids }, kind) => {
    for (let copy = 0; copy < ids.length; copy++) {
      let best = open.filter(({ rest }) => rest >= size).sort((a, b) => a.rest - b.rest)[0];
      if (!best) {
        const supply = cheapestATick(supplies, left, size);
        start(supply);
        best = open[open.length - 1];
      }
      if (!best) throw new RangeError(`a piece of ${size} ticks fits no stock`);
      best.rest -= size;
      best.counts[kind] = (best.counts[kind] ?? 0) + 1;
    }
  });
  const used = open.filter(({ counts }) => counts.some((count) => count > 0));
  return used.map(({ supply, rest, counts }) => {
    const filled = (supplies[supply]?.capacity ?? 0) - rest;
    return { supply: supplies[supply]?.limit === undefined ? cheapestFor(supplies, filled) : supply, counts };
  });
}

function cheapestATick(supplies: readonly Supply[], left: readonly number[], size: number): number {
  const fitting = supplies
    .map((supply, index) => ({ supply, index }))
    .filter(({ supply, index }) => supply.capacity >= size && (left[index] ?? 0) > 0);
  const [best] = fitting.sort(
    (a, b) =>
      a.supply.cents * b.supply.capacity - b.supply.cents * a.supply.capacity || b.supply.capacity - a.supply.capacity,
  );
  if (!best) throw new RangeError(`a piece of ${size} ticks fits no stock`);
  return best.index;
}

export function cheapestFor(supplies: readonly Supply[], filled: number): number {
  let best = -1;
  supplies.forEach((supply, index) => {
    if (supply.limit !== undefined || supply.capacity < filled) return;
    const now = supplies[best];
    if (!now || supply.cents < now.cents || (supply.cents === now.cents && supply.capacity < now.capacity))
      best = index;
  });
  if (best < 0) throw new RangeError(`no stock holds ${filled} ticks`);
  return best;
}

/** The lowest cost by length alone: what leftovers don't hold, at the lowest price per tick. */
export function lengthBound({ kinds, supplies }: StickNumbers): number {
  const need = kinds.reduce((sum, { size, ids }) => sum + size * ids.length, 0);
  const atHand = supplies.reduce((sum, { capacity, limit }) => sum + capacity * (limit ?? 0), 0);
  const bought = supplies.filter(({ limit }) => limit === undefined);
  if (need <= atHand || bought.length === 0) return 0;
  return Math.ceil(Math.min(...bought.map(({ cents, capacity }) => ((need - atHand) * cents) / capacity)) - 1e-6);
}

/**
 * Fillings as a plan: longest pieces first on each stick, and sticks in order of their longest pieces, so that a board
 * cut wrong can still yield a shorter one.
 */
export function stickPlan(
  task: StickTask,
  { kinds, supplies }: StickNumbers,
  fillings: readonly Filling[],
  bound: number,
): StickPlan {
  const lengths = new Map(task.pieces.map((piece) => [piece.id, piece]));
  const next = kinds.map(() => 0);
  const sticks = fillings.map(({ supply, counts }): Stick => {
    const ids = counts.flatMap((count, kind) => {
      const from = next[kind] ?? 0;
      next[kind] = from + count;
      return (kinds[kind] as Kind).ids.slice(from, from + count);
    });
    const pieces = ids.flatMap((id) => lengths.get(id) ?? []);
    const stock = supplies[supply]?.stock ?? 0;
    const used = pieces.reduce((sum, { length, kerf }) => sum + length + kerf, 0);
    const rest = (task.stock[stock]?.length ?? 0) - task.endTrim - used;
    // A last piece that ends exactly at the stick's end needs no cut, so it costs no kerf.
    return { stock, pieces: ids, leftover: Math.max(0, rest) };
  });
  const longest = ({ pieces: [first] }: Stick): number => lengths.get(first ?? '')?.length ?? 0;
  sticks.sort((a, b) => longest(b) - longest(a));
  const cents = fillings.reduce((sum, { supply }) => sum + (supplies[supply]?.cents ?? 0), 0);
  const least = Math.min(bound, cents);
  return { sticks, cents, bound: least, proven: least === cents };
}

// The most valuable stick from a table over lengths: exact, and fast when sizes share a coarse unit such as 1/16 in.

/** Beyond this length the list of states is faster. */
const LONGEST_TABLE = 40_000;

/** Same as `mostValuableByValue`, by whichever method is faster; undefined when neither can do it. */
export function mostValuableByTable(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacities: readonly number[],
): readonly Filled[] | undefined {
  const unit = sizes.reduce(greatestCommonDivisor, 0) || 1;
  const units = capacities.map((capacity) => Math.floor(capacity / unit));
  if (Math.max(0, ...units) > LONGEST_TABLE) return mostValuableByValue(sizes, values, most, capacities);
  return byTable(
    sizes.map((size) => size / unit),
    values,
    most,
    units,
  );
}

function byTable(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacities: readonly number[],
): readonly Filled[] {
  const longest = Math.max(0, ...capacities);
  const worth = new Float64Array(longest + 1);
  const taken: { kind: number; marks: Uint8Array }[] = [];
  sizes.forEach((size, kind) => {
    const value = values[kind] ?? 0;
    const copies = Math.min(most[kind] ?? 0, Math.floor(longest / size));
    for (let copy = 0; value > 0 && copy < copies; copy++) {
      const marks = new Uint8Array(longest + 1);
      for (let room = longest; room >= size; room--) {
        const with1 = (worth[room - size] as number) + value;
        if (with1 > (worth[room] as number)) {
          worth[room] = with1;
          marks[room] = 1;
        }
      }
      taken.push({ kind, marks });
    }
  });
  return capacities.map((capacity) => {
    const counts = new Array<number>(sizes.length).fill(0);
    let room = capacity;
    for (const { kind, marks } of [...taken].reverse()) {
      if (!marks[room]) continue;
      counts[kind] = (counts[kind] ?? 0) + 1;
      room -= sizes[kind] ?? 0;
    }
    return { value: worth[capacity] ?? 0, counts };
  });
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** A piece on its stick: it starts at `from` and its far long point is at `to`, where the near side of the saw cuts. */
interface SawMark {
  readonly id: string;
  readonly from: Length;
  readonly to: Length;
}

/**
 * Marks in cutting order: each piece starts where the previous one and its kerf end. Throws a RangeError for an unknown
 * piece.
 */
export function sawMarks(stick: Stick, pieces: ReadonlyMap<string, StickPiece>, endTrim: number): readonly SawMark[] {
  let from = endTrim;
  return stick.pieces.map((id) => {
    const piece = pieces.get(id);
    if (!piece) throw new RangeError(`no piece ${id}`);
    const mark = { id, from: ticks(from), to: ticks(from + piece.length) };
    from = mark.to + piece.kerf;
    return mark;
  });
}
