/** One length from the forms in which people type it: ticks, notes, and what is refused. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../src/measure/length.ts';
import { readLength, readLengthIn, unitIn, unitsOf } from '../../src/measure/length.ts';
import type { Habits } from '../../src/measure/reading.ts';

const POINT: Habits = { units: 'imperial', decimal: '.', currency: 'USD' };
const COMMA: Habits = { units: 'metric', decimal: ',', currency: 'EUR' };

function readIn(text: string, habits: Habits, bare: LengthUnit) {
  const notes: string[] = [];
  const result = readLength(text, { option: 'room', habits, note: (assumed) => notes.push(assumed) }, bare);
  return { result, notes };
}

function ticksIn(text: string, habits: Habits = POINT, bare: LengthUnit = 'ft'): number {
  const { result } = readIn(text, habits, bare);
  if (!result.ok) throw new Error(`${text}: ${result.problems[0].expected}`);
  return result.value;
}

function problemIn(text: string, habits: Habits = POINT, bare: LengthUnit = 'ft') {
  const { result } = readIn(text, habits, bare);
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  return result.problems[0];
}

// Worked by hand from 1 in = 25.4 mm (NIST, "U.S. Survey Foot: Revised Unit Conversion Factors") and 1 tick = 25.4 mm / 8128:
// 12'6" = 150 in = 1,219,200 ticks; 3.8 m = 3800 × 320 = 1,216,000 ticks; 1/2 in = 4064 ticks.
const FORMS: readonly (readonly [ticks: number, ...forms: string[]])[] = [
  [
    1_219_200,
    `12'6"`,
    `12' 6"`,
    `12' 6`,
    `12'6`,
    `12'-6"`,
    `12' - 6"`,
    `12'–6"`,
    '12ft 6in',
    '12 ft. 6 in.',
    '12FT6IN',
    '12 foot 6',
    '12 feet 6 inches',
    '12 feet and 6 inches',
    '12 feet, 6 inches',
    `12.5'`,
    '12.5 ft',
    '12½ ft',
    `12-1/2'`,
    '150in',
    '150 inches',
    `150"`,
    `150''`,
    '12′6″',
    '12’6”',
    '12‘6“',
    `12'6''`,
    '12´6´´',
    '4 yd 6 in',
    '4 yards 0 ft 6 in',
    '3810 mm',
    '3.81 m',
    '381cm',
    ' 12 ft 6 in ',
    '１２ ft ６ in',
  ],
  [1_223_264, `12' 6 1/2"`, `12'-6½"`, `12' 6-1/2"`, `12'-6 1/2"`, `12'-6-1/2"`, `12'6 ½`, `12' 6.5"`],
  [
    1_216_000,
    '3.8m',
    '3,8 m',
    '3.800 m',
    '3,800 m',
    '380cm',
    '380 cm',
    '3m80',
    '3 m 80',
    '3m800',
    '3 m 80 cm',
    '3 m 800 mm',
    '3 m, 80 cm',
    '3800 mm',
    '3,800 mm',
    '3 800 mm',
    '3\u202f800 mm',
    '3\u00a0800 mm',
    '3.8 metres',
    '3.8 Meter',
    '3.8 METERS',
    '3.8 metre',
    '3800 millimetres',
    '380 centimeters',
  ],
  [976_000, '3m05', '3.05 m', '3 m 5 cm', '3 m 50 mm'],
  [390_400, '1,220 mm', '1220mm', '1 220 mm', '122 cm', '1.22m'],
  [390_560, '1,220.5 mm', '1.220,5 mm', '1 220,5 mm', '1220.5 mm'],
  [52_832, '6-1/2"', '6 1/2 in', '6½"', '6 ½ in', '6.5in', '6 1⁄2"'],
  [4064, '½"', '1/2 in', '1⁄2"', '.5"', '0.5 in', '0,5 in'],
  [2032, '¼"', '1/4"'],
  [6096, '¾"', '3/4 inch'],
  [1016, '⅛"', '1/8"'],
  [3048, '⅜"', '3/8"'],
  [5080, '⅝"', '5/8"'],
  [7112, '⅞"', '7/8"'],
  [127, '1/64"', '1/64 in'],
  [32, '0.1 mm', '0,1mm', '.1 mm', '0.01 cm', '0.0001 m'],
  [32_000_000, '100 m', '100,000 mm'],
];

describe('the forms of a length', () => {
  it.each(FORMS.flatMap(([ticks, ...forms]) => forms.map((form) => [form, ticks] as const)))('%s', (form, ticks) => {
    const { result, notes } = readIn(form, POINT, 'mm');
    expect(result).toEqual({ ok: true, value: ticks });
    expect(notes).toEqual([]);
  });

  it('takes thirds to the nearest tick and says so', () => {
    for (const [form, ticks] of [
      ['⅓"', 2709],
      ['⅔"', 5419],
    ] as const) {
      const { result, notes } = readIn(form, POINT, 'in');
      expect(result).toEqual({ ok: true, value: ticks });
      expect(notes).toHaveLength(1);
      expect(notes[0]).toContain('rounded to');
    }
  });

  it('rounds a half up once: 1/16256 in is half a tick', () => {
    expect(ticksIn('1/16256"')).toBe(1);
    expect(ticksIn('3/16256"')).toBe(2);
    expect(problemIn('1/16257"').expected).toContain('above zero');
  });
});

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
    const reading = { option: 'room', habits: POINT, note: (assumed: string) => notes.push(assumed) };
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
  it.each(['0', '0"', `-5'`, '−3 m', '- 12', '0.000001 mm'])('%s is not above zero', (text) => {
    expect(problemIn(text).expected).toContain('above zero');
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
    expect(ticksIn(fix)).toBeGreaterThan(0);
  });

  it('asks what 3m8 is', () => {
    expect(problemIn('3m8').expected).toContain('3.8 m or 3 m 8 cm');
    expect(problemIn('3m8', COMMA).fix).toBe('3,8 m');
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
  const habits = fc.constantFrom(POINT, COMMA);
  const units = fc.constantFrom<LengthUnit>('ft', 'in', 'yd', 'm', 'cm', 'mm');
  const scraps = fc.array(
    fc.constantFrom(...'0123456789.,/-\'"½⅓⁄′″ ftinmcyd²^x()∙', ' and ', 'sq ', 'feet', '\u202f', '12', '6 1/2'),
    { maxLength: 14 },
  );

  it('no text throws, and every problem carries a length to type', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      scraps.map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, habits, units, (text, asker, bare) => {
        unitIn(text);
        const { result } = readIn(text, asker, bare);
        if (result.ok) return Number.isSafeInteger(result.value) && result.value > 0 && result.value <= 32_000_000;
        return result.problems.every(({ fix }) => readIn(fix, asker, bare).result.ok);
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
