/** Rooms that pictures are tried on: the plain, the awkward and the large, and a home of twelve. */

import type { Saying } from '../../src/input/format.ts';
import type { Plan, Plank, Region } from '../../src/layout/floor.ts';
import type { Angle } from '../../src/layout/frame.ts';
import type { Outline, Point } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { benchRules, laid, plank, region } from '../outside/laid.ts';

export const IMPERIAL: Saying = { units: 'imperial', decimal: '.' };
export const METRIC: Saying = { units: 'metric', decimal: ',' };

/** Corners in feet. */
export function feetOutline(...corners: readonly (readonly [number, number])[]): Outline {
  return corners.map(([x, y]): Point => [inches(x * 12), inches(y * 12)]);
}

export function box(wide: number, deep: number): Outline {
  return feetOutline([0, 0], [wide, 0], [wide, deep], [0, deep]);
}

/** A bar 14 ft wide with a stem 5 ft wide that stands 2 in off its middle line, so that a row has a jog in it. */
const T = feetOutline(
  [0, 0],
  [14, 0],
  [14, 6],
  [9 + 1 / 6, 6],
  [9 + 1 / 6, 13],
  [4 + 1 / 6, 13],
  [4 + 1 / 6, 6.25],
  [0, 6.25],
);

export const ROOMS = {
  rectangle: [region('bedroom', box(14, 12))],
  deep: [region('bedroom', box(12, 14))],
  L: [region('living', feetOutline([0, 0], [15, 0], [15, 8], [9, 8], [9, 14], [0, 14]))],
  T: [region('study', T)],
  U: [region('kitchen', feetOutline([0, 0], [16, 0], [16, 11], [11, 11], [11, 5], [6, 5], [6, 9], [0, 9]))],
  /** Two legs with 4 in between them, less than the walls are drawn thick. */
  slot: [
    region('dressing', feetOutline([0, 0], [9, 0], [9, 8], [4 + 1 / 3, 8], [4 + 1 / 3, 3], [4, 3], [4, 8], [0, 8])),
  ],
  hall: [region('hall', box(60, 3))],
  closet: [region('closet', box(2, 5))],
  cupboard: [region('cupboard', box(2, 2))],
  bay: [region('living', feetOutline([0, 0], [13, 0], [13, 13], [9, 13], [9, 15], [4, 15], [4, 13], [0, 13]))],
  island: [region('kitchen', box(16, 14), [feetOutline([5, 5], [5, 8], [10, 8], [10, 5])])],
  large: [region('hall of the club', box(40, 45))],
  home: [
    region('hall', box(14, 3.5)),
    region('living room', feetOutline([0, 0], [13, 0], [13, 13], [9, 13], [9, 15], [4, 15], [4, 13], [0, 13])),
    region('kitchen', feetOutline([0, 0], [15, 0], [15, 8], [9, 8], [9, 14], [0, 14])),
    region('dining room', box(12, 11)),
    region('bedroom', box(11, 12.5)),
    region('bedroom 2', box(10, 12)),
    region('bedroom 3', box(10, 9)),
    region('closet', box(2, 5)),
    region('closet 2', box(6, 2)),
    region('study', T),
    region('landing', feetOutline([0, 0], [9, 0], [9, 3], [3, 3], [3, 8], [0, 8])),
    region('the long passage at the back of the house', box(3, 20)),
  ],
} satisfies Readonly<Record<string, readonly Region[]>>;

/** A plan as the bench's rules have it. */
export function planOf(regions: readonly Region[], angle: Angle = 0, board: Plank = plank(6, 48)): Plan {
  return laid(regions, angle, board, benchRules(board, 'stair-step')).plan;
}
