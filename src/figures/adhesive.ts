/** Figures for subfloor adhesive: the bead, where it goes, and how far a tube reaches. */

import { inches, type Length } from '../units/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

export const BEAD: Cited<Length> = {
  name: 'Bead of subfloor adhesive',
  said: '3/8 in on each joist, two beads where panels butt',
  value: inches(0.375),
  source: {
    title: 'Modern Carpentry',
    publisher: 'Goodheart-Willcox',
    year: 2016,
    section: 'p. 258',
    standing: 'published',
  },
};

/** US fluid ounces; the maker’s tube wins. */
export const TUBE: Cited<number> = {
  name: 'Tube of subfloor adhesive',
  said: '28 fl oz',
  value: 28,
  source: COMMON_PRACTICE,
};

export const BEAD_WASTE: Cited<number> = {
  name: 'Adhesive used against the bead in theory',
  said: 'about 1.5 times',
  value: 1.5,
  source: { title: 'Fine Homebuilding no. 146', standing: 'reported' },
};

/** 231 in³ a gallon of 128 fl oz. */
export const CUBIC_INCHES_PER_FLUID_OUNCE: Cited<number> = {
  name: 'US fluid ounce',
  said: '231/128 in³',
  value: 231 / 128,
  source: { title: 'Handbook 44, appendix C', publisher: 'NIST', standing: 'published' },
};

export const ADHESIVE_FIGURES = [BEAD, TUBE, BEAD_WASTE, CUBIC_INCHES_PER_FLUID_OUNCE] as const;
