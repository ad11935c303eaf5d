/** What finishing trim takes: caulk, filler, primer and paint. Lengths in ticks, volumes in litres. */

import { type Length, roundUp, TICKS_PER_METRE } from '../units/length.ts';

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
