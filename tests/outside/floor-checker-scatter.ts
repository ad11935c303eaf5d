/** Scattered joints as an outsider sees them: none in line with one two rows on, no three rows that step alike. */

import type { FloorData } from './floor-checker-data.ts';
import { jointsOf, type RowRuns, type Run } from './floor-checker-rows.ts';

/** A joint that is not scattered, in the upper of three rows. */
export interface Unscattered {
  readonly row: number;
  readonly at: number;
}

/**
 * In line: a joint and one two rows before nearer than an inch (for short planks a 24th of their length), with one run of the
 * row between passing both. A stair: three joints in three rows, each step at most half a plank, the steps differing by less.
 */
export function unscattered({ plank, ticksPerInch }: FloorData, rows: readonly RowRuns[]): Unscattered[] {
  const close = Math.min(ticksPerInch, Math.floor(plank.length / 24));
  const found: Unscattered[] = [];
  rows.forEach(({ runs }, row) => {
    const middles = rows[row - 1]?.runs ?? [];
    const lowers = rows[row - 2]?.runs ?? [];
    for (const upper of runs) {
      for (const at of jointsOf(upper)) {
        const bad = middles.some((middle) =>
          lowers.some((lower) => meets(middle, upper) && meets(lower, middle) && isBad(at, middle, lower)),
        );
        if (bad) found.push({ row, at });
      }
    }
  });
  return found;

  function isBad(at: number, middle: Run, lower: Run): boolean {
    const inside = (u: number): boolean => u > middle.extent[0] && u < middle.extent[1];
    return jointsOf(lower).some(
      (low) =>
        (Math.abs(low - at) < close && inside(low) && inside(at)) ||
        jointsOf(middle).some((mid) => {
          const [first, second] = [mid - low, at - mid];
          return Math.max(Math.abs(first), Math.abs(second)) <= plank.length / 2 && Math.abs(first - second) < close;
        }),
    );
  }
}

function meets(one: Run, other: Run): boolean {
  return one.extent[0] < other.extent[1] && other.extent[0] < one.extent[1];
}
