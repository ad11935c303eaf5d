/** The most valuable stick by a table over lengths: exact and fast where sizes share a coarse unit, such as 1/16 in. */

import { type Filled, mostValuableByValue } from './stick-fill.ts';

/** A table longer than this costs more than lists of states. */
const LONGEST_TABLE = 40_000;

/** As mostValuable in stick-fill, by whichever way is quicker; undefined when neither can do it. */
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
