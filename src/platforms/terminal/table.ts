/** A table in characters: columns as wide as their text, the last ones wrapped to fit. */

import { wrap } from './wrap.ts';

const GAP = 2;
const NARROWEST_COLUMN = 8;

/** The width below which so many columns do not fit. */
export function narrowestTable(columns: number): number {
  return columns * (NARROWEST_COLUMN + GAP) - GAP;
}

/** Lines of a table no wider than `width`; every cell is kept whole, wrapped where it must be. */
export function tableLines(
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly string[] {
  const room = width - GAP * (columns.length - 1);
  const widest = (heads: readonly (readonly string[])[]): readonly number[] =>
    heads.map((head, i) => Math.max(...[...head, ...rows.map((row) => row[i] ?? '')].map((cell) => [...cell].length)));
  const natural = widest(columns.map((column) => [column]));
  // Long heads give way before cells do.
  const tight = widest(columns.map((column) => column.split(/\s+/)));
  const widths = squeezed(sum(natural) <= room ? natural : tight, room);
  const line = (cells: readonly string[]): readonly string[] => {
    const wrapped = widths.map((wide, i) => wrap(cells[i] ?? '', wide));
    const height = Math.max(...wrapped.map((lines) => lines.length));
    return Array.from({ length: height }, (_, k) =>
      wrapped
        .map((lines, i) => pad(lines[k] ?? '', widths[i] ?? 0))
        .join(' '.repeat(GAP))
        .trimEnd(),
    );
  };
  const rule = widths.map((wide) => '-'.repeat(wide)).join(' '.repeat(GAP));
  return [...line(columns), rule, ...rows.flatMap(line)];
}

/** Widths that fit: the widest columns give way first, none below the narrowest. */
function squeezed(natural: readonly number[], room: number): readonly number[] {
  const widths = [...natural];
  for (let total = sum(widths); total > room; total--) {
    const widest = widths.indexOf(Math.max(...widths));
    const now = widths[widest] ?? 0;
    if (now <= NARROWEST_COLUMN) break;
    widths[widest] = now - 1;
  }
  return widths;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function pad(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - [...text].length));
}
