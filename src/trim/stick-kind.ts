/** A stick task in whole numbers: pieces of one size together, stock of one length together, capacities with their kerf. */

import type { StickTask } from './stick-task.ts';

/** Pieces alike: `size` is length + the widest kerf, `ids` the pieces, longest pieces first among the kinds. */
export interface Kind {
  readonly size: number;
  readonly ids: readonly string[];
}

/** Stock alike. `capacity` = length − end trim + the one kerf that the last piece does not need; `limit` undefined: any number. */
export interface Supply {
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
 * The numbers of a task. Every piece of a stick but the last needs its kerf; each counts with the widest kerf K of all, so
 * that a stick takes Σ(length + K) ≤ length − end trim + K. That holds whichever piece comes last, lets one piece fill a
 * stick to its end, and is exact where kerfs are alike; else it asks for at most K − kerf more at each cut between two
 * pieces. Throws a RangeError when a piece fits no stock.
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
