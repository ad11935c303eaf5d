/** How one length is read: what is noted, what is asked back, what is refused, and the laws. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLengthIn, unitIn, unitsOf } from '../../src/input/parse-length.ts';
import type { LengthUnit } from '../../src/input/parse-number.ts';
import { COMMA, POINT, problemIn, readIn, ticksIn } from './length-typed.ts';

describe('a number without a unit', () => {
  it.each([
    ['12', 'ft', 1_170_432, '12 read as 12 feet'],
    ['1', 'ft', 97_536, '1 read as 1 foot'],
    ['12.', 'ft', 1_170_432, '12 read as 12 feet'],
    ['3,8', 'm', 1_216_000, '3,8 read as 3,8 metres'],
    ['7/16', 'in', 3556, '7/16 read as 7/16 inch'],
    ['6-1/2', 'in', 52_832, '6-1/2 read as 6-1/2 inches'],
    ['180', 'mm', 57_600, '180 read as 180 mm'],
    ['4', 'yd', 1_170_432, '4 read as 4 yards'],
  ] as const)('%s in %s', (text, bare, ticks, note) => {
    const { result, notes } = readIn(text, POINT, bare);
    expect(result).toEqual({ ok: true, value: ticks });
    expect(notes).toEqual([note]);
  });

  it('is not noted when the text round it names the unit', () => {
    const notes: string[] = [];
    const reading = { option: 'room', preferences: POINT, note: (assumed: string) => notes.push(assumed) };
    expect(readLengthIn('12', reading, 'ft')).toEqual({ ok: true, value: 1_170_432 });
    expect(notes).toEqual([]);
    readLengthIn('12.6', reading, 'ft');
    expect(notes).toHaveLength(1);
  });
});

describe('decimal feet that may be feet and inches', () => {
  // 12.6 ft = 151.2 in, and 3/16 in is the nearest sixteenth to 0.2 in.
  it.each(['12.6 ft', `12.6'`, '12.6', '12,6 feet'])('%s is decimal and asks', (text) => {
    const { result, notes } = readIn(text, POINT, 'ft');
    expect(result).toEqual({ ok: true, value: Math.round((126 * 97_536) / 10) });
    expect(notes).toHaveLength(1);
    expect(notes[0]).toContain(`read as`);
    expect(notes[0]).toContain(`12' 7 3/16"`);
    expect(notes[0]).toContain(`if you meant 12 feet 6 inches, type 12'6"`);
  });

  it.each(['12.1', '12.10', '12.11', '12.4', '12.7', '12.9'])('%s asks', (text) => {
    const [, inch = ''] = text.split('.');
    expect(readIn(`${text} ft`, POINT, 'ft').notes.join()).toContain(`type 12'${inch}"`);
  });

  it.each(['12.5 ft', '12.25 ft', '12.75 ft', '12.12 ft', '12.05 ft', '12.0 ft', '12.6 in', '12.6 m'])(
    '%s does not',
    (text) => {
      expect(readIn(text, POINT, 'ft').notes.join()).not.toContain('if you meant');
    },
  );
});

describe('commas and points that may be thousands', () => {
  it('asks where both readings are lengths', () => {
    expect(problemIn('3,800 cm')).toEqual({
      option: 'room',
      got: '3,800 cm',
      expected: 'Did you mean 3800 cm or 3.800 cm? Type the one you meant.',
      fix: '3800 cm',
    });
    expect(problemIn('1,220 ft').fix).toBe('1.220 ft');
    expect(problemIn('380,220 ft').expected).toMatch(/at most \W*100 m/);
    expect(problemIn('1,220"').fix).toBe('1220"');
    expect(problemIn('3.800 cm', COMMA).fix).toBe('3800 cm');
  });

  it('goes by the asker and the unit elsewhere', () => {
    expect(ticksIn('3,805 m', POINT)).toBe(1_217_600);
    expect(ticksIn('3,805 m', COMMA)).toBe(1_217_600);
    expect(ticksIn('3.805 m', COMMA)).toBe(1_217_600);
    expect(ticksIn('1.220 mm', COMMA)).toBe(390_400);
    expect(ticksIn('1,220 mm', COMMA)).toBe(390_400);
    expect(ticksIn('6.125"', COMMA)).toBe(49_784);
    expect(ticksIn('3,800 cm', COMMA)).toBe(12_160);
    expect(ticksIn('0,805 m', POINT)).toBe(257_600);
  });
});

describe('what is refused', () => {
  it('takes a mark in a lesser part for a decimal, since thousands would fill the greater', () => {
    expect(ticksIn('3 ft 6,125 in')).toBe(3 * 97_536 + 49_784);
  });

  it.each(['0', '0"', `-5'`, '−3 m', '- 12', '0.000001 mm'])('%s is not above zero', (text) => {
    expect(problemIn(text).expected).toContain('more than zero');
  });

  it.each(['100.001 m', `329'`, '3800', '99999999999999999999 mm', '9'.repeat(100)])('%s is too long', (text) => {
    expect(problemIn(text).expected).toContain('100 m');
  });

  it('offers the unit that was probably meant for a bare number', () => {
    expect(problemIn('3800', COMMA, 'm').fix).toBe('3800 mm');
    expect(problemIn('900', POINT, 'ft').fix).toBe('900 in');
  });

  it.each([
    [`12' 14"`, `13' 2"`],
    [`12' 12`, `13'`],
    [`12' 14 1/2"`, `13' 2 1/2"`],
    ['4 yd 3 ft', `15'`],
    ['3 m 120 cm', '4.2 m'],
  ])('%s fills its greater part: %s', (text, sum) => {
    const { expected, fix } = problemIn(text);
    expect(fix).toBe(sum);
    expect(expected).toContain(sum);
    expect(ticksIn(fix ?? '')).toBeGreaterThan(0);
  });

  it('asks what 3m8 is', () => {
    expect(problemIn('3m8').expected).toContain('3.8 m or 3 m 8 cm');
    expect(problemIn('3m8', COMMA).fix).toBe('3,8 m');
    expect(problemIn('100m8').expected).toMatch(/at most \W*100 m/);
  });

  it.each([
    '',
    ' ',
    'wide',
    '12 6',
    '12.6.3',
    '1e5 mm',
    `12' 6" 3"`,
    `6" 12'`,
    `12.5' 6"`,
    '3 m 6 in',
    '12 sq ft',
    '12 m²',
    '5² m',
    `12'6" x`,
    '1/0"',
    `12' 6 1/0"`,
    '12 furlongs',
    '٣ m',
    'm',
    `'`,
    '3 m - 80 cm',
    'x'.repeat(5000),
  ])('%s is no length', (text) => {
    expect(problemIn(text, POINT)).toMatchObject({ option: 'room', got: text.trim(), fix: `12'6"` });
    expect(problemIn(text, COMMA).fix).toBe('3,8 m');
  });
});

describe('the unit a text names', () => {
  it.each([
    ['3.8 x 4.2 m', 'm'],
    ['12 x 14 ft', 'ft'],
    ['12x14ft', 'ft'],
    ['3mx4m', 'm'],
    [`12'6" x 14'`, 'ft'],
    ['48" x 7.5"', 'in'],
    ['7 x 48 in', 'in'],
    ['180 x 1220 mm', 'mm'],
    ['all in feet: 12 x 14', 'ft'],
    ['3,8 × 4,2 Meter', 'm'],
    ['(12 x 14) m', 'm'],
    ['12 x 14', undefined],
    ['a room in the middle', undefined],
    [`the bedroom's bay`, undefined],
    ['', undefined],
  ])('%s: %s', (text, unit) => {
    expect(unitIn(text)).toBe(unit);
  });

  it('belongs to a system', () => {
    expect((['ft', 'in', 'yd'] as const).map(unitsOf)).toEqual(['imperial', 'imperial', 'imperial']);
    expect((['m', 'cm', 'mm'] as const).map(unitsOf)).toEqual(['metric', 'metric', 'metric']);
  });
});

describe('laws', () => {
  const preferences = fc.constantFrom(POINT, COMMA);
  const units = fc.constantFrom<LengthUnit>('ft', 'in', 'yd', 'm', 'cm', 'mm');
  const scraps = fc.array(
    fc.constantFrom(
      ...'0123456789.,/-\'"½⅓⁄′″ ftinmcyd²^x()∙',
      ' and ',
      'sq ',
      'feet',
      '\u202f',
      '12',
      '6 1/2',
      ',220',
      '38',
    ),
    { maxLength: 14 },
  );

  it('no text throws, and every problem carries a length to type', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      scraps.map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, preferences, units, (text, asker, bare) => {
        unitIn(text);
        const { result } = readIn(text, asker, bare);
        if (result.ok) return Number.isSafeInteger(result.value) && result.value > 0 && result.value <= 32_000_000;
        return result.problems.every(({ fix }) => fix === undefined || readIn(fix, asker, bare).result.ok);
      }),
      { numRuns: 4000 },
    );
  });

  it('feet, inches and a fraction are their sum', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 1, max: 63 }),
        (ft, inch, part) => {
          expect(ticksIn(`${ft}' ${inch} ${part}/64"`)).toBe(ft * 97_536 + inch * 8128 + part * 127);
          expect(ticksIn(`${ft} ft-${inch}-${part}/64`)).toBe(ft * 97_536 + inch * 8128 + part * 127);
        },
      ),
    );
  });

  it('a decimal is exact however it is marked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999 }), (tenths) => {
        const [whole, part] = [Math.floor(tenths / 10), tenths % 10];
        expect(ticksIn(`${whole}.${part} mm`)).toBe(tenths * 32);
        expect(ticksIn(`${whole},${part} mm`)).toBe(tenths * 32);
      }),
    );
  });
});
