/** What fills a low floor: the volume by mean depth, by ramp or by a grid of depths, and the bags for it. */

import { type Area, type Length, roundUp, roundUpRatio, TICKS_PER_MM } from '../units/length.ts';
import type { DepthGrid } from './flatness.ts';

/** A litre is a cube of 100 mm. */
const CUBIC_TICKS_PER_LITRE = BigInt(TICKS_PER_MM * 100) ** 3n;

/** One bag: litres it fills, kilograms it weighs. */
export interface Bag {
  readonly litres: number;
  readonly kilograms: number;
}

/** Litres over an area (square ticks) at the mean of the depths (ticks): area × mean. Nothing without depths. */
export function meanFill(area: Area, depths: readonly Length[]): number {
  if (depths.length === 0) return 0;
  const sum = depths.reduce((total, depth) => total + BigInt(depth), 0n);
  return litresOf(area * sum, BigInt(depths.length));
}

/** Square ticks of the cells of a grid that anything is filled in: those with a corner below the line. */
export function filledArea({ dx, dy, rows }: DepthGrid): Area {
  let cells = 0n;
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let i = 0; i + 1 < (rows[row]?.length ?? 0); i++) {
      const corners = [rows[row]?.[i], rows[row]?.[i + 1], rows[row + 1]?.[i], rows[row + 1]?.[i + 1]];
      if (corners.some((depth) => depth !== undefined && depth > 0)) cells += 1n;
    }
  }
  return cells * BigInt(dx) * BigInt(dy);
}

/** Ticks of mean depth that so many litres make over an area. */
export function meanDepth(litres: number, area: Area): number {
  return area === 0n ? 0 : (litres * Number(CUBIC_TICKS_PER_LITRE)) / Number(area);
}

/** Litres of a ramp feathered from `height` ticks to nothing over an area (square ticks): ½ · area · height. */
export function rampFill(area: Area, height: Length): number {
  return litresOf(area * BigInt(height), 2n);
}

/**
 * Litres up to the line over a grid: each cell dx · dy · the mean of its four corners, which is the bilinear surface's own
 * volume (the trapezoid rule both ways). What lies above the line is taken down first and fills nothing.
 */
export function gridFill({ dx, dy, rows }: DepthGrid): number {
  let corners = 0n;
  const depth = (row: number, column: number): bigint => BigInt(Math.max(0, rows[row]?.[column] ?? 0));
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let i = 0; i + 1 < (rows[row]?.length ?? 0); i++) {
      corners += depth(row, i) + depth(row, i + 1) + depth(row + 1, i) + depth(row + 1, i + 1);
    }
  }
  return litresOf(corners * BigInt(dx) * BigInt(dy), 4n);
}

/** Bags for so many litres, and the kilograms of powder that go in: litres ÷ litres a bag × kilograms a bag. */
export function bagsFor(litres: number, bag: Bag): { bags: number; kilograms: number } {
  return { bags: roundUp(litres / bag.litres), kilograms: (litres / bag.litres) * bag.kilograms };
}

/** Pours for the deepest place: ⌈deepest ÷ most at once⌉, both in ticks. */
export function poursFor(deepest: number, most: Length): number {
  return roundUpRatio(BigInt(deepest), BigInt(most));
}

function litresOf(cubic: bigint, divisor: bigint): number {
  return Number(cubic) / Number(divisor * CUBIC_TICKS_PER_LITRE);
}
