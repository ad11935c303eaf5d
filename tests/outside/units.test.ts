/** The units against published conversion factors. */

import { describe, expect, it } from 'vitest';
import { readLength } from '../../src/input/parse-length.ts';
import { readTape } from '../../src/input/parse-tape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import {
  areaOf,
  feet,
  inches,
  millimetres,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_METRE,
  TICKS_PER_MM,
} from '../../src/units/length.ts';

const reading = { option: 'length', preferences: DEFAULT_PREFERENCES, note: () => {} };

function ticksOf(text: string): bigint {
  const result = readLength(text, reading, 'mm');
  if (!result.ok) throw new Error(result.problems[0].expected);
  return BigInt(result.value);
}

function areaTyped(text: string): bigint {
  const result = readTape(text, reading, 'mm');
  if (!result.ok || result.value.kind !== 'area') throw new Error(`no area: ${text}`);
  return result.value.area;
}

describe('the international foot', () => {
  // NIST, "U.S. Survey Foot: Revised Unit Conversion Factors": 1 ft = 0.3048 m exactly, 1 in = 25.4 mm exactly, and from
  // 1 January 2023 there is no other foot.
  it('is 0.3048 m exactly', () => {
    expect(TICKS_PER_FOOT * 10_000).toBe(TICKS_PER_METRE * 3048);
    expect(ticksOf('1 ft')).toBe(ticksOf('0.3048 m'));
    expect(ticksOf('1200 in')).toBe(ticksOf('1 ft') * 100n);
    expect(feet(1250)).toBe(millimetres(381_000));
  });

  it('has inches of 25.4 mm exactly', () => {
    expect(TICKS_PER_INCH * 10).toBe(TICKS_PER_MM * 254);
    expect(ticksOf('1 in')).toBe(ticksOf('25.4 mm'));
    expect(ticksOf('5 in')).toBe(ticksOf('127 mm'));
    expect(inches(5)).toBe(millimetres(127));
  });

  it('makes a yard of 0.9144 m exactly', () => {
    expect(ticksOf('1 yd')).toBe(ticksOf('0.9144 m'));
    expect(ticksOf('1 yd')).toBe(ticksOf('3 ft'));
  });
});

describe('areas', () => {
  it('has square feet of 0.09290304 m² exactly, which is 0.3048²', () => {
    expect(SQUARE_TICKS_PER_SQUARE_FOOT * 100_000_000n).toBe(SQUARE_TICKS_PER_SQUARE_METRE * 9_290_304n);
    expect(areaTyped('1 ft x 1 ft') * 100_000_000n).toBe(areaTyped('1 m x 1 m') * 9_290_304n);
    expect(areaOf(feet(1), feet(1))).toBe(areaTyped('1 sq ft'));
  });

  // NIST SP 811, appendix B.8 gives 1 yd² = 8.361274 E-01 m²; the exact 0.83612736 follows from 0.9144² (from memory).
  it('has square yards of 0.83612736 m² exactly', () => {
    expect(areaTyped('1 yd x 1 yd') * 100_000_000n).toBe(areaTyped('1 m x 1 m') * 83_612_736n);
  });
});

describe('the fractions of an inch', () => {
  // The usual inch–millimetre table of machinists' handbooks (from memory); each follows exactly from 25.4 mm.
  it.each([
    ['1/64', '0.396875'],
    ['1/32', '0.79375'],
    ['1/16', '1.5875'],
    ['3/32', '2.38125'],
    ['1/8', '3.175'],
    ['3/16', '4.7625'],
    ['1/4', '6.35'],
    ['5/16', '7.9375'],
    ['3/8', '9.525'],
    ['7/16', '11.1125'],
    ['1/2', '12.7'],
    ['9/16', '14.2875'],
    ['5/8', '15.875'],
    ['11/16', '17.4625'],
    ['3/4', '19.05'],
    ['13/16', '20.6375'],
    ['7/8', '22.225'],
    ['15/16', '23.8125'],
    ['63/64', '25.003125'],
  ])('%s in = %s mm', (fraction, mm) => {
    const notes: string[] = [];
    const noting = { ...reading, note: (assumed: string) => notes.push(assumed) };
    const [inch, metric] = [readLength(`${fraction}"`, noting, 'mm'), readLength(`${mm} mm`, noting, 'mm')];
    expect(inch.ok).toBe(true);
    expect(inch).toEqual(metric);
    // Neither was rounded, so the two are equal exactly and not only to a tick.
    expect(notes).toEqual([]);
  });
});
