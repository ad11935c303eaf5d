/** A rectangle with corners left out of it: the far right one first, then far left, near left and near right. */

import type { Outline, Point } from '../../units/geometry.ts';
import type { Length } from '../../units/length.ts';

/** A rectangle: `x` along the first side typed, `y` along the second. */
export interface Sides {
  readonly x: Length;
  readonly y: Length;
}

/** A corner to leave out: square, or cut off straight from wall to wall. */
export interface Notch extends Sides {
  readonly slanted: boolean;
}

export const CORNERS = ['far right', 'far left', 'near left', 'near right'] as const;
export type Corner = (typeof CORNERS)[number];

/** Why the notch numbered `notch` cannot be left out. */
export interface BadNotch {
  readonly notch: number;
  readonly why: 'too many' | 'too large' | 'meets another';
}

/** The outline in ticks with its least corner at (0,0), counter-clockwise; or the first notch that cannot be left out. */
export function withoutCorners(room: Sides, notches: readonly Notch[]): Outline | BadNotch {
  for (const [i, notch] of notches.entries()) {
    if (i >= CORNERS.length) return { notch: i, why: 'too many' };
    if (notch.x >= room.x || notch.y >= room.y) return { notch: i, why: 'too large' };
    if (notches.slice(0, i).some((other, j) => meet(room, notch, other, i, j)))
      return { notch: i, why: 'meets another' };
  }
  const [farRight, farLeft, nearLeft, nearRight] = notches;
  const { x, y } = room;
  return [
    ...corner(nearLeft, [0, 0], ({ x: w, y: h }) => [
      [0, h],
      [w, h],
      [w, 0],
    ]),
    ...corner(nearRight, [x, 0], ({ x: w, y: h }) => [
      [x - w, 0],
      [x - w, h],
      [x, h],
    ]),
    ...corner(farRight, [x, y], ({ x: w, y: h }) => [
      [x, y - h],
      [x - w, y - h],
      [x - w, y],
    ]),
    ...corner(farLeft, [0, y], ({ x: w, y: h }) => [
      [w, y],
      [w, y - h],
      [0, y - h],
    ]),
  ];
}

function corner(notch: Notch | undefined, whole: Point, cut: (notch: Sides) => readonly Point[]): readonly Point[] {
  if (!notch) return [whole];
  const points = cut(notch);
  return notch.slanted ? points.filter((_, i) => i !== 1) : points;
}

/** Whether two corners meet along the wall they share, or across the room; far, left, near and right follow each other round. */
function meet(room: Sides, notch: Sides, other: Sides, i: number, j: number): boolean {
  const wide = notch.x + other.x >= room.x;
  const deep = notch.y + other.y >= room.y;
  if (i - j === 2) return wide && deep;
  return i - j === 1 && j % 2 === 0 ? wide : deep;
}
