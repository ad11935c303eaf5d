/** Figures quoted by the handbook on the subfloor: what it is made of, a second layer, bounce and slope. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const APA: Source = {
  title: 'Engineered Wood Construction Guide, E30V',
  publisher: 'APA',
  year: 2011,
  section: 'Table 14, pp. 39 and 40',
  standing: 'published',
};
const NWFA: Source = {
  title: 'A guide to subfloors used under wood flooring: NWFA installation guidelines',
  publisher: 'Wood Floor Business',
  standing: 'reported',
};
const NAHB: Source = {
  title: 'Residential Construction Performance Guidelines',
  publisher: 'NAHB',
  standing: 'reported',
};

export const FIRM_SUBFLOOR_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'wood-subfloor-moisture',
    name: 'Moisture of a wood subfloor, at most',
    us: '12 %',
    source: { title: 'Wood flooring installation guidelines', publisher: 'NWFA', standing: 'reported' },
  },
  {
    id: 'plywood-on-joists',
    name: 'Plywood subfloor on joists 16 in apart, at least',
    us: '5/8 in',
    metric: '16 mm',
    source: NWFA,
  },
  {
    id: 'osb-on-joists',
    name: 'OSB subfloor on joists 16 in apart, at least',
    us: '23/32 in',
    metric: '18 mm',
    source: NWFA,
  },
  {
    id: 'usual-joist-spacing',
    name: 'Joists, center to center',
    us: '16 in',
    metric: '40 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'wide-joist-panel',
    name: 'Plywood or OSB subfloor on joists from 16 to 19.2 in apart, at least',
    us: '3/4 in',
    metric: '19 mm',
    source: NWFA,
  },
  { id: 'overlay-smooth', name: 'Plywood over a smooth subfloor, at least', us: '1/4 in', metric: '6 mm', source: APA },
  {
    id: 'overlay-boards',
    name: 'Plywood over boards or an uneven subfloor, at least',
    us: '11/32 in',
    metric: '9 mm',
    source: APA,
  },
  {
    id: 'overlay-thin-nails',
    name: 'Ring-shank nails in thin plywood: along the edges, and each way between',
    us: '3 in along the edges and 6 in between',
    metric: '75 mm along the edges and 150 mm between',
    source: APA,
  },
  {
    id: 'overlay-nails',
    name: 'Ring-shank nails in plywood over boards: along the edges, and each way between',
    us: '6 in along the edges and 8 in between',
    metric: '150 mm along the edges and 200 mm between',
    source: APA,
  },
  {
    id: 'overlay-edge',
    name: 'Distance of those nails from the edge of the panel',
    us: '3/8 in',
    metric: '10 mm',
    source: APA,
  },
  {
    id: 'overlay-offset',
    name: 'Offset of a seam from the seams below, at least',
    us: '2 in',
    metric: '50 mm',
    source: APA,
  },
  {
    id: 'overlay-gap',
    name: 'Gap between plywood sheets of a second layer',
    us: '1/32 in',
    metric: '1 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'joist-deflection',
    name: 'Bend of a floor joist under its full load, at most, for a span of 15 ft',
    us: '1/2 in over 15 ft',
    metric: '13 mm over 4.5 m',
    source: {
      title: 'International Residential Code, Table R301.7: floors, span divided by 360',
      publisher: 'ICC',
      standing: 'reported',
    },
  },
  {
    id: 'slope-benchmark',
    name: 'Height between two points of a wood floor in a new house, at most',
    us: '1/2 in within 20 ft',
    metric: '13 mm within 6 m',
    source: NAHB,
  },
];
