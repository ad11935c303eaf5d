/** How large a room is drawn: as large as the sheet allows beside its labels, and whether the labels fit. */

import type { Plan } from '../layout/floor.ts';
import { SHEET_WIDTH, type Shape, type TextRole } from '../reply/drawing.ts';
import { TICKS_PER_INCH } from '../units/length.ts';
import type { RowLabel } from './labels.ts';
import { place, type RoomView, type Window } from './shapes.ts';
import { baseline, SMALL, spread, textWidth, write } from './text.ts';

/** Distance between the centers of adjacent label lines. */
export const LINE = 10;
const SPACE = 4;

/** Labels with their widths; number, cut and offcut each get their own column. */
export interface Column {
  readonly labels: readonly RowLabel[];
  readonly name: number;
  readonly cut: number;
  readonly offcut: number;
  readonly width: number;
  readonly nameRole: TextRole;
}

export function columnOf(labels: readonly RowLabel[], nameRole: TextRole): Column {
  const widest = (textOf: (label: RowLabel) => string, bold = false): number =>
    Math.max(0, ...labels.map((label) => textWidth(textOf(label), SMALL, bold)));
  const [name, cut, offcut] = [widest((l) => l.name, true), widest((l) => l.cut), widest((l) => l.offcut)];
  const parts = [name, cut, offcut].filter((part) => part > 0);
  const row = parts.reduce((sum, part) => sum + part, 0) + SPACE * Math.max(0, parts.length - 1);
  return {
    labels,
    name,
    cut,
    offcut,
    width: Math.max(
      row,
      widest((l) => l.rip),
    ),
    nameRole,
  };
}

/** Positions (sheet units, y down) of the labels, given where their rows are. */
export function levelsOf(column: Column, levelOf: (label: RowLabel) => number): readonly number[] {
  const order = column.labels.map((label, i) => ({ i, level: levelOf(label) }));
  const falling = (order[0]?.level ?? 0) > (order.at(-1)?.level ?? 0);
  if (falling) order.reverse();
  const placed = spread(
    order.map(({ level }) => level),
    LINE,
  );
  const levels: number[] = Array(order.length).fill(0);
  order.forEach(({ i }, k) => {
    levels[i] = placed[k] ?? 0;
  });
  return levels;
}

/** The texts of a column whose left edge is at `x`; `towards` is the side the room is on. */
export function columnTexts(
  column: Column,
  levels: readonly number[],
  x: number,
  towards: 'left' | 'right',
): readonly Shape[] {
  const used = [column.name, column.cut, column.offcut].filter((part) => part > 0);
  const row = used.reduce((sum, part) => sum + part, 0) + SPACE * Math.max(0, used.length - 1);
  const left = towards === 'right' ? x + column.width - row : x;
  const cutAt = left + column.name + (column.name > 0 ? SPACE : 0);
  const offcutAt = cutAt + column.cut + (column.cut > 0 ? SPACE : 0);
  return column.labels.flatMap((label, i) => {
    const y = baseline(levels[i] ?? 0);
    const texts: Shape[] = [];
    const bold = { bold: true, anchor: 'end' } as const;
    if (label.name !== '') texts.push(write(column.nameRole, label.name, left + column.name, y, bold));
    if (label.cut !== '') texts.push(write('cut', label.cut, cutAt + column.cut, y, { anchor: 'end' }));
    if (label.offcut !== '') texts.push(write('offcut', label.offcut, offcutAt, y));
    if (label.rip !== '') {
      const rip =
        towards === 'right' ? ({ x: x + column.width, anchor: 'end' } as const) : ({ x, anchor: 'start' } as const);
      texts.push(write('rip', label.rip, rip.x, y, { anchor: rip.anchor }));
    }
    return texts;
  });
}

export const MARGIN = 8;
/** Thickness of a wall on the sheet: enough for its number and length. */
export const WALL = 13;
/** The strip beside the starting wall with the laying direction. */
export const STRIP = 16;
/** Longest figure: with heading and legend the sheet stays below 1,600. */
const LONGEST = 1200;
const ACROSS = SHEET_WIDTH - 2 * MARGIN;
/** Largest scale in sheet units per tick, so that a closet isn't blown up. */
export const LARGEST_SCALE = 4.5 / TICKS_PER_INCH;
/** Labels may take this many times the height of their rows before the leader lines get too slanted. */
const MOST_SPREAD = 2.3;
const FREE_SPREAD = 80;

/**
 * A measured figure: sheet units per tick, both columns with their line positions, and the widths of the leader zones.
 */
export interface Fit {
  readonly view: RoomView;
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

export function measure(view: RoomView, window: Window, plan: Plan, starts: Column, ends: Column): Fit {
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
  // Wider zones make the figure smaller and so spread the labels slightly more; the second measurement settles it.
  const [firstLeft, firstRight] = zones(scaleFor(20));
  const [leftZone, rightZone] = zones(scaleFor(firstLeft + firstRight));
  const scale = scaleFor(leftZone + rightZone);
  const lines = Math.max(left.labels.length, right.labels.length) * LINE;
  const fits = scale > 0 && lines <= across - STRIP && lines <= MOST_SPREAD * deep * scale + FREE_SPREAD;
  return { view, window, scale, left, right, leftZone, rightZone, pitch: plan.plank.width * scale, fits };
}

/** Position of a frame's v on the sheet, y down from the window's top. */
export function levelIn(view: RoomView, window: Pick<Window, 'maxY'>, scale: number, v: number): number {
  return (window.maxY - place(view, 0, v)[1]) * scale;
}

/** Width of the zone for leader lines: the more they slant, the wider. */
function zoneOf(column: Column, view: RoomView, scale: number): number {
  if (column.labels.length === 0) return 0;
  const window = { maxY: view.height };
  const levelOf = ({ v }: { v: number }): number => levelIn(view, window, scale, v);
  const levels = levelsOf(column, levelOf);
  const moved = Math.max(
    ...column.labels.map((label, i) => (label.leads ? Math.abs((levels[i] ?? 0) - levelOf(label)) : 0)),
  );
  return Math.min(30, 7 + 0.4 * moved);
}
