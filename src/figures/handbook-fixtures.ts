/** Figures that the answers about appliances, bathrooms, heavy loads and living in quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const IRC_LOAD: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2024,
  section: 'Table R301.5',
  standing: 'reported',
};
const CABINETS: Source = {
  title: 'Space between cabinets for a dishwasher',
  publisher: 'engineerfix.com',
  standing: 'reported',
};
const GALLON: Source = {
  title: 'A US gallon of water, by its volume of 231 cubic inches',
  publisher: 'NIST',
  standing: 'from memory',
};
const MAKERS: Source = { title: 'Limits as makers of plank print them', standing: 'from memory' };
const ANTITIP: Source = {
  title: 'UL 858 and trade pages: ranges sold with an anti-tip bracket',
  publisher: 'UL',
  standing: 'reported',
};

export const FIXTURES_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'dishwasher-opening',
    name: 'Opening that a built-in dishwasher needs',
    us: '34 to 34 1/2 in',
    metric: '86 to 88 cm',
    source: CABINETS,
  },
  { id: 'appliance-ply', name: 'Sheet to roll an appliance on', us: '1/4 in', metric: '6 mm', source: COMMON_PRACTICE },
  {
    id: 'range-bracket-year',
    name: 'Year from which ranges come with an anti-tip bracket',
    us: '1991',
    source: ANTITIP,
  },
  {
    id: 'flange-height',
    name: 'Toilet flange over the finished floor',
    us: 'flush to 1/4 in above',
    metric: 'flush to 6 mm above',
    source: COMMON_PRACTICE,
  },
  {
    id: 'flange-cut',
    name: 'Gap between plank and toilet flange',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'bath-gap',
    name: 'Gap at tub and shower, filled with silicone',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'floor-load',
    name: 'Load that living rooms are designed for',
    us: '40 lb a square foot',
    metric: '195 kg/m²',
    source: IRC_LOAD,
  },
  {
    id: 'floor-load-bedroom',
    name: 'Load that bedrooms are designed for',
    us: '30 lb a square foot',
    metric: '146 kg/m²',
    source: IRC_LOAD,
  },
  {
    id: 'water-weight',
    name: 'Weight of a gallon of water',
    us: '8.3 lb a gallon',
    metric: '1 kg a liter',
    source: GALLON,
  },
  {
    id: 'heavy-single',
    name: "Weight from which to read the maker's limit",
    us: '500 lb',
    metric: '225 kg',
    source: MAKERS,
  },
  {
    id: 'furniture-back',
    name: 'Wait before furniture goes back on a click floor',
    us: 'up to 24 hours',
    source: MAKERS,
  },
  { id: 'glue-wait', name: 'Wait before furniture goes back on a glued floor', us: '24 to 72 hours', source: MAKERS },
];
