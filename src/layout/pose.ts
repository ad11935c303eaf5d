/** Where a room lies in its region: turned by whole quarter turns, then moved. */

import type { Outline, Point } from '../units/geometry.ts';
import { turned } from './frame.ts';

/** Whole quarter turns keep every corner on a tick. */
export type QuarterTurn = 0 | 90 | 180 | 270;

/** A room point in the region is the point turned counter-clockwise by `angle`° about (0,0), then moved by `move` ticks. */
export interface Pose {
  readonly angle: QuarterTurn;
  readonly move: Point;
}

/** As told: not turned, not moved. */
export const AS_TOLD: Pose = { angle: 0, move: [0, 0] };

/** A room point in its region. */
export function posedPoint(point: Point, { angle, move }: Pose): Point {
  const [x, y] = turned(point, angle);
  return [x + move[0], y + move[1]];
}

/** A room outline in its region; the corners keep their order. */
export function posed(outline: Outline, pose: Pose): Outline {
  return outline.map((point) => posedPoint(point, pose));
}
