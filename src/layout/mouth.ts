/** Where a doorway breaks through a wall: the wall's face, and the stretch of it between the jambs. */

import { at, type Outline, type Point } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';

/** From an end of the wall, as one sees it who stands in the room and faces it, to the near jamb. */
export interface JambPlace {
  readonly from: 'left' | 'right';
  readonly distance: Length;
}

/** A wall along x or y from corner to corner, and the way out of the room: one of (±1, 0), (0, ±1). */
export interface Face {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  readonly out: Point;
}

/** A stretch of a wall in the direction the outline runs, and the way out. */
export interface Mouth {
  readonly from: Point;
  readonly to: Point;
  readonly out: Point;
}

/** The face of the wall from corner `wall` (from 0) of a counter-clockwise outline; undefined for a slanted wall. */
export function faceOf(outline: Outline, wall: number): Face | undefined {
  const [from, to] = [at(outline, wall), at(outline, wall + 1)];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (dx !== 0 && dy !== 0) return undefined;
  return { from, to, length: Math.abs(dx + dy), out: [Math.sign(dy), 0 - Math.sign(dx)] };
}

/**
 * The stretch `width` ticks wide of a face, its near jamb where told, else in the middle; undefined where it does not fit.
 * Walls run against the clock, so who faces one has its last corner at the left.
 */
export function mouthOn(
  { from, to, length, out }: Face,
  width: number,
  place: JambPlace | undefined,
): Mouth | undefined {
  const rest = length - width;
  const near = place?.distance ?? Math.floor(rest / 2);
  const beyond = place?.from === 'right' ? near : rest - near;
  if (rest < 0 || near > rest) return undefined;
  const [ux, uy] = [Math.sign(to[0] - from[0]), Math.sign(to[1] - from[1])];
  const along = (distance: number): Point => [from[0] + ux * distance, from[1] + uy * distance];
  return { from: along(beyond), to: along(beyond + width), out };
}

/** The walls of an outline that look `way`, by index, the longest first. */
export function facesLooking(outline: Outline, way: Point): readonly number[] {
  return outline
    .map((_, wall) => ({ wall, face: faceOf(outline, wall) }))
    .filter(({ face }) => face?.out[0] === way[0] && face.out[1] === way[1])
    .sort((a, b) => (b.face?.length ?? 0) - (a.face?.length ?? 0))
    .map(({ wall }) => wall);
}

/** The box from a mouth outwards, `depth` ticks deep, counter-clockwise; its far side runs from its third corner back to its second. */
export function passage({ from, to, out }: Mouth, depth: number): Outline {
  const far = ([x, y]: Point): Point => [x + out[0] * depth, y + out[1] * depth];
  return [from, far(from), far(to), to];
}
