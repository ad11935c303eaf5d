/** Figures that the answers about rows and joints quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const GUIDANCE: Source = { title: 'Trade guidance for floating floors', standing: 'reported' };
const MEMORY: Source = { title: 'Offsets as makers of wide plank print them', standing: 'from memory' };
const NAHB: Source = {
  title: 'Residential Construction Performance Guidelines: squareness',
  publisher: 'NAHB',
  standing: 'reported',
};
const NWFA: Source = {
  title: 'Hardwood Floors magazine, December 2017',
  publisher: 'NWFA',
  year: 2017,
  section: 'end joints',
  standing: 'published',
};

export const ROWS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'row-straight',
    name: 'How straight the first row is kept',
    us: '1/16 in over 10 ft',
    metric: '1 to 2 mm over 3 m',
    source: COMMON_PRACTICE,
  },
  {
    id: 'strip-least',
    name: 'Narrowest strip along a wall parallel to the rows',
    us: '2 in',
    metric: '50 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'square-triangle',
    name: 'Sides of a triangle that proves a right angle',
    us: '3, 4 and 5 ft',
    metric: '90, 120 and 150 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'square-tolerance',
    name: 'How far a new room may be out of square',
    us: '1/2 in on a 20 ft diagonal',
    metric: '13 mm on a diagonal of 6.1 m',
    source: NAHB,
  },
  {
    id: 'taper-shows',
    name: 'Taper of a last row that the eye sees',
    us: '1/2 in',
    metric: '12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'stagger-least',
    name: 'Least offset of end joints in touching rows',
    us: '6 in',
    metric: '150 mm',
    source: GUIDANCE,
  },
  {
    id: 'stagger-wide',
    name: 'Offset many makers print for planks from 7 in wide',
    us: '8 to 12 in',
    metric: '200 to 300 mm',
    source: MEMORY,
  },
  {
    id: 'stagger-nailed',
    name: 'Offset of end joints of nailed-down wood',
    us: "twice the board's width",
    source: NWFA,
  },
  { id: 'end-least', name: 'Shortest end piece', us: '8 in', metric: '200 mm', source: COMMON_PRACTICE },
  { id: 'rows-apart', name: 'Rows before a joint may line up again', us: 'three rows', source: COMMON_PRACTICE },
];
