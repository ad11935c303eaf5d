/** Figures the handbook quotes on ordering, delivery, pauses and records. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const WEIGHTS: Source = { title: 'Weights of cartons of vinyl plank', standing: 'reported' };
const STORE: Source = { title: 'Installation guide of a maker of rigid-core plank', year: 2021, standing: 'published' };
const BEETLES: Source = { title: 'Inspectors’ pages on wood-destroying insects', standing: 'reported' };
const DRILLS: Source = {
  title: 'National Electrical Code',
  publisher: 'NFPA',
  section: '314.27(B)',
  standing: 'from memory',
};

export const BEFORE_AND_AFTER_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'order-flat',
    name: 'Flatness to check before ordering',
    us: '3/16 in in 10 ft',
    metric: '5 mm in 3 m',
    source: COMMON_PRACTICE,
  },
  { id: 'order-spare-carton', name: 'Cartons kept closed until the end', us: 'one', source: COMMON_PRACTICE },
  {
    id: 'order-height',
    name: 'Height to plan for with plank and pad',
    us: 'about 5/16 in',
    metric: 'about 8 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'delivery-box', name: 'A carton of vinyl plank', us: '35 to 60 lb', metric: '16 to 27 kg', source: WEIGHTS },
  {
    id: 'delivery-off-slab',
    name: 'How far cartons stand off a concrete slab, one maker',
    us: '4 in',
    metric: '10 cm',
    source: STORE,
  },
  {
    id: 'delivery-room-range',
    name: 'Room temperature one maker names for laying',
    us: '35 to 100 °F',
    metric: '2 to 38 °C',
    source: STORE,
  },
  {
    id: 'record-planks',
    name: 'Planks worth keeping for repairs',
    us: 'a carton of the same lot',
    source: COMMON_PRACTICE,
  },
  {
    id: 'beetle-hole',
    name: 'Exit hole of a powderpost beetle',
    us: '1/32 to 1/16 in',
    metric: 'about 1 to 2 mm',
    source: BEETLES,
  },
  { id: 'outlet-box-kind', name: 'Box that may sit in a floor', us: 'one listed for floors', source: DRILLS },
];
