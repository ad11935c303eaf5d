/** The data types of a floor: plank, rules, region, row, piece, plan, and the cartons it takes. Every length is in ticks. */

import type { Outline, Point } from '../units/geometry.ts';
import { type Cents, cents, type Length, portion, roundUpRatio } from '../units/length.ts';

/**
 * A board as bought. `click` boards lock at their ends, so a cut end has to face a wall; `none` boards go either way
 * around.
 */
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

/** `minRip` applies along every wall parallel to the rows, jogs included, that is at least `leastWall` long. */
export interface Rules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly stagger: Length;
  readonly minEnd: Length;
  readonly minRip: Length;
  readonly pattern: Pattern;
}

export interface Opening {
  readonly from: Point;
  readonly to: Point;
}

/** A room as the user gave it, walls numbered from its first corner, in region coordinates. */
export interface RoomPart {
  readonly name: string;
  readonly outline: Outline;
}

/** A fixture that planks go around: its counterclockwise box in region coordinates. */
export interface Standing {
  readonly name: string;
  readonly outline: Outline;
}

/** An area laid on its own: outline counterclockwise, holes clockwise. */
export interface Region {
  readonly name: string;
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  readonly openings: readonly Opening[];
  /** The rooms that make up the region; absent if the outline is a single room as given. */
  readonly rooms?: readonly RoomPart[];
  /** Fixtures in the region. One at a wall is a notch in the outline, any other is a hole. */
  readonly standing?: readonly Standing[];
}

/**
 * Rows run along +u and stack along +v. A room point is the frame point turned counterclockwise by `angle`° about
 * (0,0), then moved by `origin`.
 */
export interface Frame {
  readonly origin: Point;
  readonly angle: number;
}

/**
 * Which part of its plank a piece is: all of it, its right part (start), its left part (end), or any part (walls at
 * both ends).
 */
export type Part = 'whole' | 'start' | 'end' | 'any';

/** full, or ripped: `near` keeps the plank edge facing the next row, `far` the edge facing the previous row. */
type Edge = 'full' | 'near' | 'far';

/**
 * A straight slanted cut. `near` and `far` are the distances from the piece's outer end to where the cut meets the
 * edges facing the previous and the next row; `degrees` is measured from square.
 */
export interface Slant {
  readonly near: number;
  readonly far: number;
  readonly degrees: number;
}

/**
 * `length` is the outer length. `shape` (rings in the frame, even–odd) is set when walls leave less than the full
 * rectangle; a slanted end has its cut.
 */
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

/**
 * A rule that couldn't be kept. `row` counts from 0; `at` is the position along u (stagger, minEnd, pattern) or v
 * (minRip).
 */
export interface BrokenRule {
  readonly rule: 'stagger' | 'minEnd' | 'minRip' | 'pattern';
  readonly region: string;
  readonly row: number;
  readonly at: number;
}

/**
 * Lower bounds on the planks needed with rows in this direction. `flow`, if computed, is the least possible when starts
 * and ends are cut from the same planks, minimized over row lines; a plank cut around a jog counts as whole.
 */
export interface Bound {
  readonly area: number;
  readonly row: number;
  readonly flow?: number;
  readonly best: number;
  readonly proven: boolean;
}

/** A laid floor, with planks numbered from 1 across all regions. */
export interface Plan {
  readonly plank: Plank;
  readonly rules: Rules;
  readonly regions: readonly LaidRegion[];
  readonly planks: number;
  readonly reused: number;
  readonly bound: Bound;
  readonly broken: readonly BrokenRule[];
}

/** True when `plan` breaks fewer rules than `other` (looks count last), or equally many with fewer planks. */
export function isFewer(plan: Plan, other: Plan): boolean {
  const [one, two] = [score(plan), score(other)];
  const i = one.findIndex((value, k) => value !== two[k]);
  return i >= 0 && (one[i] ?? 0) < (two[i] ?? 0);
}

function score({ broken, planks }: Plan): readonly number[] {
  const looks = broken.filter(({ rule }) => rule === 'pattern').length;
  return [broken.length - looks, looks, planks];
}

// Cartons to buy for a number of planks, and what they cost.

/** Hundredths of a percent: 12.5 % is 1250. */
type BasisPoints = number;

/** Counts are in planks, except `cartons`. */
export interface Purchase {
  readonly planks: number;
  readonly mistakes: number;
  readonly spares: number;
  readonly cartons: number;
  /** Planks in the last carton beyond the planks, mistakes and spares. */
  readonly left: number;
}

/** ⌈(planks + mistakes + spares) / perCarton⌉ cartons, where mistakes = ⌈planks × share⌉. */
export function purchaseOf(planks: number, mistakes: BasisPoints, spares: number, perCarton: number): Purchase {
  const extra = roundUpRatio(BigInt(planks) * BigInt(mistakes), 10_000n);
  const need = planks + extra + spares;
  const cartons = roundUpRatio(BigInt(need), BigInt(perCarton));
  return { planks, mistakes: extra, spares, cartons, left: cartons * perCarton - need };
}

/**
 * Planks from area alone: ⌈area × (1 + Σ allowances) / plank area⌉. Allowances add up; they don't compound. Areas in
 * square ticks.
 */
export function planksByArea(area: bigint, plankArea: bigint, allowances: readonly BasisPoints[]): number {
  const share = 10_000 + allowances.reduce((sum, allowance) => sum + allowance, 0);
  return roundUpRatio(area * BigInt(share), plankArea * 10_000n);
}

/** Price before tax and the tax on it, each rounded once to a cent. */
export function costOf(cartons: number, price: Cents, tax: BasisPoints): { cents: Cents; tax: Cents } {
  const net = cents(cartons * price);
  return { cents: net, tax: portion(BigInt(net), BigInt(tax), 10_000n) };
}
