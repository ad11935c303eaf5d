/** Polygons for the check of slanted floors: turning, gaps at walls, areas and distances, in plain floating point. */

import type { MultiPolygon, Pair, Polygon, Ring } from 'polygon-clipping';
import clipper from 'polygon-clipping';
import type { PieceData, PointData, RegionData, RowData } from './floor-checker-data.ts';

/** A room point seen from a frame at any angle. */
export function inFrame([x, y]: PointData, { origin, angle }: RegionData['frame']): Pair {
  const turn = (-angle * Math.PI) / 180;
  const [dx, dy] = [x - origin[0], y - origin[1]];
  return [dx * Math.cos(turn) - dy * Math.sin(turn), dx * Math.sin(turn) + dy * Math.cos(turn)];
}

/** The region's outlines in its frame, and a band of `gap` along every wall; where a corner juts into the room the bands' outer lines meet, at most at 60°, else are cut off square at the gap. */
export function bandedOf(region: RegionData, gap: number): { loops: Ring[]; bands: Ring[][] } {
  const loops = [region.outline, ...region.holes].map((loop) => loop.map((corner) => inFrame(corner, region.frame)));
  const bands =
    gap === 0 ? [] : loops.flatMap((loop) => loop.flatMap((_, i) => [bandAt(loop, i, gap), ...capAt(loop, i, gap)]));
  return { loops, bands };
}

/** The region in its frame less the bands along its walls. */
export function groundOf(region: RegionData, gap: number): MultiPolygon {
  const { loops, bands } = bandedOf(region, gap);
  const whole: Polygon = inTicks(loops);
  return bands.length === 0 ? clipper.union(whole) : clipper.difference(whole, ...bands.map(inTicks));
}

function corner(loop: readonly Pair[], i: number): Pair {
  return loop[(i + loop.length) % loop.length] ?? [0, 0];
}

/** The unit vector that points into the ground, to the left of a wall. */
function inward(loop: readonly Pair[], i: number): Pair {
  const [ax, ay] = corner(loop, i);
  const [bx, by] = corner(loop, i + 1);
  const length = Math.hypot(bx - ax, by - ay);
  return [-(by - ay) / length, (bx - ax) / length];
}

function bandAt(loop: readonly Pair[], i: number, gap: number): Polygon {
  const [a, b, [nx, ny]] = [corner(loop, i), corner(loop, i + 1), inward(loop, i)];
  return [
    [
      [a[0] - nx * gap, a[1] - ny * gap],
      [b[0] - nx * gap, b[1] - ny * gap],
      [b[0] + nx * gap, b[1] + ny * gap],
      [a[0] + nx * gap, a[1] + ny * gap],
    ],
  ];
}

function capAt(loop: readonly Pair[], i: number, gap: number): Polygon[] {
  const [[x, y], before, after] = [corner(loop, i), inward(loop, i - 1), inward(loop, i)];
  const cross = before[0] * after[1] - before[1] * after[0];
  if (cross >= -1e-6) return [];
  const [sx, sy] = [before[0] + after[0], before[1] + after[1]];
  const along = before[0] * after[0] + before[1] * after[1];
  const at = (vx: number, vy: number): Pair => [x + vx * gap, y + vy * gap];
  const [from, to] = [at(...before), at(...after)];
  // 1 + cos of the turn; the miter is √(2 / that) gaps long.
  if (2 / (1 + along) <= 4) return [[[[x, y], from, at(sx / (1 + along), sy / (1 + along)), to]]];
  const long = Math.hypot(sx, sy);
  const [bx, by] = [sx / long, sy / long];
  const cos = before[0] * bx + before[1] * by;
  const reach = (1 - cos) / Math.sqrt(1 - cos * cos);
  const side = (n: Pair, way: number): Pair => at(n[0] + way * n[1] * reach, n[1] - way * n[0] * reach);
  return [[[[x, y], from, side(before, 1), side(after, -1), to]]];
}

export function areaOf(polygons: MultiPolygon): number {
  return polygons
    .flatMap((rings) => rings.map((ring, i) => Math.abs(ringArea(ring)) * (i === 0 ? 1 : -1)))
    .reduce((sum, area) => sum + area, 0);
}

function ringArea(ring: Ring): number {
  return ring.reduce((sum, [ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
    return sum + (ax * by - bx * ay) / 2;
  }, 0);
}

/** The length of all sides: what rounding corners to a tick can change an area by, a tick. */
export function girth(polygons: MultiPolygon): number {
  return polygons
    .flat(1)
    .reduce(
      (sum, ring) => sum + sides(ring).reduce((long, [a, b]) => long + Math.hypot(b[0] - a[0], b[1] - a[1]), 0),
      0,
    );
}

export function sides(ring: Ring): [Pair, Pair][] {
  return ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a]);
}

/** The least distance between two shapes; 0 where they meet. */
export function distance(one: readonly Ring[], other: readonly Ring[]): number {
  const a = one.flatMap(sides);
  const b = other.flatMap(sides);
  let least = Number.POSITIVE_INFINITY;
  for (const s of a) {
    for (const t of b) {
      if (crosses(s, t)) return 0;
      least = Math.min(least, toSide(s[0], t), toSide(s[1], t), toSide(t[0], s), toSide(t[1], s));
    }
  }
  return holds(one, b[0]?.[0]) || holds(other, a[0]?.[0]) ? 0 : least;
}

function toSide([px, py]: Pair, [[ax, ay], [bx, by]]: [Pair, Pair]): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square));
  return Math.hypot(px - ax - share * dx, py - ay - share * dy);
}

function crosses([a, b]: [Pair, Pair], [c, d]: [Pair, Pair]): boolean {
  const side = (p: Pair, q: Pair, r: Pair): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function holds(rings: readonly Ring[], point: Pair | undefined): boolean {
  if (!point) return false;
  const [x, y] = point;
  const crossings = rings
    .flatMap(sides)
    .filter(([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay));
  return crossings.length % 2 === 1;
}

/** What a piece covers, in its frame. */
export function coverOf(row: RowData, { u, length, shape }: PieceData): Ring[] {
  const box: Ring = [
    [u, row.v],
    [u + length, row.v],
    [u + length, row.v + row.height],
    [u, row.v + row.height],
  ];
  return shape ? shape.map((ring) => ring.map(([x, y]): [number, number] => [x, y])) : [box];
}

/** What lies inside an odd number of rings. */
export function inside(rings: readonly Ring[]): MultiPolygon {
  const [first = [], ...rest] = rings;
  return clipper.xor([first], ...rest.map((ring) => [ring]));
}

/** Corners on whole ticks: the clipper loses its way among lines that differ by less than it can tell. */
function inTicks(polygon: Polygon): Polygon {
  return polygon.map((ring) => ring.map(([x, y]): Pair => [Math.round(x), Math.round(y)]));
}
