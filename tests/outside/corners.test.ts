/** Saw settings as the trade reports them, and the lengths that mitres take as plane geometry has them. */

import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { interiorAngle, kerfAlong, sawSetting, slant, turning } from '../../src/trim/walls.ts';
import { inches } from '../../src/units/length.ts';
import { feetOutline } from '../drawing/drawn-rooms.ts';

// Reported by the trade: |180° − interior| ÷ 2. An outside corner of a square room is 270° inside; "corner ÷ 2" is wrong but at 90°.
it.each([
  [90, 45],
  [135, 22.5],
  [270, 45],
  [225, 22.5],
  [88.5, 45.75],
  [180, 0],
])('a corner of %f° takes the saw to %f°', (interior, setting) => {
  expect(sawSetting(interior)).toBe(setting);
});

type Vector = readonly [number, number];

/**
 * Two walls that meet at (0, 0) with `interior` degrees between them on the room's side, each with a board of thickness 1
 * before it: where the two faces cross, measured along the first wall from the corner, into the wall's length. Computed by
 * crossing two lines, without the tangent that the product uses.
 */
function faceReach(interior: number): number {
  const angle = (interior * Math.PI) / 180;
  const first: Vector = [1, 0];
  const second: Vector = [Math.cos(angle), Math.sin(angle)];
  // The room lies to the left of the first wall as it leaves the corner, and to the right of the second.
  const a: Vector = [0, 1];
  const b: Vector = [second[1], -second[0]];
  // a + s·first = b + t·second, solved for s by Cramer's rule.
  const cross = first[0] * second[1] - first[1] * second[0];
  return ((b[0] - a[0]) * second[1] - (b[1] - a[1]) * second[0]) / cross;
}

describe('what a mitre adds, against two crossed lines', () => {
  test('an inside corner shortens the face, an outside one lengthens it, by thickness × tan(setting)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2500, max: 33_500 }), (hundredths) => {
        fc.pre(Math.abs(hundredths - 18_000) > 50);
        const interior = hundredths / 100;
        const reach = faceReach(interior);
        const thickness = inches(0.5625);
        expect(Math.sign(reach)).toBe(interior < 180 ? 1 : -1);
        // A half hundredth of a degree in the setting, and a tick.
        const slack = 1 + thickness * 0.0002 * (1 + reach ** 2);
        expect(Math.abs(slant(thickness, sawSetting(interior)) - Math.abs(reach) * thickness)).toBeLessThan(slack);
      }),
    );
  });

  test('a 9/16 in board grows by 9/16 in at 45°; a 1/8 in kerf takes √2 as much along the stick', () => {
    expect(slant(inches(0.5625), 45)).toBe(inches(0.5625));
    expect(kerfAlong(inches(0.125), 45)).toBe(Math.round(inches(0.125) * Math.SQRT2));
    expect(kerfAlong(inches(0.125), 0)).toBe(inches(0.125));
  });
});

// Angles as they are drawn: an octagon's corners are 135°, a square's 90°, an equilateral triangle's 60° (Euclid).
test('interior angles of known figures', () => {
  const square = feetOutline([0, 0], [9, 0], [9, 9], [0, 9]);
  const ell = feetOutline([0, 0], [9, 0], [9, 4], [5, 4], [5, 9], [0, 9]);
  const triangle = feetOutline([0, 0], [10, 0], [5, 5 * Math.sqrt(3)]);
  const angles = (outline: typeof square) => outline.map((_, i) => interiorAngle(outline, i));
  expect(angles(square)).toEqual([90, 90, 90, 90]);
  expect(angles(ell)).toEqual([90, 90, 90, 270, 90, 90]);
  expect(angles(triangle)).toEqual([60, 60, 60]);
  expect(turning(angles(ell))).toBe(360);
});
