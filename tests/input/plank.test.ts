/** Planks in the forms people type them. */

import { describe, expect, it } from 'vitest';
import { readPlank } from '../../src/input/parse-plank.ts';
import { FEET, FT, given, IN, M, METRES, MM } from './room-typed.ts';

/** Width, length and count of a plank, in ticks. */
function sizeOf(text: string, preferences = FEET): number[] {
  const { width, length, perCarton } = given(readPlank, text, preferences).value.plank;
  return [width, length, perCarton];
}

describe('size and count', () => {
  it.each([
    ['6 x 48 in, 20 sq ft/carton, $2.89/sq ft', 6 * IN, 48 * IN, 10],
    ['180 x 1220 mm, 8 per carton, 31,90 € a carton', 180 * MM, 1220 * MM, 8],
    ['180 × 1,220 mm; 8 per carton', 180 * MM, 1220 * MM, 8],
    ['18 x 122 cm 8 per carton', 180 * MM, 1220 * MM, 8],
    ['7" x 48", 10/box', 7 * IN, 48 * IN, 10],
    ['7″ × 48″ – 10 / BOX', 7 * IN, 48 * IN, 10],
    ['7.1" x 47 3/4", 10/box', Math.round(7.1 * IN), 47.75 * IN, 10],
    ['7 1/16 x 48 in, 10 a box', 7.0625 * IN, 48 * IN, 10],
    ['6x48, 10 per carton', 6 * IN, 48 * IN, 10],
    ['6x48,10 per carton', 6 * IN, 48 * IN, 10],
    ['6\u00a0x\u00a048\u00a0in\u00a010\u00a0per\u00a0carton', 6 * IN, 48 * IN, 10],
    ['10 per carton, 6 x 48 in', 6 * IN, 48 * IN, 10],
    ['7 inch by 4 foot, 23.33 a box', 7 * IN, 4 * FT, 10],
    ['5in x 3ft, 16 planks per box', 5 * IN, 3 * FT, 16],
    ['6x36 12 ct', 6 * IN, 36 * IN, 12],
    ['6x48 pack of 8', 6 * IN, 48 * IN, 8],
    ['6x48, 8-pack', 6 * IN, 48 * IN, 8],
    ['6x48, case of 10 boards', 6 * IN, 48 * IN, 10],
    ['6x48, ctn: 10', 6 * IN, 48 * IN, 10],
    ['6x48, 10 planks in a carton', 6 * IN, 48 * IN, 10],
    ['6x48, 16 planks', 6 * IN, 48 * IN, 16],
    ['6x48, 10.0 a box', 6 * IN, 48 * IN, 10],
    ['48 x 6 in, 10 a box', 6 * IN, 48 * IN, 10],
    ['12 x 12 in, 20 per box', 12 * IN, 12 * IN, 20],
    ['7x48 carton 23.64 sqft', 7 * IN, 48 * IN, 10],
    ['180 x 1220, 8 per carton', 180 * MM, 1220 * MM, 8],
    ['180x1220 mm 2.2 m² per pack', 180 * MM, 1220 * MM, 10],
    ['180x1220 mm, 2,2 m2/pack', 180 * MM, 1220 * MM, 10],
    ['7 in x 48 in luxury vinyl planks, box covers 23.33 sq. ft.', 7 * IN, 48 * IN, 10],
    ['LVP flooring 6 x 48 in, 20 mil wear layer, 10 planks in a carton', 6 * IN, 48 * IN, 10],
  ])('%s', (text, width, length, count) => {
    expect(sizeOf(text)).toEqual([width, length, count]);
  });

  it('takes a size without a unit by habit, and says so', () => {
    expect(given(readPlank, '6x48, 10 a box').notes).toEqual(['6x48 read as inches']);
    expect(sizeOf('180x1220, 8 a box', METRES)).toEqual([180 * MM, 1220 * MM, 8]);
    expect(given(readPlank, '180x1220, 8 a box', METRES)).toMatchObject({
      value: { units: 'metric' },
      notes: ['180x1220 read as mm'],
    });
    expect(given(readPlank, '6 x 48 in, 8 a box', METRES)).toMatchObject({ value: { units: 'imperial' }, notes: [] });
  });

  it('says which side was taken for the width when the longer one came first', () => {
    expect(given(readPlank, '48 x 6 in, 10 a box').notes).toEqual([`48 x 6 in read as 6" wide, 4' long`]);
  });
});

describe('what a carton covers', () => {
  // CEMC, University of Waterloo, Problem of the Week B 2023-24 no. 15 (published): 0.2 m² a plank, 8 planks a box.
  it('comes from the count: 8 planks of 0.2 m² cover 1.6 m²', () => {
    const { plank, cartonArea } = given(readPlank, '20 cm x 1 m, 8 per box, $74.50 a box').value;
    expect(BigInt(plank.width) * BigInt(plank.length) * 5n).toBe(BigInt(M) ** 2n);
    expect(cartonArea * 5n).toBe(8n * BigInt(M) ** 2n);
  });

  it('gives the count: 1.6 m² is 8 planks of 0.2 m²', () => {
    const { value, notes } = given(readPlank, '200 x 1000 mm, 1.6 m² per box');
    expect(value.plank.perCarton).toBe(8);
    expect(notes).toEqual(['1.6 m² a carton read as 8 planks']);
  });

  it('stands as printed within 2 % of size × count, and both are told', () => {
    const { value, notes } = given(readPlank, '6 x 48 in, 10 a box, 20.4 sq ft');
    // 20.4 ft² = 29,376 ÷ 10 in², rounded to a square tick.
    expect(Math.abs(Number(value.cartonArea * 10n - 29_376n * BigInt(IN) ** 2n))).toBeLessThanOrEqual(5);
    expect(notes).toEqual(['a carton covers 20.4 sq ft as printed; 10 planks of this size come to 20 sq ft']);
  });

  it('is read from a number a carton that is no count', () => {
    expect(given(readPlank, '7 x 48 in, 23.33 a box').notes).toEqual([
      '23.33 a box read as 23.33 sq ft a carton',
      '23.33 sq ft a carton read as 10 planks',
    ]);
    expect(given(readPlank, '180 x 1220 mm, 1,76 a pack', METRES).notes[0]).toBe(
      '1,76 a pack read as 1,76 m² a carton',
    );
  });
});

describe('pad, lock and thickness', () => {
  it.each([
    ['', undefined],
    ['attached pad', true],
    ['pad attached', true],
    ['with underlayment', true],
    ['no pad', false],
    ['without attached pad', false],
  ])('pad: %j', (words, attachedPad) => {
    expect(given(readPlank, `6x48, 10 a box, ${words}`).value.attachedPad).toBe(attachedPad);
  });

  it.each([
    ['', 'click'],
    ['click', 'click'],
    ['click-lock', 'click'],
    ['Locking', 'click'],
    ['no lock', 'none'],
    ['without locks', 'none'],
    ['glue-down', 'none'],
    ['glue down', 'none'],
    ['loose lay', 'none'],
    ['loose', 'none'],
  ])('lock: %j', (words, lock) => {
    expect(given(readPlank, `6x48, 10 a box, ${words}`).value.plank.lock).toBe(lock);
  });

  it.each([
    ['6x48 in, 10 a box, 5 mm thick', 5 * MM],
    ['6x48 in, 5mm thick, 10 a box', 5 * MM],
    ['6x48 in, 10 a box, thickness 1/4"', IN / 4],
    ['6x48 in, 10 a box, 5mm', 5 * MM],
    ['6 x 48 in x 5 mm, 10 a box', 5 * MM],
    ['6x48 in, 10 a box', undefined],
  ])('thickness: %s', (text, thickness) => {
    expect(given(readPlank, text).value.thickness).toBe(thickness);
  });
});
