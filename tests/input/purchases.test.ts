/** Purchases as people tell them, and which things of a list they name. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPurchases, thingsNamed } from '../../src/input/parse-purchases.ts';
import { DEFAULT_PREFERENCES, type Reading } from '../../src/input/reading.ts';

const reading: Reading = { option: 'do', preferences: DEFAULT_PREFERENCES, note: () => undefined };
const given = (text: string) => readPurchases(text, reading);

describe('a purchase', () => {
  it('tells how many, what, the price of one, and the lot', () => {
    expect(given('bought 10 cartons at $32.50 lot B7')).toMatchObject([
      {
        action: 'buy',
        amount: { figure: 10 },
        words: ['cartons'],
        price: { cents: 3250 },
        priceOf: 'each',
        lot: 'B7',
      },
    ]);
  });

  it.each([
    ['bought 4 of tubes', { amount: { all: false, figure: 4 }, words: ['tubes'] }],
    ['bought all paint', { amount: { all: true }, words: ['paint'] }],
    ['I bought the caulk', { amount: { all: false }, words: ['caulk'] }],
    ['got a dozen tubes of caulk for $40', { amount: { figure: 12 }, price: { cents: 4000 }, priceOf: 'total' }],
    ['bought two 12 ft sticks', { amount: { figure: 2 }, words: ['12', 'ft', 'sticks'] }],
    ['bought 3 x 12 ft sticks @ 12.48', { amount: { figure: 3 }, price: { cents: 1248 }, priceOf: 'each' }],
    ['bought 2x4s', { words: ['2x4s'] }],
    ['bought 200 sq ft of pad for $90', { amount: { figure: 200, unit: 'area' }, words: ['pad'], priceOf: 'total' }],
    ['bought 1 quart of paint', { amount: { figure: 1, unit: 'volume' } }],
    ['bought 10 cartons, $325 in all, insurer pays', { price: { cents: 32_500 }, priceOf: 'total', payer: 'insurer' }],
    ['bought 10 cartons 31,90 € each batch 4471', { price: { cents: 3190, currency: 'EUR' }, lot: '4471' }],
    ['returned 2 cartons', { action: 'return', amount: { figure: 2 } }],
    ['opened 3 cartons', { action: 'open', amount: { figure: 3 } }],
    ['not bought caulk', { action: 'unbuy', words: ['caulk'] }],
    ['untick caulk', { action: 'untick', words: ['caulk'] }],
    ['bought everything', { amount: { all: true }, words: [] }],
  ])('“%s”', (text, expected) => expect(given(text)).toMatchObject([expected]));

  it('several in one line, each with its own deed', () => {
    expect(given('bought 10 cartons at $32.50 lot B7, 4 tubes; all paint and opened 2 cartons')).toMatchObject([
      { action: 'buy', amount: { figure: 10 }, lot: 'B7' },
      { action: 'buy', amount: { figure: 4 }, words: ['tubes'] },
      { action: 'buy', amount: { all: true }, words: ['paint'] },
      { action: 'open', amount: { figure: 2 } },
    ]);
  });

  it('is none without a word for it', () => {
    expect(given('')).toBeUndefined();
    expect(given('blah 4 tubes')).toBeUndefined();
    expect(given('4 tubes')).toMatchObject([{ action: 'buy', amount: { figure: 4 } }]);
  });

  it('nothing typed throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
        readPurchases(`bought ${text}`, reading);
      }),
    );
  });
});

describe('things named', () => {
  const thing = (item: string, label: string, sold = '') => ({
    item,
    label,
    package: { label: sold, labels: `${sold}s` },
  });
  const things = [
    thing('plank 1x2', 'Planks 7" × 48"', 'carton of 10'),
    thing('subfloor adhesive', 'Subfloor adhesive', 'tube of 28 fl oz'),
    thing('caulk', 'Caulk', 'tube of 10.1 fl oz'),
    thing('trim paint', 'Trim paint', 'quart'),
    thing('trim primer', 'Primer for trim', 'quart'),
    thing('finish nail 1', 'Finish nails, 2"'),
    thing('baseboard 1', "Baseboard, 12'", "stick of 12'"),
    thing('baseboard 2', "Baseboard, 16'", "stick of 16'"),
  ];
  const named = (words: string) => thingsNamed(words.split(' '), things).map(({ item }) => item);

  it.each([
    ['cartons', ['plank 1x2']],
    ['boxes flooring', ['plank 1x2']],
    ['boxes', ['plank 1x2']],
    ['box nails', ['finish nail 1']],
    ['tubes', ['subfloor adhesive', 'caulk']],
    ['tubes caulk', ['caulk']],
    ['glue', ['subfloor adhesive']],
    ['paint', ['trim paint']],
    ['primer', ['trim primer']],
    ['12 ft sticks', ['baseboard 1']],
    ['skirting 16', ['baseboard 2']],
    ['baseboards', ['baseboard 1', 'baseboard 2']],
    ['adhesve', ['subfloor adhesive']],
    ['cualk', ['caulk']],
    ['sandwich', []],
  ])('%s', (words, expected) => expect(named(words)).toEqual(expected));
});
