/** How lengths are said, and that what is said is read back. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Saying, sayCut, sayLength } from '../../src/input/format.ts';
import { readLength } from '../../src/input/parse-length.ts';
import { type Length, ticks } from '../../src/units/length.ts';

const IMPERIAL: Saying = { units: 'imperial', decimal: '.' };
const METRIC: Saying = { units: 'metric', decimal: '.' };
const SAYINGS: readonly Saying[] = [
  IMPERIAL,
  METRIC,
  { units: 'imperial', decimal: ',' },
  { units: 'metric', decimal: ',' },
];

function readBack(text: string, { decimal, units }: Saying): Length {
  const notes: string[] = [];
  const preferences = { units, decimal, currency: 'USD' };
  const result = readLength(text, { option: 'length', preferences, note: (assumed) => notes.push(assumed) }, 'ft');
  if (!result.ok) throw new Error(`${text}: ${result.problems[0].expected}`);
  expect(notes).toEqual([]);
  return result.value;
}

describe('a length as it is said', () => {
  // Inches and sixteenths as a tape shows them: 1/16 in = 508 ticks.
  it.each([
    [0, `0"`],
    [508, `1/16"`],
    [4064, `1/2"`],
    [60_960, `7 1/2"`],
    [97_536, `1'`],
    [97_536 - 253, `1'`],
    [97_536 - 255, `11 15/16"`],
    [1_170_432, `12'`],
    [1_219_200, `12' 6"`],
    [1_223_264, `12' 6 1/2"`],
    [1_171_000, `12' 1/16"`],
    [-28_448, `-3 1/2"`],
    [-100, `0"`],
  ])('%i ticks in feet and inches: %s', (count, said) => {
    expect(sayLength(ticks(count), IMPERIAL)).toBe(said);
  });

  it.each([
    [0, '0 mm', '0 mm'],
    [257_600, '805 mm', '805 mm'],
    [319_839, '999 mm', '999 mm'],
    [319_840, '1 m', '1 m'],
    [1_216_000, '3.8 m', '3,8 m'],
    [1_217_600, '3.805 m', '3,805 m'],
    [961_600, '3.005 m', '3,005 m'],
    [-28_480, '-89 mm', '-89 mm'],
    [-1_216_000, '-3.8 m', '-3,8 m'],
    [-100, '0 mm', '0 mm'],
  ])('%i ticks in metres: %s', (count, point, comma) => {
    expect(sayLength(ticks(count), METRIC)).toBe(point);
    expect(sayLength(ticks(count), { units: 'metric', decimal: ',' })).toBe(comma);
  });

  it.each([
    [353_568, `43 1/2"`, '1105 mm'],
    [1_219_200, `150"`, '3810 mm'],
    [508, `1/16"`, '2 mm'],
    [0, `0"`, '0 mm'],
  ])('%i ticks at the saw: %s, %s', (count, imperial, metric) => {
    expect(sayCut(ticks(count), IMPERIAL)).toBe(imperial);
    expect(sayCut(ticks(count), METRIC)).toBe(metric);
  });
});

describe('laws', () => {
  const lengths = fc.integer({ min: 508, max: 32_000_000 - 508 }).map(ticks);
  const sayings = fc.constantFrom(...SAYINGS);
  const steps = { imperial: 508, metric: 320 };

  it.each([
    ['sayLength', sayLength],
    ['sayCut', sayCut],
  ] as const)('%s is read back as the nearest step, and said again the same', (_, say) => {
    fc.assert(
      fc.property(lengths, sayings, (length, saying) => {
        const said = say(length, saying);
        const back = readBack(said, saying);
        expect(back % steps[saying.units]).toBe(0);
        expect(Math.abs(back - length) * 2).toBeLessThanOrEqual(steps[saying.units]);
        expect(say(back, saying)).toBe(said);
      }),
      { numRuns: 1000 },
    );
  });

  it('below zero is the same with a minus', () => {
    fc.assert(
      fc.property(lengths, sayings, (length, saying) => {
        expect(sayLength(ticks(-length), saying)).toBe(`-${sayLength(length, saying)}`);
      }),
    );
  });
});
