/** Examples worked in print by others, each beside its source, put to the product as it is asked. */

import { describe, expect, it } from 'vitest';
import type { FloorResult } from '../../commands/floor/lay.ts';
import {
  feet,
  inches,
  millimetres,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
} from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';
import { areaByClipper } from './polygon-oracle.ts';

async function floorTo(ask: string): Promise<FloorResult> {
  return (await replyTo(ask)).data as FloorResult;
}

/** What a sum comes to: ticks, square ticks or a plain number. */
async function tapeTo(sum: string): Promise<number> {
  const { data, headline } = await replyTo(`tape ${sum}`);
  const { length, area } = data as unknown as Record<'length' | 'area', number | undefined>;
  return length ?? area ?? Number(headline.slice(headline.lastIndexOf('=') + 1));
}

// CEMC, University of Waterloo, Problem of the Week B 2023-24, no. 15 (published): 66 m², planks of 0.2 m² in boxes of 8, a
// tenth more: 330 planks, 363, 45.375 boxes, so 46; at $74.50 each $3,427.00, with 15% tax $514.05 in all $3,941.05.
describe('a floor of 66 m², planks of 0.2 m² in boxes of 8, a tenth more for waste', () => {
  const ask =
    'planks room: 6 x 11 m, plank: 200 x 1000 mm, 8 per carton, $74.50 a carton, gap: 0, pattern: half, mistakes: 10%, tax: 15%';

  it('takes 330 planks, 363 with waste, 46 boxes', async () => {
    expect((await floorTo(ask)).count).toMatchObject({ planks: 330, mistakes: 33, cartons: 46 });
    expect(JSON.stringify((await replyTo(ask)).blocks)).toContain('363 planks, 46 cartons');
    expect(await tapeTo('66 m² x 1.1 / 1.6 m²')).toBeCloseTo(45.375, 9);
  });

  it('costs $3,427.00 at $74.50 a box, and 15% tax makes it $3,941.05', async () => {
    expect((await floorTo(ask)).cost).toEqual({ cents: 342_700, tax: 51_405 });
    expect((await replyTo(ask)).headline).toContain('$3,941.05 with $514.05 tax');
  });
});

// A published textbook sum: 168 ft² in packs of 24 ft²: with 5% more 8 packs, with 15% more 9.
describe('168 ft² in packs of 24 ft²', () => {
  it.each([
    ['5%', '1.05', 7.35, 8],
    ['15%', '1.15', 8.05, 9],
  ])('and %s more', async (more, times, packs, whole) => {
    expect(await tapeTo(`168 sq ft x ${times} / 24 sq ft`)).toBeCloseTo(packs, 9);
    expect(Math.ceil(packs)).toBe(whole);
    // Laid in halves the room takes 84 planks, as many as its area: the allowance decides.
    const { count } = await floorTo(
      `planks room: 12' x 14', plank: 6 x 48 in, 24 sq ft per carton, pattern: half, mistakes: ${more}`,
    );
    expect(count).toMatchObject({ planks: 84, cartons: whole });
  });
});

// A home-improvement page's example (reported): 15% for cutting and 5% for defects are added, not compounded.
it('450 ft² with 15% and 5% more is 540 ft²', async () => {
  expect(await tapeTo('450 sq ft x (1 + 0.15 + 0.05)')).toBe(540 * Number(SQUARE_TICKS_PER_SQUARE_FOOT));
});

// Building Construction, vol. 4 (published): quantities with 25% more, rounded up: 2,624 → 3,280; 3,695 → 4,619; 523 → 654.
describe('a quarter more', () => {
  it('of 2,624 planks is 3,280', async () => {
    // 64 rows of 41 planks.
    const { count } = await floorTo(
      'planks room: 41 x 12.8 m, plank: 200 x 1000 mm, 8 per carton, gap: 0, pattern: half, mistakes: 25%',
    );
    expect(count.planks + count.mistakes).toBe(3280);
    expect(count.planks).toBe(2624);
  });

  it.each([
    [2624, 3280],
    [3695, 4619],
    [523, 654],
  ])('of %i is %i', async (quantity, more) => {
    expect(Math.ceil((await tapeTo(`${quantity} x 1.25 m`)) / millimetres(1000))).toBe(more);
  });
});

// A flooring course's unit 4 (published): an L of 2.74 × 1.75 m and 2.63 × 3.92 m is 15.11 m², within 0.01; a litre does 8 m².
it('an L of 2.74 × 1.75 m and 2.63 × 3.92 m is 15.11 m² and takes 1.9 L', async () => {
  const walk = 'walk 2.74 m left 1.75 m left 0.11 m right 3.92 m left 2.63 m left 5.67 m';
  const { area, strips } = (await replyTo(`tearout room: ${walk}, built: 2010`)).data as unknown as {
    area: number;
    strips: readonly unknown[];
  };
  const squareMetres = area / Number(SQUARE_TICKS_PER_SQUARE_METRE);
  expect(Math.abs(squareMetres - 15.11)).toBeLessThanOrEqual(0.01);
  expect(strips.length).toBeGreaterThan(0);
  expect(await tapeTo('2.74 m x 1.75 m + 2.63 m x 3.92 m')).toBeCloseTo(area, -3);
  expect((await tapeTo('(2.74 m x 1.75 m + 2.63 m x 3.92 m) / 8 m²')).toFixed(1)).toBe('1.9');
  const corners = [
    [0, 0],
    [2740, 0],
    [2740, 1750],
    [2630, 1750],
    [2630, 5670],
    [0, 5670],
  ] as const;
  const outline = corners.map(([x, y]): [number, number] => [millimetres(x), millimetres(y)]);
  expect(Number(areaByClipper([[outline]]))).toBe(area);
});

// A published worked sum: the eight sides of a room, 5 + 3 + 5 + 9 + 10 + 8 + 10 + 9 ft, are 59 ft round.
it('the eight sides of a room are 59 ft', async () => {
  expect(await tapeTo('5 + 3 + 5 + 9 + 10 + 8 + 10 + 9 ft')).toBe(feet(59));
  expect((await replyTo('tape 5 + 3 + 5 + 9 + 10 + 8 + 10 + 9 ft')).headline).toContain("= 59'");
});

// NIST, U.S. Survey Foot: Revised Unit Conversion Factors (published): 1 ft = 0.3048 m and 1 in = 25.4 mm, exactly.
it('a foot is 304.8 mm, an inch 25.4 mm and a square foot 0.09290304 m², exactly', async () => {
  expect(feet(1)).toBe(millimetres(304.8));
  expect(inches(1)).toBe(millimetres(25.4));
  expect(await tapeTo('1 ft')).toBe(await tapeTo('304.8 mm'));
  expect(SQUARE_TICKS_PER_SQUARE_FOOT * 100_000_000n).toBe(SQUARE_TICKS_PER_SQUARE_METRE * 9_290_304n);
});
