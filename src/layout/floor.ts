/** The words of a floor: plank, rules, region, row, piece, plan. Shapes only; every length is in ticks. */

import type { Outline, Point } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';

/** A board as bought. `click` boards lock at their ends, so a cut end must face a wall; `none` boards go any way round. */
export interface Plank {
  readonly width: Length;
  readonly length: Length;
  readonly perCarton: number;
  readonly lock: 'click' | 'none';
}

export type Pattern =
  | { readonly name: 'stair-step'; readonly step: Length; readonly rows: number }
  | { readonly name: 'half' }
  | { readonly name: 'thirds' }
  | { readonly name: 'offcut-first' }
  | { readonly name: 'scattered' };

/** What a layout must keep. `minRip` holds along every wall parallel to the rows, jogs included, that is no shorter than `leastWall`. */
export interface Rules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly stagger: Length;
  readonly minEnd: Length;
  readonly minRip: Length;
  readonly pattern: Pattern;
}

/** A doorway in the outline. */
export interface Opening {
  readonly from: Point;
  readonly to: Point;
}

/** A room as told, its walls numbered from its first corner, placed in the coordinates of its region. */
export interface RoomPart {
  readonly name: string;
  readonly outline: Outline;
}

/** What stands in a room and planks go round: its box counter-clockwise, in the coordinates of its region. */
export interface Standing {
  readonly name: string;
  readonly outline: Outline;
}

/** One area laid by itself: outline counter-clockwise, holes clockwise. */
export interface Region {
  readonly name: string;
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  readonly openings: readonly Opening[];
  /** The rooms it is made of; absent where the outline is that of one room as told. */
  readonly rooms?: readonly RoomPart[];
  /** What stands in it; a thing at a wall is a notch of the outline, another a hole. */
  readonly standing?: readonly Standing[];
}

/** Rows run along +u and stack along +v; a room point is the frame point turned counter-clockwise by `angle`° about (0,0), then moved by `origin`. */
export interface Frame {
  readonly origin: Point;
  readonly angle: number;
}

/** Which part of its plank a piece is: the whole, its right part (start), its left part (end), or any part (both ends at walls). */
export type Part = 'whole' | 'start' | 'end' | 'any';

/** full, or ripped: `near` keeps the plank edge that faces the next row, `far` the one that faces the row before. */
type Edge = 'full' | 'near' | 'far';

/** A straight slanted cut: `near` and `far` are how far from the piece's outer end it meets the edge that faces the row before and the next; `degrees` from square. */
export interface Slant {
  readonly near: number;
  readonly far: number;
  readonly degrees: number;
}

/** `length` is the outer length. A piece that walls leave less than its rectangle has its `shape` (rings in the frame, even–odd); a slanted end its cut. */
export interface Piece {
  readonly u: number;
  readonly length: number;
  readonly plank: number;
  readonly part: Part;
  readonly edge: Edge;
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

export interface Row {
  readonly v: number;
  readonly height: number;
  readonly pieces: readonly Piece[];
}

export interface LaidRegion extends Region {
  readonly frame: Frame;
  readonly rows: readonly Row[];
}

/** A rule that could not be kept, and where: `row` counts from 0, `at` is the place along u (stagger, minEnd, pattern) or v (minRip). */
export interface BrokenRule {
  readonly rule: 'stagger' | 'minEnd' | 'minRip' | 'pattern';
  readonly region: string;
  readonly row: number;
  readonly at: number;
}

/**
 * Lower bounds on the planks this floor needs, rows in this direction. `flow`, where it was worked out, is the least that starts
 * and ends cut from one plank allow, at the least over all row lines; a plank cut round a jog counts whole there.
 */
export interface Bound {
  readonly area: number;
  readonly row: number;
  readonly flow?: number;
  readonly best: number;
  readonly proven: boolean;
}

/** A laid floor: planks numbered from 1 across all regions. */
export interface Plan {
  readonly plank: Plank;
  readonly rules: Rules;
  readonly regions: readonly LaidRegion[];
  readonly planks: number;
  readonly reused: number;
  readonly bound: Bound;
  readonly broken: readonly BrokenRule[];
}

// Which of two plans of a floor is the better.

/** True when `plan` breaks fewer rules than `other`, looks last among them, or as many with fewer planks. */
export function isFewer(plan: Plan, other: Plan): boolean {
  const [one, two] = [score(plan), score(other)];
  const i = one.findIndex((value, k) => value !== two[k]);
  return i >= 0 && (one[i] ?? 0) < (two[i] ?? 0);
}

function score({ broken, planks }: Plan): readonly number[] {
  const looks = broken.filter(({ rule }) => rule === 'pattern').length;
  return [broken.length - looks, looks, planks];
}
