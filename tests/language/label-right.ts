/** Whether a plank that was read is what a label says. */

import { readPlank } from '../../src/input/parse-plank.ts';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../../src/units/length.ts';
import type { PastedLabel } from './kept-out.ts';

const PREFERENCES = { units: 'imperial', decimal: '.', currency: 'USD' } as const;
/** A label's own two units differ by more than this only where one of them is wrong. */
const CLOSE = 0.003;

export function isRight(label: PastedLabel, plank: string | undefined): boolean {
  if (plank === undefined) return false;
  const read = readPlank(plank, { option: 'plank', preferences: PREFERENCES, note: () => undefined });
  if (!read.ok) return false;
  const { width_in, width_mm = 0, length_in, length_mm = 0, per_carton } = label;
  const width = width_in === undefined ? width_mm * TICKS_PER_MM : width_in * TICKS_PER_INCH;
  const length = length_in === undefined ? length_mm * TICKS_PER_MM : length_in * TICKS_PER_INCH;
  const { plank: board } = read.value;
  const near = (one: number, other: number): boolean => Math.abs(one - other) / other < CLOSE;
  return near(board.width, width) && near(board.length, length) && board.perCarton === per_carton;
}
