/** Options read: standards, every problem of an ask at once, and what is noted as assumed. */

import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { defineCommand, readOptions } from '../../src/chat/command.ts';
import { count, length, percent, text } from '../../src/input/options.ts';
import { DEFAULT_PREFERENCES, type Preferences, unread } from '../../src/input/reading.ts';
import { unsafe } from '../../src/reply/reply.ts';
import { inches, millimetres, ticks } from '../../src/units/length.ts';

const METRIC: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };

const cut = defineCommand({
  name: 'cut',
  summary: 'Cuts',
  options: z.object({
    long: length({ summary: 'How long', example: '8 in', least: inches(1), most: inches(96) }),
    saw: length({ summary: 'Saw', standard: '1/8', example: '1/8 in', least: ticks(0), most: inches(1) }),
    pieces: count({ summary: 'How many', standard: '2', least: 1, most: 9 }),
    extra: percent({ summary: 'On top', standard: '3%' }),
  }),
  examples: [{ ask: 'cut 8 in', headline: '' }],
  run: () => ({ why: '', call: '', cautions: [], data: unsafe('structure') }),
});

function readTold(given: Readonly<Record<string, string>>, preferences = DEFAULT_PREFERENCES, command = cut) {
  return readOptions(command, new Map(Object.entries(given)), preferences);
}

describe('values', () => {
  it('are exact, and a standard stands where nothing was told', () => {
    const read = readTold({ long: '1 3/4 in', extra: '12,5%' });
    expect(read).toEqual({
      ok: true,
      values: { long: inches(1.75), saw: inches(0.125), pieces: 2, extra: 1250 },
      assumed: [],
    });
  });

  it('follow the asker’s habits', () => {
    expect(readTold({ long: '200', saw: '3 mm' }, METRIC)).toMatchObject({
      values: { long: millimetres(200), saw: millimetres(3) },
    });
  });

  it('fall back on the standard where an option was told empty', () => {
    expect(readTold({ long: '8 in', pieces: '' })).toMatchObject({ ok: true, values: { pieces: 2 } });
  });
});

describe('assumed', () => {
  it('tells how a doubtful thing was read, once', () => {
    const read = readTold({ long: '8', saw: '0.25' });
    expect(read).toMatchObject({ ok: true, assumed: ['8 read as 8 inches', '0.25 read as 0.25 inch'] });
    expect(readTold({ long: '8', saw: '8 in' })).toMatchObject({ ok: false });
  });

  it('says nothing of a standard, which nobody typed', () => {
    expect(readTold({ long: '8 in' })).toMatchObject({ ok: true, assumed: [] });
  });
});

describe('problems', () => {
  it('come back all at once, the missing ones too', () => {
    const read = readTold({ saw: 'banana', pieces: '99', extra: '300%' });
    expect(read.ok || read.problems.map(({ option }) => option)).toEqual(['long', 'saw', 'pieces', 'extra']);
  });

  it('offer no value but one that the option reads, of a figure that was typed', () => {
    for (const preferences of [DEFAULT_PREFERENCES, METRIC]) {
      for (const typed of ['banana', '400 in', '12 ft', '1,234', '-3', '0.0001 mm', '9'.repeat(50)]) {
        const read = readTold({ long: typed, saw: typed, pieces: typed, extra: typed }, preferences);
        if (read.ok) throw new Error(`${typed} was read`);
        for (const { option, fix } of read.problems) {
          if (fix === undefined) continue;
          expect(readTold({ long: '8 in', [option]: fix }, preferences)).toMatchObject({ ok: true });
          expect(typed.replace(',', '')).toContain(fix.match(/\d+/)?.[0]);
        }
      }
    }
    const slip = readTold({ long: '8 in', pieces: '2', extra: '3', saw: '-1/8 in' });
    expect(slip).toMatchObject({ problems: [{ option: 'saw', fix: '1/8 in' }] });
  });

  it.each([
    ['what the reader does not read itself', '7'],
    ['a figure that was not typed', '4'],
    ['a word less', ' '],
  ])('offer nothing in place of %s', (_what, fix) => {
    const odd = defineCommand({
      ...cut,
      options: z.object({
        even: text({ summary: 'Even', example: '4' }, (typed, { option }) =>
          Number(typed) % 2 === 0
            ? { ok: true as const, value: typed }
            : unread({ option, got: typed, expected: 'Even.', fix }),
        ),
      }),
    });
    const read = readTold({ even: 'three or 7' }, DEFAULT_PREFERENCES, odd);
    expect(read).toEqual({ ok: false, problems: [{ option: 'even', got: 'three or 7', expected: 'Even.' }] });
  });

  it('without a Problem behind them are a fault of ours', () => {
    const broken = defineCommand({ ...cut, options: z.object({ words: z.string() }) });
    expect(() => readTold({}, DEFAULT_PREFERENCES, broken)).toThrow('an option without facts');
  });
});
