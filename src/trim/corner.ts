/** Corners of a room as a saw sees them: the setting for a mitre, what thickness adds, what a slanted cut takes. Angles in degrees. */

import { at, type Outline } from '../units/geometry.ts';
import { type Length, ticks } from '../units/length.ts';

/** How a piece of trim ends: what cut, and the saw's setting in degrees off square. */
export interface Cut {
  readonly cut: 'miter' | 'square' | 'cope' | 'scarf';
  readonly setting: number;
}

export const SQUARE: Cut = { cut: 'square', setting: 0 };

/** Angles are kept to a hundredth of a degree: finer than any saw is set. */
const HUNDREDTHS = 100;

/** An angle rounded to a hundredth of a degree. */
export function toHundredth(angle: number): number {
  return Math.round(angle * HUNDREDTHS) / HUNDREDTHS;
}

/** The interior angle at corner `index` of a counter-clockwise outline: 90 for a square inside corner, 270 for an outside one. */
export function interiorAngle(outline: Outline, index: number): number {
  const [px, py] = at(outline, index - 1);
  const [cx, cy] = at(outline, index);
  const [nx, ny] = at(outline, index + 1);
  const [ax, ay, bx, by] = [cx - px, cy - py, nx - cx, ny - cy];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return toHundredth(180 - (turn * 180) / Math.PI);
}

/** The saw's setting for a mitre, |180° − interior| ÷ 2: 45° at 90° and at 270°, 22.5° at 135°. Reported by the trade; follows from bisecting the corner. */
export function sawSetting(interior: number): number {
  return toHundredth(Math.abs(180 - interior) / 2);
}

/** True for a corner that stands out into the room. */
export function isOutside(interior: number): boolean {
  return interior > 180;
}

/** What a slanted end adds to a piece: thickness × tan(setting), rounded once to a tick. Takes ticks and degrees below 90. */
export function slant(thickness: number, setting: number): Length {
  return ticks(Math.round(thickness * Math.tan(radians(setting))));
}

/** What a cut takes along the stick: kerf ÷ cos(setting), rounded once to a tick. Takes ticks and degrees below 90. */
export function kerfAlong(kerf: number, setting: number): Length {
  return ticks(Math.round(kerf / Math.cos(radians(setting))));
}

/** Degrees by which corners turn in all, Σ(180 − interior): 360 for every closed room. */
export function turning(interiors: readonly number[]): number {
  return toHundredth(interiors.reduce((sum, interior) => sum + 180 - interior, 0));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
