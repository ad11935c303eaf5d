/** Clipping shapes to a box, and how a room is viewed: as given or turned, all of it or a window on some rows. */

import type { LaidRegion, Plan } from '../layout/floor.ts';
import { isQuarter, toFrame } from '../layout/frame.ts';
import type { Place, ShapeRole } from '../reply/drawing.ts';
import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import type { Box } from './text.ts';

type Line = readonly [Place, Place];

/**
 * Rings clipped to a box (Sutherland and Hodgman, 1974, from memory). Parts that separate stay joined along the edge of
 * the box, which an even–odd fill doesn't show. Rings completely outside are dropped.
 */
export function clippedRings(rings: readonly (readonly Place[])[], box: Box): readonly (readonly Place[])[] {
  const sides = [
    { axis: 0, limit: box.left, above: true },
    { axis: 0, limit: box.right, above: false },
    { axis: 1, limit: box.top, above: true },
    { axis: 1, limit: box.bottom, above: false },
  ] as const;
  return rings
    .map((ring) => sides.reduce<readonly Place[]>((cut, side) => clippedAt(cut, side), ring))
    .filter(({ length }) => length > 2);
}

function clippedAt(
  ring: readonly Place[],
  { axis, limit, above }: { axis: 0 | 1; limit: number; above: boolean },
): readonly Place[] {
  const inside = (place: Place): boolean => (above ? place[axis] >= limit : place[axis] <= limit);
  return ring.flatMap((to, i) => {
    const from = ring[(i + ring.length - 1) % ring.length] ?? to;
    const kept: Place[] = [];
    if (inside(from) !== inside(to)) {
      const share = (limit - from[axis]) / (to[axis] - from[axis]);
      const other = axis === 0 ? 1 : 0;
      const crossing = from[other] + (to[other] - from[other]) * share;
      kept.push(axis === 0 ? [limit, crossing] : [crossing, limit]);
    }
    if (inside(to)) kept.push(to);
    return kept;
  });
}

/** Lines clipped to a box. Those outside are dropped; horizontal and vertical ones along its edge are kept. */
export function clippedLines(lines: readonly Line[], box: Box): readonly Line[] {
  return lines.flatMap(([[ax, ay], [bx, by]]): Line[] => {
    if (ax !== bx && ay !== by) return clippedSlant([ax, ay], [bx, by], box);
    const inX = (x: number): number => Math.min(Math.max(x, box.left), box.right);
    const inY = (y: number): number => Math.min(Math.max(y, box.top), box.bottom);
    const kept: Line = [
      [inX(ax), inY(ay)],
      [inX(bx), inY(by)],
    ];
    const within = ax === bx ? ax >= box.left && ax <= box.right : ay >= box.top && ay <= box.bottom;
    const length = Math.abs(kept[0][0] - kept[1][0]) + Math.abs(kept[0][1] - kept[1][1]);
    return within && length > 0 ? [kept] : [];
  });
}

/** A slanted line between the points where it enters and leaves the box (Liang and Barsky, 1984, from memory). */
function clippedSlant([ax, ay]: Place, [bx, by]: Place, box: Box): Line[] {
  let [first, last] = [0, 1];
  for (const [from, way, low, high] of [
    [ax, bx - ax, box.left, box.right],
    [ay, by - ay, box.top, box.bottom],
  ] as const) {
    const [one, other] = [(low - from) / way, (high - from) / way];
    first = Math.max(first, Math.min(one, other));
    last = Math.min(last, Math.max(one, other));
  }
  const point = (share: number): Place => [ax + (bx - ax) * share, ay + (by - ay) * share];
  return first < last ? [[point(first), point(last)]] : [];
}

export function sidesOf(rings: readonly (readonly Place[])[]): readonly Line[] {
  return rings.flatMap((ring) => ring.map((from, i): Line => [from, ring[(i + 1) % ring.length] ?? from]));
}

/** Surfaces with their roles and the lines between them, in the laying frame. */
export interface OnFloor {
  readonly pieces: readonly { readonly role: ShapeRole; readonly rings: readonly Outline[] }[];
  readonly lines: readonly (readonly [Point, Point])[];
}

/**
 * How a room is seen on its sheet. Figures are composed with rows horizontal and y up, in ticks from (0, 0); the
 * outline, the holes and `place` use these coordinates. If rows are vertical, the figure is turned a quarter turn left
 * as it goes onto the sheet.
 */
export interface RoomView {
  readonly region: LaidRegion;
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  /** An outline of the region in view coordinates. */
  readonly seen: (outline: Outline) => Outline;
  readonly width: number;
  readonly height: number;
  /** Rows run from right to left and stack downward. */
  readonly reversed: boolean;
  readonly upright: boolean;
  /** How the room is turned relative to the way it was given. */
  readonly turn: 'none' | 'left' | 'right';
}

export function asGiven(region: LaidRegion): RoomView {
  const { angle } = region.frame;
  if (!isQuarter(angle)) return viewOf(region, false, false, 'none');
  return viewOf(region, angle === 180 || angle === 270, angle === 90 || angle === 270, 'none');
}

/** The room turned a quarter turn, to the side that makes rows run from left to right, or upward. */
export function turnedQuarter(region: LaidRegion): RoomView {
  const { angle } = region.frame;
  if (!isQuarter(angle)) return viewOf(region, false, true, 'none');
  return viewOf(region, false, angle === 0 || angle === 180, angle === 0 || angle === 270 ? 'left' : 'right');
}

function viewOf(region: LaidRegion, reversed: boolean, upright: boolean, turn: RoomView['turn']): RoomView {
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

export function place(view: RoomView, u: number, v: number): Point {
  return view.reversed ? [view.width - u, view.height - v] : [u, v];
}

/**
 * Degrees counterclockwise, −180 to 180 to one decimal, by which a slanted room is turned relative to the way it was
 * given.
 */
export function turnOf({ region, upright }: RoomView): number {
  const turn = (((((upright ? 90 : 0) - region.frame.angle) % 360) + 540) % 360) - 180;
  return Math.round(turn * 10) / 10;
}

// The part of a room that a sheet shows: some rows, and a little of the floor beyond them.

/** Rows by index, inclusive. */
export interface RowRange {
  readonly first: number;
  readonly last: number;
}

/** A window in view ticks; `cutLow` and `cutHigh` say whether the floor continues beyond its lower and upper edge. */
export interface Window extends RowRange {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly cutLow: boolean;
  readonly cutHigh: boolean;
}

/** How much of the adjacent row is shown beyond a cut edge, as a fraction of a plank's width. */
const BEYOND = 0.4;

export function windowOn(view: RoomView, plan: Plan, { first, last }: RowRange): Window {
  const { rows } = view.region;
  const shown = rows.slice(first, last + 1);
  const [low, high] = [shown[0], shown.at(-1)];
  const whole = { minX: 0, maxX: view.width, minY: 0, maxY: view.height };
  if (!low || !high) return { ...whole, first, last, cutLow: false, cutHigh: false };
  const before = first > 0;
  const after = last < rows.length - 1;
  if (!before && !after) return { ...whole, first, last, cutLow: false, cutHigh: false };
  const beyond = plan.plank.width * BEYOND;
  const v0 = before ? low.v - beyond : 0;
  const v1 = after ? high.v + high.height + beyond : view.height;
  const { gap } = plan.rules;
  const u0 = Math.min(...shown.map(({ pieces }) => pieces[0]?.u ?? 0)) - gap;
  const u1 = Math.max(...shown.map(({ pieces }) => (pieces.at(-1)?.u ?? 0) + (pieces.at(-1)?.length ?? 0))) + gap;
  const [ax, ay] = place(view, u0, v0);
  const [bx, by] = place(view, u1, v1);
  return {
    first,
    last,
    minX: Math.min(ax, bx),
    maxX: Math.max(ax, bx),
    minY: Math.min(ay, by),
    maxY: Math.max(ay, by),
    cutLow: view.reversed ? after : before,
    cutHigh: view.reversed ? before : after,
  };
}
