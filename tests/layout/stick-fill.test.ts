/** The most valuable sticks by lists of states, as the fallback beyond the table: against every way there is, full sticks above all. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostValuableByValue as byStates, mostValuableByTable } from '../../src/trim/sticks.ts';

/** The worth of the best stick, by counting every kind from none to all. */
function byEveryWay(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacity: number,
  kind = 0,
): number {
  if (kind === sizes.length) return 0;
  let best = 0;
  for (let count = 0; count <= (most[kind] ?? 0) && count * (sizes[kind] ?? 0) <= capacity; count++) {
    const rest = byEveryWay(sizes, values, most, capacity - count * (sizes[kind] ?? 0), kind + 1);
    best = Math.max(best, count * (values[kind] ?? 0) + rest);
  }
  return best;
}

describe('the most valuable stick', () => {
  it('may be exactly full', () => {
    expect(byStates([3, 5], [3, 5], [1, 1], [8, 7])).toEqual([
      { value: 8, counts: [1, 1] },
      { value: 5, counts: [0, 1] },
    ]);
    expect(byStates([4], [1], [3], [12, 11, 4, 3])?.map(({ value }) => value)).toEqual([3, 2, 1, 0]);
  });

  it('is exactly full too where lengths share no coarse unit, and the table gives way', () => {
    // Ticks of 3.125 µm: 8 ft of two lengths without a common unit, more than 40,000 of them.
    const [one, other] = [312_127, 780_192 - 312_127];
    expect(mostValuableByTable([one, other], [one, other], [2, 2], [780_192])).toEqual([
      { value: 780_192, counts: [1, 1] },
    ]);
    expect(mostValuableByTable([one, other], [one, other], [2, 2], [780_191])?.[0]?.value).toBeLessThan(780_191);
  });

  it('is worth as much as the best of every way', () => {
    const kinds = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 3 })),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(kinds, fc.integer({ min: 0, max: 40 }), (all, capacity) => {
        const [sizes, values, most] = [0, 1, 2].map((at) => all.map((kind) => kind[at] ?? 0)) as [
          number[],
          number[],
          number[],
        ];
        const [best] = byStates(sizes, values, most, [capacity]) ?? [];
        expect(best?.value).toBe(byEveryWay(sizes, values, most, capacity));
        const counts = best?.counts ?? [];
        expect(counts.reduce((sum, count, i) => sum + count * (sizes[i] ?? 0), 0)).toBeLessThanOrEqual(capacity);
        expect(counts.every((count, i) => count <= (most[i] ?? 0))).toBe(true);
      }),
      { numRuns: 400 },
    );
  });
});
