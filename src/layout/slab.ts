/** A rectilinear area cut at every wall level: slabs in which the cross-section does not change. */

import { at, type Outline } from '../units/geometry.ts';

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** For bottom ≤ v ≤ top the area covers just these spans of u, in order. */
export interface Slab {
  readonly bottom: number;
  readonly top: number;
  readonly spans: readonly Span[];
}

/** Slabs from bottom to top of the area inside `outlines` (even–odd: holes are outlines too). */
export function slabsOf(outlines: readonly Outline[]): readonly Slab[] {
  const sides: { u: number; low: number; high: number }[] = [];
  const levels = new Set<number>();
  for (const outline of outlines) {
    outline.forEach(([u, v], i) => {
      const [nextU, nextV] = at(outline, i + 1);
      levels.add(v);
      if (u === nextU && v !== nextV) sides.push({ u, low: Math.min(v, nextV), high: Math.max(v, nextV) });
    });
  }
  sides.sort((a, b) => a.u - b.u);
  const sorted = [...levels].sort((a, b) => a - b);
  const slabs: Slab[] = [];
  sorted.forEach((bottom, i) => {
    const top = sorted[i + 1];
    if (top === undefined) return;
    const spans: Span[] = [];
    let from: number | undefined;
    for (const side of sides) {
      if (side.low > bottom || side.high < top) continue;
      if (from === undefined) from = side.u;
      else {
        if (side.u > from) spans.push({ from, to: side.u });
        from = undefined;
      }
    }
    if (spans.length > 0) slabs.push({ bottom, top, spans });
  });
  return slabs;
}

/** The union of spans, merged where they touch or overlap, in order. */
export function union(spans: readonly Span[]): readonly Span[] {
  const sorted = [...spans].sort((a, b) => a.from - b.from);
  const merged: Span[] = [];
  for (const span of sorted) {
    const last = merged.at(-1);
    if (last && span.from <= last.to) merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else merged.push(span);
  }
  return merged;
}

/** The parts of `spans` that `without` does not cover; both merged and in order. */
export function subtract(spans: readonly Span[], without: readonly Span[]): readonly Span[] {
  const rest: Span[] = [];
  for (const span of spans) {
    let from = span.from;
    for (const cover of without) {
      if (cover.to <= from || cover.from >= span.to) continue;
      if (cover.from > from) rest.push({ from, to: cover.from });
      from = Math.max(from, cover.to);
    }
    if (from < span.to) rest.push({ from, to: span.to });
  }
  return rest;
}

/** The area's extent in square ticks, exactly. */
export function slabArea(slabs: readonly Slab[]): bigint {
  return slabs.reduce(
    (sum, slab) =>
      sum +
      slab.spans.reduce((width, span) => width + BigInt(span.to - span.from), 0n) * BigInt(slab.top - slab.bottom),
    0n,
  );
}
