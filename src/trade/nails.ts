/** Figures for nailing trim. */

import { inches, type Length } from '../core/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

export const NAILS_PER_STUD: Cited<number> = {
  name: 'Nails in baseboard',
  said: 'two at every stud',
  value: 2,
  source: { title: 'NAVEDTRA 14044', publisher: 'US Navy', standing: 'published' },
};

export const NAIL_GRIP: Cited<Length> = {
  name: 'How far a nail goes into the stud',
  said: '3/4 to 1 in: nail = trim + wallboard + that',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const DEEPEST_NAIL: Cited<Length> = {
  name: 'Nail so far into a stud that it may meet a cable or a pipe',
  said: 'more than 1 1/4 in',
  value: inches(1.25),
  source: { title: 'Trade guidance on nailing', standing: 'from memory' },
};

export const WALLBOARD: Cited<Length> = {
  name: 'Thickness of wallboard',
  said: '1/2 in',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

export const NAIL_FIGURES = [NAILS_PER_STUD, NAIL_GRIP, DEEPEST_NAIL, WALLBOARD] as const;
