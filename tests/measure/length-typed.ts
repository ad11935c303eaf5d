/** One length read for a test: as two kinds of asker would type it, with the notes it makes. */

import { readLength } from '../../src/input/parse-length.ts';
import type { LengthUnit } from '../../src/input/parse-number.ts';
import type { Habits } from '../../src/input/reading.ts';

export const POINT: Habits = { units: 'imperial', decimal: '.', currency: 'USD' };
export const COMMA: Habits = { units: 'metric', decimal: ',', currency: 'EUR' };

export function readIn(text: string, habits: Habits, bare: LengthUnit) {
  const notes: string[] = [];
  const result = readLength(text, { option: 'room', habits, note: (assumed) => notes.push(assumed) }, bare);
  return { result, notes };
}

export function ticksIn(text: string, habits: Habits = POINT, bare: LengthUnit = 'ft'): number {
  const { result } = readIn(text, habits, bare);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0].expected}`);
  return result.value;
}

export function problemIn(text: string, habits: Habits = POINT, bare: LengthUnit = 'ft') {
  const { result } = readIn(text, habits, bare);
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  return result.problems[0];
}
