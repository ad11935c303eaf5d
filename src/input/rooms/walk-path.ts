/** The path of a walk round the walls, from (0,0) with +y ahead, and where it ends. */

import type { Point } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../units/length.ts';

export type Turn = 'right' | 'left';

/** Walls in the order walked: `turns[i]` is made after wall i; the last one may be untold. `first` is made before any wall. */
export interface Walk {
  readonly walls: readonly Length[];
  readonly turns: readonly Turn[];
  readonly first?: Turn;
}

/** Quarter turns to the right from +y: 0 is +y, 1 is +x, 2 is -y, 3 is -x. */
export type Heading = 0 | 1 | 2 | 3;

/** Ends of a walk this near to each other are the same corner: half of the finest mark on a tape, 1/32 in. */
export const SLACK = TICKS_PER_INCH / 32;

const STEPS: readonly Point[] = [
  [0, 1],
  [1, 0],
  [0, -1],
  [-1, 0],
];

/** The heading of each wall, and at the end that after the last turn, if it is told. */
export function headingsOf({ walls, turns, first }: Walk): { walls: Heading[]; after?: Heading } {
  let heading = first ? turned(0, first) : (0 as Heading);
  const headings = walls.map((_, i) => {
    const turn = turns[i - 1];
    if (turn) heading = turned(heading, turn);
    return heading;
  });
  const last = turns[walls.length - 1];
  return last ? { walls: headings, after: turned(heading, last) } : { walls: headings };
}

function turned(heading: Heading, turn: Turn): Heading {
  return ((heading + (turn === 'right' ? 1 : 3)) % 4) as Heading;
}

/** The turn that leads from one heading to the next, undefined when they are the same or opposite. */
export function turnBetween(from: Heading, to: Heading): Turn | undefined {
  const quarters = (to - from + 4) % 4;
  return quarters === 1 ? 'right' : quarters === 3 ? 'left' : undefined;
}

/** The heading that leads along `axis` towards `way`. */
export function headingTowards(axis: 0 | 1, way: number): Heading {
  if (axis === 0) return way > 0 ? 0 : 2;
  return way > 0 ? 1 : 3;
}

/** The corners walked through, the start first and the end last. */
export function pathOf(walls: readonly Length[], headings: readonly Heading[]): Point[] {
  const path: Point[] = [[0, 0]];
  let [x, y] = [0, 0];
  walls.forEach((wall, i) => {
    const [dx, dy] = STEPS[headings[i] ?? 0] ?? [0, 0];
    x += dx * wall;
    y += dy * wall;
    path.push([x, y]);
  });
  return path;
}

/** How far the end lies from the start along y (axis 0) and x (axis 1): what is still to be walked. */
export function gapOf(walls: readonly Length[], headings: readonly Heading[]): readonly [y: number, x: number] {
  const [x, y] = pathOf(walls, headings).at(-1) ?? [0, 0];
  return [0 - y, 0 - x];
}

/** The walls with wall `index` made longer or shorter so that the walk goes `more` further along its axis. */
export function lengthened(
  walls: readonly Length[],
  headings: readonly Heading[],
  index: number,
  more: number,
): Length[] {
  const way = (headings[index] ?? 0) < 2 ? 1 : -1;
  return walls.map((wall, i) => (i === index ? ticks(wall + way * more) : wall));
}

/** The walls along `axis`, the longest first. */
export function wallsAlong(axis: 0 | 1, walls: readonly Length[], headings: readonly Heading[]): number[] {
  return walls
    .map((_, i) => i)
    .filter((i) => (headings[i] ?? 0) % 2 === axis)
    .sort((i, j) => (walls[j] ?? 0) - (walls[i] ?? 0));
}
