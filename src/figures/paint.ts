/** Figures for painting trim. */

import { inches, type Length } from '../units/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

/** Square metres a litre: 350 ft² a US gallon. */
export const PAINT_COVERAGE: Cited<number> = {
  name: 'What paint covers',
  said: '350–400 sq ft a gallon, a quart 100; reckoned with 350',
  value: (350 * 0.09290304) / 3.785411784,
  source: { title: 'almanac.com on how far paint goes', standing: 'reported' },
};

export const PAINT_COATS: Cited<number> = {
  name: 'Coats of paint on trim',
  said: 'two, over one of primer',
  value: 2,
  source: COMMON_PRACTICE,
};

export const TRIM_HEIGHT: Cited<Length> = {
  name: 'Height of baseboard',
  said: '3 1/4 in',
  value: inches(3.25),
  source: COMMON_PRACTICE,
};

export const SANDING: Cited<string> = {
  name: 'Sanding trim',
  said: '120 grit for filler, 180 grit before paint, 220 grit between coats',
  value: '120, 180, 220',
  source: COMMON_PRACTICE,
};

export const PAINT_FIGURES = [PAINT_COVERAGE, PAINT_COATS, TRIM_HEIGHT, SANDING] as const;
