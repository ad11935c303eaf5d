/** The laying frame: the room turned so that rows run along +u and stack along +v, lower left corner at (0,0). */

import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import type { Frame, Region } from './floor.ts';

export type Angle = Frame['angle'];

/**
 * Turns a point counterclockwise by `angle` degrees about (0,0): exact for quarter turns, otherwise rounded once to a
 * tick.
 */
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

/**
 * Cosine and sine of an angle in degrees, bit-for-bit equal in magnitude at 45° and 135° so that a diagonal stays a
 * diagonal.
 */
function directionOf(angle: Angle): readonly [cos: number, sin: number] {
  if (angle % 90 === 45)
    return [
      Math.sign(Math.cos((angle * Math.PI) / 180)) * Math.SQRT1_2,
      Math.sign(Math.sin((angle * Math.PI) / 180)) * Math.SQRT1_2,
    ];
  return [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
}

function back(angle: Angle): Angle {
  return (360 - angle) % 360;
}

/** True when a room with right angles keeps its walls parallel or perpendicular to the rows. */
export function isQuarter(angle: Angle): boolean {
  return angle % 90 === 0;
}

/** The frame at `angle` with the region's bounding box starting at u = 0, v = 0. */
export function frameOf(region: Region, angle: Angle): Frame {
  const { minX, minY } = boxOf(region.outline.map((point) => turned(point, back(angle))));
  return { origin: turned([minX, minY], angle), angle };
}

/** Corners this close count as level: rounding twice to a tick can separate them by this much, under 0.01 mm. */
const LEVEL = 3;

/**
 * A room outline in laying coordinates (u, v), whole ticks. Walls parallel or perpendicular to the rows stay exactly
 * so.
 */
export function toFrame(outline: Outline, frame: Frame): Outline {
  const [ox, oy] = frame.origin;
  const seen = outline.map(([x, y]) => turned([x - ox, y - oy], back(frame.angle)));
  return isQuarter(frame.angle) ? seen : levelled(seen);
}

/** Aligns corners of walls that are parallel or perpendicular to the rows except for rounding. */
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

/** The angle at which rows run along the wall from corner `index`, with the first row against it. */
export function angleAlong(outline: Outline, index: number): Angle {
  const from = outline[index % outline.length];
  const to = outline[(index + 1) % outline.length];
  if (!from || !to) throw new RangeError(`no wall ${index}`);
  if (from[1] === to[1]) return to[0] > from[0] ? 0 : 180;
  if (from[0] === to[0]) return to[1] > from[1] ? 90 : 270;
  const degrees = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  // A wall given in whole degrees stays at that angle even though its corners are rounded to ticks.
  const whole = Math.round(degrees);
  return ((Math.abs(degrees - whole) < 0.01 ? whole : degrees) + 360) % 360;
}

export function angleBySide(outline: Outline, side: 'long' | 'short'): Angle {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const wide = maxX - minX >= maxY - minY;
  return wide === (side === 'long') ? 0 : 90;
}

/**
 * Index of the wall the first row lies against at `angle`: the first of the outermost ones on the starting side;
 * undefined if only a corner is outermost.
 */
export function startingWall(outline: Outline, angle: Angle): number | undefined {
  const depths = toFrame(outline, { origin: [0, 0], angle }).map(([, v]) => v);
  const least = Math.min(...depths);
  const found = depths.findIndex((depth, i) => depth === least && depths[(i + 1) % depths.length] === least);
  return found < 0 ? undefined : found;
}

export function toRoom([u, v]: Point, { origin, angle }: Frame): Point {
  const [x, y] = turned([u, v], angle);
  return [x + origin[0], y + origin[1]];
}
