/** Figures for floor joists: what may be cut out of one before it is work for a licensed person. */

import type { Source } from '../reply/reply.ts';
import { inches, type Length } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE } from './cited.ts';

const CODE: Source = {
  title: 'International Residential Code, R502.8.1',
  publisher: 'ICC',
  standing: 'reported',
};

/** Each as the divisor of the joist’s depth, the distances of a hole as lengths. */
export const JOIST_LIMITS: Cited<{
  readonly notch: number;
  readonly notchLength: number;
  readonly endNotch: number;
  readonly hole: number;
  readonly holeEdge: Length;
  readonly holeApart: Length;
}> = {
  name: 'Notches and holes in a solid-sawn floor joist of depth D',
  said: 'notch D/6 deep and D/3 long, none in the middle third, D/4 at an end; hole D/3, 2 in from the edges and from any other hole or notch',
  value: { notch: 6, notchLength: 3, endNotch: 4, hole: 3, holeEdge: inches(2), holeApart: inches(2) },
  source: CODE,
};

export const ENGINEERED_JOIST: Cited<string> = {
  name: 'Cuts, notches and holes in I-joists, trusses and glued members',
  said: 'none, but as the maker or a registered design professional allows them',
  value: 'never by rule',
  source: { title: 'International Residential Code, R502.8.2', publisher: 'ICC', standing: 'reported' },
};

export const JOIST_DEPTH: Cited<Length> = {
  name: 'Depth of a joist, untold',
  said: '5 1/2 in, the shallowest that is met: its limits are the strictest',
  value: inches(5.5),
  source: CAUTIOUS_DEFAULT,
};

export const JOIST_WIDTH: Cited<Length> = {
  name: 'Width of a joist of 2-by lumber',
  said: '1 1/2 in',
  value: inches(1.5),
  source: COMMON_PRACTICE,
};

export const JOIST_SPACING: Cited<Length> = {
  name: 'Joists, centre to centre',
  said: '16 in; 12, 19.2 and 24 in are met too',
  value: inches(16),
  source: COMMON_PRACTICE,
};

export const JOIST_FIGURES = [JOIST_SPACING, JOIST_WIDTH, JOIST_DEPTH, JOIST_LIMITS, ENGINEERED_JOIST] as const;
