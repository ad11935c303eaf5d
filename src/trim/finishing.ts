/** Nails for trim: how many by the studs behind it, and how long they must be. Lengths in ticks. */

import { type Length, roundUp, roundUpRatio, TICKS_PER_METRE, ticks } from '../units/length.ts';
import { type Stretch, type Studs, studsBetween } from './walls.ts';

/** Lengths that decide where nails go: below `single` a stretch has one place, and within `sameStud` of an end no other. */
interface NailRule {
  readonly single: Length;
  readonly sameStud: Length;
}

/** Where a stretch is nailed: its ends, where corners and doors have framing, and every stud between. */
function nailPlaces(
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

// What finishing trim takes: caulk, filler, primer and paint. Lengths in ticks, volumes in litres.

const LITRES_PER_CUBIC_METRE = 1000;

/** Length in ticks that a tube gives as a bead with a square section: volume ÷ bead². Throws a RangeError for no bead. */
export function beadLength(tubeLitres: number, bead: Length): number {
  if (bead <= 0) throw new RangeError('a bead of no width');
  const side = bead / TICKS_PER_METRE;
  return (tubeLitres / LITRES_PER_CUBIC_METRE / side ** 2) * TICKS_PER_METRE;
}

/** Whole tubes for a bead along `length` ticks: ⌈length ÷ length a tube⌉. */
export function tubesFor(length: number, tubeLitres: number, bead: Length): number {
  return roundUp(length / beadLength(tubeLitres, bead));
}

/** Litres for `coats` coats on trim of this length: length × (height + thickness) × coats ÷ coverage (m² a litre). The top edge is painted too. */
export function coatLitres(length: number, height: Length, thickness: Length, coats: number, coverage: number): number {
  const squareMetres = (length / TICKS_PER_METRE) * ((height + thickness) / TICKS_PER_METRE);
  return (squareMetres * coats) / coverage;
}

/** Litres of filler for `holes` round holes: holes × π/4 · width² × depth. */
export function fillerLitres(holes: number, width: Length, depth: Length): number {
  const [across, down] = [width / TICKS_PER_METRE, depth / TICKS_PER_METRE];
  return holes * (Math.PI / 4) * across ** 2 * down * LITRES_PER_CUBIC_METRE;
}
