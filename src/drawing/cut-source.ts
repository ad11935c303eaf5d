/** Where each piece of a floor is cut from, in laying order: the numbers are those of the laying guide. */

import type { Piece, Plan } from '../layout/floor.ts';

/**
 * `whole`: no cut. `new`: from a new plank, nothing of it is laid later. `kept`: from a new plank whose rest is laid later.
 * `reused`: from the rest of a plank begun before. The number is told of the last two.
 */
export interface CutSource {
  readonly kind: 'whole' | 'new' | 'kept' | 'reused';
  readonly number?: number;
}

/** The source of every piece. */
export function cutSources(plan: Plan): ReadonlyMap<Piece, CutSource> {
  const pieces = plan.regions.flatMap(({ rows }) => rows.flatMap((row) => row.pieces));
  const uses = new Map<number, number>();
  for (const { plank } of pieces) uses.set(plank, (uses.get(plank) ?? 0) + 1);
  const begun = new Set<number>();
  return new Map(
    pieces.map((piece): readonly [Piece, CutSource] => {
      const { plank, part } = piece;
      const first = !begun.has(plank);
      begun.add(plank);
      if (part === 'whole') return [piece, { kind: 'whole' }];
      if ((uses.get(plank) ?? 0) < 2) return [piece, { kind: 'new' }];
      return [piece, { kind: first ? 'kept' : 'reused', number: plank }];
    }),
  );
}

/** How many planks are begun in each region: they add up to the planks of the plan. */
export function planksBegun(plan: Plan): readonly number[] {
  const begun = new Set<number>();
  return plan.regions.map(({ rows }) => {
    const before = begun.size;
    for (const row of rows) for (const { plank } of row.pieces) begun.add(plank);
    return begun.size - before;
  });
}
