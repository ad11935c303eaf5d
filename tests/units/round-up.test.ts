/** Rounding up to whole things: exact, blind to floating noise, and deaf to nonsense. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundUp, roundUpRatio } from '../../src/units/length.ts';

describe('roundUp', () => {
  it('does not count floating noise as a whole thing', () => {
    // IEEE 754 doubles: 1.1 * 3 / 0.3 is a little over 11, and 330 * 1.1 a little over 363.
    expect((1.1 * 3) / 0.3).toBeGreaterThan(11);
    expect(roundUp((1.1 * 3) / 0.3)).toBe(11);
    expect(330 * 1.1).toBeGreaterThan(363);
    expect(roundUp(330 * 1.1)).toBe(363);
    // 0.7 * 10 * 10 is a little under 70: noise below is not cut off either.
    expect(roundUp(0.7 * 10 * 10)).toBe(70);
  });

  it.each([
    [45.375, 46],
    [0, 0],
    [0.001, 1],
    [1, 1],
    [11.000_001, 12],
    [1e-10, 0],
    [1e6 + 1e-4, 1e6],
    [1e6 + 1e-2, 1e6 + 1],
    [1e9 + 0.5, 1e9 + 1],
    [Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER],
  ])('of %d is %d', (value, whole) => expect(roundUp(value)).toBe(whole));

  it.each([-1, -1e-12, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 2 ** 53])(
    'refuses %d',
    (value) => expect(() => roundUp(value)).toThrow(new RangeError(`cannot round up ${value}`)),
  );

  it('of a sum of equal decimals is their count', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 2000 }), (cents, count) => {
        const size = cents / 100;
        expect(roundUp((size * count) / size)).toBe(count);
        let sum = 0;
        for (let i = 0; i < count; i++) sum += size;
        expect(roundUp(sum / size)).toBe(count);
      }),
    );
  });
});

describe('roundUpRatio', () => {
  it('is the least number of sizes that hold the amount, at any size', () => {
    const amounts = fc.record({ amount: fc.bigInt(0n, 10n ** 15n), size: fc.bigInt(1n, 10n ** 15n) });
    fc.assert(
      fc.property(amounts, ({ amount, size }) => {
        const count = BigInt(roundUpRatio(amount, size));
        expect(count * size >= amount).toBe(true);
        expect(count === 0n || (count - 1n) * size < amount).toBe(true);
      }),
    );
  });

  it.each([
    [1n, 0n],
    [1n, -1n],
    [-1n, 1n],
  ])('refuses %d / %d', (amount, size) => {
    expect(() => roundUpRatio(amount, size)).toThrow(new RangeError(`cannot round up ${amount} / ${size}`));
  });
});
