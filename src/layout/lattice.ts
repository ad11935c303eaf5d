/** Where the boards of a herringbone lie: two boards repeated along (W, W) and (L, −L), which leaves no gap at any length and width. */

import { at, boxOf, type Outline, type Point } from '../units/geometry.ts';

/** A board of the pattern: along u it covers L × W from its corner up, along v W × L. */
export interface Spot {
  readonly corner: Point;
  readonly along: 0 | 90;
}

/**
 * Every spot that may touch the ground, in laying order along the zigzags. One board along u at the anchor, its partner along v
 * at its right end; the pair covers 2LW, as much as (W, W) and (L, −L) span, so the boards fill the plane without overlap.
 */
export function spotsOver(ground: readonly Outline[], anchor: Point, length: number, width: number): readonly Spot[] {
  const all = ground.flat();
  if (all.length === 0) return [];
  const { minX, minY, maxX, maxY } = boxOf(all);
  const [au, av] = anchor;
  const reach = 2 * (length + width);
  const steps = (low: number, high: number, pitch: number): readonly number[] => {
    const first = Math.floor((low - reach) / pitch);
    return Array.from({ length: Math.ceil((high + reach) / pitch) - first + 1 }, (_, i) => first + i);
  };
  return steps(minX + minY - au - av, maxX + maxY - au - av, 2 * width).flatMap((i) =>
    steps(minX - maxY - au + av, maxX - minY - au + av, 2 * length).flatMap((j): Spot[] => {
      const [u, v] = [au + i * width + j * length, av + i * width - j * length];
      const spots: Spot[] = [
        { corner: [u, v], along: 0 },
        { corner: [u + length, v + width - length], along: 90 },
      ];
      return spots.filter((spot) => {
        const [low, high] = boxAt(spot, length, width);
        return low[0] < maxX && high[0] > minX && low[1] < maxY && high[1] > minY;
      });
    }),
  );
}

/** The least and the greatest corner of a spot. */
export function boxAt({ corner: [u, v], along }: Spot, length: number, width: number): readonly [Point, Point] {
  return along === 0
    ? [
        [u, v],
        [u + length, v + width],
      ]
    : [
        [u, v],
        [u + width, v + length],
      ];
}

/** Anchors that put a point of the zigzags, a notch, or the middle between them in the middle of the ground. */
export function anchorsFor(ground: readonly Outline[], length: number, width: number): readonly Point[] {
  const all = ground.flat();
  if (all.length === 0) return [];
  const { minX, minY, maxX, maxY } = boxOf(all);
  const [u, v] = [Math.floor((minX + maxX) / 2), Math.floor((minY + maxY) / 2)];
  const [half, wide] = [Math.floor(length / 2), Math.floor(width / 2)];
  return [
    [u - length - width, v - width],
    [u, v],
    [u - half, v - wide],
  ];
}

/** Whether a box lies inside outlines (even–odd), outside, or is met by one of their sides. */
export function boxAgainst(ground: readonly Outline[], [low, high]: readonly [Point, Point]): 'in' | 'out' | 'met' {
  const [x, y] = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
  let inside = false;
  for (const path of ground) {
    for (const [i, a] of path.entries()) {
      const b = at(path, i + 1);
      if (meets(a, b, low, high)) return 'met';
      if (a[1] > y !== b[1] > y && x < a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1])) inside = !inside;
    }
  }
  return inside ? 'in' : 'out';
}

/** True when a side passes through the inside of a box. */
function meets(a: Point, b: Point, low: Point, high: Point): boolean {
  if (Math.max(a[0], b[0]) <= low[0] || Math.min(a[0], b[0]) >= high[0]) return false;
  if (Math.max(a[1], b[1]) <= low[1] || Math.min(a[1], b[1]) >= high[1]) return false;
  const side = (x: number, y: number): number => Math.sign((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]));
  const sides = [side(low[0], low[1]), side(high[0], low[1]), side(high[0], high[1]), side(low[0], high[1])];
  return sides.some((one) => one > 0) && sides.some((one) => one < 0);
}
