/** Figures for floor edges at doorways and stairs. */

import { inches, type Length } from '../core/length.ts';
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
  said: 'within 3/8 in from the lowest to the highest',
  value: inches(0.375),
  source: { title: 'International Residential Code', section: 'R311.7.5', standing: 'from memory' },
};

export const EDGE_FIGURES = [LEVEL_FLOORS, TRACK, UNDERCUT_CLEARANCE, ALIKE_RISERS] as const;
