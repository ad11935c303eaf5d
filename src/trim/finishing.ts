/** Nails, caulk, filler and paint for trim. Lengths in ticks, volumes in liters. */

import { type Length, roundUp, roundUpRatio, TICKS_PER_METRE, ticks } from '../units/length.ts';
import { type Stretch, type Studs, studsBetween } from './walls.ts';

/** A stretch shorter than `single` gets one nail place; no stud within `sameStud` of an end gets another. */
interface NailRule {
  readonly single: Length;
  readonly sameStud: Length;
}

/** Nail places of a stretch: its ends, where corners and doors have framing, and every stud between. */
function nailPlaces(
  { from, to }: Pick<Stretch, 'from' | 'to'>,
  studs: Studs,
  { single, sameStud }: NailRule,
): readonly Length[] {
  if (to - from < single) return [ticks(Math.round((from + to) / 2))];
  return [from, ...studsBetween(studs, from + sameStud, to - sameStud), to];
}

/** `perPlace` nails at every place of every stretch. */
export function nailCount(
  stretches: readonly Pick<Stretch, 'from' | 'to'>[],
  studs: Studs,
  rule: NailRule,
  perPlace: number,
): number {
  return stretches.reduce((sum, stretch) => sum + nailPlaces(stretch, studs, rule).length * perPlace, 0);
}

/** The shortest nail, in steps of `step` ticks, that passes trim and wallboard and goes `grip` into the stud. */
export function nailLength(trim: Length, wallboard: Length, grip: Length, step: Length): Length {
  return ticks(roundUpRatio(BigInt(trim + wallboard + grip), BigInt(step)) * step);
}

/** How far a nail goes into the stud; negative if it doesn't reach it. */
export function intoStud(nail: Length, trim: Length, wallboard: Length): Length {
  return ticks(nail - trim - wallboard);
}

const LITRES_PER_CUBIC_METRE = 1000;

/** Length in ticks of a square bead from one tube: volume ÷ bead². Throws a RangeError unless the bead is positive. */
export function beadLength(tubeLitres: number, bead: Length): number {
  if (bead <= 0) throw new RangeError('a bead of no width');
  const side = bead / TICKS_PER_METRE;
  return (tubeLitres / LITRES_PER_CUBIC_METRE / side ** 2) * TICKS_PER_METRE;
}

export function tubesFor(length: number, tubeLitres: number, bead: Length): number {
  return roundUp(length / beadLength(tubeLitres, bead));
}

/**
 * Liters for `coats` coats: length × (height + thickness) × coats ÷ coverage (m² per liter). The top edge is painted
 * too.
 */
export function coatLitres(length: number, height: Length, thickness: Length, coats: number, coverage: number): number {
  const squareMetres = (length / TICKS_PER_METRE) * ((height + thickness) / TICKS_PER_METRE);
  return (squareMetres * coats) / coverage;
}

/** Liters of filler for `holes` round holes: holes × π/4 · width² × depth. */
export function fillerLitres(holes: number, width: Length, depth: Length): number {
  const [across, down] = [width / TICKS_PER_METRE, depth / TICKS_PER_METRE];
  return holes * (Math.PI / 4) * across ** 2 * down * LITRES_PER_CUBIC_METRE;
}
