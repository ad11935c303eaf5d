/** Baseboard worked out by others, each beside its source. */

import { expect, it, test } from 'vitest';
import type { TrimResult } from '../../commands/trim/trim-results.ts';
import { feet, inches } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

async function trimTo(ask: string): Promise<TrimResult> {
  return (await replyTo(ask)).data as TrimResult;
}

// A trade page's example (reported): base for a room of 20 × 14 ft less a door of 2' 8" is 65' 4". It counts no casing.
it('a room of 20 × 14 ft less a 2′8″ door takes 65′4″', async () => {
  const { pieces } = await trimTo(`list room: 20' x 14', doors: 2'8" on wall 2, casing: 0, stock: 20 ft`);
  expect(pieces.reduce((sum, { length }) => sum + length, 0)).toBe(feet(65) + inches(4));
});

// NAVEDTRA 14044, p. 208 (published): inside corners of moulded base coped, of square-edged base butted; outside ones mitred. A coped board keeps its wall's full length.
test('coped: an inside corner has one cope and one square end, an outside one two mitres', async () => {
  const { pieces } = await trimTo(
    `list room: walk 12' right 15' right 8' right 6' left 4' right 9' right, inside-joint: cope, thickness: 1/2 in, stock: 16 ft`,
  );
  const cuts = pieces.flatMap(({ left, right }) => [left.cut, right.cut]);
  const count = (cut: string) => cuts.filter((one) => one === cut).length;
  expect([count('cope'), count('square'), count('miter')]).toEqual([5, 5, 2]);
  const grown = pieces.reduce((sum, { length }) => sum + length, 0) - feet(54);
  expect(grown).toBe(2 * inches(0.5));
});

// Fine Homebuilding (reported): a splice is cut at 30° over a stud; tan 30° = 0.57735 of the thickness is what it costs.
test('a wall of 18 ft from 12 ft sticks: the longest length that lands on a stud, and a 30° scarf', async () => {
  const { pieces } = await trimTo(`list room: 18' x 10', thickness: 1/2 in, stock: 12 ft`);
  const long = pieces.filter(({ wall }) => wall === 'room 1');
  expect(long.map(({ left, right }) => [left.cut, right.cut])).toEqual([
    ['miter', 'scarf'],
    ['scarf', 'miter'],
  ]);
  // Studs at 16, 32 … in: the ninth, at 144 in, is out of reach once the joint adds to 12 ft; the eighth is at 128 in.
  const joint = Math.round(inches(0.5) * 0.577_350_269);
  expect(long.reduce((sum, { length }) => sum + length, 0)).toBe(feet(18) + joint);
  expect(Math.abs((long[0]?.length ?? 0) - inches(128) - joint / 2)).toBeLessThanOrEqual(1);
});
