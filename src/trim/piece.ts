/** The pieces of trim that stretches of wall take, each with its length long point to long point and both its cuts. Lengths in ticks. */

import type { Length } from '../units/length.ts';
import { type Cut, isOutside, kerfAlong, SQUARE, sawSetting, slant } from './corner.ts';
import type { Stretch } from './opening.ts';
import { SCARF, scarfed } from './scarf.ts';
import type { StickPiece } from './stick-task.ts';
import type { Studs } from './stud.ts';
import { type TrimWall, type WallEnd, wallName } from './wall.ts';

/** A piece in place: `from` to `to` along its wall, `left` and `right` as one faces the wall. */
export interface TrimPiece {
  readonly id: string;
  readonly wall: string;
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly left: Cut;
  readonly right: Cut;
}

/** How pieces are cut. `inside`: mitre, cope, or cope only where a corner was measured out of square. */
export interface TrimRules {
  readonly thickness: Length;
  /** The longest piece that a stick to buy gives. */
  readonly longest: Length;
  readonly glueUp: Length;
  readonly reach: number;
  readonly inside: 'miter' | 'cope' | 'as measured';
  readonly studs: Studs;
}

/** A corner past the saw's reach, or a stretch too long for its sticks with no stud within their reach. */
export type PieceTrouble =
  | { readonly why: 'past reach'; readonly wall: TrimWall; readonly side: 'left' | 'right'; readonly setting: number }
  | { readonly why: 'no stud'; readonly wall: TrimWall; readonly length: number };

/** Corners nearer to straight than this are mitred even where coping is asked: the profile runs out along the cut. Common practice. */
export const WIDEST_COPE = 120;
const LETTERS = 26;

/**
 * Pieces in the order of the stretches. A piece is its stretch + thickness × tan(setting) at each mitred outside end + 0 at
 * inside ends; a coped end keeps the full wall length and has the inside bevel; door ends are square; joints are scarfs.
 * At a coped corner the left end of a board is coped over the square right end of its neighbour.
 */
export function trimPieces(
  stretches: readonly Stretch[],
  rules: TrimRules,
): { pieces: readonly TrimPiece[]; troubles: readonly PieceTrouble[] } {
  const pieces: TrimPiece[] = [];
  const troubles: PieceTrouble[] = [];
  const counts = new Map<string, number>();
  for (const stretch of stretches) {
    const { wall } = stretch;
    const name = wallName(wall);
    const cuts = { left: cutAt(stretch, 'left', rules), right: cutAt(stretch, 'right', rules) };
    for (const side of ['left', 'right'] as const) {
      const { setting } = cuts[side];
      if (setting > rules.reach) troubles.push({ why: 'past reach', wall, side, setting });
    }
    if (Math.max(cuts.left.setting, cuts.right.setting) > rules.reach) continue;
    const grow = (side: 'left' | 'right'): Length =>
      cuts[side].cut === 'miter' && isOutside(wall[side].interior)
        ? slant(rules.thickness, cuts[side].setting)
        : slant(0, 0);
    const task = { ...stretch, growLeft: grow('left'), growRight: grow('right') };
    const parts = scarfed(
      { ...task, thickness: rules.thickness, longest: rules.longest, shortest: rules.glueUp },
      rules.studs,
    );
    if (!parts) {
      troubles.push({ why: 'no stud', wall, length: stretch.to - stretch.from });
      continue;
    }
    for (const { from, to, length, joinsLeft, joinsRight } of parts) {
      const count = counts.get(name) ?? 0;
      counts.set(name, count + 1);
      pieces.push({
        id: `${name}${letters(count)}`,
        wall: name,
        from,
        to,
        length,
        left: joinsLeft ? SCARF : cuts.left,
        right: joinsRight ? SCARF : cuts.right,
      });
    }
  }
  return { pieces, troubles };
}

/** A piece as sticks are cut into: the kerf is that of its more slanted end, kerf ÷ cos(setting). */
export function stickPiece({ id, length, left, right }: TrimPiece, kerf: Length): StickPiece {
  return { id, length, kerf: kerfAlong(kerf, Math.max(left.setting, right.setting)) };
}

function cutAt(stretch: Stretch, side: 'left' | 'right', { inside }: TrimRules): Cut {
  if (stretch[side] === 'door') return SQUARE;
  const end = stretch.wall[side];
  const setting = sawSetting(end.interior);
  if (setting === 0) return SQUARE;
  if (!isCoped(end, inside)) return { cut: 'miter', setting };
  return side === 'left' ? { cut: 'cope', setting } : SQUARE;
}

function isCoped({ interior, measured }: WallEnd, inside: TrimRules['inside']): boolean {
  if (interior >= WIDEST_COPE || inside === 'miter') return false;
  return inside === 'cope' || measured;
}

/** a … z, aa … */
function letters(index: number): string {
  const last = String.fromCodePoint(97 + (index % LETTERS));
  return index < LETTERS ? last : `${letters(Math.floor(index / LETTERS) - 1)}${last}`;
}
