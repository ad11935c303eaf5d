/** The forms in which people type one length, and the ticks each comes to. */

import { describe, expect, it } from 'vitest';
import { POINT, problemIn, readIn, ticksIn } from './length-typed.ts';

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
    expect(problemIn('1/16257"').expected).toContain('more than zero');
  });
});
