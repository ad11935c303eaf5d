/** Flat enough or not: gaps under a straightedge, or a grid of depths, against a rule. */

import type { Length } from '../units/length.ts';

/** A gap allowed under a straightedge of a length; ticks. */
export interface FlatLimit {
  readonly gap: Length;
  readonly over: Length;
}

/** Depths below a straight line in ticks, row by row; below zero is above the line. */
export interface DepthGrid {
  readonly dx: Length;
  readonly dy: Length;
  readonly rows: readonly (readonly number[])[];
}

/** The limit a reading over `over` ticks is held to: that of the longest straightedge not longer than it, else the shortest. */
export function limitFor(over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): FlatLimit {
  const longestFirst = [...limits].sort((a, b) => b.over - a.over);
  return longestFirst.find((limit) => limit.over <= over) ?? longestFirst.at(-1) ?? limits[0];
}

/**
 * Ticks allowed under a straightedge `over` ticks long: the rule's gap, in proportion below its shortest straightedge
 * (a short one must not hide what a long one shows).
 */
export function allowedGap(over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): number {
  const limit = limitFor(over, limits);
  return over >= limit.over ? limit.gap : (limit.gap * over) / limit.over;
}

/** Whether a gap over a length keeps the rule; compared in whole numbers. */
export function isFlat(gap: number, over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const limit = limitFor(over, limits);
  return over >= limit.over ? gap <= limit.gap : gap * limit.over <= limit.gap * over;
}

/** Whether the gaps of a grid under one straightedge keep the rule: from the highest to the lowest at most its widest gap. */
export function isGridFlat({ rows }: DepthGrid, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const depths = rows.flat();
  return Math.max(...depths) - Math.min(...depths) <= Math.max(...limits.map(({ gap }) => gap));
}

/**
 * Whether a straightedge laid on the grid along every row and column, from any point to any other up to the rule's longest
 * span, leaves no gap past the rule: the floor may slope, but not bend. Depths are below a level line.
 */
export function isGridStraight(grid: DepthGrid, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const columns = (grid.rows[0] ?? []).map((_, i) => grid.rows.map((row) => row[i] ?? 0));
  const longest = Math.max(...limits.map(({ over }) => over));
  const straight = (depths: readonly number[], step: Length): boolean =>
    depths.every((_, from) => {
      for (let to = from + 2; to < depths.length && (to - from) * step <= longest; to++) {
        const over = (to - from) * step;
        if (gapUnder(depths.slice(from, to + 1)) > allowedGap(over, limits)) return false;
      }
      return true;
    });
  return grid.rows.every((row) => straight(row, grid.dx)) && columns.every((column) => straight(column, grid.dy));
}

/** The widest gap (ticks) under a straightedge lying on evenly spaced points: from the line over the highest down to a point. */
export function gapUnder(depths: readonly number[]): number {
  const depth = (at: number): number => depths[at] ?? 0;
  const line = (a: number, b: number, at: number): number => depth(a) + ((depth(b) - depth(a)) * (at - a)) / (b - a);
  // The points that a straightedge touches: each corner of the surface's upper hull (Andrew's monotone chain, 1979).
  const touched: number[] = [];
  for (let i = 0; i < depths.length; i++) {
    while (touched.length > 1) {
      const [before = 0, last = 0] = touched.slice(-2);
      if (depth(last) < line(before, i, last)) break;
      touched.pop();
    }
    touched.push(i);
  }
  return touched.slice(1).reduce((widest, b, i) => {
    const a = touched[i] ?? 0;
    const between = Array.from({ length: b - a - 1 }, (_, k) => depth(a + 1 + k) - line(a, b, a + 1 + k));
    return Math.max(widest, ...between);
  }, 0);
}
