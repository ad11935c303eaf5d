/** Prices: what a carton costs, whatever the price was typed for, and amounts of money by themselves. */

import { describe, expect, it } from 'vitest';
import { readPlank } from '../../src/input/parse-plank.ts';
import { readPrice } from '../../src/input/parse-price.ts';
import { FEET, given, METRES, problemsIn } from './room-typed.ts';

describe('the price of a carton', () => {
  // Reckoned by hand: 10 planks of 6 x 48 in cover 20 ft²; 8 of 0.2 m² cover 1.6 m².
  it.each([
    ['6x48, 10 a box, $2.89/sq ft', 5780, 'USD'],
    ['6x48, 10 a box, $2.89 per square foot', 5780, 'USD'],
    ['6x48, 10 a box, $ 2.89 sf', 5780, 'USD'],
    ['6x48, 10 a box @ $2.89/sqft', 5780, 'USD'],
    ['6x48, 10 a box, 2.89 USD per sq ft', 5780, 'USD'],
    ['6x48, 10 a box, price 2.89/sq ft', 5780, 'USD'],
    ['6x48, 10 a box, $58 a box', 5800, 'USD'],
    ['6x48, 10 a box, $58 box', 5800, 'USD'],
    ['6x48, 10 a box, cost: 58 a carton', 5800, 'USD'],
    ['6x48, 10 a box, price per carton: $58', 5800, 'USD'],
    ['$58 per carton, 6x48, 10 per carton', 5800, 'USD'],
    ['6x48, 10 a box, $5.80 each', 5800, 'USD'],
    ['6x48, 10 a box, $5.80 per plank', 5800, 'USD'],
    ['6x48, 10 a box, CAD 2.10 per sf', 4200, 'CAD'],
    ['6x48, 10 a box, £1,058.50 a box', 105_850, 'GBP'],
    ['20 cm x 1 m, 8 a box, 20 € per m²', 3200, 'EUR'],
    ['20 cm x 1 m, 8 a box, 19,99 €/m2', 3198, 'EUR'],
    ['180 x 1220 mm, 8 per carton, 31,90 € a carton', 3190, 'EUR'],
    // Half a cent goes up: 20 ft² × 2.89025 = 57.805.
    ['6x48, 10 a box, $2.89025 a sq ft', 5781, 'USD'],
    // The price a sq ft counts what is printed: 20.1 ft² × 2.89 = 58.089.
    ['6x48, 10 a box, 20.1 sq ft a box, $2.89/sq ft', 5809, 'USD'],
    // CEMC, University of Waterloo, Problem of the Week B 2023-24 no. 15 (published): $74.50 a box.
    ['20 cm x 1 m, 8 per box, $74.50 a box', 7450, 'USD'],
  ])('%s', (text, cents, currency) => {
    expect(given(readPlank, text).value.cartonPrice).toEqual({ cents, currency });
  });

  it('is not there when none is told', () => {
    expect(given(readPlank, '6x48, 10 a box').value).not.toHaveProperty('cartonPrice');
  });

  it('a foot is a price a sq ft, and that is noted', () => {
    const { value, notes } = given(readPlank, '6 x 48 in, 10 a box, $2.89 a foot');
    expect(value.cartonPrice?.cents).toBe(5780);
    expect(notes).toEqual(['$2.89 a foot read as a price per sq ft']);
  });

  it('of $ is in the dollar of the asker, without a mark in the currency of the asker', () => {
    const price = (text: string, currency: string) =>
      given(readPlank, `6x48, 10 a box, ${text}`, { ...FEET, currency }).value.cartonPrice?.currency;
    expect(price('$58 a box', 'CAD')).toBe('CAD');
    expect(price('$58 a box', 'EUR')).toBe('USD');
    expect(price('US$58 a box', 'CAD')).toBe('USD');
    expect(price('price 58 a box', 'CHF')).toBe('CHF');
  });

  it('without a mark gets that of the asker’s currency', () => {
    expect(problemsIn(readPlank, '6x48, 10 per box, 2.89/sq ft')[0]?.fix).toBe('6x48, 10 per box, $2.89/sq ft');
    expect(problemsIn(readPlank, '180x1220 mm, 8 per box, 24,90 per m²', METRES)[0]?.fix).toBe(
      '180x1220 mm, 8 per box, €24,90 per m²',
    );
  });

  it.each([
    ['6x48, 10 per box, $58', /what it buys/],
    ['6x48, 10 per carton, $2.89 per sqft, $58 a box', /One price is enough/],
    ['6x48, 10 per carton, $2000000 a carton', /at most/],
    ['6x48, 1000 per carton, $1001 each', /at most/],
    ['6x48, 10 per carton, ¥500 a carton', /isn’t a plank’s size/],
  ])('of %s is doubtful, and neither left out nor made another', (text, expected) => {
    expect(problemsIn(readPlank, text)[0]).toMatchObject({ expected: expect.stringMatching(expected), fix: undefined });
  });
});

describe('an amount of money', () => {
  it.each([
    ['$58', 5800, 'USD'],
    ['$1,234.50', 123_450, 'USD'],
    ['1.234,50 €', 123_450, 'EUR'],
    ['31,90 €', 3190, 'EUR'],
    ['€31.90', 3190, 'EUR'],
    ['CAD 12.50', 1250, 'CAD'],
    ['12.50 aud', 1250, 'AUD'],
    ['58 dollars', 5800, 'USD'],
    ['.99 GBP', 99, 'GBP'],
    ['$1000000', 100_000_000, 'USD'],
  ])('%s', (text, cents, currency) => {
    expect(given(readPrice, text)).toEqual({ value: { cents, currency }, notes: [] });
  });

  it('without a currency, or finer than a cent, is noted', () => {
    expect(given(readPrice, '58').notes).toEqual(['58 read as $58.00']);
    expect(given(readPrice, '58', METRES).value).toEqual({ cents: 5800, currency: 'EUR' });
    expect(given(readPrice, '$12.505')).toEqual({
      value: { cents: 1251, currency: 'USD' },
      notes: ['$12.505 read as $12.51'],
    });
  });

  it.each(['', 'abc', '-5', '$-5', '$1000000.01', '¥500', '$5 eur', '5 $ 6', '1.2.3 $', '\u0007'])(
    '%j is none',
    (text) => {
      expect(problemsIn(readPrice, text)).toHaveLength(1);
    },
  );
});
