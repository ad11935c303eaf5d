/** The brute force itself, against cases whose answer is counted by hand. Lengths in eighths of an inch. */

import { describe, expect, it } from 'vitest';
import { fewestLockingPlanks, fewestPlainPlanks } from './matching-oracle.ts';

const inch = 8;
const plank = 48 * inch;
const kerf = 1;

describe('fewest planks with locking ends', () => {
  it('cuts three 15 in shorts from one 48 in plank', () => {
    const three = { starts: [], ends: [], shorts: [15 * inch, 15 * inch, 15 * inch] };
    expect(fewestLockingPlanks(three, plank, kerf)).toBe(1);
    const four = { ...three, shorts: [...three.shorts, 15 * inch] };
    expect(fewestLockingPlanks(four, plank, kerf)).toBe(2);
  });

  it('never takes two starts from one plank, however short', () => {
    const pieces = { starts: [10 * inch, 10 * inch, 10 * inch], ends: [10 * inch], shorts: [] };
    expect(fewestLockingPlanks(pieces, plank, kerf)).toBe(3);
  });

  it('counts the kerf between a start and an end', () => {
    const halves = { starts: [24 * inch], ends: [24 * inch], shorts: [] };
    expect(fewestLockingPlanks(halves, plank, kerf)).toBe(2);
    expect(fewestLockingPlanks(halves, plank, 0)).toBe(1);
    expect(fewestLockingPlanks({ ...halves, ends: [24 * inch - 1] }, plank, kerf)).toBe(1);
  });

  it('matches where the nearest pairing would strand a piece', () => {
    // 30 goes with 17 and 20 with 27; pairing 20 with 17 first would leave 30 and 27 alone.
    const pieces = { starts: [20 * inch, 30 * inch], ends: [17 * inch, 27 * inch], shorts: [] };
    expect(fewestLockingPlanks(pieces, plank, kerf)).toBe(2);
  });

  it('puts shorts in what the matching leaves', () => {
    const pieces = { starts: [20 * inch], ends: [12 * inch], shorts: [15 * inch, 40 * inch] };
    expect(fewestLockingPlanks(pieces, plank, kerf)).toBe(2);
  });

  it('needs no plank for nothing and refuses what no plank gives', () => {
    expect(fewestLockingPlanks({ starts: [], ends: [], shorts: [] }, plank, kerf)).toBe(0);
    expect(() => fewestLockingPlanks({ starts: [plank + 1], ends: [], shorts: [] }, plank, kerf)).toThrow(RangeError);
    expect(() => fewestPlainPlanks(new Array(13).fill(1), plank, kerf)).toThrow(RangeError);
  });
});

describe('fewest planks without locking ends', () => {
  it('packs starts and ends alike', () => {
    expect(
      fewestPlainPlanks(
        [10, 10, 10, 10].map((n) => n * inch),
        plank,
        kerf,
      ),
    ).toBe(1);
  });

  it('finds the packing that taking the longest first misses', () => {
    // Longest first fills planks of 10 with 4+4, 3+3+3 and 3; 4+3+3 twice is two planks.
    expect(fewestPlainPlanks([4, 4, 3, 3, 3, 3], 10, 0)).toBe(2);
    expect(fewestPlainPlanks([4, 4, 3, 3, 3, 3], 12, 1)).toBe(2);
    expect(fewestPlainPlanks([4, 4, 3, 3, 3, 3], 11, 1)).toBe(3);
  });
});
