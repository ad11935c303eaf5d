/** Figures for lifting by two hands: the equation's constant and where it holds. */

import { KILOGRAMS_PER_POUND } from '../core/tearout/mass.ts';
import type { Cited } from './cited.ts';

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

export const LIFTING_FIGURES: readonly Cited<unknown>[] = [LOAD_CONSTANT, LIFT_LIMITS];
