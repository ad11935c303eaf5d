/** Mixes of bought sticks in rising cost: what a proof walks through. */

import type { StickNumbers } from '../trim/sticks.ts';

/** Sticks of each supply, and their cost; sticks at hand are always all there. */
export interface Mix {
  readonly sticks: readonly number[];
  readonly cents: number;
}

/** More mixes than this and the proof is given up. */
const MOST_MIXES = 400_000;

/** Every mix that costs less than `below` and is long enough for all pieces, the cheapest first; undefined when too many. */
export function mixesBelow(numbers: StickNumbers, below: number): readonly Mix[] | undefined {
  const { kinds, supplies } = numbers;
  const need = kinds.reduce((sum, { size, ids }) => sum + size * ids.length, 0);
  const bought = supplies
    .map((_, supply) => supply)
    .filter((supply) => supplies[supply]?.limit === undefined && !isBeaten(numbers, supply));
  const sticks = supplies.map(({ limit }) => limit ?? 0);
  const atHand = supplies.reduce((sum, { capacity, limit }) => sum + capacity * (limit ?? 0), 0);
  const mixes: Mix[] = [];
  let tooMany = false;
  const choose = (index: number, cents: number, length: number): void => {
    const supply = bought[index];
    if (supply === undefined) {
      if (length >= need) mixes.push({ sticks: [...sticks], cents });
      if (mixes.length > MOST_MIXES) tooMany = true;
      return;
    }
    const { cents: price = 0, capacity = 0 } = supplies[supply] ?? {};
    // More sticks than pieces serve nobody.
    const most = kinds.reduce((sum, { ids }) => sum + ids.length, 0);
    for (let count = 0; count <= most && cents + count * price < below && !tooMany; count++) {
      sticks[supply] = count;
      choose(index + 1, cents + count * price, length + count * capacity);
    }
    sticks[supply] = 0;
  };
  choose(0, 0, atHand);
  return tooMany ? undefined : mixes.sort((a, b) => a.cents - b.cents || total(a) - total(b));
}

/** True when another stock to buy is at least as long for no more money. */
function isBeaten({ supplies }: StickNumbers, supply: number): boolean {
  const own = supplies[supply];
  return supplies.some(
    (other, i) =>
      own !== undefined &&
      i !== supply &&
      other.limit === undefined &&
      other.capacity >= own.capacity &&
      other.cents <= own.cents &&
      (other.capacity > own.capacity || other.cents < own.cents || i < supply),
  );
}

function total({ sticks }: Mix): number {
  return sticks.reduce((sum, count) => sum + count, 0);
}
