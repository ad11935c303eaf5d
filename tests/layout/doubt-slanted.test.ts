/** Rooms with slanted walls as they might be if a wall was measured wrong. */

import { describe, expect, it } from 'vitest';
import { variants } from '../../src/layout/doubt.ts';
import { doubleArea, type Outline } from '../../src/units/geometry.ts';

const clipped: Outline = [
  [0, 0],
  [4000, 0],
  [4000, 2000],
  [3000, 3000],
  [0, 3000],
];
const region = { name: 'den', outline: clipped, holes: [], openings: [] };

describe('a clipped corner in doubt', () => {
  it('stands further out by just as much, its corners sliding along the walls beside it', () => {
    const pushed = variants([region], 100).find(({ moved }) => moved?.wall === 2)?.regions[0]?.outline;
    // A diagonal 100 further out meets the walls 100·√2 = 141 further on.
    expect(pushed).toEqual([
      [0, 0],
      [4000, 0],
      [4000, 2141],
      [3141, 3000],
      [0, 3000],
    ]);
  });

  it('grows by half all round: area by girth times that, and a little at the corners', () => {
    const grown = variants([region], 20).find(({ moved }) => !moved)?.regions[0]?.outline ?? [];
    const girth = 4000 + 2000 + Math.SQRT2 * 1000 + 3000 + 3000;
    const more = Number(doubleArea(grown) - doubleArea(clipped)) / 2;
    // Corners of a convex room add Σ tan(turn ÷ 2) · 10²: three of 90° and two of 45°.
    expect(more).toBeCloseTo(girth * 10 + (3 + 2 * Math.tan(Math.PI / 8)) * 100, -4);
    expect(Math.abs(more - girth * 10 - 383)).toBeLessThan(6000);
  });
});
