/** The part of a room that a sheet shows: some of its rows, with a little of the floor that goes on. */

import type { Plan } from '../layout/floor.ts';
import { place, type View } from './view.ts';

/** Rows by index, both included. */
export interface RowRange {
  readonly first: number;
  readonly last: number;
}

/** A window in the view's ticks; `cutLow` and `cutHigh` tell where the floor goes on beyond its lower or upper edge. */
export interface Window extends RowRange {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly cutLow: boolean;
  readonly cutHigh: boolean;
}

/** How much of the neighbouring row is seen beyond a cut edge, as a share of a plank's width. */
const BEYOND = 0.4;

/** The window on rows `first` to `last` of a view. */
export function windowOn(view: View, plan: Plan, { first, last }: RowRange): Window {
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
