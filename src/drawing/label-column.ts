/** A column of row labels: how wide it is, where each line stands, and the lines that lead from labels to rows. */

import type { Shape, TextRole } from '../reply/drawing.ts';
import { textWidth } from './font.ts';
import type { RowLabel } from './row-label.ts';
import { spread } from './spread.ts';
import { baseline, SMALL, write } from './text.ts';

/** Between the middles of neighbouring label lines. */
export const LINE = 10;
const SPACE = 4;

/** Labels with their widths: number, cut and offcut stand in columns of their own. */
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

/** Levels (sheet units, y down) of the labels, given where their rows lie. */
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

/** The texts of a column whose left edge is at `x`; `towards` tells on which side the room is. */
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
