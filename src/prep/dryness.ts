/** Dry enough, wait or stop: moisture readings against a limit, and how many readings an area needs. */

import { type Area, roundUpRatio, SQUARE_TICKS_PER_SQUARE_FOOT } from '../units/length.ts';

export type Verdict = 'accept' | 'wait' | 'stop';

export type MoistureFlaw = 'far-over' | 'over-after-leak' | 'over' | 'apart' | 'too-few';

/**
 * Readings, limit and `stop` are in the method's own unit, `flooring` in percentage points of moisture, `leak` in hours
 * since the leak.
 */
interface MoistureCheck {
  readonly readings: readonly number[];
  readonly limit: number;
  readonly stop: number;
  readonly required: number;
  readonly flooring?: { readonly moisture: number; readonly most: number };
  readonly leak?: { readonly hours: number; readonly dryWithin: number };
}

/**
 * The verdict and all its reasons. Stop: at or past `stop`, or still over the limit after a leak's drying time. Wait:
 * over the limit, too far from the flooring, or too few readings. Otherwise accept; a reading at its limit passes.
 */
export function moistureVerdict(check: MoistureCheck): { verdict: Verdict; flaws: readonly MoistureFlaw[] } {
  const { readings, limit, stop, required, flooring, leak } = check;
  const over = readings.some((reading) => reading > limit);
  const flaws: MoistureFlaw[] = [];
  if (over && readings.some((reading) => reading >= stop)) flaws.push('far-over');
  if (over && leak && leak.hours > leak.dryWithin) flaws.push('over-after-leak');
  if (over) flaws.push('over');
  if (flooring && readings.some((reading) => isApart(reading, flooring))) flaws.push('apart');
  if (readings.length < required) flaws.push('too-few');
  const stopped = flaws.includes('far-over') || flaws.includes('over-after-leak');
  return { verdict: stopped ? 'stop' : flaws.length > 0 ? 'wait' : 'accept', flaws };
}

/** Compares in hundredths, the precision of input, so that 8.1 and 12.1 are exactly 4 apart. */
function isApart(reading: number, { moisture, most }: { moisture: number; most: number }): boolean {
  return Math.abs(Math.round(reading * 100) - Math.round(moisture * 100)) > Math.round(most * 100);
}

/** ⌈area × count ÷ squareFeet⌉, at least 1; `area` in square ticks. */
export function readingsByArea(area: Area, count: number, squareFeet: number): number {
  return Math.max(1, roundUpRatio(area * BigInt(count), BigInt(squareFeet) * SQUARE_TICKS_PER_SQUARE_FOOT));
}

/** `first` for the first `squareFeet`, plus `more` for each further `squareFeet` or part of it. */
export function testsByArea(area: Area, first: number, more: number, squareFeet: number): number {
  const lots = Math.max(1, roundUpRatio(area, BigInt(squareFeet) * SQUARE_TICKS_PER_SQUARE_FOOT));
  return first + (lots - 1) * more;
}
