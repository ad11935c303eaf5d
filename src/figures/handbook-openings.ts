/** Figures that the answers about openings, doors, hearths and cabinets quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const IRC_HEARTH: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2006,
  section: 'R1001.10',
  standing: 'reported',
};
const IRC_SILL: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2018,
  section: 'R311.3.1',
  standing: 'published',
};
const IRC_GARAGE: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2018,
  section: 'R302.5.1',
  standing: 'reported',
};
const UNDERCUT: Source = {
  title: 'Building America Solution Center: undercut doors',
  publisher: 'PNNL for the US Department of Energy',
  section: 'scope',
  standing: 'published',
};
const MAKERS: Source = { title: 'Makers’ guides for floating plank', standing: 'reported' };
const PAGES: Source = { title: 'Gap between door and floor', publisher: 'greenyplace.com', standing: 'reported' };

export const OPENINGS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'register-flange',
    name: 'Overlap of a register’s flange on the plank',
    us: '1/2 in',
    metric: '12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'register-hole',
    name: 'How much the hole is bigger than the duct boot',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'pipe-hole',
    name: 'How much wider than the pipe its hole is',
    us: '1/2 in',
    metric: '12 to 16 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'door-clearance-usual', name: 'Least gap under an inside door', us: '1/2 in', metric: '12 mm', source: PAGES },
  {
    id: 'door-bottom-rail',
    name: 'Solid wood at the bottom of a hollow door',
    us: 'about 1 in',
    metric: 'about 25 mm',
    source: UNDERCUT,
  },
  {
    id: 'garage-door-thick',
    name: 'Door between garage and house',
    us: '1 3/8 in',
    metric: '35 mm',
    source: IRC_GARAGE,
  },
  {
    id: 'sill-drop',
    name: 'How far the floor may lie below the threshold of the main exit door',
    us: '1 1/2 in',
    metric: '38 mm',
    source: IRC_SILL,
  },
  {
    id: 'hearth-front',
    name: 'Noncombustible hearth in front of a fireplace opening under 6 sq ft',
    us: '16 in',
    metric: '40 cm',
    source: IRC_HEARTH,
  },
  { id: 'hearth-side', name: 'The same beyond each side', us: '8 in', metric: '20 cm', source: IRC_HEARTH },
  {
    id: 'hearth-front-big',
    name: 'Noncombustible hearth in front of an opening of 6 sq ft and more',
    us: '20 in',
    metric: '51 cm',
    source: IRC_HEARTH,
  },
  { id: 'hearth-side-big', name: 'The same beyond each side', us: '12 in', metric: '30 cm', source: IRC_HEARTH },
  {
    id: 'plank-heat',
    name: 'Hottest that vinyl plank may get',
    us: '80 to 85 °F',
    metric: '27 to 29 °C',
    source: MAKERS,
  },
  {
    id: 'toe-kick-overlap',
    name: 'How far plank runs under a toe kick',
    us: '1 to 2 in',
    metric: '25 to 50 mm',
    source: COMMON_PRACTICE,
  },
];
