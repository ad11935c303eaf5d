/** Figures that the answers about transitions and stairs quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const IRC_RISER: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R311.7.5.1',
  standing: 'reported',
};
const IRC_NOSE: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R311.7.5.3',
  standing: 'reported',
};
const ADA: Source = {
  title: 'ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  year: 2010,
  section: '303',
  standing: 'reported',
};
const CRI: Source = {
  title: 'CRI 105, Standard for Installation of Residential Carpet',
  publisher: 'Carpet and Rug Institute',
  section: '5.4, 11.1',
  standing: 'reported',
};
const PAGES: Source = { title: 'T-molding', publisher: 'jaspector.com', standing: 'reported' };
const SPACE: Source = { title: 'Laminate T-molding', publisher: 'engineerfix.com', standing: 'reported' };

export const TRANSITIONS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 't-molding-level',
    name: 'Height difference that a T-molding bridges',
    us: '1/8 in',
    metric: '3 mm',
    source: PAGES,
  },
  { id: 'trip-vertical', name: 'Step that may stay square, as a benchmark', us: '1/4 in', metric: '6 mm', source: ADA },
  { id: 'trip-beveled', name: 'Step that may be beveled, as a benchmark', us: '1/2 in', metric: '13 mm', source: ADA },
  { id: 'trip-bevel', name: 'How steep that bevel may be, rise to run', us: '1 in 2', source: ADA },
  {
    id: 'track-gap',
    name: 'Space between two floors for a T-molding',
    us: 'about 1 in',
    metric: 'about 25 mm',
    source: SPACE,
  },
  {
    id: 't-cap-play',
    name: 'Room on each side of the T-molding’s foot',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'track-screws', name: 'Spacing of screws in a track', us: '6 to 8 in', metric: '15 to 20 cm', source: PAGES },
  {
    id: 'carpet-gully',
    name: 'Gap between tack strip and hard floor that the carpet is tucked into',
    us: 'less than 3/8 in',
    metric: 'less than 10 mm',
    source: CRI,
  },
  {
    id: 'carpet-lip',
    name: 'How far plank may stand above carpet without a molding',
    us: '1/16 in',
    metric: '1.5 mm',
    source: CRI,
  },
  {
    id: 'tile-joint',
    name: 'Soft joint between plank and tile without a strip',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'nosing-least', name: 'Least overhang of a stair nosing', us: '3/4 in', metric: '19 mm', source: IRC_NOSE },
  { id: 'nosing-most', name: 'Most overhang of a stair nosing', us: '1 1/4 in', metric: '32 mm', source: IRC_NOSE },
  {
    id: 'riser-alike',
    name: 'Most that risers of one flight may differ',
    us: '3/8 in',
    metric: '9.5 mm',
    source: IRC_RISER,
  },
  { id: 'riser-highest', name: 'Highest riser', us: '7 3/4 in', metric: '196 mm', source: IRC_RISER },
  { id: 'glue-cure', name: 'Time before glued treads are walked on', us: '24 hours', source: COMMON_PRACTICE },
];
