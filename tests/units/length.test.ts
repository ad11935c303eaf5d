/** Lengths and money are whole numbers, and whatever isn't is refused. */

import { describe, expect, it } from 'vitest';
import { areaOf, cents, feet, inches, millimetres, portion, ticks } from '../../src/units/length.ts';

describe.each([
  ['ticks', ticks],
  ['cents', cents],
])('%s', (name, whole) => {
  it.each([0, -3, Number.MAX_SAFE_INTEGER])('may be %d', (value) => expect(whole(value)).toBe(value));
  it.each([0.5, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY])('are never %d', (value) => {
    expect(() => whole(value)).toThrow(new RangeError(`not a whole number of ${name}: ${value}`));
  });
});

describe('a length', () => {
  it('is rounded once to a tick', () => {
    // 8,128 ticks an inch, 320 a millimeter.
    expect(inches(1 / 3)).toBe(2709);
    expect(feet(1 / 7)).toBe(13_934);
    expect(millimetres(0.01)).toBe(3);
  });
  it('times another is an area beyond what a double holds', () => {
    expect(areaOf(ticks(2 ** 40 + 1), ticks(2 ** 40 - 1))).toBe(2n ** 80n - 1n);
  });
});

describe('a portion', () => {
  it.each([
    [100n, 1n, 3n, 33],
    [200n, 1n, 3n, 67],
    [1n, 1n, 2n, 1],
    [3n, 1n, 2n, 2],
    [0n, 7n, 9n, 0],
    // Half a cent goes up below zero, too.
    [-1n, 1n, 2n, 0],
    [-3n, 1n, 2n, -1],
    [-200n, 1n, 3n, -67],
    [-1000n, 1n, 1n, -1000],
  ])('of %d × %d / %d is %d', (amount, numerator, denominator, result) => {
    expect(portion(amount, numerator, denominator)).toBe(result);
  });
  it.each([0n, -2n])('by %d is refused', (denominator) => {
    expect(() => portion(1n, 1n, denominator)).toThrow(new RangeError(`cannot divide by ${denominator}`));
  });
});
