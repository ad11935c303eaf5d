/** Walls parallel to the rows, jogs and holes included: the levels beside which a strip can get too narrow. */

import { type Slab, type Span, subtract, union } from './slab.ts';

/** `floor`: the area lies above the wall; `ceiling`: below it. `spans` says where along u. */
export interface WallLevel {
  readonly v: number;
  readonly side: 'floor' | 'ceiling';
  readonly spans: readonly Span[];
}

/** Every wall parallel to the rows, from bottom to top. */
export function wallLevels(slabs: readonly Slab[]): readonly WallLevel[] {
  const levels: WallLevel[] = [];
  const boundaries = [...new Set(slabs.flatMap((slab) => [slab.bottom, slab.top]))].sort((a, b) => a - b);
  for (const v of boundaries) {
    const above = union(slabs.filter((slab) => slab.bottom === v).flatMap((slab) => slab.spans));
    const below = union(slabs.filter((slab) => slab.top === v).flatMap((slab) => slab.spans));
    const floor = subtract(above, below);
    const ceiling = subtract(below, above);
    if (floor.length > 0) levels.push({ v, side: 'floor', spans: floor });
    if (ceiling.length > 0) levels.push({ v, side: 'ceiling', spans: ceiling });
  }
  return levels;
}

/**
 * The shortest wall (ticks) that a strip lies along: a plank's width or the shortest end piece, whichever is more. Beside a
 * shorter one, such as a post or the jamb of a doorway, a plank has a notch cut out and its narrow part is held by the rest
 * (common practice: planks are scribed and notched round jambs and posts).
 */
export function leastWall(plank: { readonly width: number }, rules: { readonly minEnd: number }): number {
  return Math.max(plank.width, rules.minEnd);
}

/** The walls of `least` and more, each level with those of its stretches alone. */
export function longWalls(levels: readonly WallLevel[], least: number): readonly WallLevel[] {
  return levels.flatMap((level) => {
    const spans = level.spans.filter(({ from, to }) => to - from >= least);
    return spans.length > 0 ? [{ ...level, spans }] : [];
  });
}

/** Height of the strip beside a wall when row lines lie at `line` + k × `width`: a wall on a row line has a whole row beside it. */
export function stripBeside(level: Pick<WallLevel, 'v' | 'side'>, line: number, width: number): number {
  const distance = level.side === 'floor' ? line - level.v : level.v - line;
  const rest = ((distance % width) + width) % width;
  return rest === 0 ? width : rest;
}
