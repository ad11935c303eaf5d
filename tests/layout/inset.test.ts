/** The gap taken off a room, against a general polygon clipper (polygon-clipping). */

import { describe, expect, it } from 'vitest';
import { inset } from '../../src/layout/covered-area.ts';
import { slabArea, slabsOf } from '../../src/layout/slab.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { areaByClipper, differingArea, insetByClipper, polygonOf } from '../outside/polygon-oracle.ts';

const rooms = randomRooms(11, 80);
const island: Outline = [
  [20_000, 20_000],
  [20_000, 40_000],
  [60_000, 40_000],
  [60_000, 20_000],
];

describe('inset', () => {
  it.each([inches(0.25), inches(0.375), inches(7)])('by %s ticks leaves what the clipper leaves', (gap) => {
    for (const { outline } of rooms) {
      const ours = inset(outline, [], gap);
      const theirs = insetByClipper({ outline, holes: [] }, gap);
      expect(differingArea([polygonOf({ outline: ours[0] ?? [], holes: ours.slice(1) })], theirs)).toBe(0n);
      expect(slabArea(slabsOf(ours))).toBe(areaByClipper(theirs));
    }
  });

  it('grows holes', () => {
    const outline: Outline = [
      [0, 0],
      [200_000, 0],
      [200_000, 100_000],
      [0, 100_000],
    ];
    const theirs = insetByClipper({ outline, holes: [island] }, 2032);
    expect(slabArea(slabsOf(inset(outline, [island], 2032)))).toBe(areaByClipper(theirs));
  });

  it('leaves nothing of a room as narrow as two gaps', () => {
    const narrow: Outline = [
      [0, 0],
      [100_000, 0],
      [100_000, 4064],
      [0, 4064],
    ];
    expect(slabsOf(inset(narrow, [], 2032))).toEqual([]);
  });
});
