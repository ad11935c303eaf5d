/** How a room is seen on its sheet: as told or turned a quarter, its rows lying across the sheet or standing upright. */

import type { LaidRegion } from '../layout/floor.ts';
import { isQuarter, toFrame } from '../layout/frame.ts';
import { boxOf, type Outline, type Point } from '../units/geometry.ts';

/**
 * Figures are composed with rows lying and y up, in ticks from (0, 0): the outline, the holes and `place` are in these
 * coordinates. Upright rows are turned a quarter to the left when the figure goes onto the sheet.
 */
export interface View {
  readonly region: LaidRegion;
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  /** An outline of the region as the view has it. */
  readonly seen: (outline: Outline) => Outline;
  readonly width: number;
  readonly height: number;
  /** Rows run from right to left and stack downwards. */
  readonly reversed: boolean;
  readonly upright: boolean;
  /** How the room is turned against the way it was told. */
  readonly turn: 'none' | 'left' | 'right';
}

/** The room as it was told, y up. */
export function asTold(region: LaidRegion): View {
  const { angle } = region.frame;
  if (!isQuarter(angle)) return viewOf(region, false, false, 'none');
  return viewOf(region, angle === 180 || angle === 270, angle === 90 || angle === 270, 'none');
}

/** The room turned a quarter, to the side on which rows run from left to right, or upwards. */
export function turnedQuarter(region: LaidRegion): View {
  const { angle } = region.frame;
  if (!isQuarter(angle)) return viewOf(region, false, true, 'none');
  return viewOf(region, false, angle === 0 || angle === 180, angle === 0 || angle === 270 ? 'left' : 'right');
}

function viewOf(region: LaidRegion, reversed: boolean, upright: boolean, turn: View['turn']): View {
  const { maxX, maxY } = boxOf(toFrame(region.outline, region.frame));
  const seen = (outline: Outline): Outline =>
    toFrame(outline, region.frame).map(([u, v]): Point => (reversed ? [maxX - u, maxY - v] : [u, v]));
  return {
    region,
    outline: seen(region.outline),
    holes: region.holes.map(seen),
    seen,
    width: maxX,
    height: maxY,
    reversed,
    upright,
    turn,
  };
}

/** A place in the laying frame as the view has it. */
export function place(view: View, u: number, v: number): Point {
  return view.reversed ? [view.width - u, view.height - v] : [u, v];
}

/** How far a room at a slant is turned against the way it was told, in degrees against the clock, −180 to 180, to a tenth. */
export function turnOf({ region, upright }: View): number {
  const turn = (((((upright ? 90 : 0) - region.frame.angle) % 360) + 540) % 360) - 180;
  return Math.round(turn * 10) / 10;
}
