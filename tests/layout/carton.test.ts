/** Cartons and their cost, against examples worked in print and by counting. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf, planksByArea, purchaseOf } from '../../src/layout/floor.ts';
import { cents, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../../src/units/length.ts';

// CEMC, University of Waterloo, Problem of the Week B 2023-24, no. 15 (published): 66 m² with planks of 0.2 m² in boxes of 8
// at $74.50, a tenth more for waste and 15% tax.
describe('a floor of 66 m²', () => {
  const plank = SQUARE_TICKS_PER_SQUARE_METRE / 5n;
  const area = 66n * SQUARE_TICKS_PER_SQUARE_METRE;

  it('takes 330 planks, 363 with waste', () => {
    expect(planksByArea(area, plank, [])).toBe(330);
    expect(planksByArea(area, plank, [1000])).toBe(363);
  });

  it('takes 46 boxes, with 5 planks left in the last', () => {
    expect(purchaseOf(330, 1000, 0, 8)).toEqual({ planks: 330, mistakes: 33, spares: 0, cartons: 46, left: 5 });
  });

  it('costs $3,427.00, with $514.05 tax $3,941.05', () => {
    const cost = costOf(46, cents(7450), 1500);
    expect(cost).toEqual({ cents: 342_700, tax: 51_405 });
    expect(cost.cents + cost.tax).toBe(394_105);
  });
});

// A home-improvement page's example (reported): 15% for cutting and 5% for defects are added, not compounded.
it('450 ft² with 15% and 5% more is 540 ft²', () => {
  expect(planksByArea(450n * SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_FOOT, [1500, 500])).toBe(540);
});

// Building Construction, vol. 4 (published): quantities with 25% more, rounded up.
it.each([
  [2624, 3280],
  [3695, 4619],
  [523, 654],
])('%i with a quarter more is %i', (quantity, more) => {
  expect(planksByArea(BigInt(quantity), 1n, [2500])).toBe(more);
  const { planks, mistakes } = purchaseOf(quantity, 2500, 0, 1);
  expect(planks + mistakes).toBe(more);
});

describe('any purchase', () => {
  it('fills its cartons, and one fewer would not do', () => {
    const requested = fc.record({
      planks: fc.integer({ min: 1, max: 100_000 }),
      share: fc.integer({ min: 0, max: 10_000 }),
      spares: fc.integer({ min: 0, max: 1000 }),
      perCarton: fc.integer({ min: 1, max: 200 }),
    });
    fc.assert(
      fc.property(requested, ({ planks, share, spares, perCarton }) => {
        const bought = purchaseOf(planks, share, spares, perCarton);
        expect(bought.cartons * perCarton).toBe(planks + bought.mistakes + spares + bought.left);
        expect(bought.left).toBeGreaterThanOrEqual(0);
        expect(bought.left).toBeLessThan(perCarton);
        expect(bought.mistakes * 10_000).toBeGreaterThanOrEqual(planks * share);
        expect((bought.mistakes - 1) * 10_000).toBeLessThan(planks * share || 1);
      }),
    );
  });

  it('without tax costs its cartons', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000 }), fc.integer({ min: 0, max: 100_000 }), (cartons, price) => {
        expect(costOf(cartons, cents(price), 0)).toEqual({ cents: cartons * price, tax: 0 });
      }),
    );
  });
});
