/** An area sliced into rows of plank width: in each row the runs that planks must span. */

import { type Slab, type Span, union } from './slab.ts';

/** One row: a strip of the area and its runs, each the strip's outer extent (a jog inside a row is notched out of its planks). */
export interface SlicedRow {
  readonly v: number;
  readonly height: number;
  readonly runs: readonly Span[];
}

/** Rows from bottom to top; row lines lie at `line` + k × `width`. First and last rows end at the area's own extent; a row the area skips is left out. */
export function sliceRows(slabs: readonly Slab[], line: number, width: number): readonly SlicedRow[] {
  const first = slabs[0];
  const last = slabs.at(-1);
  if (!first || !last) return [];
  const rows: SlicedRow[] = [];
  let slabIndex = 0;
  let v = first.bottom;
  while (v < last.top) {
    const offset = (((v - line) % width) + width) % width;
    const top = Math.min(v + width - offset, last.top);
    while ((slabs[slabIndex]?.top ?? Number.POSITIVE_INFINITY) <= v) slabIndex++;
    const spans: Span[] = [];
    for (let i = slabIndex; i < slabs.length; i++) {
      const slab = slabs[i];
      if (!slab || slab.bottom >= top) break;
      spans.push(...slab.spans);
    }
    if (spans.length > 0) rows.push({ v, height: top - v, runs: union(spans) });
    v = top;
  }
  return rows;
}
