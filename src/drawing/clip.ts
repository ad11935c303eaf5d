/** Shapes cut off at the edges of a box: nothing on a sheet reaches beyond what the sheet shows. */

import type { Place } from '../reply/drawing.ts';
import type { Box } from './text.ts';

type Line = readonly [Place, Place];

/**
 * Rings cut off at a box (Sutherland and Hodgman, 1974, from memory); what falls apart stays joined along the box's edge,
 * which an even–odd fill does not show. Rings wholly outside are left out.
 */
export function clippedRings(rings: readonly (readonly Place[])[], box: Box): readonly (readonly Place[])[] {
  const sides = [
    { axis: 0, limit: box.left, above: true },
    { axis: 0, limit: box.right, above: false },
    { axis: 1, limit: box.top, above: true },
    { axis: 1, limit: box.bottom, above: false },
  ] as const;
  return rings
    .map((ring) => sides.reduce<readonly Place[]>((cut, side) => clippedAt(cut, side), ring))
    .filter(({ length }) => length > 2);
}

function clippedAt(
  ring: readonly Place[],
  { axis, limit, above }: { axis: 0 | 1; limit: number; above: boolean },
): readonly Place[] {
  const inside = (place: Place): boolean => (above ? place[axis] >= limit : place[axis] <= limit);
  return ring.flatMap((to, i) => {
    const from = ring[(i + ring.length - 1) % ring.length] ?? to;
    const kept: Place[] = [];
    if (inside(from) !== inside(to)) {
      const share = (limit - from[axis]) / (to[axis] - from[axis]);
      const other = axis === 0 ? 1 : 0;
      const crossing = from[other] + (to[other] - from[other]) * share;
      kept.push(axis === 0 ? [limit, crossing] : [crossing, limit]);
    }
    if (inside(to)) kept.push(to);
    return kept;
  });
}

/** Lines cut off at a box; those outside are left out, level and upright ones along its edge are kept. */
export function clippedLines(lines: readonly Line[], box: Box): readonly Line[] {
  return lines.flatMap(([[ax, ay], [bx, by]]): Line[] => {
    if (ax !== bx && ay !== by) return clippedSlant([ax, ay], [bx, by], box);
    const inX = (x: number): number => Math.min(Math.max(x, box.left), box.right);
    const inY = (y: number): number => Math.min(Math.max(y, box.top), box.bottom);
    const kept: Line = [
      [inX(ax), inY(ay)],
      [inX(bx), inY(by)],
    ];
    const within = ax === bx ? ax >= box.left && ax <= box.right : ay >= box.top && ay <= box.bottom;
    const length = Math.abs(kept[0][0] - kept[1][0]) + Math.abs(kept[0][1] - kept[1][1]);
    return within && length > 0 ? [kept] : [];
  });
}

/** A slanted line between the first and the last place where it is in the box (Liang and Barsky, 1984, from memory). */
function clippedSlant([ax, ay]: Place, [bx, by]: Place, box: Box): Line[] {
  let [first, last] = [0, 1];
  for (const [from, way, low, high] of [
    [ax, bx - ax, box.left, box.right],
    [ay, by - ay, box.top, box.bottom],
  ] as const) {
    const [one, other] = [(low - from) / way, (high - from) / way];
    first = Math.max(first, Math.min(one, other));
    last = Math.min(last, Math.max(one, other));
  }
  const point = (share: number): Place => [ax + (bx - ax) * share, ay + (by - ay) * share];
  return first < last ? [[point(first), point(last)]] : [];
}

/** The sides of rings as lines. */
export function sidesOf(rings: readonly (readonly Place[])[]): readonly Line[] {
  return rings.flatMap((ring) => ring.map((from, i): Line => [from, ring[(i + 1) % ring.length] ?? from]));
}
