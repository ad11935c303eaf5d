/** Frequency and coupling multipliers of the NIOSH lifting equation, as tables. */

/** Hours of lifting in a stretch, in the table's three classes. */
export type LiftDuration = 1 | 2 | 8;
export type Grip = 'good' | 'fair' | 'poor';

/** Lifts a minute, in the table's steps; between two the next is taken. */
const STEPS = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/** NIOSH 94-110, table 5 (the columns from memory): hands at 30 in or above. */
const HIGH: Readonly<Record<LiftDuration, readonly number[]>> = {
  1: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
  2: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21],
  8: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13],
};

/** Lower hands lose the rows from here on: lifts a minute above which the multiplier is 0. */
const MOST_LOW: Readonly<Record<LiftDuration, number>> = { 1: 12, 2: 10, 8: 8 };

/** FM for lifts a minute, a duration class and whether the hands start below 30 in (75 cm); 0 where no weight is recommended. */
export function frequencyMultiplier(perMinute: number, duration: LiftDuration, low: boolean): number {
  const row = STEPS.findIndex((step) => perMinute <= step);
  const step = STEPS[row];
  if (step === undefined || (low && step > MOST_LOW[duration])) return 0;
  return HIGH[duration][row] ?? 0;
}

/** CM for the grip and whether the hands are below 30 in (75 cm) (NIOSH 94-110, table 7). */
export function couplingMultiplier(grip: Grip, low: boolean): number {
  if (grip === 'good') return 1;
  if (grip === 'poor') return 0.9;
  return low ? 0.95 : 1;
}
