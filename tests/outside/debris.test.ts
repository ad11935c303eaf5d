/** Debris weights and volumes against published factors and an example worked in print. */

import { describe, expect, it, test } from 'vitest';
import { areaOf } from '../../src/core/area.ts';
import { feet, inches } from '../../src/core/length.ts';
import { kilogramsOf, looseLitres } from '../../src/core/tearout/mass.ts';
import { tackStripReach } from '../../src/core/tearout/tack-strip.ts';
import { LAID_WEIGHT, LOOSE_PAD, LOOSE_WEIGHT, PICKUP_BED } from '../../src/trade/debris.ts';
import { BUNDLE, GULLY, TACK_STRIP } from '../../src/trade/tearout.ts';

/** 1 lb in kilograms and 1 yd³ in litres: NIST Handbook 44 app. C, from memory. */
const POUND = 0.453_592_37;
const YARD = 764.554_857_984;
const perYard = (kilogramsPerLitre: number) => (kilogramsPerLitre * YARD) / POUND;

// US EPA, Volume-to-Weight Conversion Factors, 2016 (published): pounds a cubic yard, carpet with pad and concrete.
// NAHB Research Center, 1995 (reported): vinyl flooring 150, engineered wood 280.
test.each([
  ['carpet', 105],
  ['tile', 860],
  ['sheet vinyl', 150],
  ['plank vinyl', 150],
  ['laminate', 280],
] as const)('%s weighs %i lb a loose cubic yard', (covering, pounds) => {
  expect(perYard(LOOSE_WEIGHT[covering].value)).toBeCloseTo(pounds, 9);
});

// The same table, from memory: carpet alone 147, pad alone 62; half of each by volume is 104.5, printed as 105.
it('carpet and pad, half of each, agree with the factor of both', () => {
  expect(perYard(LOOSE_PAD.value)).toBeCloseTo(62, 9);
  expect(Math.round((147 + perYard(LOOSE_PAD.value)) / 2)).toBe(105);
});

// NAHB Research Center, 1995 (reported), worked there: 30 yd³ × 400 lb/yd³ = 12,000 lb.
it('12,000 lb at 400 lb a cubic yard fill 30 cubic yards', () => {
  const perLitre = (400 * POUND) / YARD;
  expect(looseLitres(12_000 * POUND, perLitre) / YARD).toBeCloseTo(30, 9);
});

// Installed carpet with pad 5–10 lb a square yard (reported).
it('a room of 9 x 9 ft has 9 square yards: 45 to 90 lb of carpet with pad', () => {
  const { light, heavy } = LAID_WEIGHT.carpet.value;
  const area = areaOf(feet(9), feet(9));
  expect(kilogramsOf(area, light) / POUND).toBeCloseTo(45, 9);
  expect(kilogramsOf(area, heavy) / POUND).toBeCloseTo(90, 9);
});

describe('sizes', () => {
  // CRI 104/105 §11.1 (published): tack strip at least 1 in wide, set at most 3/8 in from the wall.
  it('tack strip: a gully of 3/8 in at most, nails up to 1 3/8 in from the wall', () => {
    expect(GULLY.value).toBeLessThanOrEqual(inches(3 / 8));
    expect(GULLY.value).toBe(3048);
    expect(tackStripReach(GULLY.value, TACK_STRIP.value)).toBe(inches(1.375));
  });

  // A US city's collection rule (City of DeKalb FAQ, published): bundles of at most 4 ft and 50 lb.
  it('bundle: 4 ft and 50 lb', () => {
    expect(BUNDLE.value.length).toBe(feet(4));
    expect(BUNDLE.value.kilograms / POUND).toBeCloseTo(50, 9);
  });

  // Level bed of an 8 ft pickup: 2 yd³ (reported).
  it('pickup: 2 cubic yards', () => expect(PICKUP_BED.value / YARD).toBeCloseTo(2, 9));
});
