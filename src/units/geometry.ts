/** Points and outlines in ticks: counterclockwise with y up, holes clockwise, first point not repeated at the end. */

import { type Length, ticks } from './length.ts';

export type Point = readonly [x: number, y: number];

export type Outline = readonly Point[];

/** Twice the signed area in square ticks (shoelace formula), exact; positive when the outline is counterclockwise. */
export function doubleArea(outline: Outline): bigint {
  let sum = 0n;
  for (let i = 0; i < outline.length; i++) {
    const [ax, ay] = at(outline, i);
    const [bx, by] = at(outline, i + 1);
    sum += BigInt(ax) * BigInt(by) - BigInt(bx) * BigInt(ay);
  }
  return sum;
}

/** The corner at `index`, wrapping around at either end. */
export function at(outline: Outline, index: number): Point {
  const point = outline[((index % outline.length) + outline.length) % outline.length];
  if (!point) throw new RangeError('an outline without corners');
  return point;
}

/** Length in ticks of the wall starting at corner `index`: exact for walls along x or y, otherwise rounded once. */
export function wallLength(outline: Outline, index: number): Length {
  const [ax, ay] = at(outline, index);
  const [bx, by] = at(outline, index + 1);
  return ticks(Math.round(Math.hypot(bx - ax, by - ay)));
}

export function isRectilinear(outline: Outline): boolean {
  return outline.every(([x, y], i) => {
    const [nx, ny] = at(outline, i + 1);
    return x === nx || y === ny;
  });
}

export function boxOf(outline: Outline): { minX: number; minY: number; maxX: number; maxY: number } {
  let [minX, minY] = at(outline, 0);
  let [maxX, maxY] = [minX, minY];
  for (const [x, y] of outline) {
    minX = Math.min(minX, x);
    maxX = Math.max(maxX, x);
    minY = Math.min(minY, y);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}
