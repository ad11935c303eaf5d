/** Outlines: area, corners, walls and the box around them. */

import { describe, expect, it } from 'vitest';
import { at, boxOf, doubleArea, isRectilinear, type Outline, wallLength } from '../../src/units/geometry.ts';

/** Counterclockwise, with no corner at the origin. */
const LSHAPE: Outline = [
  [10, 20],
  [50, 20],
  [50, 30],
  [30, 30],
  [30, 60],
  [10, 60],
];
const TRIANGLE: Outline = [
  [0, 0],
  [300, 0],
  [300, 400],
];
const backward = (outline: Outline): Outline => [...outline].reverse();

describe('twice the area', () => {
  // 40 × 10 and 20 × 30.
  it('of an L is that of its two rectangles', () => expect(doubleArea(LSHAPE)).toBe(2n * (400n + 600n)));
  it('is negative clockwise', () => expect(doubleArea(backward(LSHAPE))).toBe(-2000n));
  it('of a triangle is base times height', () => expect(doubleArea(TRIANGLE)).toBe(120_000n));
  it('of nothing is zero', () => expect(doubleArea([])).toBe(0n));

  it('is exact where a double is not', () => {
    const side = 2 ** 31 + 1;
    const square: Outline = [
      [0, 0],
      [side, 0],
      [side, side],
      [0, side],
    ];
    expect(doubleArea(square)).toBe(2n * BigInt(side) ** 2n);
  });
});

describe('a corner', () => {
  it.each([
    [0, 10, 20],
    [5, 10, 60],
    [6, 10, 20],
    [13, 50, 20],
    [-1, 10, 60],
    [-7, 10, 60],
  ])('number %d is at %d, %d', (index, x, y) => expect(at(LSHAPE, index)).toEqual([x, y]));

  it('of an outline without any is refused', () => {
    expect(() => at([], 0)).toThrow(new RangeError('an outline without corners'));
  });
});

describe('a wall', () => {
  it.each([
    [0, 300],
    [1, 400],
    [2, 500],
  ])('number %d of a triangle is %d long', (index, length) => expect(wallLength(TRIANGLE, index)).toBe(length));

  it('that slants is rounded to a tick', () => {
    const slanted: Outline = [
      [5, 5],
      [6, 6],
      [5, 7],
    ];
    expect(wallLength(slanted, 0)).toBe(1);
    expect(wallLength(slanted, 2)).toBe(2);
  });
});

describe('an outline along x and y', () => {
  it('is one with right angles only', () => expect(isRectilinear(LSHAPE)).toBe(true));
  it('is none with a slanted wall, even the last', () => {
    expect(isRectilinear(TRIANGLE)).toBe(false);
    expect(isRectilinear(backward(TRIANGLE))).toBe(false);
  });
});

describe('the box', () => {
  it('reaches to the outermost corners, whichever is first', () => {
    const box = { minX: -40, minY: -7, maxX: 90, maxY: 33 };
    const diamond: Outline = [
      [0, -7],
      [90, 0],
      [3, 33],
      [-40, 5],
    ];
    for (let first = 0; first < diamond.length; first++) {
      expect(boxOf([...diamond.slice(first), ...diamond.slice(0, first)])).toEqual(box);
    }
  });
  it('of nothing is refused', () => expect(() => boxOf([])).toThrow(RangeError));
});
