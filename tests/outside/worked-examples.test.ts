/** Examples worked in print by others, each beside its source. */

import { describe, expect, it } from 'vitest';
import { SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../../src/core/area.ts';
import type { Point } from '../../src/core/geometry.ts';
import { doubleArea } from '../../src/core/geometry.ts';
import { feet, inches, millimetres } from '../../src/core/length.ts';
import { cents, portion } from '../../src/core/money.ts';
import { roundUp, roundUpRatio } from '../../src/core/round-up.ts';
import { areaByClipper } from './polygon-oracle.ts';

// CEMC, University of Waterloo, Problem of the Week B 2023-24, no. 15 (published).
describe('a floor of 66 m², planks of 0.2 m² in boxes of 8, a tenth more for waste', () => {
  const planks = roundUpRatio(66n * SQUARE_TICKS_PER_SQUARE_METRE, SQUARE_TICKS_PER_SQUARE_METRE / 5n);

  it('takes 330 planks, 363 with waste, 46 boxes', () => {
    expect(planks).toBe(330);
    expect(roundUp(planks * 1.1)).toBe(363);
    expect(roundUpRatio(BigInt(planks) * 110n, 100n)).toBe(363);
    expect(roundUp(363 / 8)).toBe(46);
  });

  it('costs $3,427.00 at $74.50 a box, and 15 % tax makes it $3,941.05', () => {
    const price = cents(46 * 7450);
    const tax = portion(BigInt(price), 15n, 100n);
    expect([price, tax, price + tax]).toEqual([342_700, 51_405, 394_105]);
  });
});

// A home-improvement page's example (reported): 15 % for cutting and 5 % for defects are added, not compounded.
it('450 ft² with 15 % and 5 % more is 540 ft²', () => {
  const wanted = (450n * SQUARE_TICKS_PER_SQUARE_FOOT * 120n) / 100n;
  expect(roundUpRatio(wanted, SQUARE_TICKS_PER_SQUARE_FOOT)).toBe(540);
  expect(roundUp(450 * (1 + 0.15 + 0.05))).toBe(540);
});

// Building Construction, vol. 4 (published): quantities with 25 % more, rounded up.
it.each([
  [2624, 3280],
  [3695, 4619],
  [523, 654],
])('%i with a quarter more is %i', (quantity, more) => {
  expect(roundUp(quantity * 1.25)).toBe(more);
  expect(roundUpRatio(BigInt(quantity) * 5n, 4n)).toBe(more);
});

// A flooring course's unit 4 (published): an L of 2.74 × 1.75 m and 2.63 × 3.92 m is 15.11 m², within 0.01; a litre does 8 m².
it('an L of 2.74 × 1.75 m and 2.63 × 3.92 m is 15.11 m² and takes 1.9 L', () => {
  const corners = [
    [0, 0],
    [2740, 0],
    [2740, 1750],
    [2630, 1750],
    [2630, 5670],
    [0, 5670],
  ] as const;
  const outline = corners.map(([x, y]): Point => [millimetres(x), millimetres(y)]);
  const squareMetres = Number(doubleArea(outline)) / 2 / Number(SQUARE_TICKS_PER_SQUARE_METRE);
  expect(Math.abs(squareMetres - 15.11)).toBeLessThanOrEqual(0.01);
  expect(roundUp((squareMetres / 8) * 10) / 10).toBe(1.9);
  expect(areaByClipper([[outline.map(([x, y]) => [x, y])]]) * 2n).toBe(doubleArea(outline));
});

// NIST, U.S. Survey Foot: Revised Unit Conversion Factors (published): 1 ft = 0.3048 m and 1 in = 25.4 mm, exactly.
it('a foot is 304.8 mm, an inch 25.4 mm and a square foot 0.09290304 m², exactly', () => {
  expect(feet(1)).toBe(millimetres(304.8));
  expect(inches(1)).toBe(millimetres(25.4));
  expect(SQUARE_TICKS_PER_SQUARE_FOOT * 100_000_000n).toBe(SQUARE_TICKS_PER_SQUARE_METRE * 9_290_304n);
});
