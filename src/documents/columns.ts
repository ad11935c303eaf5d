/** How wide the columns of a table are: as wide as their text where there is room, else the short ones so, and what is left shared among the long. */

import { textWidth } from '../drawing/font.ts';
import { TYPE } from './paper.ts';

/** Space between the text of two columns. */
export const GUTTER = 9;

const CELL_SIZE = TYPE.cell.size;
/** A word wider than this is broken. */
const WIDEST_WORD = 110;

/** Widths of the columns' text, which with the gutters between come to no more than `width`. */
export function columnWidths(
  rows: readonly (readonly string[])[],
  columns: readonly string[],
  width: number,
): readonly number[] {
  const all = columns.map((head, i) => [head, ...rows.map((row) => row[i] ?? '')]);
  const room = width - GUTTER * (columns.length - 1);
  const natural = all.map((cells) => Math.max(...cells.map((cell, i) => textWidth(cell, CELL_SIZE, i === 0))) + 1);
  const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0);
  if (sum(natural) <= room) return natural;
  const least = all.map((cells, i) => Math.min(natural[i] ?? 0, widestWord(cells)));
  const spare = room - sum(least);
  if (spare <= 0) return least.map((one) => (one / sum(least)) * room);
  const more = shared(
    natural.map((one, i) => one - (least[i] ?? 0)),
    spare,
  );
  return least.map((one, i) => one + (more[i] ?? 0));
}

/** What each wish gets of what there is: the small ones all of it, so that only long texts are broken. */
function shared(wishes: readonly number[], spare: number): readonly number[] {
  const given = wishes.map(() => 0);
  const smallFirst = wishes.map((wish, i) => ({ wish, i })).sort((one, other) => one.wish - other.wish);
  let left = spare;
  smallFirst.forEach(({ wish, i }, served) => {
    const share = Math.min(wish, left / (wishes.length - served));
    given[i] = share;
    left -= share;
  });
  return given;
}

function widestWord(cells: readonly string[]): number {
  const words = cells.flatMap((cell, i) => cell.split(/\s+/).map((word) => textWidth(word, CELL_SIZE, i === 0)));
  return Math.min(WIDEST_WORD, Math.max(12, ...words)) + 1;
}
