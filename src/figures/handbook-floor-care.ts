/** Figures the handbook quotes on care and warranties. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const CARE: Source = { title: 'Care guides for vinyl plank', standing: 'reported' };
const CARTONS: Source = { title: 'Instructions of a maker of rigid-core plank', year: 2022, standing: 'published' };

export const FLOOR_CARE_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'scratch-shallow',
    name: 'Scratch that hardly catches a fingernail',
    us: 'surface only',
    source: COMMON_PRACTICE,
  },
  { id: 'mop-often', name: 'How often to damp-mop', us: 'about once a week', source: CARE },
  {
    id: 'sun-surface',
    name: 'Floor temperature behind glass above which plank may soften or swell',
    us: 'about 120 °F',
    metric: 'about 50 °C',
    source: CARE,
  },
  { id: 'cartons-to-open', name: 'Cartons opened to inspect before laying', us: '2 or 3', source: CARTONS },
];
