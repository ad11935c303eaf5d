/** What the tests of rooms and planks share: asks read with each kind of habits, and the figures that come of them. */

import { expect } from 'vitest';
import type { Preferences, Read, Reading } from '../../src/input/reading.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import type { Problem } from '../../src/reply/reply.ts';

export const FEET: Preferences = { units: 'imperial', decimal: '.', currency: 'USD' };
export const METRES: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };

// Written out here: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly (NIST, U.S. Survey Foot, 2022), a tick being 3.125 µm.
export const IN = 25_400 / 3.125;
export const FT = 304_800 / 3.125;
export const MM = 1000 / 3.125;
export const M = 1_000_000 / 3.125;

/** A reading whose notes are kept. */
export function kept(option: string, preferences: Preferences): Reading & { readonly notes: string[] } {
  const notes: string[] = [];
  return { option, preferences, notes, note: (assumed) => notes.push(assumed) };
}

/** The value of an ask that must be read, with the notes on it. */
export function given<T>(readText: (text: string, reading: Reading) => Read<T>, text: string, preferences = FEET) {
  const reading = kept('room', preferences);
  const result = readText(text, reading);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.problems)}`);
  return { value: result.value, notes: reading.notes };
}

/** The problems of an ask that must not be read; each names the option, and its fix is read where there is one. */
export function problemsIn<T>(
  readText: (text: string, reading: Reading) => Read<T>,
  text: string,
  preferences = FEET,
): readonly Problem[] {
  const reading = kept('room', preferences);
  const result = readText(text, reading);
  if (result.ok) throw new Error(`${text} was read`);
  expect(reading.notes).toEqual([]);
  for (const { option, expected, fix } of result.problems) {
    expect(option).toBe('room');
    expect(expected).not.toBe('');
    if (fix !== undefined)
      expect(readText(fix, kept('room', preferences)), `fix of ${JSON.stringify(text)}: ${fix}`).toMatchObject({
        ok: true,
      });
  }
  return result.problems;
}

/** Rooms as name and corners, in multiples of `unit`. */
export function cornersOf(text: string, unit: number, preferences = FEET): Record<string, number[][]> {
  const { rooms } = given(readRooms, text, preferences).value;
  return Object.fromEntries(rooms.map(({ name, outline }) => [name, outline.map((p) => p.map((x) => x / unit))]));
}

/** A rectangle at (0,0). */
export function box(x: number, y: number): number[][] {
  return [
    [0, 0],
    [x, 0],
    [x, y],
    [0, y],
  ];
}
