/** How far a tube of adhesive reaches, and how many a patch takes. */

import { describe, expect, it } from 'vitest';
import type { PatchResult } from '../../commands/prep/patch.ts';
import { BEAD_WASTE, CUBIC_INCHES_PER_FLUID_OUNCE } from '../../src/figures/subfloor-figures.ts';
import { adhesiveTubes, feetPerTube } from '../../src/prep/subfloor-patch.ts';
import { inches } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

const ounce = CUBIC_INCHES_PER_FLUID_OUNCE.value;

// NIST Handbook 44, appendix C (published): a gallon of 128 fl oz is 231 in³.
it('a fluid ounce is 1.8047 in³', () => expect(ounce.toFixed(4)).toBe('1.8047'));

// Derived: fl oz × 1.8047 ÷ (π/4 · d² · 12); the two figures are printed in trade tables (reported).
it.each([
  [1 / 4, 85.8],
  [3 / 8, 38.1],
])('28 fl oz reach %f in thick %f ft far', (bead, feet) => {
  expect(Math.round(feetPerTube(28 * ounce, inches(bead)) * 10) / 10).toBe(feet);
});

// Fine Homebuilding no. 146 (reported): three quarters of a 10.5 oz tube a 4×8 sheet, bead 3/16 in, joists 16 in apart.
it('a sheet over joists 16 in apart takes in theory about half, in use about three quarters of a 10.5 oz tube at 3/16 in', () => {
  const perTube = feetPerTube(10.5 * ounce, inches(3 / 16));
  const bead = 7 * 4;
  expect((bead / perTube) * BEAD_WASTE.value).toBeGreaterThan(0.73);
  expect((bead / perTube) * BEAD_WASTE.value).toBeLessThan(0.77);
});

it('nothing is worked out for an empty tube or bead', () => {
  expect(() => feetPerTube(0, inches(1))).toThrow(RangeError);
  expect(() => feetPerTube(1, inches(0))).toThrow(RangeError);
});

describe('tubes of a patch', () => {
  // 32 × 34 in on three joists: two beads on 2 × 34 + 2 × 32 in, one on 34 in in the middle: 298 in = 24.83 ft; × 1.5 = 37.25.
  it.each([
    ['28 fl oz', '3/8 in', 1],
    ['10.1 fl oz', '3/8 in', 3],
    ['10.1 fl oz', '1/4 in', 2],
  ])('of %s at %s: %i', async (tube, bead, tubes) => {
    const ask = `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, tube: ${tube}, bead: ${bead}`;
    const data = (await replyTo(ask)).data as PatchResult;
    expect(data.adhesiveTubes).toBe(tubes);
    const feet = (Number.parseFloat(tube) * 1.8046875) / ((Math.PI / 4) * (bead === '3/8 in' ? 0.375 : 0.25) ** 2 * 12);
    expect(tubes).toBe(Math.ceil(((298 / 12) * 1.5) / feet));
  });

  it('are whole, and noise does not add one', () => {
    expect((3 * 1.1) / 0.3).toBeGreaterThan(11);
    expect(adhesiveTubes(inches(36), 0.3, 1.1)).toBe(11);
  });
});
