/** What planks may cover of a region, as outlines in its laying frame, and the part of it in a box. */

import { FillRule, intersect } from 'clipper2-ts';
import { doubleArea, isRectilinear, type Outline, type Point } from '../units/geometry.ts';
import type { Frame, Region } from './floor.ts';
import { frameOf, toFrame } from './frame.ts';
import { inset } from './inset.ts';

/** Outlines in the frame, in ticks, of a region less the gap at every wall: outer ones counter-clockwise, holes clockwise; none when the gap leaves nothing. */
export function groundOf(region: Region, frame: Frame, gap: number): readonly Outline[] {
  const holes = region.holes.map((hole) => toFrame(hole, frame));
  return inset(toFrame(region.outline, frame), holes, gap).filter((path) => path.length > 2 && doubleArea(path) !== 0n);
}

/** True when some wall of a region runs neither along nor across rows at `angle`. */
export function isSlanted(region: Region, angle: number): boolean {
  const frame = frameOf(region, angle);
  return [region.outline, ...region.holes].some((path) => !isRectilinear(toFrame(path, frame)));
}

/** The area inside outlines in square ticks, holes taken off; half a tick is dropped. */
export function groundArea(ground: readonly Outline[]): bigint {
  return ground.reduce((sum, path) => sum + doubleArea(path), 0n) / 2n;
}

/** A box along u and v. */
export interface GroundBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The part of outlines within a box; crossings are rounded to a tick. Slivers without area are left out. */
export function within(ground: readonly Outline[], { left, right, bottom, top }: GroundBox): readonly Outline[] {
  const box = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  const paths = ground.map((path) => path.map(([x, y]) => ({ x, y })));
  return (
    intersect(paths, [box], FillRule.EvenOdd)
      // The clipper rounds a crossing out of the box now and then, and gives −0, which JSON does not keep.
      .map((path) => path.map(({ x, y }): Point => [clamped(x, left, right), clamped(y, bottom, top)]))
      .filter((path) => doubleArea(path) !== 0n)
  );
}

function clamped(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high) + 0;
}
