/** Random rooms keep their promises; the generator's first numbers are those of its published form (from memory). */

import { describe, expect, it } from 'vitest';
import { mulberry32, randomRooms } from '../bench/random-rooms.ts';
import { groundOf } from './floor-checker-ground.ts';
import { areaByClipper, insetByClipper } from './polygon-oracle.ts';

const inch = 8128;
const foot = 12 * inch;
const rooms = randomRooms(1, 400);

describe('random rooms', () => {
  it('are the same for the same seed, whatever the count, and others for another', () => {
    expect(randomRooms(1, 40)).toEqual(rooms.slice(0, 40));
    expect(randomRooms(2, 40)).not.toEqual(rooms.slice(0, 40));
  });

  it('come in four shapes in equal number, each in several turns', () => {
    const corners = { rectangle: 4, L: 6, U: 8, T: 8 };
    for (const [shape, number] of Object.entries(corners)) {
      const its = rooms.filter((room) => room.shape === shape);
      expect(its).toHaveLength(100);
      expect(its.every((room) => room.outline.length === number)).toBe(true);
    }
    const firstTurn = rooms.filter((room) => room.shape === 'L').map(({ outline }) => concaveCorner(outline));
    expect(new Set(firstTurn).size).toBe(4);
  });

  it.each(rooms.slice(0, 80))('$name is a legal outline', ({ outline }) => {
    const xs = outline.map(([x]) => x);
    const ys = outline.map(([, y]) => y);
    expect([Math.min(...xs), Math.min(...ys)]).toEqual([0, 0]);
    for (const side of [Math.max(...xs), Math.max(...ys)]) {
      expect(side).toBeGreaterThanOrEqual(6 * foot);
      expect(side).toBeLessThanOrEqual(24 * foot);
    }
    expect([...xs, ...ys].every((place) => Number.isInteger(place / (inch / 2)))).toBe(true);
    for (const angle of [0, 90] as const) {
      const frame = { origin: [0, 0] as [number, number], angle };
      const corners = outline.map(([x, y]): [number, number] => [x, y]);
      const sought = groundOf({ name: 'room', outline: corners, holes: [], openings: [], frame, rows: [] }, 0);
      const spans = 'ground' in sought ? sought.ground.flatMap((column) => column.spans) : [];
      expect(Math.min(...spans.map(([low, high]) => high - low))).toBeGreaterThanOrEqual(3 * foot);
    }
    const doubled = outline.reduce((sum, [x, y], i) => {
      const [nx, ny] = outline[(i + 1) % outline.length] ?? [x, y];
      return sum + BigInt(x) * BigInt(ny) - BigInt(nx) * BigInt(y);
    }, 0n);
    expect(doubled).toBeGreaterThan(0n);
    expect(areaByClipper(insetByClipper({ outline, holes: [] }, 0))).toBe(doubled / 2n);
  });
});

describe('mulberry32', () => {
  it('draws the numbers of its common form', () => {
    const random = mulberry32(0);
    expect([random(), random(), random()]).toEqual([0.26642920868471265, 0.0003297457005828619, 0.2232720274478197]);
  });

  it('spreads evenly over [0, 1)', () => {
    const random = mulberry32(20_260);
    const drawn = Array.from({ length: 10_000 }, random);
    expect(drawn.every((value) => value >= 0 && value < 1)).toBe(true);
    const tenths = Array.from({ length: 10 }, (_, i) => drawn.filter((value) => Math.floor(value * 10) === i).length);
    // Chi-squared with 9 degrees of freedom exceeds 27.9 once in a thousand (standard table).
    const chi = tenths.reduce((sum, seen) => sum + (seen - 1000) ** 2 / 1000, 0);
    expect(chi).toBeLessThan(27.9);
  });
});

/** Which quadrant of its box an L lacks. */
function concaveCorner(outline: readonly (readonly [number, number])[]): string {
  const [width, depth] = [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))];
  const lacks = [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ].findIndex(([x, y]) => !outline.some(([ox, oy]) => ox === x && oy === y));
  return String(lacks);
}
