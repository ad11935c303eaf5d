/** Areas put together and taken from one another, exactly for walls along x and y. */

import { difference, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64, union } from 'clipper2-ts';
import { doubleArea, type Outline } from '../units/geometry.ts';

/** Outlines of what `parts` cover together without `without`: outer ones counter-clockwise, holes clockwise. Ticks. */
export function covered(parts: readonly Outline[], without: readonly Outline[] = []): readonly Outline[] {
  const whole = union(paths(parts), FillRule.NonZero);
  return outlines(without.length === 0 ? whole : difference(whole, paths(without), FillRule.NonZero));
}

/** Twice what `parts` cover together, in square ticks. */
export function doubleCovered(parts: readonly Outline[]): bigint {
  return covered(parts).reduce((sum, outline) => sum + doubleArea(outline), 0n);
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
