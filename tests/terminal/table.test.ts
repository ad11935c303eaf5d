/** Tables in characters: columns that line up, cells kept whole, and no line too wide. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { narrowestTable, terminalTable } from '../../src/platforms/terminal/render.ts';

describe('a table', () => {
  it('is as wide as its text', () => {
    expect(
      terminalTable(
        ['Row', 'Start'],
        [
          ['1', 'whole'],
          ['10', '42"'],
        ],
        80,
      ),
    ).toEqual(['Row  Start', '---  -----', '1    whole', '10   42"']);
  });

  it('wraps the widest column first', () => {
    expect(terminalTable(['Row', 'Cut from'], [['1', '18" new, keep 30" (no. 37)']], 22)).toEqual([
      'Row  Cut from',
      '---  -----------------',
      '1    18" new, keep 30"',
      '     (no. 37)',
    ]);
  });

  it('wraps a long head before any cell', () => {
    expect(terminalTable(['Whole in all', 'Cut from'], [['3', '18" new, keep 30"']], 24)).toEqual([
      'Whole  Cut from',
      'in',
      'all',
      '-----  -----------------',
      '3      18" new, keep 30"',
    ]);
  });

  it('keeps the place of an empty or a missing cell', () => {
    expect(terminalTable(['A', 'B', 'C'], [['1', '', '3'], ['4']], 80)).toEqual(['A  B  C', '-  -  -', '1     3', '4']);
  });

  it('is never wider than asked where its columns fit, and every word is in it', () => {
    const cell = fc.stringMatching(/^[a-z0-9" ]{0,40}$/);
    const table = fc.integer({ min: 1, max: 6 }).chain((columns) =>
      fc.record({
        columns: fc.array(cell, { minLength: columns, maxLength: columns }),
        rows: fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { maxLength: 5 }),
        width: fc.integer({ min: narrowestTable(columns), max: 120 }),
      }),
    );
    fc.assert(
      fc.property(table, ({ columns, rows, width }) => {
        const lines = terminalTable(columns, rows, width);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
        const letters = (texts: readonly string[]) => [...texts.join('').replace(/[\s-]/g, '')].sort().join('');
        expect(letters(lines)).toBe(letters([...columns, ...rows.flat()]));
      }),
    );
  });
});
