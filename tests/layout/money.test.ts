/** Money in whole cents: portions rounded once, half a cent up. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cents, portion } from '../../src/units/length.ts';

describe('cents', () => {
  it('are whole', () => {
    expect(cents(7450)).toBe(7450);
    for (const value of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])
      expect(() => cents(value)).toThrow(RangeError);
  });
});

describe('a portion', () => {
  it.each([
    // 15% of $3,427.00 is $514.05 (CEMC, Univ. of Waterloo, Problem of the Week B 2023-24 no. 15).
    [342_700n, 1500n, 10_000n, 51_405],
    // Halves go up: by hand.
    [1n, 1n, 2n, 1],
    [3n, 1n, 2n, 2],
    [-1n, 1n, 2n, 0],
    [-3n, 1n, 2n, -1],
    [10n, 1n, 3n, 3],
    [20n, 1n, 3n, 7],
    [-10n, 1n, 3n, -3],
    [-20n, 1n, 3n, -7],
  ])('%d × %d / %d is %d', (amount, numerator, denominator, expected) => {
    expect(portion(amount, numerator, denominator)).toBe(expected);
  });

  it('lies within half a cent of what it stands for', () => {
    const share = fc.record({
      amount: fc.bigInt(-(10n ** 11n), 10n ** 11n),
      numerator: fc.bigInt(0n, 10_000n),
      denominator: fc.bigInt(1n, 10_000n),
    });
    fc.assert(
      fc.property(share, ({ amount, numerator, denominator }) => {
        const twice = 2n * (BigInt(portion(amount, numerator, denominator)) * denominator - amount * numerator);
        expect(twice <= denominator && twice > -denominator).toBe(true);
      }),
    );
  });

  it('of nothing that can be divided by is refused', () => {
    expect(() => portion(1n, 1n, 0n)).toThrow(RangeError);
    expect(() => portion(1n, 1n, -2n)).toThrow(RangeError);
    expect(() => portion(10n ** 20n, 1n, 1n)).toThrow(RangeError);
  });
});
