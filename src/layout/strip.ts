/** Stretches of a row where the area is lower than a whole plank: the planks there are ripped. */

import type { SlicedRow } from './row-slice.ts';
import type { Slab } from './slab.ts';

/** `keeps`: the plank edge that stays (see Edge), or `none` where walls lie on both sides. */
export interface Strip {
  readonly length: number;
  readonly height: number;
  readonly keeps: 'near' | 'far' | 'none';
}

/** All ripped stretches of the rows, `width` being a whole plank's. */
export function stripsOf(slabs: readonly Slab[], rows: readonly SlicedRow[], width: number): readonly Strip[] {
  const strips: Strip[] = [];
  let first = 0;
  for (const row of rows) {
    const top = row.v + row.height;
    while ((slabs[first]?.top ?? Number.POSITIVE_INFINITY) <= row.v) first++;
    const inRow: Slab[] = [];
    for (let i = first; i < slabs.length; i++) {
      const slab = slabs[i];
      if (!slab || slab.bottom >= top) break;
      inRow.push(slab);
    }
    // Most rows lie within one slab and are whole: nothing to look for.
    if (row.height === width && inRow.length === 1) continue;
    const edges = [...new Set(inRow.flatMap((slab) => slab.spans.flatMap((span) => [span.from, span.to])))].sort(
      (a, b) => a - b,
    );
    edges.forEach((from, i) => {
      const to = edges[i + 1];
      if (to === undefined) return;
      const covering = inRow.filter((slab) => slab.spans.some((span) => span.from <= from && span.to >= to));
      if (covering.length === 0) return;
      const height = covering.reduce((sum, slab) => sum + Math.min(slab.top, top) - Math.max(slab.bottom, row.v), 0);
      if (height >= width) return;
      strips.push({ length: to - from, height, keeps: edgeKept(covering, row, slabs) });
    });
  }
  return strips;
}

function edgeKept(covering: readonly Slab[], row: SlicedRow, slabs: readonly Slab[]): Strip['keeps'] {
  const top = row.v + row.height;
  const meetsNext = top < (slabs.at(-1)?.top ?? top) && covering.some((slab) => slab.top >= top);
  const meetsPrevious = row.v > (slabs[0]?.bottom ?? row.v) && covering.some((slab) => slab.bottom <= row.v);
  if (meetsNext && !meetsPrevious) return 'near';
  if (meetsPrevious && !meetsNext) return 'far';
  // Walls on both sides leave no edge to keep; a notch in the middle keeps both, and none else shares its plank for certain.
  return 'none';
}
