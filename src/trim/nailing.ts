/** Nails for trim: how many by the studs behind it, and how long they must be. Lengths in ticks. */

import { type Length, roundUpRatio, ticks } from '../units/length.ts';
import type { Stretch } from './opening.ts';
import { type Studs, studsBetween } from './stud.ts';

/** Lengths that decide where nails go: below `single` a stretch has one place, and within `sameStud` of an end no other. */
export interface NailRule {
  readonly single: Length;
  readonly sameStud: Length;
}

/** Where a stretch is nailed: its ends, where corners and doors have framing, and every stud between. */
export function nailPlaces(
  { from, to }: Pick<Stretch, 'from' | 'to'>,
  studs: Studs,
  { single, sameStud }: NailRule,
): readonly Length[] {
  if (to - from < single) return [ticks(Math.round((from + to) / 2))];
  return [from, ...studsBetween(studs, from + sameStud, to - sameStud), to];
}

/** Nails in all: `perPlace` at every place of every stretch. */
export function nailCount(
  stretches: readonly Pick<Stretch, 'from' | 'to'>[],
  studs: Studs,
  rule: NailRule,
  perPlace: number,
): number {
  return stretches.reduce((sum, stretch) => sum + nailPlaces(stretch, studs, rule).length * perPlace, 0);
}

/** The shortest nail in steps of `step` ticks that passes trim and wallboard and goes `grip` into the stud: length ≥ trim + wallboard + grip. */
export function nailLength(trim: Length, wallboard: Length, grip: Length, step: Length): Length {
  return ticks(roundUpRatio(BigInt(trim + wallboard + grip), BigInt(step)) * step);
}

/** How far a nail goes into the stud; below zero when it does not reach it. */
export function intoStud(nail: Length, trim: Length, wallboard: Length): Length {
  return ticks(nail - trim - wallboard);
}
