/** Choosing the row lines: a whole first row unless that leaves a sliver, otherwise the widest possible narrowest strip. */

import { longWalls, stripBeside, type WallLevel } from './slab.ts';

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
