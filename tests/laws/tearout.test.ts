/** Laws of a tear-out over many drawn rooms: strips cover the floor, rolls keep to the limit, weights add up. */

import fc from 'fast-check';
import clipper, { type Polygon } from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import {
  gatherStrips,
  hoursOf,
  kilogramsOf,
  looseLitres,
  type PlacedStrip,
  placeStrips,
  runsAlongY,
  staplesIn,
  toHalfHours,
  tripsOf,
} from '../../src/prep/old-floor.ts';
import { doubleArea, type Outline } from '../../src/units/geometry.ts';
import { areaOf, inches, ticks } from '../../src/units/length.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { areaByClipper, polygonOf } from '../outside/polygon-oracle.ts';

const rooms = randomRooms(23, 60);
const rule = fc.record({
  width: fc.integer({ min: inches(6), max: inches(72) }).map(ticks),
  limit: fc.double({ min: 2.3, max: 45, noNaN: true }),
  perSquareMetre: fc.double({ min: 0.5, max: 12, noNaN: true }),
});
const drawn = fc.tuple(fc.constantFrom(...rooms), rule);

function rectangle({ x, y, alongX, alongY }: PlacedStrip): Polygon {
  return [
    [
      [x, y],
      [x + alongX, y],
      [x + alongX, y + alongY],
      [x, y + alongY],
    ],
  ];
}

describe('strips', () => {
  it('cover the room, by a polygon clipper that the product does not use', () => {
    fc.assert(
      fc.property(drawn, ([{ outline }, given]) => {
        const strips = placeStrips(outline, [], given).map(rectangle);
        const bare = clipper.difference(polygonOf({ outline, holes: [] }), ...strips);
        expect(areaByClipper(bare)).toBe(0n);
      }),
      { numRuns: 60 },
    );
  });

  it('never weigh more than the limit, are never wider than told, and are counted whole', () => {
    fc.assert(
      fc.property(drawn, ([{ outline }, given]) => {
        const placed = placeStrips(outline, [], given);
        const gathered = gatherStrips(placed, given.perSquareMetre, runsAlongY(outline));
        for (const { kilograms, width } of gathered) {
          expect(kilograms).toBeLessThanOrEqual(given.limit);
          expect(width).toBeLessThanOrEqual(given.width);
        }
        expect(gathered.reduce((sum, { count }) => sum + count, 0)).toBe(placed.length);
      }),
      { numRuns: 150 },
    );
  });

  it('weigh at least what the room weighs, and of a rectangle no more than a tick a cut beyond it', () => {
    fc.assert(
      fc.property(drawn, ([{ outline }, given]) => {
        const weighed = gatherStrips(placeStrips(outline, [], given), given.perSquareMetre, runsAlongY(outline));
        const all = weighed.reduce((sum, { kilograms, count }) => sum + kilograms * count, 0);
        const room = kilogramsOf(doubleArea(outline) / 2n, given.perSquareMetre);
        expect(all).toBeGreaterThanOrEqual(room * (1 - 1e-12));
        if (outline.length === 4) expect(all).toBeLessThan(room * 1.001);
      }),
      { numRuns: 150 },
    );
  });

  it('of a room with a column in it cover all but the column', () => {
    const outline: Outline = [
      [0, 0],
      [1_000_000, 0],
      [1_000_000, 800_000],
      [0, 800_000],
    ];
    const hole: Outline = [
      [300_000, 200_000],
      [300_000, 600_000],
      [700_000, 600_000],
      [700_000, 200_000],
    ];
    const strips = placeStrips(outline, [hole], { width: ticks(100_000), limit: 100, perSquareMetre: 3 });
    const bare = clipper.difference(polygonOf({ outline, holes: [hole] }), ...strips.map(rectangle));
    expect(areaByClipper(bare)).toBe(0n);
    const cut = strips.reduce((sum, { alongX, alongY }) => sum + areaOf(alongX, alongY), 0n);
    expect(cut).toBe(800_000_000_000n - 160_000_000_000n);
  });

  it('of a slanting room cover its box', () => {
    const outline: Outline = [
      [0, 0],
      [900_000, 0],
      [600_000, 500_000],
      [0, 500_000],
    ];
    const strips = placeStrips(outline, [], { width: ticks(200_000), limit: 30, perSquareMetre: 3 });
    const bare = clipper.difference(polygonOf({ outline, holes: [] }), ...strips.map(rectangle));
    expect(areaByClipper(bare)).toBe(0n);
  });

  it('that no limit allows are refused', () => {
    const square: Outline = [
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ];
    expect(() => placeStrips(square, [], { width: ticks(9), limit: 0, perSquareMetre: 3 })).toThrow(RangeError);
  });
});

describe('weights and volumes', () => {
  const area = fc.bigInt({ min: 1n, max: 500_000_000_000_000n });
  const density = fc.double({ min: 0.01, max: 2, noNaN: true });

  it('add up over rooms', () => {
    fc.assert(
      fc.property(area, area, density, density, (one, other, each, bulk) => {
        const both = looseLitres(kilogramsOf(one + other, each), bulk);
        const apart = looseLitres(kilogramsOf(one, each), bulk) + looseLitres(kilogramsOf(other, each), bulk);
        expect(Math.abs(both - apart)).toBeLessThanOrEqual(1e-9 * both);
      }),
    );
  });

  it('grow with the floor, and so do trips, staples and hours', () => {
    fc.assert(
      fc.property(area, area, density, (one, more, each) => {
        const [less, all] = [kilogramsOf(one, each), kilogramsOf(one + more, each)];
        expect(all).toBeGreaterThanOrEqual(less);
        const carrier = { litres: 1529, kilograms: 454 };
        expect(tripsOf(all, all / 0.06, carrier)).toBeGreaterThanOrEqual(tripsOf(less, less / 0.06, carrier));
        const stapling = { rows: 2, spacing: inches(12) };
        expect(staplesIn(one + more, inches(72), stapling)).toBeGreaterThanOrEqual(
          staplesIn(one, inches(72), stapling),
        );
        const [least, most] = toHalfHours(hoursOf([{ amount: Number(one) / 1e9, slow: 100, fast: 250 }]));
        expect(least).toBeLessThanOrEqual(most);
      }),
    );
  });
});
