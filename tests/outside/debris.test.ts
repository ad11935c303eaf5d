/** Debris weights and volumes against published factors and an example worked in print. */

import { describe, expect, it, test } from 'vitest';
import {
  BUNDLE,
  CARPET_ALONE,
  GULLY,
  LAID_WEIGHT,
  LOOSE_PAD,
  LOOSE_WEIGHT,
  PAD_SHARE,
  PICKUP_BED,
  TACK_STRIP,
  WIDE_TACK_STRIP,
} from '../../src/figures/tearout-figures.ts';
import { kilogramsOf, tackStripReach } from '../../src/prep/old-floor.ts';
import { areaOf, feet, inches } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

/** 1 lb in kilograms and 1 yd³ in litres: NIST Handbook 44 app. C, from memory. */
const POUND = 0.453_592_37;
const YARD = 764.554_857_984;
const perYard = (kilogramsPerLitre: number) => (kilogramsPerLitre * YARD) / POUND;

// US EPA, Volume-to-Weight Conversion Factors, 2016 (published): pounds a cubic yard, carpet with pad and concrete.
// NAHB Research Center, 1995 (reported): engineered wood 280; its 150 is of vinyl siding, not of floors.
test.each([
  ['carpet', 105],
  ['tile', 860],
  ['laminate', 280],
] as const)('%s weighs %i lb a loose cubic yard', (covering, pounds) => {
  expect(perYard(LOOSE_WEIGHT[covering].value)).toBeCloseTo(pounds, 9);
});

// US EPA, Portfolio Manager help (reported): the factor assumes 50% carpet and 50% pad. The same table, from memory: carpet
// alone 147, pad alone 62; half of each by volume is 104.5, printed as 105.
it('carpet and pad, half of each, agree with the factor of both', () => {
  expect(PAD_SHARE.value).toBe(0.5);
  expect(perYard(LOOSE_PAD.value)).toBeCloseTo(62, 9);
  expect(Math.round((147 + perYard(LOOSE_PAD.value)) / 2)).toBe(105);
});

// No factor for vinyl floors was found: 0.5–1 lb a square foot (trade custom, from memory), and by area 0.7 cu yd a 100 sq ft
// (cautious default). 10 x 10 ft: 50 to 100 lb, 0.7 cu yd, the same whatever weight is told.
it('100 sq ft of sheet vinyl weigh up to 100 lb and fill 0.7 cubic yards', async () => {
  const torn = async (rest: string) =>
    (await replyTo(`tearout room: 10x10, floor: sheet vinyl, tested: clear${rest}`)).data as unknown as {
      kilograms: number;
      litres: number;
    };
  const usual = await torn('');
  expect(usual.kilograms / POUND).toBeCloseTo(100, 9);
  expect(usual.litres / YARD).toBeCloseTo(0.7, 9);
  const light = await torn(', weight: 0.5 lb/sq ft');
  expect(light.kilograms / POUND).toBeCloseTo(50, 9);
  expect(light.litres).toBe(usual.litres);
});

// Carpet alone 4–4.5 lb a square yard (reported).
it('a roll of 3 x 14 ft of carpet alone weighs 18.7 to 21 lb', () => {
  const { light, heavy } = CARPET_ALONE.value;
  const area = areaOf(feet(3), feet(14));
  expect(kilogramsOf(area, light) / POUND).toBeCloseTo(18.667, 3);
  expect(kilogramsOf(area, heavy) / POUND).toBeCloseTo(21, 9);
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

  // The same standard (published): in rooms over 30 ft wider strip, 1 3/4 in, or two side by side.
  it('tack strip in rooms over 30 ft: two of 1 in reach further than one of 1 3/4 in', () => {
    expect(WIDE_TACK_STRIP.value).toEqual({ beyond: feet(30), reach: 2 * TACK_STRIP.value });
    expect(WIDE_TACK_STRIP.value.reach).toBeGreaterThanOrEqual(inches(1.75));
  });

  // A US city's collection rule (City of DeKalb FAQ, published): bundles of at most 4 ft and 50 lb, 10 rolls a week.
  it('bundle: 4 ft, 50 lb, 10 a week', () => {
    expect(BUNDLE.value.aWeek).toBe(10);
    expect(BUNDLE.value.length).toBe(feet(4));
    expect(BUNDLE.value.kilograms / POUND).toBeCloseTo(50, 9);
  });

  // Level bed of an 8 ft pickup: 2 yd³ (reported).
  it('pickup: 2 cubic yards', () => expect(PICKUP_BED.value / YARD).toBeCloseTo(2, 9));
});
