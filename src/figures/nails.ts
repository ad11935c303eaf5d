/** Figures for nailing trim. */

import { inches, type Length, millimetres } from '../units/length.ts';
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
  said: 'more than 1 1/4 in: holes for cables stand at least that far from the stud’s face',
  value: inches(1.25),
  source: {
    title: 'National Electrical Code',
    publisher: 'NFPA',
    section: '300.4(A)(1)',
    standing: 'reported',
  },
};

export const WALLBOARD: Cited<Length> = {
  name: 'Thickness of wallboard',
  said: '1/2 in',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

export const NAIL_GAUGE: Cited<string> = {
  name: 'Gauge of finish nails',
  said: '15 or 16 gauge for base into studs, 18 gauge for shoe and thin trim; for a nailer they are bought in strips, by the box',
  value: '15 or 16, 18',
  source: { title: 'Trade guidance on nailing trim', standing: 'reported' },
};

/** Nails are sold in steps of a quarter inch, or of 5 mm. */
export const NAIL_STEPS: Cited<{ readonly imperial: Length; readonly metric: Length }> = {
  name: 'Lengths that nails are sold in',
  said: 'steps of 1/4 in, or 5 mm',
  value: { imperial: inches(0.25), metric: millimetres(5) },
  source: COMMON_PRACTICE,
};

export const LEAST_IN_STUD: Cited<Length> = {
  name: 'Nail that does not hold in the stud',
  said: 'less than 1/2 in into it',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

/** A stud nearer to an end than half its own width carries the same nails as the framing at that end. */
export const SAME_STUD: Cited<Length> = {
  name: 'Stud taken as the framing at an end',
  said: 'nearer than 3/4 in, half its width',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const NAIL_FIGURES = [
  NAILS_PER_STUD,
  NAIL_GRIP,
  LEAST_IN_STUD,
  DEEPEST_NAIL,
  NAIL_GAUGE,
  NAIL_STEPS,
  SAME_STUD,
  WALLBOARD,
] as const;
