/** Needs added up: one line an item, one rounding, and never less than what is needed. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineCost, mergeNeeds } from '../../src/project/needs.ts';
import { type Need, STAGES } from '../../src/reply/need.ts';

function need(item: string, amount: number, size?: number, more: Partial<Need> = {}): Need {
  return {
    item,
    label: item,
    stage: 'subfloor',
    quantity: { unit: 'volume', amount },
    ...(size === undefined ? {} : { package: { size, label: 'tube', labels: 'tubes' } }),
    ...more,
  };
}

const drawn = fc.array(
  fc
    .record({
      item: fc.constantFrom('adhesive', 'caulk', 'planks'),
      // Whole thousandths, so that the sums can be checked in whole numbers.
      amount: fc.integer({ min: 1, max: 5_000_000 }),
      stage: fc.constantFrom(...STAGES),
    })
    .map(({ item, amount, stage }) => need(item, amount / 1000, 0.828, { stage })),
  { maxLength: 30 },
);

describe('rounding', () => {
  it('is one for all needs of an item: not less than their sum, not a package more', () => {
    fc.assert(
      fc.property(drawn, (needs) => {
        for (const { item, count = 0 } of mergeNeeds(needs)) {
          const parts = needs
            .filter((one) => one.item === item)
            .map(({ quantity }) => Math.round(quantity.amount * 1000));
          const sum = parts.reduce((total, part) => total + BigInt(part), 0n);
          expect(BigInt(count) * 828n).toBeGreaterThanOrEqual(sum);
          expect(BigInt(count - 1) * 828n).toBeLessThan(sum);
        }
      }),
    );
  });

  it('does not depend on the order of the needs', () => {
    fc.assert(
      fc.property(drawn, (needs) => {
        const counts = (of: readonly Need[]) =>
          Object.fromEntries(mergeNeeds(of).map((line) => [line.item, line.count]));
        expect(counts([...needs].reverse())).toEqual(counts(needs));
      }),
    );
  });

  it('two parts of a tube are one tube', () => {
    const [line] = mergeNeeds([need('adhesive', 0.3, 0.828), need('adhesive', 0.4, 0.828)]);
    expect(line).toMatchObject({ count: 1, amount: 0.7 });
  });

  it('eleven tenths of a package told as a sum of floats are no twelfth', () => {
    const [line] = mergeNeeds(Array.from({ length: 11 }, () => need('adhesive', 0.1, 0.1)));
    expect(line?.count).toBe(11);
  });
});

describe('lines', () => {
  it('come by stage, whatever the order told', () => {
    const lines = mergeNeeds([need('paint', 1, 1, { stage: 'paint' }), need('bags', 1, 1, { stage: 'tear-out' })]);
    expect(lines.map(({ item }) => item)).toEqual(['bags', 'paint']);
  });

  it('take the package of the one that tells it, and the highest price for it', () => {
    const price = (cents: number) => ({ price: { cents, currency: 'USD' } });
    const lines = mergeNeeds([
      need('screw', 26),
      need('screw', 45, 100, price(899)),
      need('screw', 40, 100, price(999)),
      need('screw', 5, 50, price(2000)),
    ]);
    expect(lines).toMatchObject([{ amount: 116, count: 2, price: { cents: 999 } }]);
  });

  it('cost what their packages cost, with tax rounded once', () => {
    const price = { cents: 3333, currency: 'USD', tax: 825 };
    // 3 × 33.33 = 99.99; 8.25% of it is 8.249175, so 8.25.
    expect(lineCost({ count: 3, price })).toBe(9999 + 825);
    expect(lineCost({ count: 3 })).toBeUndefined();
  });
});
