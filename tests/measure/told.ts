/** A reader tried on a text: its value, its problems and its notes. */

import { DEFAULT_HABITS, type Habits, type Read, type Reading } from '../../src/input/reading.ts';

export const METRIC: Habits = { units: 'metric', decimal: ',', currency: 'EUR' };

export function readBy<T>(reader: (text: string, reading: Reading) => Read<T>, text: string, habits = DEFAULT_HABITS) {
  const notes: string[] = [];
  const found = reader(text, { option: 'option', habits, note: (note) => notes.push(note) });
  return { value: found.ok ? found.value : undefined, problems: found.ok ? [] : found.problems, notes };
}
