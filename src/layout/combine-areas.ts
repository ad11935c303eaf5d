/** Areas put together and taken from one another, exactly for walls along x and y. */

import { difference, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64, union } from 'clipper2-ts';
import { doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { turned } from './frame.ts';

/** Outlines of what `parts` cover together without `without`: outer ones counter-clockwise, holes clockwise. Ticks. */
export function covered(parts: readonly Outline[], without: readonly Outline[] = []): readonly Outline[] {
  const whole = union(paths(parts), FillRule.NonZero);
  return outlines(without.length === 0 ? whole : difference(whole, paths(without), FillRule.NonZero));
}

/** Twice what two outlines share, in square ticks. */
export function doubleShared(one: Outline, other: Outline): bigint {
  const shared = outlines(intersect(paths([one]), paths([other]), FillRule.NonZero));
  return shared.reduce((sum, outline) => sum + doubleArea(outline), 0n);
}

/** True when two outlines overlap or touch: what touches would be one floor along the whole of it. */
export function touches(one: Outline, other: Outline): boolean {
  const [grown] = outlines(inflatePaths(paths([one]), 1, JoinType.Miter, EndType.Polygon));
  return grown !== undefined && doubleShared(grown, other) > 0n;
}

function paths(parts: readonly Outline[]): Paths64 {
  return parts.map((outline) => outline.map(([x, y]) => ({ x, y })));
}

function outlines(found: Paths64): readonly Outline[] {
  return found.map((path) => path.map(({ x, y }) => [x, y] as const));
}

// Where a room lies in its region: turned by whole quarter turns, then moved.

/** Whole quarter turns keep every corner on a tick. */
export type QuarterTurn = 0 | 90 | 180 | 270;

/** A room point in the region is the point turned counter-clockwise by `angle`° about (0,0), then moved by `move` ticks. */
export interface Pose {
  readonly angle: QuarterTurn;
  readonly move: Point;
}

/** As told: not turned, not moved. */
export const AS_DRAWN: Pose = { angle: 0, move: [0, 0] };

/** A room point in its region. */
function posedPoint(point: Point, { angle, move }: Pose): Point {
  const [x, y] = turned(point, angle);
  return [x + move[0], y + move[1]];
}

/** A room outline in its region; the corners keep their order. */
export function posed(outline: Outline, pose: Pose): Outline {
  return outline.map((point) => posedPoint(point, pose));
}
