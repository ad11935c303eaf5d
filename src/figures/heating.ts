/** Figures for plank over a heated floor. The maker of the plank has the last word, and may forbid it. */

import type { Source } from '../reply/reply.ts';
import { inches, type Length } from '../units/length.ts';
import type { Cited } from './cited.ts';

const MAKERS: Source = { title: 'Makers’ guides for floating plank over heated floors', standing: 'reported' };

/** Degrees Fahrenheit. */
export const HEATED_SURFACE: Cited<{ readonly least: number; readonly most: number }> = {
  name: 'Surface of a heated floor',
  said: 'at most 80–85 °F (27–29 °C)',
  value: { least: 80, most: 85 },
  source: MAKERS,
};

export const HEATED_DEPTH: Cited<Length> = {
  name: 'Pipes or cables of a heated floor',
  said: 'at least 1/2 in (13 mm) below the plank',
  value: inches(0.5),
  source: MAKERS,
};

/** Degrees Fahrenheit a day. */
export const HEATED_STEP: Cited<number> = {
  name: 'Heating up a heated floor after laying',
  said: 'by 5 °F (3 °C) a day',
  value: 5,
  source: MAKERS,
};

export const HEATING_FIGURES = [HEATED_SURFACE, HEATED_DEPTH, HEATED_STEP] as const;
