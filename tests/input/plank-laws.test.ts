/** Laws of planks: random products written down are read back, and no text breaks the reader. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPlank } from '../../src/input/parse-plank.ts';
import { readPrice } from '../../src/input/parse-price.ts';
import { FEET, given, IN, kept, METRES, MM } from './room-typed.ts';

const joints = fc.constantFrom(', ', '; ', ' ', '\n', ' , ');

it('any product comes back exactly, its parts in any order', () => {
  const parts = fc.record({
    width: fc.integer({ min: 30, max: 400 }),
    longer: fc.integer({ min: 0, max: 3000 }),
    count: fc.integer({ min: 1, max: 1000 }),
    cents: fc.integer({ min: 1, max: 99_999 }),
    order: fc.shuffledSubarray([0, 1, 2], { minLength: 3, maxLength: 3 }),
    carton: fc.constantFrom('carton', 'BOX', 'pack', 'case', 'bx', 'ctn'),
    per: fc.constantFrom(' per ', ' a ', '/', ' planks per ', ' boards in a '),
    joint: joints,
    turned: fc.boolean(),
  });
  fc.assert(
    fc.property(parts, ({ width, longer, count, cents, order, carton, per, joint, turned }) => {
      const length = width + longer;
      const size = turned ? `${length} x ${width} mm` : `${width} × ${length} mm`;
      const price = `€${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')} a ${carton}`;
      const text = order.map((i) => [size, `${count}${per}${carton}`, price][i]).join(joint);
      const { value } = given(readPlank, text);
      expect(value).toEqual({
        plank: { width: width * MM, length: length * MM, perCarton: count, lock: 'click' },
        cartonArea: BigInt(width * length) * BigInt(count) * BigInt(MM) ** 2n,
        cartonPrice: { cents, currency: 'EUR' },
        units: 'metric',
      });
    }),
    { numRuns: 400 },
  );
});

it('a price a sq ft is the carton’s to half a cent, reckoned in whole numbers', () => {
  const sixteenths = fc.integer({ min: 16, max: 600 });
  fc.assert(
    fc.property(
      sixteenths,
      sixteenths,
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 9999 }),
      (a, b, count, cents) => {
        const text = `${a / 16} x ${b / 16} in, ${count} per carton, $${(cents / 100).toFixed(2)}/sq ft`;
        const { value } = given(readPlank, text);
        // In sixteenths of an inch a square foot is 192²; the doubled remainder of a fair rounding is at most the divisor.
        const exact = BigInt(a * b) * BigInt(count * cents);
        const off = 2n * (BigInt(value.cartonPrice?.cents ?? -1) * 192n ** 2n - exact);
        expect(off <= 192n ** 2n && off > -(192n ** 2n)).toBe(true);
        expect(value.cartonArea).toBe(BigInt(a * b * count) * BigInt(IN / 16) ** 2n);
      },
    ),
    { numRuns: 200 },
  );
});

describe('any text', () => {
  const scraps = fc.constantFrom(
    '6',
    '48',
    '3,8',
    '1/2',
    '½',
    "'",
    '"',
    ' ft ',
    ' mm',
    ' in',
    ' x ',
    '/',
    ' per ',
    ' a ',
    ' carton',
    ' box ',
    ' of ',
    ', ',
    '; ',
    '\n',
    '$',
    '€',
    '£',
    'USD ',
    '2.89',
    ' sq ft',
    ' m²',
    '10 ',
    ' planks',
    ' thick',
    ' pad',
    'no ',
    ' attached ',
    ' click',
    'glue-down',
    'oak ',
    '-',
    '(',
    ')',
    ':',
    '.',
    '’',
    '”',
    '\u00a0',
    '\u0007',
    '\ud800',
    '█',
    '🙂',
    '6x48',
    '6 x 48 in',
    '10 per carton',
    '20 sq ft',
    '$58 a box',
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(scraps, { maxLength: 14 }).map((parts) => parts.join('')),
    fc
      .tuple(fc.constantFrom('6x48, 10 per carton, ', '6x48 ', '10 a box '), fc.array(scraps, { maxLength: 6 }))
      .map(([head, tail]) => head + tail.join('')),
  );

  it.each([FEET, METRES])('is read or comes back with fixes that are read ($units)', (preferences) => {
    let unreadable = 0;
    fc.assert(
      fc.property(texts, (text) => {
        const result = readPlank(text, kept('plank', preferences));
        if (result.ok) {
          const { plank, cartonArea } = result.value;
          const product = BigInt(plank.width) * BigInt(plank.length) * BigInt(plank.perCarton);
          const apart = cartonArea > product ? cartonArea - product : product - cartonArea;
          expect(plank.width <= plank.length && apart * 50n <= product).toBe(true);
          return;
        }
        unreadable++;
        for (const { option, expected, fix } of result.problems) {
          expect(option).toBe('plank');
          expect(expected.length).toBeGreaterThan(10);
          if (fix !== undefined) expect(readPlank(fix, kept('plank', preferences)), fix).toMatchObject({ ok: true });
        }
      }),
      { numRuns: 1500 },
    );
    expect(unreadable).toBeGreaterThan(100);
  });

  it('is an amount of money or has a fix that is one', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const result = readPrice(text, kept('price', FEET));
        if (!result.ok)
          expect(readPrice(result.problems[0].fix ?? '$1', kept('price', FEET))).toMatchObject({ ok: true });
      }),
      { numRuns: 1000 },
    );
  });
});
