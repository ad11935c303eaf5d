/** Saw marks of a stick: each follows the one before by its own length and the kerf between. */

import { expect, test } from 'vitest';
import { drawSticks } from '../../src/drawing/trim-drawings.ts';
import { sawMarks } from '../../src/trim/sticks.ts';
import { inches } from '../../src/units/length.ts';
import { IMPERIAL } from './drawn-rooms.ts';

const pieces = [
  { id: 'a', length: inches(40), kerf: inches(0.125) },
  { id: 'b', length: inches(30), kerf: inches(0.25) },
  { id: 'c', length: inches(20), kerf: inches(0.125) },
];
const stick = { stock: 0, pieces: ['a', 'b', 'c'], leftover: inches(96 - 0.5 - 90 - 0.5) };

// Reckoned by hand: 1/2 + 40 = 40 1/2; + 1/8 + 30 = 70 5/8; + 1/4 + 20 = 90 7/8.
test('marks from the squared end: 40 1/2, 70 5/8, 90 7/8', () => {
  const marks = sawMarks(stick, new Map(pieces.map((piece) => [piece.id, piece])), inches(0.5));
  expect(marks.map(({ to }) => to)).toEqual([inches(40.5), inches(70.625), inches(90.875)]);
  const [sheet] = drawSticks(
    { sticks: [stick], stock: [{ length: inches(96), cents: 0 }], pieces, endTrim: inches(0.5) },
    IMPERIAL,
  );
  const texts = sheet?.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])) ?? [];
  expect(texts.filter((text) => /^\d.*"$/.test(text))).toEqual(['1/2"', '40 1/2"', '70 5/8"', '90 7/8"']);
});

test('a stick with an unknown piece is a fault', () => {
  expect(() => sawMarks(stick, new Map(), 0)).toThrow(RangeError);
});
