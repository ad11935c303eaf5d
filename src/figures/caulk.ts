/** Figures for caulking trim and filling nail holes. */

import { inches, type Length } from '../units/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

export const CAULK_BEAD: Cited<Length> = {
  name: 'Bead of caulk along the top of trim',
  said: '1/8 in; never along its foot on a floating floor',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

/** 231/128 in³ a fluid ounce; 10.1 fl oz are 18.23 in³, 0.29869 L. */
export const CAULK_TUBE: Cited<number> = {
  name: 'Caulk in a tube',
  said: '10.1 fl oz = 18.23 in³; feet = in³ ÷ (bead² in in² × 12): 24.3 ft at 1/4 x 1/4 in',
  value: 10.1 * 0.0295735295625,
  source: {
    title: 'NIST Handbook 44, appendix C (231 in³ a gallon); length derived',
    publisher: 'NIST',
    standing: 'published',
  },
};

export const NAIL_HOLE: Cited<Length> = {
  name: 'Nail hole to fill',
  said: '1/8 in wide and deep',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

export const CAULK_FIGURES = [CAULK_BEAD, CAULK_TUBE, NAIL_HOLE] as const;
