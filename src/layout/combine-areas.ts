/** Union, difference and overlap of outlines, exact for walls along x and y, and the pose of a room in its region. */

import { difference, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64, union } from 'clipper2-ts';
import { doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { turned } from './frame.ts';

/** Outlines in ticks of the union of `parts` minus `without`: outer ones counterclockwise, holes clockwise. */
export function covered(parts: readonly Outline[], without: readonly Outline[] = []): readonly Outline[] {
  const whole = union(paths(parts), FillRule.NonZero);
  return outlines(without.length === 0 ? whole : difference(whole, paths(without), FillRule.NonZero));
}

/** Twice the overlap of two outlines, in square ticks. */
export function doubleShared(one: Outline, other: Outline): bigint {
  const shared = outlines(intersect(paths([one]), paths([other]), FillRule.NonZero));
  return shared.reduce((sum, outline) => sum + doubleArea(outline), 0n);
}

/** True when two outlines overlap or touch; touching outlines would become one floor along the shared edge. */
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

/** Limited to quarter turns so that every corner stays on a tick. */
export type QuarterTurn = 0 | 90 | 180 | 270;

/** A room point is turned counterclockwise by `angle`° about (0,0), then moved by `move` ticks into its region. */
export interface Pose {
  readonly angle: QuarterTurn;
  readonly move: Point;
}

export const AS_DRAWN: Pose = { angle: 0, move: [0, 0] };

function posedPoint(point: Point, { angle, move }: Pose): Point {
  const [x, y] = turned(point, angle);
  return [x + move[0], y + move[1]];
}

/** A room outline in its region; the order of the corners stays. */
export function posed(outline: Outline, pose: Pose): Outline {
  return outline.map((point) => posedPoint(point, pose));
}
