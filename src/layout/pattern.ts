/** Where a pattern puts the joints of each row: one line for the whole floor, stepped from row to row. */

import { ticks } from '../units/length.ts';
import type { Pattern, Plank } from './floor.ts';

/** Joints of row r lie at base + direction × (r mod rows) × step, a plank apart. */
export interface JointLine {
  readonly step: number;
  readonly rows: number;
}

/** The line of a pattern, or undefined for one that has none (offcut-first, scattered). */
export function jointLine(pattern: Pattern, plank: Pick<Plank, 'length'>): JointLine | undefined {
  switch (pattern.name) {
    case 'stair-step':
      return { step: pattern.step, rows: pattern.rows };
    case 'half':
      return { step: Math.floor(plank.length / 2), rows: 2 };
    case 'thirds':
      return { step: Math.floor(plank.length / 3), rows: 3 };
    case 'offcut-first':
    case 'scattered':
      return undefined;
  }
}

/** The least distance between joints of touching rows of a line, the row where it starts over included. */
export function lineStagger({ step, rows }: JointLine, plank: number): number {
  const apart = (shift: number): number => {
    const rest = ((shift % plank) + plank) % plank;
    return Math.min(rest, plank - rest);
  };
  if (rows === 1) return 0;
  return Math.min(apart(step), apart((rows - 1) * step));
}

/** Rows before the stair starts over, tried in this order until the restart keeps the stagger. */
const ROWS = [5, 4, 6, 3, 7, 8, 2];

/**
 * A stair-step of `step` whose restart keeps `stagger` where one of 2 to 8 rows does; else five rows (common practice).
 * With a 24 in plank and a 6 in step row 6 would fall on row 5, so four rows are taken.
 */
export function stairStep(
  plank: Pick<Plank, 'length'>,
  step: number,
  stagger: number,
): Extract<Pattern, { name: 'stair-step' }> {
  const rows = ROWS.find((count) => lineStagger({ step, rows: count }, plank.length) >= stagger) ?? 5;
  return { name: 'stair-step', step: ticks(step), rows };
}
