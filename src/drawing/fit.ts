/** How large a room is drawn: as large as the sheet lets it be beside its labels, and whether the labels find room. */

import type { Plan } from '../layout/floor.ts';
import { SHEET_WIDTH } from '../reply/drawing.ts';
import { TICKS_PER_INCH } from '../units/length.ts';
import { type Column, LINE, levelsOf } from './label-column.ts';
import { place, type View } from './view.ts';
import type { Window } from './window.ts';

/** Margin at the sheet's edges. */
export const MARGIN = 8;
/** Thickness of a wall on the sheet: room for its number and length. */
export const WALL = 13;
/** The strip beside the starting wall that tells the laying direction. */
export const STRIP = 16;
/** Longest figure: the sheet stays below 1,600 with its heading and legend. */
const LONGEST = 1200;
const ACROSS = SHEET_WIDTH - 2 * MARGIN;
/** A closet is not blown up beyond this: sheet units a tick. */
export const LARGEST_SCALE = 4.5 / TICKS_PER_INCH;
/** Labels may take this much more room than their rows before the lines to them get too slanted. */
const MOST_SPREAD = 2.3;
const FREE_SPREAD = 80;

/** A figure measured: sheet units a tick, both columns with the levels of their lines, and the widths of the leader zones. */
export interface Fit {
  readonly view: View;
  readonly window: Window;
  readonly scale: number;
  readonly left: Column;
  readonly right: Column;
  readonly leftZone: number;
  readonly rightZone: number;
  /** A row's height on the sheet. */
  readonly pitch: number;
  readonly fits: boolean;
}

/** Measures a figure; `starts` and `ends` are its label columns. */
export function measure(view: View, window: Window, plan: Plan, starts: Column, ends: Column): Fit {
  const [left, right] = view.reversed ? [ends, starts] : [starts, ends];
  const wide = window.maxX - window.minX;
  const deep = window.maxY - window.minY;
  const [along, across] = view.upright ? [LONGEST, ACROSS] : [ACROSS, LONGEST];
  const scaleFor = (room: number): number =>
    Math.min(
      (along - left.width - right.width - room - 2 * WALL) / wide,
      (across - 2 * WALL - STRIP) / deep,
      LARGEST_SCALE,
    );
  const zones = (scale: number): readonly [number, number] => [zoneOf(left, view, scale), zoneOf(right, view, scale)];
  // Wider zones make a smaller figure and so a little more spread: the second measure settles it.
  const [firstLeft, firstRight] = zones(scaleFor(20));
  const [leftZone, rightZone] = zones(scaleFor(firstLeft + firstRight));
  const scale = scaleFor(leftZone + rightZone);
  const lines = Math.max(left.labels.length, right.labels.length) * LINE;
  const fits = scale > 0 && lines <= across - STRIP && lines <= MOST_SPREAD * deep * scale + FREE_SPREAD;
  return { view, window, scale, left, right, leftZone, rightZone, pitch: plan.plank.width * scale, fits };
}

/** Level of a frame's v on the sheet, y down from the window's top. */
export function levelIn(view: View, window: Pick<Window, 'maxY'>, scale: number, v: number): number {
  return (window.maxY - place(view, 0, v)[1]) * scale;
}

/** Width of the zone in which lines lead from rows to labels: the more they slant, the wider. */
function zoneOf(column: Column, view: View, scale: number): number {
  if (column.labels.length === 0) return 0;
  const window = { maxY: view.height };
  const levelOf = ({ v }: { v: number }): number => levelIn(view, window, scale, v);
  const levels = levelsOf(column, levelOf);
  const moved = Math.max(
    ...column.labels.map((label, i) => (label.leads ? Math.abs((levels[i] ?? 0) - levelOf(label)) : 0)),
  );
  return Math.min(30, 7 + 0.4 * moved);
}
