/** Seeded random rooms with slanted walls: rectangles with corners cut off at a slant, some with a bay. */

import type { Outline, Point } from '../../src/units/geometry.ts';
import { mulberry32 } from './random-rooms.ts';

const INCH = 8128;

export interface SlantedRoom {
  readonly name: string;
  readonly outline: Outline;
}

/** `count` rooms of 6 to 20 ft a side; all corners are on half inches. */
export function slantedRooms(seed: number, count: number): readonly SlantedRoom[] {
  const random = mulberry32(seed);
  const draw = (least: number, most: number): number =>
    Math.round(2 * (least + random() * (most - least))) * (INCH / 2);
  return Array.from({ length: count }, (_, i) => {
    const [x, y] = [draw(72, 240), draw(72, 240)];
    const cut = (): Point => {
      if (random() < 0.4) return [0, 0];
      const along = draw(8, 30);
      return [along, random() < 0.5 ? along : draw(8, 30)];
    };
    const [a, b, c, d] = [cut(), cut(), cut(), cut()];
    const bay = random() < 0.4 ? bayOn(x, y, c[0], d[0], draw(6, 20)) : [];
    const corners: readonly Point[] = [
      [a[0], 0],
      [x - b[0], 0],
      [x, b[1]],
      [x, y - c[1]],
      [x - c[0], y],
      ...bay,
      [d[0], y],
      [0, y - d[1]],
      [0, a[1]],
    ];
    const outline = corners.filter(([u, v], k) => {
      const [nextU, nextV] = corners[(k + 1) % corners.length] ?? [];
      return u !== nextU || v !== nextV;
    });
    return { name: `slanted ${i + 1}`, outline };
  });
}

/** A bay in the middle of the far wall, its sides as wide as they are deep. */
function bayOn(x: number, y: number, right: number, left: number, deep: number): readonly Point[] {
  const [from, to] = [left + 8 * INCH, x - right - 8 * INCH];
  if (to - from < 2 * deep + 12 * INCH) return [];
  return [
    [to, y],
    [to - deep, y + deep],
    [from + deep, y + deep],
    [from, y],
  ];
}
