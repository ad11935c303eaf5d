/** Paint on trim by what a gallon covers, beside its source. */

import { expect, it, test } from 'vitest';
import { PAINT_COVERAGE } from '../../src/figures/trim-figures.ts';
import { coatLitres } from '../../src/trim/finishing.ts';
import { feet, inches } from '../../src/units/length.ts';

const LITRES_PER_GALLON = 3.785411784;

// almanac.com (reported): 350–400 sq ft a gallon; a quart about 100. NIST Handbook 44: 231 in³ a gallon.
it('350 sq ft take a gallon a coat', () => {
  // 1,200 ft of trim 3 in high and 1/2 in thick: 1,200 × 3.5/12 = 350 sq ft.
  const litres = coatLitres(feet(1), inches(3), inches(0.5), 1, PAINT_COVERAGE.value) * 1200;
  expect(litres).toBeCloseTo(LITRES_PER_GALLON, 9);
});

test('a second coat takes as much again, and a quart does no more than 100 sq ft', () => {
  const one = coatLitres(feet(100), inches(3.25), inches(0.5625), 1, PAINT_COVERAGE.value);
  expect(coatLitres(feet(100), inches(3.25), inches(0.5625), 2, PAINT_COVERAGE.value)).toBeCloseTo(2 * one, 12);
  const squareFeetPerQuart = (PAINT_COVERAGE.value * (LITRES_PER_GALLON / 4)) / 0.09290304;
  expect(squareFeetPerQuart).toBeLessThanOrEqual(100);
  expect(squareFeetPerQuart).toBeGreaterThan(80);
});
