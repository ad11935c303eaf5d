/** Figures that the answers about buying plank quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const F3261: Source = {
  title: 'F3261, Resilient Flooring in Modular Format with Rigid Polymeric Core',
  publisher: 'ASTM',
  year: 2020,
  section: 'wear layer by grade',
  standing: 'reported',
};
const MAKERS: Source = { title: 'Sizes as makers of click plank print them', standing: 'from memory' };
const STORES: Source = { title: 'Return rules as stores post them', standing: 'from memory' };

export const BUYING_QUOTED: readonly QuotedFigure[] = [
  { id: 'extra-straight', name: 'Extra for straight rows, rule of thumb', us: '5 to 10 %', source: TRADE_CUSTOM },
  { id: 'extra-diagonal', name: 'Extra for diagonal rows, rule of thumb', us: '10 to 15 %', source: TRADE_CUSTOM },
  { id: 'extra-herringbone', name: 'Extra for herringbone, rule of thumb', us: '15 to 20 %', source: TRADE_CUSTOM },
  { id: 'extra-mistakes', name: 'Allowance for mistakes on top of a computed count', us: '3 %', source: TRADE_CUSTOM },
  { id: 'cartons-open', name: 'Cartons to draw from at a time', us: 'three or four', source: COMMON_PRACTICE },
  { id: 'spare-planks', name: 'Planks to keep for repairs', us: 'six to ten planks', source: TRADE_CUSTOM },
  { id: 'return-days', name: 'Days a store allows for unopened cartons', us: '30 to 90 days', source: STORES },
  { id: 'restock-fee', name: 'Restocking fee on special orders', us: '15 to 25 %', source: STORES },
  { id: 'wear-light', name: 'Wear layer for a guest room', us: '6 mil', metric: '0.15 mm', source: MAKERS },
  { id: 'wear-family', name: 'Wear layer for a family', us: '12 mil', metric: '0.3 mm', source: MAKERS },
  { id: 'wear-hard', name: 'Wear layer of the commercial grade', us: '20 mil', metric: '0.5 mm', source: F3261 },
  { id: 'plank-thin', name: 'Thin click plank', us: '4 mm', source: MAKERS },
  { id: 'plank-usual', name: 'Usual thickness of click plank', us: '5 to 8 mm', source: MAKERS },
  {
    id: 'width-usual',
    name: 'Plank width that suits most rooms',
    us: '6 to 7 in',
    metric: '15 to 18 cm',
    source: MAKERS,
  },
  { id: 'width-wide', name: 'Wide plank', us: '9 in', metric: '23 cm', source: MAKERS },
  { id: 'hall-width', name: 'Width of an ordinary hall', us: '3 ft', metric: '90 cm', source: COMMON_PRACTICE },
];
