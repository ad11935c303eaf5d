/** Rooms with a wall measured wrong: the areas that simple arithmetic gives. */

import { describe, expect, it } from 'vitest';
import { variants } from '../../src/layout/doubt.ts';
import { doubleArea, isRectilinear, type Outline } from '../../src/units/geometry.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { region } from '../outside/laid.ts';

const rectangle: Outline = [
  [0, 0],
  [100, 0],
  [100, 60],
  [0, 60],
];

describe('doubted walls', () => {
  it('of a rectangle are its two sides, and both at once', () => {
    const areas = variants([region('room', rectangle)], 4).map(({ moved, regions }) => [
      moved?.wall,
      Number(doubleArea(regions[0]?.outline ?? [])) / 2,
    ]);
    expect(areas).toEqual([
      [undefined, 104 * 64],
      [0, 100 * 64],
      [1, 104 * 60],
    ]);
  });

  it('can be shorter, but never turn inside out', () => {
    const areas = variants([region('room', rectangle)], -70).map(({ moved, regions }) => [
      moved?.wall,
      Number(doubleArea(regions[0]?.outline ?? [])) / 2,
    ]);
    expect(areas).toEqual([[1, 30 * 60]]);
  });

  it('keep every room rectilinear, and change its area by the wall’s length × the move', () => {
    for (const { name, outline } of randomRooms(7, 40)) {
      for (const { moved, regions } of variants([region(name, outline)], 4064)) {
        const changed = regions[0]?.outline ?? [];
        expect(isRectilinear(changed)).toBe(true);
        if (!moved) continue;
        const [ax, ay] = outline[moved.wall] ?? [0, 0];
        const [bx, by] = outline[(moved.wall + 1) % outline.length] ?? [0, 0];
        const length = Math.abs(bx - ax) + Math.abs(by - ay);
        expect(doubleArea(changed) - doubleArea(outline)).toBe(2n * BigInt(length) * 4064n);
      }
    }
  });
});
