/** What a body can take in a day: lifts by the revised NIOSH equation, and noise by NIOSH and 29 CFR 1910.95. */

import { TICKS_PER_INCH, TICKS_PER_MM } from '../units/length.ts';
import { KILOGRAMS_PER_POUND } from './old-floor.ts';

/** Hours of continuous lifting, in the table's three classes. */
export type LiftDuration = 1 | 2 | 8;
type Grip = 'good' | 'fair' | 'poor';

/** Lifts per minute, in the table's steps; values in between round up. */
const STEPS = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/** NIOSH 94-110, table 5 (the columns from memory): hands at 30 in or above. */
const HIGH: Readonly<Record<LiftDuration, readonly number[]>> = {
  1: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
  2: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21],
  8: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13],
};

/** With lower hands the multiplier is 0 above this many lifts per minute. */
const MOST_LOW: Readonly<Record<LiftDuration, number>> = { 1: 12, 2: 10, 8: 8 };

/**
 * FM for lifts per minute, a duration class and whether the hands start below 30 in (75 cm); 0 where no weight is
 * recommended.
 */
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

/** One end of a lift: hands to ankles and hands to floor in ticks, the twist in degrees. */
interface LiftEnd {
  readonly horizontal: number;
  readonly vertical: number;
  readonly twist: number;
}

export interface Lift {
  readonly origin: LiftEnd;
  readonly destination: LiftEnd;
  readonly perMinute: number;
  readonly duration: LiftDuration;
  readonly grip: Grip;
}

/** The equation's constants in one system of units: NIOSH prints both, and they differ slightly. */
interface Constants {
  readonly unit: number;
  readonly load: number;
  readonly near: number;
  readonly far: number;
  readonly knuckle: number;
  readonly highest: number;
  readonly perUnit: number;
  readonly travel: number;
  readonly leastTravel: number;
}

const US: Constants = {
  unit: TICKS_PER_INCH,
  load: 51 * KILOGRAMS_PER_POUND,
  near: 10,
  far: 25,
  knuckle: 30,
  highest: 70,
  perUnit: 0.0075,
  travel: 1.8,
  leastTravel: 10,
};
const METRIC: Constants = {
  unit: TICKS_PER_MM * 10,
  load: 23,
  near: 25,
  far: 63,
  knuckle: 75,
  highest: 175,
  perUnit: 0.003,
  travel: 4.5,
  leastTravel: 25,
};

/**
 * Kilograms recommended at each end: RWL = LC · HM · VM · DM · AM · FM · CM (NIOSH 94-110), multipliers at full
 * precision. In inches: HM = 10/H, VM = 1 − 0.0075|V − 30|, DM = 0.82 + 1.8/D, LC 51 lb. In centimeters: 25/H, 1 −
 * 0.003|V − 75|, 0.82 + 4.5/D, LC 23 kg. AM = 1 − 0.0032 A. 0 beyond the equation's range: H over 25 in, V over 70 in,
 * a twist over 135°.
 */
export function weightLimits(lift: Lift, metric: boolean): { readonly origin: number; readonly destination: number } {
  const constants = metric ? METRIC : US;
  const travel = Math.abs(lift.origin.vertical - lift.destination.vertical) / constants.unit;
  const distance = 0.82 + constants.travel / Math.max(travel, constants.leastTravel);
  const low = lift.origin.vertical / constants.unit < constants.knuckle;
  const frequency = frequencyMultiplier(lift.perMinute, lift.duration, low);
  const at = (end: LiftEnd): number => {
    const vertical = end.vertical / constants.unit;
    const coupling = couplingMultiplier(lift.grip, vertical < constants.knuckle);
    return constants.load * Math.min(distance, 1) * frequency * coupling * placeMultiplier(end, constants);
  };
  return { origin: at(lift.origin), destination: at(lift.destination) };
}

/** HM · VM · AM of one end. */
function placeMultiplier(end: LiftEnd, { unit, near, far, knuckle, highest, perUnit }: Constants): number {
  const [horizontal, vertical] = [Math.max(end.horizontal / unit, near), end.vertical / unit];
  if (horizontal > far || vertical > highest || end.twist > 135) return 0;
  return (near / horizontal) * (1 - perUnit * Math.abs(vertical - knuckle)) * (1 - 0.0032 * end.twist);
}

/** Lifting index: weight ÷ limit, both in kilograms; infinite where no weight is recommended. */
export function liftingIndex(kilograms: number, limit: number): number {
  return limit === 0 ? Number.POSITIVE_INFINITY : kilograms / limit;
}

export interface Noise {
  readonly hours: number;
  readonly level: number;
}

/** Quieter levels aren't counted (29 CFR 1910.95(d)(2)(i): 80 to 130 dB). */
export const LEAST_COUNTED = 80;
/** The loudest steady level in Table G-16. */
export const LOUDEST_ALLOWED = 115;

/**
 * Recommended maximum hours at a level in dBA: T = 8 ÷ 2^((L − 85) ÷ 3) (NIOSH 98-126, table 1-1 and its formula, from
 * memory).
 */
export function recommendedHours(level: number): number {
  return 8 / 2 ** ((level - 85) / 3);
}

/** Σ C ÷ T over the day by NIOSH, levels from 80 dBA up: 1 is everything that is recommended in a day. */
export function recommendedDose(noises: readonly Noise[]): number {
  return noises.reduce(
    (sum, { hours, level }) => sum + (level < LEAST_COUNTED ? 0 : hours / recommendedHours(level)),
    0,
  );
}

/** Hours allowed at a level in dBA: T = 8 ÷ 2^((L − 90) ÷ 5) (29 CFR 1910.95, Table G-16 and app. A). */
export function allowedHours(level: number): number {
  return 8 / 2 ** ((level - 90) / 5);
}

/** Σ C ÷ T over the day: 1 is a worker's whole allowance; half of it calls for a hearing program. */
export function noiseDose(noises: readonly Noise[]): number {
  return noises.reduce((sum, { hours, level }) => sum + (level < LEAST_COUNTED ? 0 : hours / allowedHours(level)), 0);
}

/**
 * The steady level over 8 h with the same dose: 16.61 log₁₀ dose + 90 dBA, the dose as a fraction (app. A uses 100 for
 * the whole).
 */
export function timeWeightedLevel(dose: number): number {
  return 16.61 * Math.log10(dose) + 90;
}
