/** The trim pieces each stretch of wall takes, with their long-point lengths and cuts. Lengths in ticks. */

import { type Length, roundUp, ticks } from '../units/length.ts';
import type { StickPiece } from './sticks.ts';
import {
  type Cut,
  isOutside,
  kerfAlong,
  SQUARE,
  type Stretch,
  type Studs,
  sawSetting,
  slant,
  studsBetween,
  type TrimWall,
  type WallEnd,
  type WallOpening,
  wallName,
} from './walls.ts';

// Stretches longer than any stick are joined with scarfs on studs, the longest part first.

/** 30° off square (reported: Fine Homebuilding). Each joint uses thickness × tan 30° of stick. */
const SCARF: Cut = { cut: 'scarf', setting: 30 };

/** What a stretch adds at its ends, what a stick yields, and the shortest part worth cutting. */
interface ScarfTask {
  readonly from: Length;
  readonly to: Length;
  readonly growLeft: Length;
  readonly growRight: Length;
  readonly thickness: Length;
  readonly longest: Length;
  readonly shortest: Length;
}

/** A part of a stretch: position, long-point length, and which of its ends are joints. */
interface Part {
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly joinsLeft: boolean;
  readonly joinsRight: boolean;
}

/**
 * Parts from left to right, just one if a stick is long enough; undefined if no stud is within a stick's reach. Ticks.
 */
function scarfed(task: ScarfTask, studs: Studs): readonly Part[] | undefined {
  const { to, growRight, longest, shortest, thickness } = task;
  const joint = slant(thickness, SCARF.setting);
  const [before, behind] = [Math.floor(joint / 2), joint - Math.floor(joint / 2)];
  const parts: Part[] = [];
  let from = task.from;
  let grown: number = task.growLeft;
  while (to - from + grown + growRight > longest) {
    const reach = from + longest - grown - before;
    const on = studsBetween(studs, from, Math.min(reach + 1, to)).filter((stud) => to - stud >= shortest);
    const stud = on.at(-1);
    if (stud === undefined) return undefined;
    parts.push({
      from,
      to: stud,
      length: ticks(stud - from + grown + before),
      joinsLeft: parts.length > 0,
      joinsRight: true,
    });
    from = stud;
    grown = behind;
  }
  const length = ticks(to - from + grown + growRight);
  return [...parts, { from, to, length, joinsLeft: parts.length > 0, joinsRight: false }];
}

/** A piece in place: `from` and `to` along its wall, `left` and `right` as seen facing the wall. */
export interface TrimPiece {
  readonly id: string;
  readonly wall: string;
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly left: Cut;
  readonly right: Cut;
}

/** `inside`: miter, cope, or cope only at corners measured out of square. */
export interface TrimRules {
  readonly thickness: Length;
  /** The longest piece that a stick for sale yields. */
  readonly longest: Length;
  readonly glueUp: Length;
  readonly reach: number;
  readonly inside: 'miter' | 'cope' | 'as measured';
  readonly studs: Studs;
}

/** A corner past the saw's reach, or a stretch too long for its sticks with no stud within reach. */
export type PieceTrouble =
  | { readonly why: 'past reach'; readonly wall: TrimWall; readonly side: 'left' | 'right'; readonly setting: number }
  | { readonly why: 'no stud'; readonly wall: TrimWall; readonly length: number };

/**
 * Corners more open than this are mitered even if coping was requested, because the profile would run out along the
 * cut. Common practice.
 */
export const WIDEST_COPE = 120;
const LETTERS = 26;

/**
 * Pieces in the order of the stretches. Length = stretch + thickness × tan(setting) at each mitered outside end; a
 * coped end keeps the full wall length and gets the inside bevel; door ends are square; joints are scarfs. At a coped
 * corner the left end of a board is coped over the square right end of its neighbor.
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

/** A piece as it is cut from a stick: its kerf is that of the more slanted end, kerf ÷ cos(setting). */
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

/** A board in place. `letter` is its room's; `order` counts from 1, going right around the room from its door. */
export interface Board {
  readonly letter: string;
  readonly order: number;
  readonly label: string;
  readonly stretch: Stretch;
}

/**
 * Labels such as `B 2-5`: room B, wall 2, fifth board from the door. Stretches come room by room, going around to the
 * right.
 */
export function labelledBoards(stretches: readonly Stretch[], openings: readonly WallOpening[]): readonly Board[] {
  const rooms = [...new Set(stretches.map(({ wall }) => wall.room))];
  return rooms.flatMap((room, index) => {
    const letter = roomLetter(index);
    const own = stretches.filter(({ wall }) => wall.room === room);
    const first = Math.max(
      0,
      own.findIndex((stretch) => isBesideDoor(stretch, openings)),
    );
    return [...own.slice(first), ...own.slice(0, first)].map((stretch, i) => ({
      letter,
      order: i + 1,
      label: `${letter} ${stretch.wall.label}-${i + 1}`,
      stretch,
    }));
  });
}

/** How many of `boards` break, rounded up; `share` is in hundredths of a percent. */
export function brokenBoards(boards: number, share: number): number {
  return Math.min(boards, roundUp((boards * share) / 10_000));
}

function isBesideDoor({ wall, from, left }: Stretch, openings: readonly WallOpening[]): boolean {
  return left === 'door' && openings.some((one) => one.wall === wallName(wall) && one.to === from);
}

function roomLetter(index: number): string {
  const last = String.fromCodePoint(65 + (index % LETTERS));
  return index < LETTERS ? last : `${roomLetter(Math.floor(index / LETTERS) - 1)}${last}`;
}

// Floor edges at doorways: which profile bridges two floors, by their heights above the subfloor. Ticks.

/** A hard floor, carpet, or the track of a sliding door. */
export type Beyond = 'hard' | 'carpet' | 'track';
export type Profile = 't-moulding' | 'reducer' | 'end cap' | 'nosing';

/** A doorway between its jambs. `height` is that of the floor beyond, undefined if unknown. */
export interface EdgeDoorway {
  readonly name: string;
  readonly width: Length;
  readonly beyond: Beyond;
  readonly height: Length | undefined;
}

/**
 * The profile for a doorway. Hard floors within `level` of each other take a T-molding; a lower one a reducer; a higher
 * one an end cap against its edge. Carpet (tucked against it) and a sliding door's track take an end cap too. Common
 * practice.
 */
export function profileFor({ beyond, height }: EdgeDoorway, floor: Length, level: Length): Profile {
  if (beyond !== 'hard') return 'end cap';
  const step = (height ?? floor) - floor;
  if (Math.abs(step) <= level) return 't-moulding';
  return step < 0 ? 'reducer' : 'end cap';
}

/** The step up from this floor to the one beyond; negative if that one is lower. */
export function stepOf({ height }: EdgeDoorway, floor: Length): Length {
  return ticks((height ?? floor) - floor);
}

/** Height at which jambs and casings are cut so that the floor slips under. */
export function undercut(floor: Length, clearance: Length): Length {
  return ticks(floor + clearance);
}
