/** A border of boards along the walls, mitred at the corners, courses offset by half a board. */

import { at, doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { type BoardCut, type BoardWay, cutOf } from './board-cut.ts';

/** One board of a border and the way it lies. */
export interface BorderBoard extends BoardWay {
  readonly course: number;
  readonly cut: BoardCut;
}

/** The border and the outline that it leaves to the field; undefined where some wall is too short for it. */
export function borderOf(
  outline: Outline,
  courses: number,
  board: { readonly length: number; readonly width: number },
  minEnd: number,
): { readonly boards: readonly BorderBoard[]; readonly inner: Outline } | undefined {
  const boards: BorderBoard[] = [];
  let outer = outline;
  for (let course = 1; course <= courses; course++) {
    const inner = drawnIn(outer, board.width);
    if (!inner) return undefined;
    for (const i of outer.keys()) boards.push(...strip(outer, inner, i, course, board, minEnd));
    outer = inner;
  }
  return { boards, inner: outer };
}

/** Every wall `by` further in, its corners where the moved walls meet; undefined when one of them is used up. */
function drawnIn(outline: Outline, by: number): Outline | undefined {
  const inner = outline.map((corner, i): Point => {
    const [a, b] = [wayOf(outline, i - 1), wayOf(outline, i)];
    const area = a[0] * b[1] - a[1] * b[0];
    const sum = [a[0] + b[0], a[1] + b[1]] as const;
    // Where two walls lie in one line the corner moves square to it.
    if (Math.abs(area) < 1e-9) return [Math.round(corner[0] - a[1] * by) + 0, Math.round(corner[1] + a[0] * by) + 0];
    const along = 1 + a[0] * b[0] + a[1] * b[1];
    return [Math.round(corner[0] - (sum[1] / along) * by) + 0, Math.round(corner[1] + (sum[0] / along) * by) + 0];
  });
  const kept = inner.every((from, i) => {
    const [to, way] = [at(inner, i + 1), wayOf(outline, i)];
    return (to[0] - from[0]) * way[0] + (to[1] - from[1]) * way[1] > by / 2;
  });
  return kept && doubleArea(inner) > 0n ? inner : undefined;
}

function wayOf(outline: Outline, index: number): readonly [number, number] {
  const [a, b] = [at(outline, index), at(outline, index + 1)];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
}

/** The boards of one wall of one course. */
function strip(
  outer: Outline,
  inner: Outline,
  index: number,
  course: number,
  { length, width }: { readonly length: number; readonly width: number },
  minEnd: number,
): readonly BorderBoard[] {
  const corner = at(outer, index);
  const [ux, uy] = wayOf(outer, index);
  const degrees = (Math.atan2(uy, ux) * 180) / Math.PI;
  const along = (Math.round(degrees * 1e6) / 1e6 + 360) % 360;
  const place = ([x, y]: Point): number => Math.round((x - corner[0]) * ux + (y - corner[1]) * uy) + 0;
  const ring: Outline = [
    [0, 0],
    [place(at(outer, index + 1)), 0],
    [place(at(inner, index + 1)), width],
    [place(at(inner, index)), width],
  ];
  const places = ring.map(([x]) => x);
  const [from, to] = [Math.min(...places), Math.max(...places)];
  const way: BoardWay = { corner, along };
  const boards: BorderBoard[] = [];
  let high = from + firstOf(to - from, course, length, minEnd);
  for (let low = from; low < to; high += length) {
    const end = Math.min(high, to);
    const cut = cutOf([ring], way, { low, high: end, length, width });
    if (cut) boards.push({ ...way, course, cut });
    low = end;
  }
  return boards;
}

/** Where the first joint of a course lies from its end: a board, or half of one in every other course; balanced where the last piece would be too short. */
function firstOf(run: number, course: number, length: number, minEnd: number): number {
  const first = course % 2 === 1 ? length : Math.floor(length / 2);
  if (run <= length) return run;
  const rest = (run - first) % length;
  if (rest === 0 || rest >= minEnd) return first;
  return Math.floor((first + rest) / 2) >= minEnd ? Math.floor((first + rest) / 2) : first;
}
