/** A reader tried on a text: its value, its problems and its notes. */

import { DEFAULT_PREFERENCES, type Preferences, type Read, type Reading } from '../../src/input/reading.ts';

export const METRIC: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };

export function readBy<T>(
  reader: (text: string, reading: Reading) => Read<T>,
  text: string,
  preferences = DEFAULT_PREFERENCES,
) {
  const notes: string[] = [];
  const found = reader(text, { option: 'option', preferences, note: (note) => notes.push(note) });
  return { value: found.ok ? found.value : undefined, problems: found.ok ? [] : found.problems, notes };
}
