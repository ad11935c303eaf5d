/** Money as people tell it: spent, refunded, a budget, an entry removed. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSpending } from '../../src/input/parse-spending.ts';
import { DEFAULT_PREFERENCES, type Reading } from '../../src/input/reading.ts';

const reading: Reading = { option: 'do', preferences: DEFAULT_PREFERENCES, note: () => undefined };

describe('money', () => {
  it.each([
    [
      'spent $84.20 on adhesive, insurer',
      { kind: 'spent', price: { cents: 8420 }, what: 'adhesive', payer: 'insurer' },
    ],
    ['$84.20 adhesive', { kind: 'spent', price: { cents: 8420 }, what: 'adhesive' }],
    ['84,20 € for bags', { kind: 'spent', price: { cents: 8420, currency: 'EUR' }, what: 'bags' }],
    [
      'paid the plumber $1,250.00, paid by the landlord',
      { price: { cents: 125_000 }, what: 'plumber', payer: 'landlord' },
    ],
    ['spent 45 on a saw rental', { kind: 'spent', price: { cents: 4500 }, what: 'saw rental' }],
    ['refund $32.50 carton, insurer', { kind: 'refund', price: { cents: 3250 }, what: 'carton', payer: 'insurer' }],
    ['got $20 back for the tubes', { kind: 'refund', price: { cents: 2000 }, what: 'tubes' }],
    ['got back $20 for the tubes', { kind: 'refund', price: { cents: 2000 }, what: 'tubes' }],
    ['budget $2,500', { kind: 'budget', price: { cents: 250_000 } }],
    ['budget is 2500', { kind: 'budget', price: { cents: 250_000 } }],
    ['no budget', { kind: 'budget', price: undefined }],
    ['insurer pays $1,500', { kind: 'cover', payer: 'insurer', of: { price: { cents: 150_000 } } }],
    ['the insurance pays $1500 of it', { kind: 'cover', payer: 'insurer', of: { price: { cents: 150_000 } } }],
    ['insurer pays 1500', { kind: 'cover', payer: 'insurer', of: { price: { cents: 150_000 } } }],
    ['insurer pays 25 %', { kind: 'cover', payer: 'insurer', of: { part: 2500 } }],
    ['our landlord covers half of the job', { kind: 'cover', payer: 'landlord', of: { part: 5000 } }],
    ['insurance covers everything', { kind: 'cover', payer: 'insurer', of: { part: 10_000 } }],
    ['insurer pays for the tear-out', { kind: 'cover', payer: 'insurer', of: { stages: ['tear-out'] } }],
    ['insurer pays baseboards and paint', { kind: 'cover', payer: 'insurer', of: { stages: ['baseboards', 'paint'] } }],
    ['insurer pays nothing', { kind: 'cover', payer: 'insurer', of: 'nothing' }],
    // What was paid for one thing is an entry of its own.
    ['insurer paid $84.20 for adhesive', { kind: 'spent', price: { cents: 8420 }, payer: 'insurer' }],
    ['remove 3', { kind: 'remove', place: 3 }],
    ['', { kind: 'show' }],
    ['how much so far?', { kind: 'show' }],
  ])('“%s”', (text, expected) => expect(readSpending(text, reading)).toMatchObject(expected));

  it.each(['blah', 'spent nothing on adhesive', '$0 on tape', 'insurer pays 120 %', 'insurer pays the piper'])(
    '“%s” is none',
    (text) => expect(readSpending(text, reading)).toBeUndefined(),
  );

  it('nothing typed throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
        readSpending(`spent $5 ${text}`, reading);
      }),
    );
  });
});
