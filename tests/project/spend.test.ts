/** Sums of a project's money: by stage, by payer, against the budget, in one currency. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { summarise, tally } from '../../src/project/needs.ts';
import { PAYERS } from '../../src/project/project-limits.ts';
import {
  addCover,
  addEntry,
  buy,
  type Cover,
  dropCovers,
  EMPTY_SHOPPING,
  EMPTY_SPEND,
  removeEntry,
  type SpendEntry,
  setBudget,
  spendSchema,
} from '../../src/project/purchases.ts';
import { STAGES } from '../../src/reply/need.ts';

const sold = { size: 10, label: 'carton', labels: 'cartons' };
const planks = {
  item: 'plank',
  label: 'Planks',
  stage: 'lay' as const,
  unit: 'count' as const,
  amount: 95,
  package: sold,
  count: 10,
  price: { cents: 3250, currency: 'USD' },
  rooms: [],
  notes: [],
};
const entry = (cents: number, more: Partial<SpendEntry> = {}): SpendEntry => ({
  what: 'adhesive',
  cents,
  currency: 'USD',
  stage: 'subfloor',
  payer: 'self',
  at: 0,
  ...more,
});

const someEntry: fc.Arbitrary<SpendEntry> = fc.record({
  what: fc.string({ minLength: 1, maxLength: 20 }),
  cents: fc.integer({ min: -1_000_000, max: 1_000_000 }),
  currency: fc.constantFrom('USD', 'EUR'),
  stage: fc.constantFrom(...STAGES, 'tools' as const, 'other' as const),
  payer: fc.constantFrom(...PAYERS),
  at: fc.nat(),
});

describe('a summary', () => {
  it('sets the estimate beside what is spent and what is left', () => {
    const shopping = buy(EMPTY_SHOPPING, {
      ...planks,
      amount: 40,
      packages: { ...sold, count: 4 },
      cost: { cents: 12_000, currency: 'USD' },
      payer: 'insurer',
      at: 0,
    });
    const spend = addEntry(setBudget(EMPTY_SPEND, { cents: 50_000, currency: 'USD' }), entry(8420));
    const { stages, spent, left, expected, payers, verdict } = summarise(
      tally([planks], shopping),
      shopping,
      spend,
      'USD',
    );
    expect(stages).toEqual([
      { stage: 'subfloor', estimate: 0, spent: 8420, left: 0 },
      { stage: 'lay', estimate: 32_500, spent: 12_000, left: 6 * 3250 },
    ]);
    expect([spent, left, expected]).toEqual([20_420, 19_500, 39_920]);
    expect(payers).toEqual({ self: 8420, insurer: 12_000, landlord: 0 });
    expect(verdict).toBe('within');
  });

  it('shares of those who pay come to all that is expected, and nobody pays less than nothing', () => {
    const someCover: fc.Arbitrary<Cover> = fc.oneof(
      fc.record({
        kind: fc.constant('amount' as const),
        payer: fc.constantFrom('insurer' as const, 'landlord' as const),
        cents: fc.integer({ min: 1, max: 2_000_000 }),
        currency: fc.constantFrom('USD', 'EUR'),
      }),
      fc.record({
        kind: fc.constant('part' as const),
        payer: fc.constantFrom('insurer' as const, 'landlord' as const),
        part: fc.integer({ min: 1, max: 10_000 }),
      }),
      fc.record({
        kind: fc.constant('stage' as const),
        payer: fc.constantFrom('insurer' as const, 'landlord' as const),
        stage: fc.constantFrom(...STAGES, 'tools' as const, 'other' as const),
      }),
    );
    fc.assert(
      fc.property(fc.array(someEntry, { maxLength: 8 }), fc.array(someCover, { maxLength: 6 }), (entries, covers) => {
        const spend = covers.reduce(addCover, entries.reduce(addEntry, EMPTY_SPEND));
        expect(spendSchema.parse(spend)).toEqual(spend);
        const { shares, expected } = summarise(tally([planks], EMPTY_SHOPPING), EMPTY_SHOPPING, spend, 'USD');
        if (covers.every((one) => one.kind === 'amount' && one.currency === 'EUR')) expect(shares).toBeUndefined();
        if (!shares) return;
        expect(shares.self + shares.insurer + shares.landlord).toBe(Math.max(0, expected));
        expect(Math.min(...Object.values(shares))).toBeGreaterThanOrEqual(0);
        const gone = dropCovers(dropCovers(spend, 'insurer'), 'landlord');
        expect(gone).toEqual(entries.reduce(addEntry, EMPTY_SPEND));
      }),
    );
  });

  it.each([
    [50_000, 'within'],
    [36_111, 'near'],
    [32_500, 'near'],
    [32_499, 'past'],
  ])('of 325.00 expected is, with a budget of %i cents, %s', (cents, verdict) => {
    const spend = setBudget(EMPTY_SPEND, { cents, currency: 'USD' });
    expect(summarise(tally([planks], EMPTY_SHOPPING), EMPTY_SHOPPING, spend, 'USD').verdict).toBe(verdict);
  });

  it('what nobody has a price for is counted as such', () => {
    const { price: _, ...free } = planks;
    expect(summarise(tally([free], EMPTY_SHOPPING), EMPTY_SHOPPING, EMPTY_SPEND, 'USD').unpriced).toBe(1);
  });

  it('sums to the cent by stage and by payer, refunds taken off, other currencies left out', () => {
    fc.assert(
      fc.property(fc.array(someEntry, { maxLength: 30 }), (entries) => {
        const spend = entries.reduce(addEntry, EMPTY_SPEND);
        expect(spendSchema.parse(spend)).toEqual(spend);
        const { stages, payers, spent } = summarise([], EMPTY_SHOPPING, spend, 'USD');
        const sum = entries.reduce((total, one) => (one.currency === 'USD' ? total + one.cents : total), 0);
        expect(spent).toBe(sum);
        expect(stages.reduce((total, one) => total + one.spent, 0)).toBe(sum);
        expect(PAYERS.reduce((total, payer) => total + payers[payer], 0)).toBe(sum);
      }),
    );
  });

  it('an entry added and removed leaves the rest', () => {
    fc.assert(
      fc.property(fc.array(someEntry, { maxLength: 9 }), someEntry, (entries, one) => {
        const spend = entries.reduce(addEntry, EMPTY_SPEND);
        expect(removeEntry(addEntry(spend, one), entries.length)).toEqual(spend);
      }),
    );
  });
});
