/** The laying frame: the room turned so that rows run along +u and stack along +v, with its lower left corner at (0,0). */

import { boxOf, type Outline, type Point } from '../geometry.ts';
import type { Frame, Region } from './floor.ts';

export type Angle = Frame['angle'];

/** A point turned counter-clockwise by whole quarter turns about (0,0): exact. */
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
  }
}

const BACK = { 0: 0, 90: 270, 180: 180, 270: 90 } as const;

/** The frame at `angle` in which the region's bounding box starts at u = 0, v = 0. */
export function frameOf(region: Region, angle: Angle): Frame {
  const { minX, minY } = boxOf(region.outline.map((point) => turned(point, BACK[angle])));
  return { origin: turned([minX, minY], angle), angle };
}

/** A room outline in laying coordinates (u, v). */
export function toFrame(outline: Outline, frame: Frame): Outline {
  const [ox, oy] = frame.origin;
  return outline.map(([x, y]) => turned([x - ox, y - oy], BACK[frame.angle]));
}

/** The angle whose first row lies against the wall from corner `index` of the region: rows run along it. */
export function angleAlong(outline: Outline, index: number): Angle {
  const from = outline[index % outline.length];
  const to = outline[(index + 1) % outline.length];
  if (!from || !to) throw new RangeError(`no wall ${index}`);
  if (from[1] === to[1]) return to[0] > from[0] ? 0 : 180;
  return to[1] > from[1] ? 90 : 270;
}

/** The angle whose rows run along the longer (or the shorter) side of the region's bounding box. */
export function angleBySide(outline: Outline, side: 'long' | 'short'): Angle {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const wide = maxX - minX >= maxY - minY;
  return wide === (side === 'long') ? 0 : 90;
}

/** Index of the wall that the first row lies against at `angle`: the first of the outermost ones on the starting side. */
export function startingWall(outline: Outline, angle: Angle): number {
  const depths = outline.map((point) => turned(point, BACK[angle])[1]);
  const least = Math.min(...depths);
  return depths.findIndex((depth, i) => depth === least && depths[(i + 1) % depths.length] === least);
}
