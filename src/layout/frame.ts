/** The laying frame: the room turned so that rows run along +u and stack along +v, with its lower left corner at (0,0). */

import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import type { Frame, Region } from './floor.ts';

export type Angle = Frame['angle'];

/** A point turned counter-clockwise by `angle` degrees about (0,0): exact for whole quarter turns, else rounded once to a tick. */
export function turned([x, y]: Point, angle: Angle): Point {
  switch (angle) {
    case 0:
      return [x, y];
    case 90:
      return [0 - y, x];
    case 180:
      return [0 - x, 0 - y];
    case 270:
      return [y, 0 - x];
    default: {
      const [cos, sin] = directionOf(angle);
      return [Math.round(x * cos - y * sin) + 0, Math.round(x * sin + y * cos) + 0];
    }
  }
}

/** Cosine and sine of an angle in degrees; the same to the last bit for 45° and 135°, so that a diagonal stays one. */
function directionOf(angle: Angle): readonly [cos: number, sin: number] {
  if (angle % 90 === 45)
    return [
      Math.sign(Math.cos((angle * Math.PI) / 180)) * Math.SQRT1_2,
      Math.sign(Math.sin((angle * Math.PI) / 180)) * Math.SQRT1_2,
    ];
  return [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
}

/** The angle that undoes another. */
function back(angle: Angle): Angle {
  return (360 - angle) % 360;
}

/** True for an angle at which a room of right angles keeps its walls along and across the rows. */
export function isQuarter(angle: Angle): boolean {
  return angle % 90 === 0;
}

/** The frame at `angle` in which the region's bounding box starts at u = 0, v = 0. */
export function frameOf(region: Region, angle: Angle): Frame {
  const { minX, minY } = boxOf(region.outline.map((point) => turned(point, back(angle))));
  return { origin: turned([minX, minY], angle), angle };
}

/** Corners this near to one level are on it: what rounding twice to a tick can part, under a hundredth of a millimetre. */
const LEVEL = 3;

/** A room outline in laying coordinates (u, v), in whole ticks; walls along or across the rows stay exactly so. */
export function toFrame(outline: Outline, frame: Frame): Outline {
  const [ox, oy] = frame.origin;
  const seen = outline.map(([x, y]) => turned([x - ox, y - oy], back(frame.angle)));
  return isQuarter(frame.angle) ? seen : levelled(seen);
}

/** Corners of walls that run along or across the rows, but for rounding, put on one line. */
function levelled(outline: Outline): Outline {
  const corners = outline.map(([u, v]) => ({ u, v }));
  for (let i = 1; i <= corners.length; i++) {
    const [from, to] = [corners[i - 1], corners[i % corners.length]];
    if (!from || !to) continue;
    if (Math.abs(to.v - from.v) <= LEVEL) to.v = from.v;
    else if (Math.abs(to.u - from.u) <= LEVEL) to.u = from.u;
  }
  return corners.map(({ u, v }): Point => [u, v]);
}

/** The angle whose first row lies against the wall from corner `index` of the region: rows run along it. */
export function angleAlong(outline: Outline, index: number): Angle {
  const from = outline[index % outline.length];
  const to = outline[(index + 1) % outline.length];
  if (!from || !to) throw new RangeError(`no wall ${index}`);
  if (from[1] === to[1]) return to[0] > from[0] ? 0 : 180;
  if (from[0] === to[0]) return to[1] > from[1] ? 90 : 270;
  const degrees = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  // A wall told as a whole degree is one, whatever its corners' rounding to a tick makes of it.
  const whole = Math.round(degrees);
  return ((Math.abs(degrees - whole) < 0.01 ? whole : degrees) + 360) % 360;
}

/** The angle whose rows run along the longer (or the shorter) side of the region's bounding box. */
export function angleBySide(outline: Outline, side: 'long' | 'short'): Angle {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const wide = maxX - minX >= maxY - minY;
  return wide === (side === 'long') ? 0 : 90;
}

/** Index of the wall that the first row lies against at `angle`: the first of the outermost ones on the starting side; undefined where only a corner is outermost. */
export function startingWall(outline: Outline, angle: Angle): number | undefined {
  const depths = toFrame(outline, { origin: [0, 0], angle }).map(([, v]) => v);
  const least = Math.min(...depths);
  const found = depths.findIndex((depth, i) => depth === least && depths[(i + 1) % depths.length] === least);
  return found < 0 ? undefined : found;
}

/** A point of the laying frame in the room. */
export function toRoom([u, v]: Point, { origin, angle }: Frame): Point {
  const [x, y] = turned([u, v], angle);
  return [x + origin[0], y + origin[1]];
}
