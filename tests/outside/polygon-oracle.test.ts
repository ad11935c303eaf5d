/** Two independent insets against each other (a general clipper, and the floor checker's exact grid), and areas by hand. */

import { describe, expect, it } from 'vitest';
import { randomRooms } from '../bench/random-rooms.ts';
import { areaWithin, groundOf } from './floor-checker-ground.ts';
import { areaByClipper, differingArea, insetByClipper, polygonOf } from './polygon-oracle.ts';

const square = (low: number, high: number): [number, number][] => [
  [low, low],
  [high, low],
  [high, high],
  [low, high],
];

describe('polygon oracle', () => {
  it('takes a hole from the area and grows it by the gap', () => {
    const ring = { outline: square(0, 20), holes: [square(8, 12).reverse()] };
    expect(areaByClipper([polygonOf(ring)])).toBe(400n - 16n);
    expect(areaByClipper(insetByClipper(ring, 2))).toBe(16n * 16n - 8n * 8n);
    expect(areaByClipper(insetByClipper(ring, 0))).toBe(400n - 16n);
  });

  it('leaves nothing of a room narrower than two gaps', () => {
    expect(insetByClipper({ outline: square(0, 4), holes: [] }, 2)).toEqual([]);
  });

  it('tells regions apart by area, not by how corners are listed', () => {
    const turned = [...square(0, 4).slice(1), ...square(0, 4).slice(0, 1)];
    expect(differingArea([[square(0, 4)]], [[turned]])).toBe(0n);
    expect(differingArea([[square(0, 4)]], [[square(1, 4)]])).toBe(7n);
  });

  it('refuses a slanted wall', () => {
    const outline: [number, number][] = [
      [0, 0],
      [9, 0],
      [5, 9],
    ];
    expect(() => insetByClipper({ outline, holes: [] }, 1)).toThrow(RangeError);
  });

  it('agrees with the exact grid on random rooms, in every turn of the frame', () => {
    const angles = [0, 90, 180, 270] as const;
    for (const [i, room] of randomRooms(7, 80).entries()) {
      const gap = [0, 1, 2032, 16256][i % 4] ?? 0;
      const frame = { origin: [1234 * i, -77] as [number, number], angle: angles[(i >> 2) % 4] ?? 0 };
      const outline = room.outline.map(([x, y]): [number, number] => [x, y]);
      const sought = groundOf({ name: room.name, outline, holes: [], openings: [], frame, rows: [] }, gap);
      if ('faults' in sought) throw new Error(sought.faults.join('; '));
      const everywhere = [-Infinity, Infinity] as const;
      expect(areaWithin(sought.ground, everywhere, everywhere), room.name).toBe(
        areaByClipper(insetByClipper({ outline, holes: [] }, gap)),
      );
    }
  });
});
