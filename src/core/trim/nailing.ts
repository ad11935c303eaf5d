/** Nails for trim: how many by the studs behind it, and how long they must be. Lengths in ticks. */

import { inches, type Length, millimetres, ticks } from '../length.ts';
import { roundUpRatio } from '../round-up.ts';
import type { Stretch } from './opening.ts';
import { type Studs, studsBetween } from './stud.ts';

/** A stud nearer to an end than half its own width carries the same nails as the framing at that end. */
const SAME_STUD = inches(0.75);
/** Nails are sold in steps of a quarter inch, or of 5 mm. Common practice. */
export const NAIL_STEPS = { imperial: inches(0.25), metric: millimetres(5) } as const;

/** Where a stretch is nailed: its ends, where corners and doors have framing, and every stud between; once where it is shorter than `single`. */
export function nailPlaces(
  { from, to }: Pick<Stretch, 'from' | 'to'>,
  studs: Studs,
  single: Length,
): readonly Length[] {
  if (to - from < single) return [ticks(Math.round((from + to) / 2))];
  return [from, ...studsBetween(studs, from + SAME_STUD, to - SAME_STUD), to];
}

/** Nails in all: `perPlace` at every place of every stretch. */
export function nailCount(
  stretches: readonly Pick<Stretch, 'from' | 'to'>[],
  studs: Studs,
  single: Length,
  perPlace: number,
): number {
  return stretches.reduce((sum, stretch) => sum + nailPlaces(stretch, studs, single).length * perPlace, 0);
}

/** The shortest nail in steps of `step` ticks that passes trim and wallboard and goes `grip` into the stud: length ≥ trim + wallboard + grip. */
export function nailLength(trim: Length, wallboard: Length, grip: Length, step: Length): Length {
  return ticks(roundUpRatio(BigInt(trim + wallboard + grip), BigInt(step)) * step);
}

/** How far a nail goes into the stud; below zero when it does not reach it. */
export function intoStud(nail: Length, trim: Length, wallboard: Length): Length {
  return ticks(nail - trim - wallboard);
}
