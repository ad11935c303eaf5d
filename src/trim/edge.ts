/** Floor edges at doorways: which profile bridges two floors, by their heights above the subfloor. Lengths in ticks. */

import { type Length, ticks } from '../units/length.ts';

/** What a doorway meets: a hard floor, carpet, or the track of a sliding door. */
export type Beyond = 'hard' | 'carpet' | 'track';
export type Profile = 't-moulding' | 'reducer' | 'end cap' | 'nosing';

/** A doorway between its jambs. `height` of the floor beyond; undefined where it was not told. */
export interface EdgeDoorway {
  readonly name: string;
  readonly width: Length;
  readonly beyond: Beyond;
  readonly height: Length | undefined;
}

/**
 * The profile for a doorway. Hard floors within `level` of each other take a T-moulding; a lower one a reducer; a higher
 * one an end cap set against its edge; so do carpet, tucked against it, and a sliding door's track. Common practice.
 */
export function profileFor({ beyond, height }: EdgeDoorway, floor: Length, level: Length): Profile {
  if (beyond !== 'hard') return 'end cap';
  const step = (height ?? floor) - floor;
  if (Math.abs(step) <= level) return 't-moulding';
  return step < 0 ? 'reducer' : 'end cap';
}

/** The step from this floor up to the one beyond; below zero where that lies lower. */
export function stepOf({ height }: EdgeDoorway, floor: Length): Length {
  return ticks((height ?? floor) - floor);
}

/** Height at which jambs and casings are cut so that the floor slips under: floor + clearance. */
export function undercut(floor: Length, clearance: Length): Length {
  return ticks(floor + clearance);
}
