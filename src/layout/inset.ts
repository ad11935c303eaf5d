/** The part of a region that planks may cover: every wall moved in by the gap. */

import { EndType, inflatePaths, JoinType } from 'clipper2-ts';
import type { Outline } from '../units/geometry.ts';

/** A square corner's miter is √2 gaps long; 2 keeps it square. */
const MITER_LIMIT = 2;

/**
 * Outlines (ticks) of a rectilinear region inset by `gap` ticks: none when nothing is left, several when a neck closes.
 * Outer outlines counter-clockwise, holes clockwise, as given.
 */
export function inset(outline: Outline, holes: readonly Outline[], gap: number): readonly Outline[] {
  const paths = [outline, ...holes].map((path) => path.map(([x, y]) => ({ x, y })));
  if (gap === 0) return [outline, ...holes];
  const moved = inflatePaths(paths, -gap, JoinType.Miter, EndType.Polygon, MITER_LIMIT);
  return moved.map((path) => path.map(({ x, y }) => [x, y] as const));
}
