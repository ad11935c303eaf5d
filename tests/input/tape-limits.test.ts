/** What a sum of lengths refuses, and how far it reaches. */

import { describe, expect, it } from 'vitest';
import { FOOT, INCH, problemIn, tapeIn, valueIn } from './tape-typed.ts';

describe('what is refused', () => {
  it.each([
    [`12' + 3' x 2'`, 'adds an area to a length'],
    [`12' x 3' - 2'`, 'takes a length from an area'],
    [`2' x 3' x 4'`, 'multiplies an area by a length'],
    ['10 / 2 m', 'divides a number by a length'],
    [`12' / 0`, 'divide by zero'],
    ['5/0', 'divide by zero'],
    [`12' / (3' - 3')`, 'divide by zero'],
    [`3' - 5'`, `comes to -2'`],
    [`3' - 3'`, 'comes to 0"'],
    ['3 m - 5 m', 'comes to -2 m'],
    ['2 x -3', 'comes to -6'],
    [`3' x (2' - 4')`, 'comes to -6 sq ft'],
    [`12' 3'`, 'side by side'],
    [`2(3')`, 'side by side'],
    [`(3')(4')`, 'side by side'],
    [`(12'`, 'breaks off'],
    [`12' +`, 'breaks off'],
    ['', 'breaks off'],
    ['()', '“)”'],
    [`12')`, '“)”'],
    ['* 3', '“* 3”'],
    [`12' + wide`, '“wide”'],
    [`2' x 12' 14"`, `13' 2"`],
    ['3,800 cm x 2', 'Did you mean'],
    [`99999 x 100'`, '10 km'],
    ['9999999999 x 9999999999', 'more than'],
    ['200 km', '“km”'],
  ])('%s: %s', (text, expected) => {
    const problem = problemIn(text);
    expect(problem.option).toBe('sum');
    expect(problem.expected).toContain(expected);
    if (problem.fix !== undefined) expect(tapeIn(problem.fix).result.ok).toBe(true);
  });

  it.each([
    'sqrt(4)',
    'q0',
    'x = 3',
    'f(x) = 3',
    '1:3',
    '[1, 2]',
    '1; 2',
    `3' % 2'`,
    `3' ^ 2`,
    '3!',
    'true ? 1 : 2',
    '"a"',
    'import("fs")',
    '5 celsius',
    'pi',
    'e',
    'i',
    '1e3',
    '0x10',
    '{a: 1}',
    '1 == 1',
    '3 to 4',
    '#',
  ])('%s reaches no further than arithmetic', (text) => {
    expect(tapeIn(text).result.ok).toBe(false);
  });

  it('holds its limits', () => {
    expect(valueIn(`${'('.repeat(30)}3'${')'.repeat(30)}`)).toMatchObject({ length: 3 * FOOT });
    expect(problemIn(`${'('.repeat(31)}3'${')'.repeat(31)}`).expected).toContain('30');
    expect(problemIn(`${'half of '.repeat(32)}3'`).expected).toContain('30');
    expect(problemIn(`${'-'.repeat(40)} 3'`).expected).toContain('30');
    expect(valueIn(`1"${' + 1"'.repeat(59)}`)).toMatchObject({ length: 60 * INCH });
    expect(problemIn(`1"${' + 1"'.repeat(60)}`).expected).toContain('300 characters');
  });
});
