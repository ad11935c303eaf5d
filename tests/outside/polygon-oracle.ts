/** Area and inset of outlines by a general polygon clipper that the product does not use (polygon-clipping, MIT). */

import type { MultiPolygon, Pair, Polygon } from 'polygon-clipping';
import clipper from 'polygon-clipping';

type Corner = readonly [x: number, y: number];

/** An outline with its holes, in whole ticks. */
export interface RegionOutline {
  readonly outline: readonly Corner[];
  readonly holes: readonly (readonly Corner[])[];
}

/** The clipper's own shape of a region. */
export function polygonOf({ outline, holes }: RegionOutline): Polygon {
  return [outline, ...holes].map((loop) => loop.map(([x, y]): Pair => [x, y]));
}

/** The area of polygons in square ticks, outlines less their holes, exactly. Corners must be whole ticks. */
export function areaByClipper(polygons: MultiPolygon): bigint {
  let area = 0n;
  for (const loops of polygons) {
    loops.forEach((loop, i) => {
      const doubled = doubleAreaOf(loop);
      const size = (doubled < 0n ? -doubled : doubled) / 2n;
      area += i === 0 ? size : -size;
    });
  }
  return area;
}

/**
 * The region kept `gap` from every wall: the region less every wall grown by a square of half side `gap`. Walls must run
 * along x or y (a RangeError otherwise), so that the corners stay whole ticks.
 */
export function insetByClipper(region: RegionOutline, gap: number): MultiPolygon {
  const grown = [region.outline, ...region.holes].flatMap((loop) =>
    loop.map((corner, i) => grow(corner, loop[(i + 1) % loop.length] ?? corner, gap)),
  );
  return gap === 0 ? clipper.union(polygonOf(region)) : clipper.difference(polygonOf(region), ...grown);
}

/** The area that is in one and not in the other: 0 for equal regions, however their corners are listed. */
export function differingArea(a: MultiPolygon, b: MultiPolygon): bigint {
  return areaByClipper(clipper.xor(a, b));
}

function grow([ax, ay]: Corner, [bx, by]: Corner, gap: number): Polygon {
  if (ax !== bx && ay !== by) throw new RangeError('a wall runs neither along x nor along y');
  const [left, right] = [Math.min(ax, bx) - gap, Math.max(ax, bx) + gap];
  const [low, high] = [Math.min(ay, by) - gap, Math.max(ay, by) + gap];
  return [
    [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ],
  ];
}

function doubleAreaOf(loop: readonly Pair[]): bigint {
  let doubled = 0n;
  loop.forEach(([ax, ay], i) => {
    const [bx, by] = loop[(i + 1) % loop.length] ?? [ax, ay];
    doubled += BigInt(ax) * BigInt(by) - BigInt(bx) * BigInt(ay);
  });
  return doubled;
}
