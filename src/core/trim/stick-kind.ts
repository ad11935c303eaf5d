/** A stick task in whole numbers: pieces of one size together, stock of one length together, capacities with their kerf. */

import type { StickTask } from './stick-task.ts';

/** Pieces alike: `size` is length + kerf, `ids` the pieces, longest pieces first among the kinds. */
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
 * The numbers of a task. Every piece of a stick but the last needs its kerf, so a stick takes Σ(length + kerf) ≤ length − end
 * trim + the least kerf of its pieces; with the least kerf of all pieces this holds for every stick and is exact where kerfs are
 * alike. Throws a RangeError when a piece fits no stock.
 */
export function numbersOf({ pieces, stock, endTrim }: StickTask): StickNumbers {
  const spare = pieces.length === 0 ? 0 : Math.min(...pieces.map(({ kerf }) => kerf));
  const bySize = new Map<number, string[]>();
  for (const { id, length, kerf } of pieces) {
    const same = bySize.get(length + kerf);
    if (same) same.push(id);
    else bySize.set(length + kerf, [id]);
  }
  const kinds = [...bySize].map(([size, ids]) => ({ size, ids })).sort((a, b) => b.size - a.size);
  const supplies = stock
    .map(({ length, cents, have }, index) => ({
      stock: index,
      capacity: length - endTrim + spare,
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
