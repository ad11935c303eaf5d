/** Where planks must lie: a region seen from its laying frame and kept the gap from every wall, as columns of exact boxes. */

import type { PointData, RegionData } from './floor-checker-data.ts';

export type Interval = readonly [low: number, high: number];

/** All ground between two places along u; its spans along v do not touch one another. */
export interface Column {
  readonly low: number;
  readonly high: number;
  readonly spans: readonly Interval[];
}

/** A wall that runs along the rows, by its place along v; `floorward` when the ground lies above it (greater v). */
export interface RowWall {
  readonly v: number;
  readonly floorward: boolean;
  /** Its longest stretch without a break. */
  readonly longest: number;
}

/**
 * The ground of a region, or what is wrong with its outline. A point is ground when the whole closed square of half side `gap`
 * around it lies in the region; on the grid of all corners and corners ± gap this is the same for every point of a cell.
 */
export function groundOf(region: RegionData, gap: number): { ground: Column[] } | { faults: string[] } {
  const loops = [region.outline, ...region.holes].map((loop) => loop.map((corner) => toFrame(corner, region.frame)));
  const faults = loops.flatMap((loop, i) =>
    faultsOfLoop(loop, i === 0 ? 1 : -1).map((text) => `${region.name}: ${text}`),
  );
  if (faults.length > 0) return { faults };
  const us = cuts(
    loops.flat().map(([u]) => u),
    gap,
  );
  const vs = cuts(
    loops.flat().map(([, v]) => v),
    gap,
  );
  const turns = pairs(us).map((cellU) => pairs(vs).map((cellV) => winding(loops, cellU, cellV)));
  if (turns.flat().some((turn) => turn !== 0 && turn !== 1)) {
    return { faults: [`${region.name}: the outline crosses itself, or a hole is not inside it`] };
  }
  const [cellsU, cellsV] = [pairs(us), pairs(vs)];
  const clear = (u: Interval, v: Interval): boolean =>
    turns.every(
      (column, i) =>
        !meets(cellsU[i], [u[0] - gap, u[1] + gap]) ||
        column.every((turn, j) => turn === 1 || !meets(cellsV[j], [v[0] - gap, v[1] + gap])),
    );
  const ground = cellsU.map((u) => ({ low: u[0], high: u[1], spans: merge(cellsV.filter((v) => clear(u, v))) }));
  return { ground: ground.filter((column) => column.spans.length > 0) };
}

/** A room point seen from the frame: moved back by the origin, then turned clockwise by the angle. */
export function toFrame([x, y]: PointData, frame: RegionData['frame']): PointData {
  const [dx, dy] = [x - frame.origin[0], y - frame.origin[1]];
  if (frame.angle === 90) return [dy, -dx];
  if (frame.angle === 180) return [-dx, -dy];
  if (frame.angle === 270) return [-dy, dx];
  return [dx, dy];
}

/** The extents along u of all ground between two places along v; extents that touch are one. */
export function extents(ground: readonly Column[], v: Interval): Interval[] {
  const held = ground.filter(({ spans }) => spans.some((span) => meets(span, v)));
  return merge(held.map(({ low, high }) => [low, high]));
}

/** The least and the greatest v of the ground, or undefined when the gap leaves none. */
export function reach(ground: readonly Column[]): Interval | undefined {
  const spans = ground.flatMap((column) => column.spans);
  if (spans.length === 0) return undefined;
  return [Math.min(...spans.map(([low]) => low)), Math.max(...spans.map(([, high]) => high))];
}

/** The exact area of the ground within a box. */
export function areaWithin(ground: readonly Column[], u: Interval, v: Interval): bigint {
  let area = 0n;
  for (const { low, high, spans } of ground) {
    const wide = overlap([low, high], u);
    if (wide === 0) continue;
    for (const span of spans) area += BigInt(wide) * BigInt(overlap(span, v));
  }
  return area;
}

/** Every level at which a wall of the ground runs along the rows, once a side. */
export function rowWalls(ground: readonly Column[]): RowWall[] {
  return ([0, 1] as const).flatMap((end) => {
    const levels = [...new Set(ground.flatMap(({ spans }) => spans.map((span) => span[end])))];
    return levels.map((v): RowWall => {
      const along = ground.filter(({ spans }) => spans.some((span) => span[end] === v));
      const stretches = merge(along.map(({ low, high }) => [low, high]));
      return { v, floorward: end === 0, longest: Math.max(...stretches.map(([low, high]) => high - low)) };
    });
  });
}

function faultsOfLoop(loop: readonly PointData[], way: 1 | -1): string[] {
  const faults: string[] = [];
  let doubled = 0n;
  for (const [[ax, ay], [bx, by]] of edges(loop)) {
    doubled += BigInt(ax) * BigInt(by) - BigInt(bx) * BigInt(ay);
    if (ax === bx && ay === by) faults.push(`a corner is repeated in ${JSON.stringify(loop)}`);
    else if (ax !== bx && ay !== by) faults.push('a wall runs neither along nor across the rows');
  }
  if (doubled * BigInt(way) <= 0n)
    faults.push(way === 1 ? 'the outline is not counter-clockwise' : 'a hole is not clockwise');
  return faults;
}

function winding(loops: readonly PointData[][], u: Interval, v: Interval): number {
  let turns = 0;
  for (const loop of loops) {
    for (const [[au, av], [, bv]] of edges(loop)) {
      if (au < u[1]) continue;
      if (av <= v[0] && bv >= v[1]) turns += 1;
      if (bv <= v[0] && av >= v[1]) turns -= 1;
    }
  }
  return turns;
}

function edges(loop: readonly PointData[]): [PointData, PointData][] {
  return loop.map((corner, i) => [corner, loop[(i + 1) % loop.length] ?? corner]);
}

function cuts(places: readonly number[], gap: number): number[] {
  return [...new Set(places.flatMap((place) => [place - gap, place, place + gap]))].sort((a, b) => a - b);
}

function pairs(places: readonly number[]): Interval[] {
  return places.slice(1).map((high, i) => [places[i] ?? high, high]);
}

/** How much two intervals share. */
export function overlap(a: Interval, b: Interval): number {
  return Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
}

function meets(a: Interval | undefined, b: Interval): boolean {
  return a !== undefined && overlap(a, b) > 0;
}

function merge(intervals: readonly Interval[]): Interval[] {
  const merged: [number, number][] = [];
  for (const [low, high] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = merged.at(-1);
    if (last && low <= last[1]) last[1] = Math.max(last[1], high);
    else merged.push([low, high]);
  }
  return merged;
}
