/** What is bought of a list: ticks, lots, what is left, what may go back; pure, so that all of it holds for any project. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Line, tally } from '../../src/project/needs.ts';
import {
  type Bought,
  boughtOf,
  buy,
  EMPTY_SHOPPING,
  giveBack,
  lastTick,
  lotsOf,
  open,
  type Shopping,
  shoppingSchema,
  unbuyAll,
  untick,
} from '../../src/project/purchases.ts';

const carton = { size: 10, label: 'carton of 10', labels: 'cartons of 10' };

function planks(amount: number): Line {
  return { item: 'plank', label: 'Planks', stage: 'lay', unit: 'count', amount, package: carton, rooms: [], notes: [] };
}

function cartons(count: number, more: Partial<Bought> = {}): Bought {
  return {
    item: 'plank',
    label: 'Planks',
    stage: 'lay',
    unit: 'count',
    amount: count * carton.size,
    packages: { ...carton, count },
    at: 0,
    ...more,
  };
}

const somePurchases = fc.array(
  fc.record({ count: fc.integer({ min: 1, max: 30 }), cents: fc.nat(1e6), item: fc.constantFrom('plank', 'tile') }),
  { maxLength: 6 },
);
const after = (purchases: readonly { count: number; cents: number; item: string }[]): Shopping =>
  purchases.reduce(
    (shopping, { count, cents, item }) => buy(shopping, cartons(count, { item, cost: { cents, currency: 'USD' } })),
    EMPTY_SHOPPING,
  );

describe('what is bought', () => {
  it('twice is bought twice, and given back it is as before', () => {
    const once = buy(EMPTY_SHOPPING, cartons(10));
    const twice = buy(once, cartons(4));
    expect(boughtOf(twice, 'plank')).toBe(140);
    expect(giveBack(twice, 'plank', 40)).toEqual(once);
    expect(unbuyAll(twice, 'plank')).toEqual(EMPTY_SHOPPING);
  });

  it('unticked loses its last bare tick alone, once, and nothing that has a price or a lot', () => {
    const paid = buy(EMPTY_SHOPPING, cartons(4, { cost: { cents: 25_000, currency: 'USD' }, lot: 'B7', at: 1 }));
    const ticked = buy(paid, cartons(2, { at: 2 }));
    const last = lastTick(ticked, 'plank');
    if (!last) throw new Error('no tick');
    expect(untick(ticked, last)).toEqual(paid);
    expect(untick(untick(ticked, last), last)).toEqual(paid);
    expect(lastTick(paid, 'plank')).toBeUndefined();
    const later = buy(ticked, cartons(1, { at: 3 }));
    expect(untick(later, last)).toEqual(later);
  });

  it('given back in part keeps the price of each piece', () => {
    const back = giveBack(buy(EMPTY_SHOPPING, cartons(10, { cost: { cents: 32_500, currency: 'USD' } })), 'plank', 20);
    expect(back.bought).toMatchObject([{ amount: 80, packages: { count: 8 }, cost: { cents: 26_000 } }]);
  });

  it('never becomes less than nothing, whatever is given back, and other things stay', () => {
    fc.assert(
      fc.property(somePurchases, fc.double({ min: 0, max: 1e6, noNaN: true }), (purchases, amount) => {
        const before = after(purchases);
        const back = giveBack(before, 'plank', amount);
        expect(shoppingSchema.parse(back)).toEqual(back);
        expect(boughtOf(back, 'plank')).toBeCloseTo(Math.max(0, boughtOf(before, 'plank') - amount), 3);
        expect(back.bought.filter(({ item }) => item === 'tile')).toEqual(
          before.bought.filter(({ item }) => item === 'tile'),
        );
      }),
    );
  });

  it('lots are told once each, whatever their capitals', () => {
    const shopping = [{ lot: 'B7' }, { lot: 'b7' }, {}, { lot: 'C9' }].reduce(
      (all, more) => buy(all, cartons(1, more)),
      EMPTY_SHOPPING,
    );
    expect(lotsOf(shopping, 'plank')).toEqual(['B7', 'C9']);
  });

  it('is full at some point, and says so', () => {
    const full: Shopping = { ...EMPTY_SHOPPING, bought: Array.from({ length: 500 }, () => cartons(1)) };
    expect(() => buy(full, cartons(1))).toThrow(RangeError);
  });
});

describe('what is left', () => {
  const left = (amount: number, shopping: Shopping) => tally([planks(amount)], shopping)[0];

  it('is whole cartons, none of them one too many', () => {
    expect(left(94.76, EMPTY_SHOPPING)).toMatchObject({ left: 10, over: 0 });
    expect(left(94.76, buy(EMPTY_SHOPPING, cartons(4)))).toMatchObject({ left: 6, over: 0 });
    expect(left(94.76, buy(EMPTY_SHOPPING, cartons(10)))).toMatchObject({ left: 0, over: 0, back: 0 });
  });

  it('may go back where the plan shrank, as far as it is unopened', () => {
    const shopping = buy(EMPTY_SHOPPING, cartons(12));
    expect(left(94.76, shopping)).toMatchObject({ left: 0, over: 2, back: 2 });
    expect(left(94.76, open(shopping, 'plank', 11))).toMatchObject({ over: 2, back: 1 });
    expect(left(94.76, open(shopping, 'plank', 12))).toMatchObject({ over: 2, back: 0 });
  });

  it('of what nothing needs any more, all may go back', () => {
    expect(tally([], buy(EMPTY_SHOPPING, cartons(4)))).toMatchObject([{ item: 'plank', amount: 0, left: 0, back: 4 }]);
  });

  it('and what is bought is never less than what is needed, nor a carton more, once it is all bought', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), somePurchases, (hundredths, purchases) => {
        const shopping = after(purchases.map((one) => ({ ...one, item: 'plank' })));
        const one = left(hundredths / 100, shopping);
        const all = boughtOf(shopping, 'plank') + (one?.left ?? 0) * 10;
        expect(all * 100).toBeGreaterThanOrEqual(hundredths);
        if ((one?.left ?? 0) > 0) expect((all - 10) * 100).toBeLessThan(hundredths);
        const kept = boughtOf(shopping, 'plank') - (one?.over ?? 0) * 10;
        if ((one?.over ?? 0) > 0) expect(kept * 100).toBeGreaterThanOrEqual(hundredths);
      }),
    );
  });
});
