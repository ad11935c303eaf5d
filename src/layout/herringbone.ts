/** The words of a herringbone floor: boards in two directions, their shapes, and what they come to. Lengths in ticks. */

import type { Outline, Point } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';
import type { Bound, Frame, Part, Plank, Region, Slant } from './floor.ts';

/** Which of two mirrored makes a board is: those that lie along u are `A`, those along v `B`. */
export type Hand = 'A' | 'B';

/**
 * One board in its frame. `at` is the corner from which the board it is cut from runs `along` degrees against the clock from u,
 * its width to the left of that; `length` and `from` tell which stretch of it is laid. `shape` where walls leave less than
 * that stretch; `course` in a border, counted from the wall.
 */
export interface HerringBoard {
  readonly plank: number;
  readonly at: Point;
  readonly along: number;
  readonly from: number;
  readonly length: number;
  readonly part: Part;
  readonly hand?: Hand;
  readonly course?: number;
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

export interface HerringRules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly minEnd: Length;
  /** Courses of boards along the walls. */
  readonly border: number;
  /** True for boards that come as A and B. */
  readonly handed: boolean;
}

export interface HerringRegion extends Region {
  readonly frame: Frame;
  readonly boards: readonly HerringBoard[];
}

/** A laid floor: boards numbered from 1 across all regions. `whole` are laid uncut. */
export interface HerringPlan {
  readonly plank: Plank;
  readonly rules: HerringRules;
  readonly regions: readonly HerringRegion[];
  readonly planks: number;
  readonly reused: number;
  readonly whole: number;
  readonly pieces: number;
  /** Boards of each hand, for boards that come as A and B. */
  readonly hands?: { readonly A: number; readonly B: number };
  readonly bound: Bound;
  /** True when board ends of one zigzag fall on board edges of the next: the length is a whole multiple of the width. */
  readonly aligned: boolean;
}

/** A border that does not fit a region, and why. */
export interface NoBorder {
  readonly region: string;
  readonly why: 'too wide' | 'meets a hole';
}
