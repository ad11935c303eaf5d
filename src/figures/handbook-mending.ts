/** Figures that the answers about mending a subfloor quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const PANELS: Source = {
  title: 'Engineered Wood Construction Guide, E30: floors',
  publisher: 'APA',
  standing: 'reported',
};

export const MENDING_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'patch-screws',
    name: 'Screws along the edges of a subfloor panel',
    us: '6 in',
    metric: '150 mm',
    source: PANELS,
  },
  {
    id: 'squeak-screws',
    name: 'Screws along a joist against squeaks',
    us: '6 to 8 in',
    metric: '150 to 200 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'squeak-bite',
    name: 'Screw in the joist',
    us: 'an inch or more',
    metric: '25 mm or more',
    source: COMMON_PRACTICE,
  },
];
