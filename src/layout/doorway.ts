/** Doorways between rooms, as told and as they come to lie. Lengths in ticks. */

import type { Outline } from '../units/geometry.ts';
import { inches, type Length } from '../units/length.ts';
import type { JambPlace } from './mouth.ts';

/** A stud wall: 3 1/2 in of stud and 1/2 in of board on both sides (common practice). */
export const USUAL_WALL = inches(4.5);

/** One side of a doorway: its room, and as far as told the wall (from 1) and where in it. */
export interface DoorwaySide {
  readonly room: string;
  readonly wall?: number;
  readonly at?: JambPlace;
}

/** `depth` is the thickness of the wall. The floor runs on through it, or stops in its middle at a transition. */
export interface Doorway {
  readonly sides: readonly [DoorwaySide, DoorwaySide];
  readonly width: Length;
  readonly depth: Length;
  readonly runsOn: boolean;
}

/** A doorway in its place: where floor runs on, the box between the jambs and the region it lies in. */
export interface HomeDoorway {
  readonly rooms: readonly [string, string];
  readonly width: Length;
  readonly depth: Length;
  readonly runsOn: boolean;
  readonly region?: string;
  readonly outline?: Outline;
}

/** What was taken because it was not told. `wall` counts from 1; `from` is where the room's sides as told point then. */
export type Taken =
  | { readonly kind: 'wall'; readonly doorway: number; readonly room: string; readonly wall: number }
  | { readonly kind: 'middle'; readonly doorway: number; readonly room: string; readonly wall: number }
  | { readonly kind: 'turned'; readonly room: string; readonly angle: 90 | 180 | 270 }
  | { readonly kind: 'unplaced'; readonly doorway: number; readonly room: string };

/** Why a doorway cannot be where it was told. */
export interface DoorwayTrouble {
  readonly about: 'doorway';
  readonly doorway: number;
  readonly why: 'no room' | 'one room' | 'no wall' | 'untold' | 'slanted' | 'too wide' | 'turned' | 'apart' | 'overlap';
  /** The side it is about, else the first. */
  readonly side: 0 | 1;
  /** apart: ticks by which the two sides miss each other. overlap: the rooms that would lie on one another. */
  readonly by?: number;
  readonly rooms?: readonly [string, string];
}
