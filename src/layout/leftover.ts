/** What is left of the planks that a plan cuts: offcuts across, and strips along. */

import type { Piece, Plan, Row } from './floor.ts';

/** Ticks. `offcuts` longest first, of full width; `strips` as cut off, each with its width and length. */
export interface Leftover {
  readonly offcuts: readonly number[];
  readonly strips: readonly { readonly width: number; readonly length: number }[];
}

/** Offcuts no shorter than `least`, and strips no narrower than a quarter of a plank. Every cut takes a kerf. */
export function leftoverOf(plan: Plan, least: number): Leftover {
  const planks = new Map<number, { piece: Piece; row: Row }[]>();
  for (const { rows } of plan.regions) {
    for (const row of rows) {
      for (const piece of row.pieces) planks.set(piece.plank, [...(planks.get(piece.plank) ?? []), { piece, row }]);
    }
  }
  const { width, length } = plan.plank;
  const { kerf } = plan.rules;
  const offcuts: number[] = [];
  const strips: { width: number; length: number }[] = [];
  for (const cuts of planks.values()) {
    const rest = cuts.reduce((sum, { piece }) => sum - piece.length - kerf, length as number);
    const ripped = cuts.filter(({ piece }) => piece.edge !== 'full');
    // Pieces longer together than the plank share its width: nothing whole is left beside them.
    if (rest < -kerf) continue;
    if (rest >= least) offcuts.push(rest);
    for (const { piece, row } of ripped) {
      const wide = width - row.height - kerf;
      if (wide * 4 >= width) strips.push({ width: wide, length: piece.length });
    }
  }
  return { offcuts: offcuts.sort((a, b) => b - a), strips };
}
