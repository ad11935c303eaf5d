/** Patches near walls, sheets and moisture verdicts, case by case. */

import { describe, expect, it } from 'vitest';
import { moistureVerdict, poursFor, readingsByArea, testsByArea } from '../../src/prep/flat-and-dry.ts';
import { dividePatch, patchCut, planSheets } from '../../src/prep/subfloor-patch.ts';
import { feet, inches, SQUARE_TICKS_PER_SQUARE_FOOT, ticks } from '../../src/units/length.ts';

const joists = { spacing: inches(16), first: inches(16), width: inches(1.5) };
const rules = { margin: inches(2), bays: 2, least: inches(24) };
const box = (u0: number, v0: number, u1: number, v1: number) => ({
  u0: inches(u0),
  v0: inches(v0),
  u1: inches(u1),
  v1: inches(v1),
});

describe('the cut', () => {
  it('grows by the bay that is nearer to the damage', () => {
    expect(patchCut(box(50, 40, 54, 70), joists, rules)).toMatchObject({ u0: inches(32), u1: inches(64) });
    expect(patchCut(box(58, 40, 61, 70), joists, rules)).toMatchObject({ u0: inches(48), u1: inches(80) });
  });

  it('keeps sound wood at each side: damage that ends on a centreline takes the next joist', () => {
    expect(patchCut(box(48, 40, 64, 70), joists, rules)).toMatchObject({ u0: inches(32), u1: inches(80) });
  });

  it('is at least 24 in along the joists, between the walls', () => {
    expect(patchCut(box(40, 1, 50, 3), joists, rules)).toMatchObject({ v0: 0, v1: inches(24) });
    const along = inches(60);
    // 1 in of damage and 2 in of sound wood at each side are 5 in: 19 more are shared, half an inch the longer past it.
    expect(patchCut(box(40, 40, 50, 44), joists, rules)).toMatchObject({ v0: inches(30), v1: inches(54) });
    expect(patchCut(box(40, 40, 50, 41), joists, rules)).toMatchObject({ v0: inches(28.5), v1: inches(52.5) });
    expect(patchCut(box(40, 40, 50, 41), joists, { ...rules, least: inches(6) })).toMatchObject({
      v0: inches(37.5),
      v1: inches(43.5),
    });
    expect(patchCut(box(40, 57, 50, 59), joists, { ...rules, along })).toMatchObject({ v0: inches(36), v1: along });
    expect(patchCut(box(40, 5, 50, 9), joists, { ...rules, along: inches(20) })).toMatchObject({
      v0: 0,
      v1: inches(20),
    });
  });

  it('has nothing to land on before the first joist and after the last', () => {
    expect(patchCut(box(10, 5, 30, 9), joists, rules)).toBe('no-joist-before');
    expect(patchCut(box(40, 5, 60, 9), joists, { ...rules, across: inches(62) })).toBe('no-joist-after');
    expect(patchCut(box(18, 5, 30, 9), joists, { ...rules, across: inches(40) })).toBe('too-few-bays');
  });

  it('wants a damage with a size, inside the walls', () => {
    expect(() => patchCut(box(20, 5, 20, 9), joists, rules)).toThrow(RangeError);
    expect(() => patchCut(box(20, 5, 30, 90), joists, { ...rules, along: feet(6) })).toThrow(RangeError);
  });
});

describe('panels', () => {
  const cut = { ...box(0, 0, 112, 100), joists: Array.from({ length: 8 }, (_, i) => inches(i * 16)), bays: 7 };
  const sheet = { width: inches(48), length: inches(96) };

  it('are shared alike, or whole sheets first; the last never has one bay alone', () => {
    const bays = (split: 'even' | 'full') =>
      dividePatch(cut, sheet, inches(0.125), inches(24), { bays: split, rows: 'even' })
        .panels.slice(0, 2)
        .map(({ joists: under }) => under.length - 1);
    expect(bays('even')).toEqual([4, 3]);
    expect(bays('full')).toEqual([5, 2]);
  });

  it('are not made where a bay is longer than a sheet', () => {
    const small = { width: inches(24), length: inches(12) };
    expect(() => dividePatch(cut, small, inches(0), inches(24), { bays: 'even', rows: 'even' })).toThrow(RangeError);
  });
});

describe('sheets', () => {
  const sheet = { width: inches(48), length: inches(96) };
  const piece = (width: number, length: number) => ({ width: inches(width), length: inches(length) });

  it('hold strips side by side with a kerf between', () => {
    const two = [piece(23.9, 90), piece(23.9, 90)];
    expect(planSheets(two, sheet, inches(0.125)).length).toBe(1);
    expect(planSheets([piece(24, 90), piece(24, 90)], sheet, inches(0.125)).length).toBe(2);
    expect(planSheets([piece(48, 47), piece(48, 48)], sheet, inches(0.125)).length).toBe(1);
    expect(planSheets([piece(48, 48), piece(48, 48)], sheet, inches(0.125)).length).toBe(2);
  });

  it('do not hold what is larger', () => {
    expect(() => planSheets([piece(48.1, 10)], sheet, inches(0))).toThrow(RangeError);
  });
});

// Limits: 12% wood; 3 lb and 75% RH (F710 and makers); within 4 points, 2 for wide boards; 20 readings per 1000 ft² (reported: trade guidance).
describe('moisture', () => {
  const check = { readings: [10, 12], limit: 12, stop: 20, required: 2 };

  it.each([
    [{}, 'accept', []],
    [{ readings: [12, 12.1] }, 'wait', ['over']],
    [{ readings: [12, 20] }, 'stop', ['far-over', 'over']],
    [{ required: 3 }, 'wait', ['too-few']],
    [{ flooring: { moisture: 8, most: 4 } }, 'accept', []],
    [{ flooring: { moisture: 7.9, most: 4 } }, 'wait', ['apart']],
    [{ readings: [8.1, 8], flooring: { moisture: 12.1, most: 4 } }, 'wait', ['apart']],
    [{ readings: [8.1, 8.2], flooring: { moisture: 12.1, most: 4 } }, 'accept', []],
    [{ flooring: { moisture: 9, most: 2 } }, 'wait', ['apart']],
    [{ readings: [14, 12], leak: { hours: 49, dryWithin: 48 } }, 'stop', ['over-after-leak', 'over']],
    [{ readings: [14, 12], leak: { hours: 48, dryWithin: 48 } }, 'wait', ['over']],
    [{ leak: { hours: 500, dryWithin: 48 } }, 'accept', []],
    [{ limit: 20, stop: 20, readings: [20, 20] }, 'accept', []],
  ] as const)('%j: %s', (change, verdict, flaws) => {
    expect(moistureVerdict({ ...check, ...change })).toEqual({ verdict, flaws });
  });

  it.each([
    [1000, 20],
    [1001, 21],
    [120, 3],
    [10, 1],
  ])('%i ft² of wood want %i readings', (area, count) => {
    expect(readingsByArea(BigInt(area) * SQUARE_TICKS_PER_SQUARE_FOOT, 20, 1000)).toBe(count);
  });

  // ASTM F1869 and F2170 (reported): three for the first 1000 ft², one for each 1000 more.
  it.each([
    [100, 3],
    [1000, 3],
    [1001, 4],
    [3000, 5],
  ])('%i ft² of concrete want %i tests', (area, count) => {
    expect(testsByArea(BigInt(area) * SQUARE_TICKS_PER_SQUARE_FOOT, 3, 1, 1000)).toBe(count);
  });
});

it('pours are whole', () => {
  expect([poursFor(inches(1), inches(1)), poursFor(inches(1) + 1, inches(1)), poursFor(0, ticks(5))]).toEqual([
    1, 2, 0,
  ]);
});
