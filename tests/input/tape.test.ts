/** Arithmetic in lengths: results by hand, dimensions, doubtful joints and the unit asked for. */

import { describe, expect, it } from 'vitest';
import { unitsOf } from '../../src/input/parse-length.ts';
import { COMMA, FOOT, INCH, METRE, problemIn, tapeIn, valueIn } from './tape-typed.ts';

describe('lengths, by hand', () => {
  it.each([
    // 150 in + 2 × 40 1/2 in − 5/8 in = 230 3/8 in.
    [`12'6" + 2 x 3'4 1/2" - 5/8"`, 230.375 * INCH],
    [`12'6" / 3`, 50 * INCH],
    [`12'6"/3`, 50 * INCH],
    [`12'6" ÷ 3`, 50 * INCH],
    [`12'6" divided by 3`, 50 * INCH],
    [`3 × 4'2"`, 150 * INCH],
    [`4'2" times 3`, 150 * INCH],
    [`4'2" · 3 − 1"`, 149 * INCH],
    [`half of 12'6"`, 75 * INCH],
    [`half of (12' + 6")`, 75 * INCH],
    [`half of 12' + 6"`, 78 * INCH],
    [`12' - half of 3'`, 126 * INCH],
    [`half of half of 12'`, 36 * INCH],
    [`a third of 10'`, 40 * INCH],
    [`a quarter of 3 m`, 0.75 * METRE],
    [`twice 3'`, 72 * INCH],
    [`12' minus 6 in`, 138 * INCH],
    [`12' plus 6 in divided by 2`, 147 * INCH],
    [`(12' plus 6 in) divided by 2`, 75 * INCH],
    [`12' - 6"`, 138 * INCH],
    [`12'6"-5/8"`, 149.375 * INCH],
    [`12'-5/8"`, 143.375 * INCH],
    [`5'-3'`, 24 * INCH],
    ['3 m-80 cm', 2.2 * METRE],
    ['3 m 80 cm - 5 mm', 3.795 * METRE],
    ['1,220 mm x 3', 3.66 * METRE],
    [`12'/3/4`, FOOT],
    [`12' / 3/4`, 16 * FOOT],
    [`-3' + 5'`, 2 * FOOT],
    [`2 * -3' + 10'`, 4 * FOOT],
    [`--5'`, 5 * FOOT],
    [`+5'`, 5 * FOOT],
    [`5' - -3'`, 8 * FOOT],
    [`12' x 14' / 6'`, 28 * FOOT],
    [`168 sq ft / 12'`, 14 * FOOT],
    ['12 m² / 3 m', 4 * METRE],
    ['12 m2 / 3 m', 4 * METRE],
    [`3' =`, 3 * FOOT],
  ])('%s', (text, length) => {
    const { result, notes } = tapeIn(text);
    expect(result).toMatchObject({ ok: true, value: { kind: 'length', length, exact: true } });
    expect(notes).toEqual([]);
  });

  it('rounds once, at the end, and says that it did', () => {
    // 10 m / 3 is 1,066,666.6… ticks; a third three times over is whole again.
    expect(valueIn('10 m / 3')).toMatchObject({ kind: 'length', length: 1_066_667, exact: false });
    expect(valueIn('10 m / 3 x 3')).toMatchObject({ kind: 'length', length: 10 * METRE, exact: true });
    expect(valueIn('10 m / 3 + 10 m / 3 + 10 m / 3')).toMatchObject({
      kind: 'length',
      length: 10 * METRE,
      exact: true,
    });
    expect(valueIn('1 ft x 1 ft / 7')).toMatchObject({ kind: 'area', exact: false });
  });
});

describe('areas and numbers', () => {
  it('multiplies lengths into areas', () => {
    const area = BigInt(12 * FOOT) * BigInt(14 * FOOT);
    for (const text of [
      `12' x 14'`,
      `12'x14'`,
      `12' by 14'`,
      `12' × 14'`,
      `2' x (3' + 3') x 14`,
      `168 sq ft`,
      `168 square feet`,
    ]) {
      expect(valueIn(text)).toMatchObject({ kind: 'area', area, exact: true });
    }
    expect(valueIn('3mx4m')).toMatchObject({ kind: 'area', area: 12n * BigInt(METRE) ** 2n, exact: true });
  });

  it('divides likes into numbers', () => {
    expect(valueIn(`12'6" / 2'`)).toEqual({ kind: 'number', value: 6.25 });
    expect(valueIn(`12' x 14' / 20 sq ft`)).toEqual({ kind: 'number', value: 8.4 });
    expect(valueIn(`5'/8"`)).toEqual({ kind: 'number', value: 7.5 });
    expect(valueIn('12 / 4')).toEqual({ kind: 'number', value: 3 });
    expect(valueIn('12/3/2')).toEqual({ kind: 'number', value: 2 });
    expect(valueIn('6 / 5/8')).toEqual({ kind: 'number', value: 9.6 });
    expect(valueIn('3 x 1,5', COMMA)).toEqual({ kind: 'number', value: 4.5 });
  });
});

describe('numbers without a unit', () => {
  it.each([
    [`12' + 3`, 147 * INCH, '3 read as 3 inches'],
    [`1/2 + 12'`, 144.5 * INCH, '1/2 read as 1/2 inch'],
    [`12' - (1 + 2)`, 141 * INCH, '1 + 2 read as 1 + 2 inches'],
    ['43 1/2 - 5/8', 42.875 * INCH, '43 1/2 - 5/8 read as 43 1/2 - 5/8 inches'],
    ['½', 0.5 * INCH, '1/2 read as 1/2 inch'],
  ])('%s', (text, length, note) => {
    const { result, notes } = tapeIn(text);
    expect(result).toMatchObject({ ok: true, value: { kind: 'length', length, exact: true } });
    expect(notes).toEqual([note]);
  });

  it('multiply, and are no lengths then', () => {
    expect(problemIn(`1' + 2 x 3`).expected).toContain('adds a number to a length');
  });
});

describe('doubtful joints', () => {
  it('notes a hyphen that joined, and decimal feet', () => {
    const joined = tapeIn(`12'-6" + 1'`);
    expect(joined.result).toMatchObject({ value: { length: 162 * INCH } });
    expect(joined.notes.join()).toContain(`12'-6" read as 12' 6"`);
    expect(tapeIn(`43-1/2" + 1"`).notes.join()).toContain(`43-1/2" read as 43 1/2"`);
    expect(tapeIn(`12.6' + 1'`).notes.join()).toContain(`type 12'6"`);
    expect(tapeIn(`12'6" - 1'`).notes).toEqual([]);
  });
});

describe('asking for a unit', () => {
  it.each([
    ['3.8 m in feet', 3.8 * METRE, 'ft'],
    ['3.8 m in feet and inches', 3.8 * METRE, 'ft'],
    [`12'6" to mm`, 150 * INCH, 'mm'],
    [`12' 6 in mm`, 150 * INCH, 'mm'],
    ['12 in in mm', 12 * INCH, 'mm'],
    ['12 in to cm', 12 * INCH, 'cm'],
    [`12'6" + 1' as metres`, 162 * INCH, 'm'],
    ['4 yd in inches', 144 * INCH, 'in'],
  ] as const)('%s', (text, length, to) => {
    expect(valueIn(text)).toEqual({ kind: 'length', length, exact: true, units: unitsOf(to), to });
  });

  it('keeps areas and lengths apart', () => {
    expect(valueIn(`12' x 14' in m²`)).toMatchObject({ kind: 'area', units: 'metric' });
    expect(valueIn(`12' x 14' in square metres`)).toMatchObject({ kind: 'area', units: 'metric' });
    expect(valueIn('3 m x 4 m in feet')).toMatchObject({ kind: 'area', units: 'imperial' });
    expect(problemIn(`12' in m²`).expected).toContain('a length');
    expect(problemIn(`12' / 3' in mm`).expected).toContain('a number');
  });
});
