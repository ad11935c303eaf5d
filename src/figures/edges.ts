/** Figures for floor edges at doorways and stairs. */

import { inches, type Length } from '../units/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

export const LEVEL_FLOORS: Cited<Length> = {
  name: 'Floors level enough for a T-moulding',
  said: 'within 1/8 in; a lower floor takes a reducer, a higher one, carpet or a track an end cap',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

export const TRACK: Cited<string> = {
  name: 'Track of a transition',
  said: 'fixed to the subfloor, never through a floating floor',
  value: 'subfloor',
  source: COMMON_PRACTICE,
};

export const UNDERCUT_CLEARANCE: Cited<Length> = {
  name: 'Clearance under jambs and casings',
  said: '1/16 in over floor and pad',
  value: inches(0.0625),
  source: COMMON_PRACTICE,
};

export const ALIKE_RISERS: Cited<Length> = {
  name: 'Stair risers alike',
  said: 'within 3/8 in from the lowest to the highest, measured without carpets, rugs or runners',
  value: inches(0.375),
  source: { title: 'International Residential Code', publisher: 'ICC', section: 'R311.7.5.1', standing: 'reported' },
};

export const FLOOR_HEIGHT: Cited<Length> = {
  name: 'Height of a click plank floor with its pad',
  said: '5/16 in; measure yours',
  value: inches(0.3125),
  source: COMMON_PRACTICE,
};

export const PROFILE_STICKS: Cited<readonly Length[]> = {
  name: 'Lengths of profile on sale',
  said: '36, 72 and 94 in',
  value: [inches(36), inches(72), inches(94)],
  source: COMMON_PRACTICE,
};

export const TRIP: Cited<Length> = {
  name: 'Step at a doorway that is a trip',
  said: 'more than 1/2 in: a ramped threshold',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

export const EDGE_FIGURES = [
  LEVEL_FLOORS,
  TRACK,
  UNDERCUT_CLEARANCE,
  ALIKE_RISERS,
  FLOOR_HEIGHT,
  PROFILE_STICKS,
  TRIP,
] as const;
