/** One sum read for a test: as two kinds of asker would type it, with the notes it makes. */

import type { LengthUnit } from '../../src/input/parse-number.ts';
import { readTape } from '../../src/input/parse-tape.ts';
import type { Preferences } from '../../src/input/reading.ts';

export const POINT: Preferences = { units: 'imperial', decimal: '.', currency: 'USD' };
export const COMMA: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };
export const [INCH, FOOT, METRE] = [8128, 97_536, 320_000];

export function tapeIn(text: string, preferences: Preferences = POINT, bare: LengthUnit = 'in') {
  const notes: string[] = [];
  const result = readTape(text, { option: 'sum', preferences, note: (assumed) => notes.push(assumed) }, bare);
  return { result, notes };
}

export function valueIn(text: string, preferences: Preferences = POINT, bare: LengthUnit = 'in') {
  const { result } = tapeIn(text, preferences, bare);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0].expected}`);
  return result.value;
}

export function problemIn(text: string, preferences: Preferences = POINT) {
  const { result } = tapeIn(text, preferences);
  if (result.ok) throw new Error(`${text} was read`);
  return result.problems[0];
}
