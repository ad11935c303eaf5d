/** The panels of a patch: the hole divided into pieces that come from sheets and land on joists, gaps between. */

import { type Length, roundUpRatio } from '../units/length.ts';
import type { PatchCut, Rect } from './patch-cut.ts';

/** A sheet: `length` is its strength axis. */
export interface SheetSize {
  readonly width: Length;
  readonly length: Length;
}

/** A piece in its place, and the joists (centrelines) under it from end to end. */
export interface Panel extends Rect {
  readonly joists: readonly number[];
}

/** How a hole is divided: lines between panels at joist centrelines (`ends`), and along v between joists (`edges`). */
export interface PanelGrid {
  readonly panels: readonly Panel[];
  /** Joist centrelines on which two panels of the patch butt. */
  readonly ends: readonly number[];
  /** v of the middles of gaps between panels that lie along the strength axis. */
  readonly edges: readonly number[];
}

/** How lengths are shared out: alike, or whole sheets first and the rest last. */
export interface Split {
  readonly bays: 'even' | 'full';
  readonly rows: 'even' | 'full';
}

/** Every way to share out, the even ones first. */
export const SPLITS: readonly Split[] = [
  { bays: 'even', rows: 'even' },
  { bays: 'full', rows: 'even' },
  { bays: 'even', rows: 'full' },
  { bays: 'full', rows: 'full' },
];

/** The bays that one sheet reaches over, its ends on centrelines. */
export function baysPerSheet(spacing: number, sheet: SheetSize, gap: Length): number {
  return Math.floor((sheet.length + gap) / spacing);
}

/**
 * The hole in as few panels as a sheet allows, `gap` ticks round each; strength axis along u, across the joists. Ends butt
 * on centrelines; no panel has fewer than two bays where the hole has two. `least` is the least width of the last of full
 * rows. Throws a RangeError when one bay is longer than a sheet.
 */
export function dividePatch(cut: PatchCut, sheet: SheetSize, gap: Length, least: Length, split: Split): PanelGrid {
  const bounds = bayBounds(cut, baysPerSheet((cut.u1 - cut.u0) / cut.bays, sheet, gap), split.bays);
  const heights = rowHeights(cut.v1 - cut.v0, sheet.width, gap, least, split.rows);
  const panels: Panel[] = [];
  const edges: number[] = [];
  let v0 = cut.v0 + gap;
  heights.forEach((height, row) => {
    for (let i = 0; i + 1 < bounds.length; i++) {
      const joists = cut.joists.slice(bounds[i] ?? 0, (bounds[i + 1] ?? 0) + 1);
      const [from = cut.u0, to = cut.u1] = [joists[0], joists.at(-1)];
      // Half the gap lies on each side of a centreline on which two new panels butt.
      const u0 = from + (i === 0 ? gap : Math.ceil(gap / 2));
      const u1 = to - (i + 2 === bounds.length ? gap : Math.floor(gap / 2));
      panels.push({ u0, v0, u1, v1: v0 + height, joists });
    }
    v0 += height + gap;
    if (row + 1 < heights.length) edges.push(v0 - Math.ceil(gap / 2));
  });
  const ends = bounds.slice(1, -1).map((index) => cut.joists[index] ?? cut.u1);
  return { panels, ends, edges };
}

/** Indices of the joists on which panels end. */
function bayBounds(cut: PatchCut, most: number, split: Split['bays']): readonly number[] {
  if (most < 1) throw new RangeError('a bay is longer than a sheet');
  const count = roundUpRatio(BigInt(cut.bays), BigInt(most));
  const bounds = Array.from({ length: count + 1 }, (_, i) =>
    split === 'even' ? Math.round((i * cut.bays) / count) : Math.min(i * most, cut.bays),
  );
  const last = bounds.at(-2);
  // A last panel of one bay takes one from its neighbour.
  if (count > 1 && last !== undefined && cut.bays - last < 2 && most > 2) bounds[count - 1] = cut.bays - 2;
  return bounds;
}

/** Heights of the rows of panels in ticks, gaps left out. */
function rowHeights(deep: number, width: number, gap: number, least: number, split: Split['rows']): readonly number[] {
  const count = Math.max(1, roundUpRatio(BigInt(deep - gap), BigInt(width + gap)));
  const room = deep - (count + 1) * gap;
  const even = Math.floor(room / count);
  const heights = Array.from({ length: count }, (_, i) => (i < room - even * count ? even + 1 : even));
  if (split === 'even' || count === 1) return heights;
  const rest = room - (count - 1) * width;
  const last = Math.min(Math.max(rest, least), even);
  const full = Array.from({ length: count - 1 }, () => width);
  // What the last row takes to be wide enough comes off the one before it.
  full[count - 2] = room - (count - 2) * width - last;
  return [...full, last];
}
