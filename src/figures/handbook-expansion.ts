/** Figures that the answers about runs and gaps quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const GUIDANCE: Source = { title: 'Trade guidance for floating floors', standing: 'reported' };
const LAMINATE: Source = { title: 'Laminate: maximum run length', publisher: 'floorref.com', standing: 'reported' };
const MEMORY: Source = { title: 'Gaps as makers print them', standing: 'from memory' };

export const EXPANSION_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'run-cautious',
    name: 'Longest run of the stricter makers of vinyl plank',
    us: '30 to 40 ft',
    metric: '9 to 12 m',
    source: GUIDANCE,
  },
  {
    id: 'run-generous',
    name: 'Longest run of the more generous makers of vinyl plank',
    us: '85 ft',
    metric: '26 m',
    source: GUIDANCE,
  },
  { id: 'run-laminate', name: 'Longest run of laminate', us: '26 to 40 ft', metric: '8 to 12 m', source: LAMINATE },
  { id: 'run-wider-gap', name: 'Run from which the gap is wider', us: '50 ft', metric: '15 m', source: GUIDANCE },
  { id: 'gap-long-run', name: 'Gap at the walls of a long run', us: '1/2 in', metric: '12 mm', source: GUIDANCE },
  { id: 'gap-makers', name: 'Gaps that makers print', us: '3/16 to 3/8 in', metric: '5 to 10 mm', source: MEMORY },
  { id: 'gap-laminate', name: 'Gap for laminate', us: '3/8 in', metric: '10 mm', source: COMMON_PRACTICE },
  {
    id: 'cover-baseboard',
    name: 'Gap that baseboard alone covers',
    us: '3/8 in',
    metric: '10 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'cover-shoe', name: 'Gap that shoe adds to that', us: '1/2 in', metric: '12 mm', source: COMMON_PRACTICE },
  {
    id: 'cover-quarter',
    name: 'Gap that quarter round adds to that',
    us: '3/4 in',
    metric: '18 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'trim-grip', name: 'Overlap of trim on the plank', us: '1/4 in', metric: '6 mm', source: COMMON_PRACTICE },
  {
    id: 'undercut-clearance',
    name: 'Clearance over floor and pad under a casing',
    us: '1/16 in',
    metric: '1 to 2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'jamb-depth',
    name: 'How far plank reaches under a casing',
    us: '1/4 to 3/8 in',
    metric: '6 to 10 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'metal-jamb-gap',
    name: "Gap at a steel frame that isn't cut",
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
];
