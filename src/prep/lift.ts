/** The recommended weight limit of a lift, by the revised NIOSH lifting equation. */

import { TICKS_PER_INCH, TICKS_PER_MM } from '../units/length.ts';
import { couplingMultiplier, frequencyMultiplier, type Grip, type LiftDuration } from './lift-frequency.ts';
import { KILOGRAMS_PER_POUND } from './mass.ts';

/** One end of a lift: hands to ankles and hands to floor in ticks, the twist in degrees. */
export interface LiftEnd {
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

/** The equation's constants in one system of units: NIOSH prints both, and they differ a little. */
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
 * Kilograms recommended at each end: RWL = LC · HM · VM · DM · AM · FM · CM (NIOSH 94-110), multipliers at full precision;
 * HM = 10/H, VM = 1 − 0.0075|V − 30|, DM = 0.82 + 1.8/D in inches with LC 51 lb, or 25/H, 1 − 0.003|V − 75|, 0.82 + 4.5/D in
 * centimetres with LC 23 kg; AM = 1 − 0.0032 A. 0 beyond the equation's reach: H over 25 in, V over 70 in, a twist over 135°.
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
