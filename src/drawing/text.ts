/** Texts on a sheet: how they are made, the box each takes, and how long ones are broken into lines. */

import type { Text, TextRole } from '../reply/drawing.ts';
import { ASCENT, DESCENT, drawable, textWidth } from './font.ts';

/** An upright box: x to the right, y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Size of the smallest text in sheet units: what is still read on a phone held at arm's length. */
export const SMALL = 9;

/** How a text is made, besides its words and its place. */
interface Style {
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: Text['anchor'];
  readonly turn?: Text['turn'];
}

/** A text with its anchor on the baseline at (x, y). */
export function write(role: TextRole, text: string, x: number, y: number, style: Style = {}): Text {
  const { size = SMALL, bold = false, anchor = 'start', turn = 0 } = style;
  return { kind: 'text', role, x, y, text: drawable(text), size, bold, anchor, turn };
}

/** Baseline for a text whose figures stand in the middle of `y`. */
export function baseline(y: number, size = SMALL): number {
  return y + size * 0.365;
}

/** The box that a text takes by the font's own metrics. */
export function textBox({ x, y, text, size, bold, anchor, turn }: Text): Box {
  const width = textWidth(text, size, bold);
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
  const [left, right, up, down] = [-before, width - before, ASCENT * size, DESCENT * size];
  if (turn === 0) return { left: x + left, right: x + right, top: y - up, bottom: y + down };
  if (turn === -90) return { left: x - up, right: x + down, top: y - right, bottom: y - left };
  return { left: x - down, right: x + up, top: y + left, bottom: y + right };
}

/** True when two boxes share more than an edge, or come nearer than `apart`. */
export function meet(a: Box, b: Box, apart = 0): boolean {
  return a.left < b.right + apart && b.left < a.right + apart && a.top < b.bottom + apart && b.top < a.bottom + apart;
}

/** A text as lines no wider than `width`: broken at spaces, a longer word where it must be. */
export function wrapped(text: string, size: number, bold: boolean, width: number): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, size, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of drawable(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of word) {
      if (line !== '' && !fits(line + character)) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  return line === '' ? lines : [...lines, line];
}

// Labels beside what they name: each as near to its own level as a least distance between neighbours allows.

/** Levels nearest in all to the wanted ones (in order, ascending), neighbours at least `apart` from each other. */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  // With i × apart taken off, "at least apart" is "never falling": the nearest such run is found by pooling neighbours.
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((level, i) => {
    let pool = { sum: level - i * apart, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  });
  return pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count)).map((level, i) => level + i * apart);
}
