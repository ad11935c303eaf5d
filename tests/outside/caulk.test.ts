/** Caulk and nails as the trade has them, each beside its source. */

import { expect, it, test } from 'vitest';
import { CAULK_TUBE, NAIL_STEPS, SAME_STUD } from '../../src/figures/trim-figures.ts';
import { beadLength, fillerLitres, nailCount, nailLength, tubesFor } from '../../src/trim/finishing.ts';
import { feet, inches, TICKS_PER_FOOT } from '../../src/units/length.ts';

// Reported by trade pages: a 10.1 fl oz tube gives 24.3 ft at 1/4 × 1/4 in. NIST Handbook 44 app. C: 231 in³ a gallon.
it('10.1 fl oz give 24.3 ft at 1/4 × 1/4 in, and four times as much at half the bead', () => {
  expect(beadLength(CAULK_TUBE.value, inches(0.25)) / TICKS_PER_FOOT).toBeCloseTo(24.3, 1);
  expect(((10.1 / 128) * 231) / 0.25 ** 2 / 12).toBeCloseTo(
    beadLength(CAULK_TUBE.value, inches(0.25)) / TICKS_PER_FOOT,
    6,
  );
  expect(beadLength(CAULK_TUBE.value, inches(0.125)) / TICKS_PER_FOOT).toBeCloseTo(4 * 24.3, 0);
});

test('tubes are whole, and a tube that is just enough is one tube', () => {
  const tube = CAULK_TUBE.value;
  expect(tubesFor(feet(24), tube, inches(0.25))).toBe(1);
  expect(tubesFor(feet(25), tube, inches(0.25))).toBe(2);
  expect(tubesFor(beadLength(tube, inches(0.25)), tube, inches(0.25))).toBe(1);
});

// NAVEDTRA 14044 (published): two nails at every stud. A wall of 8 ft with studs 16 in apart has 7, its ends included.
test('8 ft of base, studs at 16 in: 7 studs, 14 nails', () => {
  const studs = { first: inches(16), spacing: inches(16) };
  const wall = { from: inches(0), to: feet(8) };
  expect(nailCount([wall], studs, { single: inches(6), sameStud: SAME_STUD.value }, 2)).toBe(14);
});

// Common practice: trim + wallboard + 3/4 to 1 in. 9/16 + 1/2 + 3/4 = 1 13/16, so a 2 in nail (6d; pennyweight from memory).
test('a nail is long enough, in whole steps, and no step longer than need be', () => {
  expect(nailLength(inches(0.5625), inches(0.5), inches(0.75), NAIL_STEPS.value.imperial)).toBe(inches(2));
  expect(nailLength(inches(0.75), inches(0.5), inches(0.75), NAIL_STEPS.value.imperial)).toBe(inches(2));
});

// A cylinder 1/8 in wide and deep holds π/4 · (1/8)³ = 0.001534 in³; an inch cubed is 16.387064 ml (NIST SP 811, from memory).
test('100 nail holes take 2.5 ml of filler', () => {
  expect(fillerLitres(100, inches(0.125), inches(0.125)) * 1000).toBeCloseTo(100 * 0.001_534 * 16.387, 2);
});
