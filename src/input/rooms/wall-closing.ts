/** Whether the walls of a room of right angles still meet when some are told anew, and by how much they miss. */

import { at, type Outline, type Point, wallLength } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../units/length.ts';
import { settled } from './walk-outline.ts';

/** What a tape in two people's hands may differ by round a room: common practice. */
const TAPE = TICKS_PER_INCH / 4;

/** How far the walls miss one another, and the walls to measure again, by their numbers from 1; the outline where they meet. */
export interface Closing {
  readonly miss: Length;
  readonly again: readonly number[];
  readonly outline?: Outline;
}

/** Puts walls told anew into an outline of right angles. What a tape may miss by is taken out of the longest wall not told. */
export function closedBy(
  outline: Outline,
  told: readonly { readonly wall: number; readonly length: Length }[],
  sure: readonly number[] = [],
): Closing {
  const anew = new Map(told.map(({ wall, length }) => [wall - 1, length]));
  const ways = outline.map((_, i) => wayOf(outline, i));
  const lengths = outline.map((_, i) => anew.get(i) ?? wallLength(outline, i));
  const misses = [0, 1].map((axis) =>
    lengths.reduce<number>((sum, length, i) => sum + (ways[i]?.[axis] ?? 0) * length, 0),
  );
  const worst = Math.abs(misses[0] ?? 0) >= Math.abs(misses[1] ?? 0) ? 0 : 1;
  const along = outline.map((_, i) => i).filter((i) => ways[i]?.[worst] !== 0);
  const untold = along.filter((i) => !anew.has(i));
  const unsure = untold.filter((i) => !sure.includes(i + 1));
  const again = (unsure.length > 0 ? unsure : untold.length > 0 ? untold : along).map((i) => i + 1);
  const miss = ticks(Math.abs(misses[worst] ?? 0));
  if (miss > TAPE) return { miss, again };
  for (const axis of [0, 1] as const) {
    const [longest] = outline
      .map((_, i) => i)
      .filter((i) => ways[i]?.[axis] !== 0)
      .sort(
        (one, other) => Number(anew.has(one)) - Number(anew.has(other)) || (lengths[other] ?? 0) - (lengths[one] ?? 0),
      );
    if (longest === undefined) continue;
    lengths[longest] = ticks((lengths[longest] ?? 0) - (ways[longest]?.[axis] ?? 0) * (misses[axis] ?? 0));
  }
  return lengths.every((length) => length >= TICKS_PER_INCH)
    ? { miss, again, outline: settled(path(lengths, ways)) }
    : { miss, again };
}

/** The way a wall of right angles runs: one step along x or y. */
function wayOf(outline: Outline, index: number): Point {
  const [[ax, ay], [bx, by]] = [at(outline, index), at(outline, index + 1)];
  return [Math.sign(bx - ax), Math.sign(by - ay)];
}

function path(lengths: readonly Length[], ways: readonly Point[]): readonly Point[] {
  let [x, y] = [0, 0];
  return lengths.map((length, i): Point => {
    const corner: Point = [x, y];
    const [dx, dy] = ways[i] ?? [0, 0];
    [x, y] = [x + dx * length, y + dy * length];
    return corner;
  });
}
