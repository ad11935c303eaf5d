/** Walks around the walls: splitting the text into steps, closing the path into an outline, and correcting it. */

import { at, boxOf, doubleArea, type Outline, type Point } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../units/length.ts';
import { type Saying, sayLength } from '../format.ts';
import type { Flaw } from './room-flaw.ts';
import { LETTER, SIDE, TIMES } from './room-text.ts';

// The path of a walk, from (0,0) with +y ahead.

export type Turn = 'right' | 'left';

/** Walls in order; `turns[i]` comes after wall i, and the last one may be missing. `first` comes before any wall. */
export interface Walk {
  readonly walls: readonly Length[];
  readonly turns: readonly Turn[];
  readonly first?: Turn;
}

/** Quarter turns to the right from +y: 0 is +y, 1 is +x, 2 is -y, 3 is -x. */
type Heading = 0 | 1 | 2 | 3;

/** Ends this close are the same corner: half of the finest mark on a tape, 1/32 in. */
export const CLOSING_SLACK = TICKS_PER_INCH / 32;

const STEPS: readonly Point[] = [
  [0, 1],
  [1, 0],
  [0, -1],
  [-1, 0],
];

/** The heading of each wall, and finally that after the last turn, if given. */
function headingsOf({ walls, turns, first }: Walk): { walls: Heading[]; after?: Heading } {
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

/** The turn from one heading to the next; undefined if they are the same or opposite. */
function turnBetween(from: Heading, to: Heading): Turn | undefined {
  const quarters = (to - from + 4) % 4;
  return quarters === 1 ? 'right' : quarters === 3 ? 'left' : undefined;
}

/** The heading along `axis` in direction `way`. */
function headingTowards(axis: 0 | 1, way: number): Heading {
  if (axis === 0) return way > 0 ? 0 : 2;
  return way > 0 ? 1 : 3;
}

function pathOf(walls: readonly Length[], headings: readonly Heading[]): Point[] {
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

/** How far the end is from the start along y (axis 0) and x (axis 1): what is still to be walked. */
function gapOf(walls: readonly Length[], headings: readonly Heading[]): readonly [y: number, x: number] {
  const [x, y] = pathOf(walls, headings).at(-1) ?? [0, 0];
  return [0 - y, 0 - x];
}

/** The walls with wall `index` changed so that the walk goes `more` further along its axis. */
function lengthened(walls: readonly Length[], headings: readonly Heading[], index: number, more: number): Length[] {
  const way = (headings[index] ?? 0) < 2 ? 1 : -1;
  return walls.map((wall, i) => (i === index ? ticks(wall + way * more) : wall));
}

function wallsAlong(axis: 0 | 1, walls: readonly Length[], headings: readonly Heading[]): number[] {
  return walls
    .map((_, i) => i)
    .filter((i) => (headings[i] ?? 0) % 2 === axis)
    .sort((i, j) => (walls[j] ?? 0) - (walls[i] ?? 0));
}

interface Placed {
  readonly from: number;
  readonly to: number;
  readonly typed: string;
}

export type Step =
  | ({ readonly kind: 'wall' } & Placed)
  | ({ readonly kind: 'turn'; readonly turn: Turn } & Placed)
  | ({ readonly kind: 'angle' } & Placed)
  | ({ readonly kind: 'diagonal'; readonly ahead: string; readonly aside: string } & Placed)
  | ({ readonly kind: 'word' } & Placed);

/** A slanted wall by its two offsets: ahead, and to the side that the turn before it names. */
const DIAGONAL = `(?:diagonal(?:ly)?|slant(?:ed|ing)?|bevel(?:led|ed)?)(?: (?:wall|of))* *(?=\\d|\\.)`;
/** An angle with its sign or word; a bare number is a wall. */
export const ANGLE = '\\d{1,3}(?:[.,]\\d{1,2})? ?(?:[°º˚*]|deg(?:rees?)?(?![a-z]))';

const STEP = new RegExp(
  [
    `(?<diagonal>${DIAGONAL}(?<ahead>${SIDE})${TIMES}(?<aside>${SIDE}))`,
    `(?<angle>${ANGLE})`,
    `(?<wall>${SIDE}(?! ?(?:[°º˚]|deg(?:rees?)?(?![a-z]))))`,
    `(?<turn>(?:right|left|rt|lt|r|l)(?![${LETTER}]))`,
    `(?<filler>\\s+|[,.:>()&]|-(?!\\d)|(?:walk|walls?|a?round|turn|then|and|go|to|on|the|straight|ahead|forward|corner|at|by|of|angle|angled|an?)(?![${LETTER}]))`,
    `(?<word>[${LETTER}']+|\\S)`,
  ].join('|'),
  'g',
);

export function stepsOf(plain: string, from: number, to: number): Step[] {
  const steps: Step[] = [];
  for (const { index, groups, 0: typed } of plain.slice(from, to).matchAll(STEP)) {
    const placed = { from: from + index, to: from + index + typed.length, typed };
    if (groups?.wall !== undefined) steps.push({ kind: 'wall', ...placed });
    else if (groups?.angle !== undefined) steps.push({ kind: 'angle', ...placed });
    else if (groups?.diagonal !== undefined)
      steps.push({ kind: 'diagonal', ahead: groups.ahead ?? '', aside: groups.aside ?? '', ...placed });
    else if (groups?.turn !== undefined)
      steps.push({ kind: 'turn', turn: /^r/.test(typed) ? 'right' : 'left', ...placed });
    else if (groups?.word !== undefined) steps.push({ kind: 'word', ...placed });
  }
  return steps;
}

// Closing a walk: one wall may be omitted, and walls may neither cross nor touch.

type Box = ReturnType<typeof boxOf>;

/**
 * The outline of a walk (`closing`: the omitted wall; `eased`: closed by less than the slack), or why it makes none.
 */
export type Closed =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly closing?: Length; readonly eased: boolean }
  | { readonly kind: 'open'; readonly gap: readonly [y: number, x: number] }
  | { readonly kind: 'last turn' }
  | { readonly kind: 'crossing'; readonly walls: readonly [one: number, other: number] };

/** Closes a walk. A crossing numbers walls from 0; the omitted wall comes after the last given one. */
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
  return { kind: 'outline', outline: settledWalk(corners), eased, ...(closing && { closing: closing.length }) };
}

/** The one omitted wall; undefined if none is, `open` if one wall doesn't close the walk. */
function closingWall(
  walk: Walk,
  headings: readonly Heading[],
): { heading: Heading; length: Length } | undefined | 'open' {
  const gap = gapOf(walk.walls, headings);
  const first = headings[0] ?? 0;
  const last = headings.at(-1) ?? 0;
  const across = first % 2 === 0 ? 1 : 0;
  const along = first % 2 === 0 ? 0 : 1;
  if (Math.abs(gap[along]) > CLOSING_SLACK) return 'open';
  if (Math.abs(gap[across]) <= CLOSING_SLACK) return undefined;
  if (last % 2 === across || Math.abs(gap[across]) < TICKS_PER_INCH) return 'open';
  const heading = headingTowards(across, gap[across]);
  return turnBetween(last, heading) ? { heading, length: ticks(Math.abs(gap[across])) } : 'open';
}

/** Two walls that cross or touch other than at their shared corner, or that double back on each other. */
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

/** The range of points that two axis-parallel walls have in common; undefined if there are none. */
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

/**
 * The outline counterclockwise, without corners on straight walls, its box at (0,0), starting at its lowest, leftmost
 * corner.
 */
export function settledWalk(corners: readonly Point[]): Outline {
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

export const MOST_WALLS = 200;
export const FEWEST_WALLS = 3;

/** A closed walk: its outline, any omitted wall, and how far it was closed; `true` for less than a tape shows. */
export type ReadWalk =
  | { readonly ok: true; readonly outline: Outline; readonly closing?: Length; readonly eased: boolean | Length }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** How far the end is from the start in one direction, in words; undefined within `slack`. */
export function way(
  by: number | undefined,
  over: string,
  under: string,
  slack: number,
  saying: Saying,
): string | undefined {
  if (by === undefined || Math.abs(by) <= slack) return undefined;
  return `${sayLength(ticks(Math.round(Math.abs(by))), saying)} ${by > 0 ? over : under}`;
}

// Correcting a walk that makes no outline, only by its turns: no wall changes length or is made up.

/** Number of turns tried; beyond that the user has to measure again. */
const MOST_TURNS = 40;

/**
 * Walks that close, made from one that doesn't: its last turn dropped, or one turn reversed. The last turn is left out.
 */
export function mendedWalks(given: Walk, closed: Closed): Walk[] {
  const walk = { ...given, turns: given.turns.slice(0, given.walls.length - 1) };
  const closes = (mend: Walk) => closeWalk(mend).kind === 'outline';
  return (closed.kind === 'last turn' ? [walk] : turnedWalks(walk)).filter(closes);
}

function turnedWalks(walk: Walk): Walk[] {
  if (walk.turns.length > MOST_TURNS) return [];
  return walk.turns.map((turn, i) => ({
    ...walk,
    turns: walk.turns.map((kept, j) => (i === j ? (turn === 'right' ? 'left' : 'right') : kept)),
  }));
}
