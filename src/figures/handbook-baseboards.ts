/** Figures the handbook quotes on baseboard and shoe. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const SHOE_SIZE: Source = { title: 'NAVEDTRA 14044', publisher: 'US Navy', standing: 'published' };
const SHOE_NAILED: Source = { title: 'This Old House', standing: 'reported' };

export const BASEBOARDS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'base-clearance',
    name: 'Space between the foot of the base and the floor',
    us: 'about 1/32 in, a business card or two',
    metric: 'just under 1 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'shoe-size',
    name: 'Shoe molding, thick and high',
    us: '1/2 x 3/4 in',
    metric: '12 x 19 mm',
    source: SHOE_SIZE,
  },
  {
    id: 'quarter-round-size',
    name: 'Quarter round sold for floors',
    us: '3/4 x 3/4 in',
    metric: '19 x 19 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'shoe-fastened-to', name: 'What shoe molding is nailed to', us: 'the baseboard', source: SHOE_NAILED },
  {
    id: 'base-gap-covered',
    name: 'Gap at the wall of a common room that the trim has to cover',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-height-usual',
    name: 'Height of baseboard in rooms with an 8 ft ceiling',
    us: '3 1/4 to 5 1/4 in',
    metric: '8 to 13 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-thickness-usual',
    name: 'Thickness of baseboard',
    us: '1/2 to 5/8 in',
    metric: '12 to 16 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-breakage',
    name: 'Boards that break when old base is pried off',
    us: '5 to 25 %',
    source: COMMON_PRACTICE,
  },
];
