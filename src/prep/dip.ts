/** Dips in a floor: how much of the deepest gap their shape fills, and whether filling them is a question about the structure first. */

import { type Length, TICKS_PER_INCH } from '../units/length.ts';
import { type DepthGrid, gapUnder } from './flatness.ts';

/** Round and hollow, long and hollow, or as deep all over. */
export type DipShape = 'dish' | 'trough' | 'even';

/** From the emptiest to the fullest. */
export const DIP_SHAPES: readonly [DipShape, DipShape, DipShape] = ['dish', 'trough', 'even'];

/** A gap that a straightedge may show at most, in proportion over a longer one; ticks. */
export interface DeepestDip {
  readonly gap: Length;
  readonly over: Length;
}

/** Whether a gap (ticks) under a straightedge `over` ticks long is deeper than the limit; compared in whole numbers. */
export function isDeeper(gap: number, over: number, limit: DeepestDip): boolean {
  return gap * limit.over > limit.gap * Math.max(over, limit.over);
}

/** Whether a straightedge along any row or column of a grid, from any point to any other, shows a gap deeper than the limit. */
export function isGridDeeper({ dx, dy, rows }: DepthGrid, limit: DeepestDip): boolean {
  const columns = (rows[0] ?? []).map((_, i) => rows.map((row) => row[i] ?? 0));
  const deeper = (depths: readonly number[], step: Length): boolean =>
    depths.some((_, from) =>
      depths.some(
        (_, to) => to > from + 1 && isDeeper(gapUnder(depths.slice(from, to + 1)), (to - from) * step, limit),
      ),
    );
  return rows.some((row) => deeper(row, dx)) || columns.some((column) => deeper(column, dy));
}

/** Pounds a square foot of a filling: its mean depth in ticks × pounds a square foot and inch of depth. */
export function poundsPerSquareFoot(meanDepth: number, perInch: number): number {
  return (meanDepth / TICKS_PER_INCH) * perInch;
}

/** What a dip on a wood floor is: light enough to fill, a stop, or open until its shape is known. */
export type DipVerdict = 'fill' | 'measure' | 'stop';

/**
 * By the weights (pounds a square foot) of every shape that is still possible, the emptiest first: nothing over the limit is
 * filled; where only the fullest of several is over it, its shape is measured first; else it is a stop.
 */
export function dipVerdict(weights: readonly number[], limit: number): DipVerdict {
  const over = weights.filter((weight) => weight > limit).length;
  if (over === 0) return 'fill';
  return over === 1 && weights.length > 1 ? 'measure' : 'stop';
}
