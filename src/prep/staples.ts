/** Staples that hold a pad, as a range: by its breadth, the rows along it and the staples along a row. */

import { type Area, areaOf, type Length, roundUpRatio } from '../units/length.ts';

/** Rows of staples along every breadth of pad, and how far apart the staples of a row are. */
export interface Stapling {
  readonly rows: number;
  readonly spacing: Length;
}

/** ⌈area × rows ÷ (breadth × spacing)⌉: area in square ticks, breadth of the pad and spacing in ticks. */
export function staplesIn(area: Area, breadth: Length, { rows, spacing }: Stapling): number {
  return roundUpRatio(area * BigInt(rows), areaOf(breadth, spacing));
}
