/** A walk closed into an outline: one wall may have been left out, and the walls may neither cross nor touch. */

import { at, boxOf, doubleArea, type Outline, type Point } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../units/length.ts';
import {
  gapOf,
  type Heading,
  headingsOf,
  headingTowards,
  lengthened,
  pathOf,
  SLACK,
  turnBetween,
  type Walk,
  wallsAlong,
} from './walk-path.ts';

type Box = ReturnType<typeof boxOf>;

/** What a walk makes: an outline (`closing`: the wall left out; `eased`: closed by less than the slack), or why it makes none. */
export type Closed =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly closing?: Length; readonly eased: boolean }
  | { readonly kind: 'open'; readonly gap: readonly [y: number, x: number] }
  | { readonly kind: 'last turn' }
  | { readonly kind: 'crossing'; readonly walls: readonly [one: number, other: number] };

/** Closes a walk. Walls are numbered from 0 in a crossing; the wall left out comes after the last one told. */
export function closeWalk(walk: Walk): Closed {
  const headings = headingsOf(walk);
  const closing = closingWall(walk, headings.walls);
  const gap = gapOf(walk.walls, headings.walls);
  if (closing === 'open') return { kind: 'open', gap };
  let walls = walk.walls;
  for (const axis of [0, 1] as const) {
    const [longest] = wallsAlong(axis, walls, headings.walls);
    const eases = gap[axis] !== 0 && !(closing && axis === closing.heading % 2);
    if (eases && longest !== undefined) walls = lengthened(walls, headings.walls, longest, gap[axis]);
  }
  const next = closing ? closing.heading : (headings.walls[0] ?? 0);
  if (headings.after !== undefined && headings.after !== next) return { kind: 'last turn' };
  const path = pathOf(walls, headings.walls);
  const corners = closing ? path : path.slice(0, -1);
  const crossing = crossingOf(corners);
  if (crossing) return { kind: 'crossing', walls: crossing };
  const eased = walls.some((wall, i) => wall !== walk.walls[i]);
  return { kind: 'outline', outline: settled(corners), eased, ...(closing && { closing: closing.length }) };
}

/** The one wall left out, undefined when none is, `open` when one wall does not close the walk. */
function closingWall(
  walk: Walk,
  headings: readonly Heading[],
): { heading: Heading; length: Length } | undefined | 'open' {
  const gap = gapOf(walk.walls, headings);
  const first = headings[0] ?? 0;
  const last = headings.at(-1) ?? 0;
  const across = first % 2 === 0 ? 1 : 0;
  const along = first % 2 === 0 ? 0 : 1;
  if (Math.abs(gap[along]) > SLACK) return 'open';
  if (Math.abs(gap[across]) <= SLACK) return undefined;
  if (last % 2 === across || Math.abs(gap[across]) < TICKS_PER_INCH) return 'open';
  const heading = headingTowards(across, gap[across]);
  return turnBetween(last, heading) ? { heading, length: ticks(Math.abs(gap[across])) } : 'open';
}

/** Two walls that cross or touch elsewhere than at the corner they share, or that double back on each other. */
function crossingOf(corners: readonly Point[]): readonly [number, number] | undefined {
  const n = corners.length;
  const boxes = corners.map((corner, i) => boxOf([corner, at(corners, i + 1)]));
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const next = j === i + 1 || (i === 0 && j === n - 1);
      const shared = j === i + 1 ? at(corners, j) : at(corners, 0);
      const touch = common(boxes[i], boxes[j]);
      if (touch && !(next && touch.every(([x, y]) => x === shared[0] && y === shared[1]))) return [i, j];
    }
  }
  return undefined;
}

/** The least and greatest points that two axis-parallel walls have in common, undefined when they have none. */
function common(a: Box | undefined, b: Box | undefined): readonly [Point, Point] | undefined {
  if (!a || !b) return undefined;
  const [minX, maxX] = [Math.max(a.minX, b.minX), Math.min(a.maxX, b.maxX)];
  const [minY, maxY] = [Math.max(a.minY, b.minY), Math.min(a.maxY, b.maxY)];
  if (minX > maxX || minY > maxY) return undefined;
  return [
    [minX, minY],
    [maxX, maxY],
  ];
}

/** The outline counter-clockwise, without corners on a straight wall, its box at (0,0), its lowest and leftmost corner first. */
export function settled(corners: readonly Point[]): Outline {
  const { minX, minY } = boxOf(corners);
  const turned = doubleArea(corners) < 0n ? [...corners].reverse() : [...corners];
  const real = turned.filter(([x, y], i) => {
    const [bx, by] = at(turned, i - 1);
    const [ax, ay] = at(turned, i + 1);
    return !((bx === x && x === ax) || (by === y && y === ay));
  });
  const moved = real.map(([x, y]): Point => [x - minX, y - minY]);
  const first = moved.reduce((least, [x, y], i) => {
    const [lx, ly] = at(moved, least);
    return y < ly || (y === ly && x < lx) ? i : least;
  }, 0);
  return [...moved.slice(first), ...moved.slice(0, first)];
}
