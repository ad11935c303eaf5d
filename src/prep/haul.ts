/** Trips that debris takes, by volume and by weight, and the smallest container that holds it. */

import { roundUp } from '../units/length.ts';

/** What carries the debris: litres a load, and kilograms where it has a limit. */
export interface Carrier {
  readonly litres: number;
  readonly kilograms?: number;
}

/** Loads: the more of ⌈volume ÷ bed⌉ and ⌈weight ÷ payload⌉; none for nothing. */
export function tripsOf(kilograms: number, litres: number, carrier: Carrier): number {
  const byVolume = roundUp(litres / carrier.litres);
  return carrier.kilograms === undefined ? byVolume : Math.max(byVolume, roundUp(kilograms / carrier.kilograms));
}

/** The smallest of `sizes` (litres, ascending) that holds the volume; the largest where none does, then several are needed. */
export function smallestContainer(litres: number, sizes: readonly [number, ...number[]]): number {
  return sizes.find((size) => litres <= size) ?? sizes[sizes.length - 1] ?? sizes[0];
}

/** Loads that one person carries: ⌈weight ÷ limit⌉, both in kilograms. */
export function handLoads(kilograms: number, limit: number): number {
  return roundUp(kilograms / limit);
}
