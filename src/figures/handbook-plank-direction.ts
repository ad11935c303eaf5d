/** Figures that the answers about measuring, direction and starting quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const GUIDANCE: Source = { title: 'Trade guidance for floating floors', standing: 'reported' };
const NWFA: Source = {
  title: 'Wood Flooring Installation Guidelines and Methods, as a magazine reports them',
  publisher: 'NWFA',
  standing: 'reported',
};

export const PLANK_DIRECTION_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'measure-step',
    name: 'Steps in which to read the tape for a floor',
    us: '1/8 in',
    metric: '2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'hall-lengthwise',
    name: 'Hall width below which planks run lengthwise',
    us: '6 ft',
    metric: '1.8 m',
    source: COMMON_PRACTICE,
  },
  {
    id: 'joist-ply',
    name: 'Plywood added where nailed wood runs along the joists',
    us: '1/2 in',
    metric: '12 mm',
    source: NWFA,
  },
  {
    id: 'joist-blocking',
    name: 'Spacing of blocking between joists where nailed wood runs along them',
    us: '24 in',
    metric: '60 cm',
    source: NWFA,
  },
  { id: 'gap-usual', name: 'Gap at every wall of a floating floor', us: '1/4 in', metric: '6 mm', source: GUIDANCE },
];
