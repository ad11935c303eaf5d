/** How much cutting a plan is. */

import type { Plan } from './floor.ts';

/** Cuts across planks (one a cut piece; the last piece of a plank used up needs none) and rips along them (one a ripped piece). */
export function countCuts(plan: Plan): number {
  const used = new Map<number, { pieces: number; length: number }>();
  let rips = 0;
  for (const { rows } of plan.regions) {
    for (const { pieces } of rows) {
      for (const { plank, length, edge } of pieces) {
        const before = used.get(plank) ?? { pieces: 0, length: 0 };
        used.set(plank, { pieces: before.pieces + 1, length: before.length + length });
        if (edge !== 'full') rips++;
      }
    }
  }
  let across = 0;
  for (const { pieces, length } of used.values()) {
    const usedUp = length + plan.rules.kerf * (pieces - 1) === plan.plank.length;
    across += usedUp ? pieces - 1 : pieces;
  }
  return across + rips;
}
