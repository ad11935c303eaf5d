/** An exact area in square ticks, held as a bigint: 5,000 m² is 5.12 × 10¹⁴ square ticks and prices multiply it further. */

import type { Length } from './length.ts';
import { TICKS_PER_FOOT, TICKS_PER_METRE } from './length.ts';

/** Square ticks. */
export type Area = bigint;

export const SQUARE_TICKS_PER_SQUARE_FOOT: Area = BigInt(TICKS_PER_FOOT) ** 2n;
export const SQUARE_TICKS_PER_SQUARE_METRE: Area = BigInt(TICKS_PER_METRE) ** 2n;

/** Width × length, exactly. */
export function areaOf(width: Length, length: Length): Area {
  return BigInt(width) * BigInt(length);
}
