/** A walk that makes no outline, mended in the likeliest ways: one wall an axis measured anew, walls added, or a turn the other way. */

import { boxOf } from '../core/geometry.ts';
import type { Length } from '../core/length.ts';
import { TICKS_PER_INCH, ticks } from '../core/length.ts';
import type { Closed } from './walk-outline.ts';
import { closeWalk } from './walk-outline.ts';
import type { Heading, Turn, Walk } from './walk-path.ts';
import { gapOf, headingsOf, headingTowards, lengthened, pathOf, SLACK, turnBetween, wallsAlong } from './walk-path.ts';

/** How many walls an axis, and how many turns, are tried: the mend is one of them or the asker measures again. */
const MOST_WALLS = 6;
const MOST_TURNS = 40;
const MOST_MENDS = 3;

/** Walks that close, made from one that does not, the likeliest first. The last turn is left untold. */
export function mendedWalks(told: Walk, closed: Closed): Walk[] {
  const walk = { ...told, turns: told.turns.slice(0, told.walls.length - 1) };
  const closes = (mend: Walk) => closeWalk(mend).kind === 'outline';
  const headings = headingsOf(walk).walls;
  if (closed.kind === 'last turn') return [walk].filter(closes);
  if (closed.kind === 'open') {
    const round = walk.walls.reduce((sum, wall) => sum + wall, 0);
    const far = Math.abs(closed.gap[0]) + Math.abs(closed.gap[1]) > round / 10;
    const remeasured = remeasuredWalks(walk, headings).filter(closes).slice(0, MOST_MENDS);
    const added = addedWalks(walk, headings).filter(closes);
    const turned = turnedWalks(walk).filter(closes);
    return far ? [...turned, ...added, ...remeasured] : [...remeasured, ...added, ...turned];
  }
  return [...turnedWalks(walk).filter(closes), boxWalk(walk, headings)].slice(0, MOST_MENDS);
}

/** One wall along each axis that does not close made to close it. */
function remeasuredWalks(walk: Walk, headings: readonly Heading[]): Walk[] {
  const gap = gapOf(walk.walls, headings);
  const across = (headings[0] ?? 0) % 2 === 0 ? 1 : 0;
  const leftOut = walk.walls.length % 2 === 1 && Math.abs(gap[across]) >= TICKS_PER_INCH;
  let mends: Walk[] = [walk];
  for (const axis of [0, 1] as const) {
    if (Math.abs(gap[axis]) <= SLACK || (axis === across && leftOut)) continue;
    const candidates = wallsAlong(axis, walk.walls, headings).slice(0, MOST_WALLS);
    mends = candidates.flatMap((wall) =>
      mends.map((mend) => ({ ...mend, walls: lengthened(mend.walls, headings, wall, gap[axis]) })),
    );
  }
  return mends.filter(({ walls }) => walls.every((wall) => wall >= TICKS_PER_INCH));
}

/** The one or two walls from the end back to the start added. */
function addedWalks(walk: Walk, headings: readonly Heading[]): Walk[] {
  const gap = gapOf(walk.walls, headings);
  const walls: Length[] = [...walk.walls];
  const turns: Turn[] = [...walk.turns];
  let heading = headings.at(-1) ?? 0;
  for (const axis of heading % 2 === 0 ? ([1, 0] as const) : ([0, 1] as const)) {
    if (gap[axis] === 0) continue;
    const next = headingTowards(axis, gap[axis]);
    const turn = turnBetween(heading, next);
    if (!turn) return [];
    turns.push(turn);
    walls.push(ticks(Math.abs(gap[axis])));
    heading = next;
  }
  return [{ ...walk, walls, turns }];
}

function turnedWalks(walk: Walk): Walk[] {
  if (walk.turns.length > MOST_TURNS) return [];
  return walk.turns.map((turn, i) => ({
    ...walk,
    turns: walk.turns.map((kept, j) => (i === j ? (turn === 'right' ? 'left' : 'right') : kept)),
  }));
}

/** The four walls of the least rectangle round the walk. */
function boxWalk(walk: Walk, headings: readonly Heading[]): Walk {
  const { minX, minY, maxX, maxY } = boxOf(pathOf(walk.walls, headings));
  const [deep, wide] = [ticks(maxY - minY), ticks(maxX - minX)];
  return { walls: [deep, wide, deep, wide], turns: ['right', 'right', 'right'] };
}
