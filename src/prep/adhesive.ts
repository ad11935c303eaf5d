/** Subfloor adhesive: how far a tube reaches, the bead a patch takes, and the tubes for it. */

import { type Length, roundUp, TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_MM } from '../units/length.ts';
import type { PatchCut } from './patch-cut.ts';
import type { PanelGrid } from './patch-panel.ts';

/** A litre is a cube of 100 mm. */
const TICKS_PER_DECIMETRE = TICKS_PER_MM * 100;

/**
 * Feet of bead in a tube: cubic inches ÷ (π/4 · d² · 12), the bead being a cylinder of diameter d.
 * Throws a RangeError when either is not above zero.
 */
export function feetPerTube(cubicInches: number, bead: Length): number {
  if (!(cubicInches > 0) || bead <= 0) throw new RangeError('an empty tube or bead');
  const inch = bead / TICKS_PER_INCH;
  return cubicInches / ((Math.PI / 4) * inch ** 2 * 12);
}

/**
 * Ticks of bead for a patch: one on each joist under a panel, two where panels butt (Modern Carpentry, 2016, p. 258), which is
 * along all four sides of the hole and along every gap between its panels.
 */
export function beadOf(cut: PatchCut, grid: PanelGrid): number {
  const [wide, deep] = [cut.u1 - cut.u0, cut.v1 - cut.v0];
  const butts = (2 + grid.ends.length) * deep + (2 + grid.edges.length) * wide;
  const between = (cut.joists.length - 2 - grid.ends.length) * deep;
  return 2 * butts + between;
}

/** Litres in a bead in ticks, a cylinder of diameter d: length · π/4 · d². */
export function beadLitres(bead: number, diameter: Length): number {
  const [length, across] = [bead / TICKS_PER_DECIMETRE, diameter / TICKS_PER_DECIMETRE];
  return length * (Math.PI / 4) * across ** 2;
}

/** Tubes for a bead in ticks: ⌈feet × waste ÷ feet a tube⌉. */
export function tubesFor(bead: number, perTube: number, waste: number): number {
  return roundUp(((bead / TICKS_PER_FOOT) * waste) / perTube);
}
