/** Figures the handbook quotes on troubles of a laid floor. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const RIGID: Source = { title: 'Instructions of makers of rigid-core plank', year: 2022, standing: 'published' };
const FLAT: Source = { title: 'F710 and makers’ instructions', publisher: 'ASTM', standing: 'reported' };

export const FLOOR_TROUBLES_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'trouble-gap-wall',
    name: 'Gap at every wall of a floating floor',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'trouble-flat',
    name: 'Flatness a floating floor wants',
    us: '3/16 in in 10 ft',
    metric: '5 mm in 3 m',
    source: FLAT,
  },
  {
    id: 'trouble-room-range',
    name: 'Room temperature makers name, strictest',
    us: '55 to 85 °F',
    metric: '13 to 29 °C',
    source: RIGID,
  },
  {
    id: 'trouble-sunroom-run',
    name: 'Longest run one maker allows without steady heating and cooling',
    us: '30 ft',
    metric: '9 m',
    source: RIGID,
  },
  {
    id: 'trouble-sink-allowed',
    name: 'Movement underfoot that is common in a floating floor',
    us: 'about 1/16 in',
    metric: '1 to 2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'trouble-settle',
    name: 'Time in which new-floor noises often settle',
    us: 'a few weeks',
    source: COMMON_PRACTICE,
  },
];
