/** A rectilinear area cut at every wall level into slabs of constant cross-section, and from those into rows; where the row lines go. */

import { at, type Outline } from '../units/geometry.ts';

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** For bottom ≤ v ≤ top the area covers exactly these spans of u, in order. */
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

/** The parts of `spans` not covered by `without`; both must be merged and in order. */
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

/** Area in square ticks, exact. */
export function slabArea(slabs: readonly Slab[]): bigint {
  return slabs.reduce(
    (sum, slab) =>
      sum +
      slab.spans.reduce((width, span) => width + BigInt(span.to - span.from), 0n) * BigInt(slab.top - slab.bottom),
    0n,
  );
}

// Walls parallel to the rows, including jogs and holes: where a strip can get too narrow.

/** `floor`: the area lies above the wall; `ceiling`: below it. `spans` are its stretches along u. */
export interface WallLevel {
  readonly v: number;
  readonly side: 'floor' | 'ceiling';
  readonly spans: readonly Span[];
}

export function wallLevels(slabs: readonly Slab[]): readonly WallLevel[] {
  const levels: WallLevel[] = [];
  const boundaries = [...new Set(slabs.flatMap((slab) => [slab.bottom, slab.top]))].sort((a, b) => a - b);
  for (const v of boundaries) {
    const above = union(slabs.filter((slab) => slab.bottom === v).flatMap((slab) => slab.spans));
    const below = union(slabs.filter((slab) => slab.top === v).flatMap((slab) => slab.spans));
    const floor = subtract(above, below);
    const ceiling = subtract(below, above);
    if (floor.length > 0) levels.push({ v, side: 'floor', spans: floor });
    if (ceiling.length > 0) levels.push({ v, side: 'ceiling', spans: ceiling });
  }
  return levels;
}

/**
 * The shortest wall (ticks) that a strip is counted along: a plank's width or the shortest end piece, whichever is
 * longer. At a shorter wall, such as a post or a door jamb, the plank gets a notch, and the rest of it holds the narrow
 * part (common practice: planks are scribed and notched around jambs and posts).
 */
export function leastWall(plank: { readonly width: number }, rules: { readonly minEnd: number }): number {
  return Math.max(plank.width, rules.minEnd);
}

/** The walls at least `least` long; each level keeps only those stretches. */
export function longWalls(levels: readonly WallLevel[], least: number): readonly WallLevel[] {
  return levels.flatMap((level) => {
    const spans = level.spans.filter(({ from, to }) => to - from >= least);
    return spans.length > 0 ? [{ ...level, spans }] : [];
  });
}

/**
 * Height of the strip beside a wall when row lines lie at `line` + k × `width`. A wall on a row line has a whole row
 * beside it.
 */
export function stripBeside(level: Pick<WallLevel, 'v' | 'side'>, line: number, width: number): number {
  const distance = level.side === 'floor' ? line - level.v : level.v - line;
  const rest = ((distance % width) + width) % width;
  return rest === 0 ? width : rest;
}

/** A strip of the area and its runs, each by its outer extent (a jog inside a row is notched out of its planks). */
export interface SlicedRow {
  readonly v: number;
  readonly height: number;
  readonly runs: readonly Span[];
}

/**
 * Rows from bottom to top; row lines lie at `line` + k × `width`. The first and last row end at the area's own extent;
 * a row outside the area is left out.
 */
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

/** `keeps`: the plank edge that stays (see Edge), or `none` when walls lie on both sides. */
export interface Strip {
  readonly length: number;
  readonly height: number;
  readonly keeps: 'near' | 'far' | 'none';
}

/** All ripped stretches of the rows; `width` is that of a whole plank. */
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
    // Most rows lie within one slab and are full width, so they have no strips.
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
  // Walls on both sides leave no edge to keep. A notch in the middle keeps both, so no other strip is certain to share
  // the plank.
  return 'none';
}

// Choosing the row lines: a whole first row unless that leaves a sliver, otherwise the widest possible narrowest
// strip.

/**
 * The position of one row line (rows repeat every `width`). A whole row lies against the starting wall unless some
 * strip along a wall would be narrower than `minRip`; then the narrowest strip is made as wide as possible (first and
 * last rows of a rectangle become (width + remainder) / 2: common practice). If some strip stays too narrow anyway, as
 * little length of wall as possible is beside one. Walls shorter than `least` don't count (see `leastWall`).
 */
export function chooseRowLine(levels: readonly WallLevel[], width: number, minRip: number, least: number): number {
  const walls = longWalls(levels, least);
  const start = (walls[0] ?? levels[0])?.v ?? 0;
  const narrowest = (line: number): number => Math.min(...walls.map((wall) => stripBeside(wall, line, width)));
  let best = start;
  let widest = narrowest(start);
  if (widest >= minRip) return start;
  for (const line of lineCandidates(walls, width)) {
    const strip = narrowest(line);
    if (strip > widest) {
      best = line;
      widest = strip;
    }
  }
  return widest >= minRip ? best : leastNarrow(walls, width, minRip, best);
}

/**
 * For when no line keeps every strip wide enough: the line with the least wall length beside too narrow strips, then
 * the widest narrowest strip.
 */
function leastNarrow(levels: readonly WallLevel[], width: number, minRip: number, first: number): number {
  const lengths = levels.map(({ spans }) => spans.reduce((sum, { from, to }) => sum + to - from, 0));
  const judged = (line: number): readonly [narrow: number, widest: number] => {
    const strips = levels.map((level) => stripBeside(level, line, width));
    const narrow = strips.reduce((sum, strip, i) => sum + (strip < minRip ? (lengths[i] ?? 0) : 0), 0);
    return [narrow, Math.min(...strips)];
  };
  const atLimit = levels.map(({ v, side }) => (side === 'floor' ? v + minRip : v - minRip));
  let best = first;
  let [least, widest] = judged(first);
  for (const line of [...levels.map(({ v }) => v), ...atLimit, ...lineCandidates(levels, width)]) {
    const [narrow, strip] = judged(line);
    if (narrow > least || (narrow === least && strip <= widest)) continue;
    best = line;
    least = narrow;
    widest = strip;
  }
  return best;
}

/**
 * Lines among which the widest narrowest strip is found: on each wall, and halfway between a floor and the next
 * ceiling.
 */
function lineCandidates(levels: readonly WallLevel[], width: number): readonly number[] {
  const onCircle = (v: number): number => ((v % width) + width) % width;
  const floors = [...new Set(levels.filter((l) => l.side === 'floor').map((l) => onCircle(l.v)))].sort((a, b) => a - b);
  const ceilings = [...new Set(levels.filter((l) => l.side === 'ceiling').map((l) => onCircle(l.v)))].sort(
    (a, b) => a - b,
  );
  const candidates = [...floors, ...ceilings];
  for (const floor of floors) {
    for (const ceiling of ceilings) {
      candidates.push(Math.floor((floor + ceiling) / 2), Math.floor((floor + ceiling + width) / 2));
    }
  }
  return candidates;
}

/** One line for every class that cuts the area the same way: on each wall level, and between neighboring levels. */
export function distinctLines(levels: readonly WallLevel[], width: number): readonly number[] {
  const points = [...new Set(levels.map((level) => ((level.v % width) + width) % width))].sort((a, b) => a - b);
  return points.flatMap((point, i) => {
    const next = points[i + 1] ?? (points[0] ?? 0) + width;
    return next - point > 1 ? [point, Math.floor((point + next) / 2)] : [point];
  });
}

/** Row lines that cut an area the same way, represented by the one whose narrowest strip is widest. */
interface LineClass {
  readonly line: number;
  readonly narrowest: number;
}

/**
 * Every class of row lines that keeps `minRip` along each wall at least `least` long; if none does, the one with the
 * widest narrowest strip. Between two wall levels the strips above walls grow as the line rises and those below shrink,
 * so they are widest halfway.
 */
export function lineClasses(
  levels: readonly WallLevel[],
  width: number,
  minRip: number,
  least: number,
): readonly LineClass[] {
  const walls = longWalls(levels, least);
  const circle = (v: number): number => ((v % width) + width) % width;
  const points = [...new Set(levels.map(({ v }) => circle(v)))].sort((a, b) => a - b);
  const nearest = (side: WallLevel['side'], distance: (v: number) => number): number =>
    Math.min(...walls.flatMap((level) => (level.side === side ? [circle(distance(level.v))] : [])));
  const judged = (line: number): LineClass => ({
    line,
    narrowest: Math.min(...walls.map((level) => stripBeside(level, line, width))),
  });
  const classes = points.flatMap((point, i) => {
    const next = points[i + 1] ?? (points[0] ?? 0) + width;
    if (next - point < 2) return [judged(point)];
    const floor = point - nearest('floor', (v) => point - v);
    const ceiling = next + nearest('ceiling', (v) => v - next);
    const middle = walls.length > 0 ? Math.floor((floor + ceiling) / 2) : point;
    return [judged(point), judged(Math.min(next - 1, Math.max(point + 1, middle)))];
  });
  const kept = classes.filter(({ narrowest }) => narrowest >= minRip);
  if (kept.length > 0) return kept;
  const widest = Math.max(...classes.map(({ narrowest }) => narrowest));
  return classes.filter(({ narrowest }) => narrowest === widest).slice(0, 1);
}
