/** Figures that the answers about planning quote. */

import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

export const PLANNING_QUOTED: readonly QuotedFigure[] = [
  { id: 'tear-out-room', name: 'Tear-out of a carpeted room, one person', us: '1 to 4 hours', source: TRADE_CUSTOM },
  {
    id: 'lay-pace',
    name: 'Floating plank laid by a beginner',
    us: '20 to 40 sq ft an hour',
    metric: '2 to 4 m² an hour',
    source: TRADE_CUSTOM,
  },
  { id: 'nosing-stick', name: 'Usual length of a stair nosing', us: '94 in', metric: '2.4 m', source: COMMON_PRACTICE },
  { id: 'stair-wide', name: 'Usual width of a stair', us: '36 in', metric: '90 cm', source: COMMON_PRACTICE },
];
