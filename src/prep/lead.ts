/** Painted surface disturbed by removing trim, against the rule for minor work. */

import { type Area, areaOf, type Length } from '../units/length.ts';

/** Alike parts that are removed whole. */
export interface TrimPart {
  readonly length: Length;
  readonly height: Length;
  readonly count: number;
}

/** Square ticks disturbed: every removed part counts whole, length × height (US EPA RRP FAQ: a 1 in strip off a 36 in door is 36 in²). */
export function disturbedArea(parts: readonly TrimPart[]): Area {
  return parts.reduce((sum, { length, height, count }) => sum + areaOf(length, height) * BigInt(count), 0n);
}

/** Minor work is up to the limit, that itself included (US EPA RRP: six square feet or less a room). */
export function isMinor(area: Area, limit: Area): boolean {
  return area <= limit;
}
