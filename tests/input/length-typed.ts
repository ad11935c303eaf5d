/** One length read for a test: as two kinds of asker would type it, with the notes it makes. */

import { readLength } from '../../src/input/parse-length.ts';
import type { LengthUnit } from '../../src/input/parse-number.ts';
import type { Preferences } from '../../src/input/reading.ts';
import { inUnits } from '../../src/text/answer-text.ts';

export const POINT: Preferences = { units: 'imperial', decimal: '.', currency: 'USD' };
export const COMMA: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };

export function readIn(text: string, preferences: Preferences, bare: LengthUnit) {
  const notes: string[] = [];
  const result = readLength(text, { option: 'room', preferences, note: (assumed) => notes.push(assumed) }, bare);
  return { result, notes };
}

export function ticksIn(text: string, preferences: Preferences = POINT, bare: LengthUnit = 'ft'): number {
  const { result } = readIn(text, preferences, bare);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0].expected}`);
  return result.value;
}

export function problemIn(text: string, preferences: Preferences = POINT, bare: LengthUnit = 'ft') {
  const { result } = readIn(text, preferences, bare);
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  return inUnits(result.problems[0], preferences.units);
}
