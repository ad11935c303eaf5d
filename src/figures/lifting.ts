/** Figures for lifting by two hands: the equation's constant and where it holds. */

import { KILOGRAMS_PER_POUND } from '../prep/tearout-amounts.ts';
import { inches, type Length } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE } from './cited.ts';

const MANUAL = {
  title: 'Applications Manual for the Revised NIOSH Lifting Equation, 94-110',
  publisher: 'NIOSH',
  year: 1994,
  standing: 'published',
} as const;

export const LOAD_CONSTANT: Cited<number> = {
  name: 'Load constant of the lifting equation',
  said: '51 lb (23 kg): the most, under the best conditions',
  value: 51 * KILOGRAMS_PER_POUND,
  source: MANUAL,
};

export const LIFT_LIMITS: Cited<string> = {
  name: 'Where the lifting equation does not hold',
  said: 'one hand, kneeling, seated, cramped, carrying, pushing, an unstable load, heat, cold, slippery floors',
  value: 'limitations',
  source: MANUAL,
};

export const LIFT_HEIGHTS: Cited<{ readonly from: Length; readonly to: Length }> = {
  name: 'Hands at a lift, untold',
  said: 'from 4 in over the floor, under a carton, to 30 in, a table; in metric 10 and 75 cm',
  value: { from: inches(4), to: inches(30) },
  source: COMMON_PRACTICE,
};

export const LIFT_REACH: Cited<Length> = {
  name: 'Reach of a lift, untold',
  said: '10 in or 25 cm from the ankles: the nearest that the equation counts',
  value: inches(10),
  source: MANUAL,
};

/** Lifts a minute, hours in a stretch, the grip, and no twist. */
export const LIFT_WAY: Cited<{
  readonly often: number;
  readonly hours: number;
  readonly grip: string;
  readonly twist: number;
}> = {
  name: 'Way of a lift, untold',
  said: 'once a minute for an hour, no twist, a poor grip (the strictest), set down with care, by two hands, standing',
  value: { often: 1, hours: 1, grip: 'poor', twist: 0 },
  source: CAUTIOUS_DEFAULT,
};

export const LIFTING_FIGURES: readonly Cited<unknown>[] = [
  LOAD_CONSTANT,
  LIFT_LIMITS,
  LIFT_HEIGHTS,
  LIFT_REACH,
  LIFT_WAY,
];
