/** An instant, valid way to cut sticks: best-fit decreasing, then each bought stick as short as its pieces allow. */

import { type Kind, numbersOf, type StickNumbers, type Supply } from './stick-kind.ts';
import type { Stick, StickPlan, StickTask } from './stick-task.ts';

/** A stick being filled: its supply and how often each kind is cut from it. */
export interface Filling {
  readonly supply: number;
  readonly counts: readonly number[];
}

/** Best-fit decreasing; the bound is the cheapest stock by length, so it is rarely proven. Throws a RangeError as numbersOf does. */
export function firstSticks(task: StickTask): StickPlan {
  const numbers = numbersOf(task);
  const fillings = bestFit(numbers);
  return planOf(task, numbers, fillings, lengthBound(numbers));
}

/** Best-fit decreasing into leftovers first, then the stock with the least cost a tick; sticks bought shrink to the cheapest that holds them. */
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

/** The cheapest stock to buy that holds as much; the shortest among equals. */
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

/** The least cost by length alone: what leftovers do not hold, at the least cents a tick. */
export function lengthBound({ kinds, supplies }: StickNumbers): number {
  const need = kinds.reduce((sum, { size, ids }) => sum + size * ids.length, 0);
  const atHand = supplies.reduce((sum, { capacity, limit }) => sum + capacity * (limit ?? 0), 0);
  const bought = supplies.filter(({ limit }) => limit === undefined);
  if (need <= atHand || bought.length === 0) return 0;
  return Math.ceil(Math.min(...bought.map(({ cents, capacity }) => ((need - atHand) * cents) / capacity)) - 1e-6);
}

/**
 * Fillings as a plan: longest pieces first on each stick, and the sticks in the order of their longest pieces, so that a board
 * cut wrong can still give a shorter one.
 */
export function planOf(
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
    // A last piece that ends at the stick's end needs no cut; then its kerf is not there to lose.
    return { stock, pieces: ids, leftover: Math.max(0, rest) };
  });
  const longest = ({ pieces: [first] }: Stick): number => lengths.get(first ?? '')?.length ?? 0;
  sticks.sort((a, b) => longest(b) - longest(a));
  const cents = fillings.reduce((sum, { supply }) => sum + (supplies[supply]?.cents ?? 0), 0);
  const least = Math.min(bound, cents);
  return { sticks, cents, bound: least, proven: least === cents };
}
