/** Figures that the answers about doorways, transitions and fixtures quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

// Openings.

const IRC_HEARTH: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2006,
  section: 'R1001.10',
  standing: 'reported',
};
const IRC_SILL: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2018,
  section: 'R311.3.1',
  standing: 'published',
};
const IRC_GARAGE: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  year: 2018,
  section: 'R302.5.1',
  standing: 'reported',
};
const UNDERCUT: Source = {
  title: 'Building America Solution Center: undercut doors',
  publisher: 'PNNL for the US Department of Energy',
  section: 'scope',
  standing: 'published',
};
const MAKERS: Source = { title: 'Makers’ guides for floating plank', standing: 'reported' };
const PAGES: Source = { title: 'Gap between door and floor', publisher: 'greenyplace.com', standing: 'reported' };

export const OPENINGS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'register-flange',
    name: 'Overlap of a register’s flange on the plank',
    us: '1/2 in',
    metric: '12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'register-hole',
    name: 'How much the hole is bigger than the duct boot',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'pipe-hole',
    name: 'How much wider than the pipe its hole is',
    us: '1/2 in',
    metric: '12 to 16 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'door-clearance-usual', name: 'Least gap under an inside door', us: '1/2 in', metric: '12 mm', source: PAGES },
  {
    id: 'door-bottom-rail',
    name: 'Solid wood at the bottom of a hollow door',
    us: 'about 1 in',
    metric: 'about 25 mm',
    source: UNDERCUT,
  },
  {
    id: 'garage-door-thick',
    name: 'Door between garage and house',
    us: '1 3/8 in',
    metric: '35 mm',
    source: IRC_GARAGE,
  },
  {
    id: 'sill-drop',
    name: 'How far the floor may lie below the threshold of the main exit door',
    us: '1 1/2 in',
    metric: '38 mm',
    source: IRC_SILL,
  },
  {
    id: 'hearth-front',
    name: 'Noncombustible hearth in front of a fireplace opening under 6 sq ft',
    us: '16 in',
    metric: '40 cm',
    source: IRC_HEARTH,
  },
  { id: 'hearth-side', name: 'The same beyond each side', us: '8 in', metric: '20 cm', source: IRC_HEARTH },
  {
    id: 'hearth-front-big',
    name: 'Noncombustible hearth in front of an opening of 6 sq ft and more',
    us: '20 in',
    metric: '51 cm',
    source: IRC_HEARTH,
  },
  { id: 'hearth-side-big', name: 'The same beyond each side', us: '12 in', metric: '30 cm', source: IRC_HEARTH },
  {
    id: 'plank-heat',
    name: 'Hottest that vinyl plank may get',
    us: '80 to 85 °F',
    metric: '27 to 29 °C',
    source: MAKERS,
  },
  {
    id: 'toe-kick-overlap',
    name: 'How far plank runs under a toe kick',
    us: '1 to 2 in',
    metric: '25 to 50 mm',
    source: COMMON_PRACTICE,
  },
];

// Transitions.

const IRC_RISER: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R311.7.5.1',
  standing: 'reported',
};
const IRC_NOSE: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R311.7.5.3',
  standing: 'reported',
};
const ADA: Source = {
  title: 'ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  year: 2010,
  section: '303',
  standing: 'reported',
};
const CRI: Source = {
  title: 'CRI 105, Standard for Installation of Residential Carpet',
  publisher: 'Carpet and Rug Institute',
  section: '5.4, 11.1',
  standing: 'reported',
};
const TRANSITIONS_PAGES: Source = { title: 'T-molding', publisher: 'jaspector.com', standing: 'reported' };
const SPACE: Source = { title: 'Laminate T-molding', publisher: 'engineerfix.com', standing: 'reported' };

export const TRANSITIONS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 't-molding-level',
    name: 'Height difference that a T-molding bridges',
    us: '1/8 in',
    metric: '3 mm',
    source: TRANSITIONS_PAGES,
  },
  { id: 'trip-vertical', name: 'Step that may stay square, as a benchmark', us: '1/4 in', metric: '6 mm', source: ADA },
  { id: 'trip-beveled', name: 'Step that may be beveled, as a benchmark', us: '1/2 in', metric: '13 mm', source: ADA },
  { id: 'trip-bevel', name: 'How steep that bevel may be, rise to run', us: '1 in 2', source: ADA },
  {
    id: 'track-gap',
    name: 'Space between two floors for a T-molding',
    us: 'about 1 in',
    metric: 'about 25 mm',
    source: SPACE,
  },
  {
    id: 't-cap-play',
    name: 'Room on each side of the T-molding’s foot',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'track-screws',
    name: 'Spacing of screws in a track',
    us: '6 to 8 in',
    metric: '15 to 20 cm',
    source: TRANSITIONS_PAGES,
  },
  {
    id: 'carpet-gully',
    name: 'Gap between tack strip and hard floor that the carpet is tucked into',
    us: 'less than 3/8 in',
    metric: 'less than 10 mm',
    source: CRI,
  },
  {
    id: 'carpet-lip',
    name: 'How far plank may stand above carpet without a molding',
    us: '1/16 in',
    metric: '1.5 mm',
    source: CRI,
  },
  {
    id: 'tile-joint',
    name: 'Soft joint between plank and tile without a strip',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'nosing-least', name: 'Least overhang of a stair nosing', us: '3/4 in', metric: '19 mm', source: IRC_NOSE },
  { id: 'nosing-most', name: 'Most overhang of a stair nosing', us: '1 1/4 in', metric: '32 mm', source: IRC_NOSE },
  {
    id: 'riser-alike',
    name: 'Most that risers of one flight may differ',
    us: '3/8 in',
    metric: '9.5 mm',
    source: IRC_RISER,
  },
  { id: 'riser-highest', name: 'Highest riser', us: '7 3/4 in', metric: '196 mm', source: IRC_RISER },
  { id: 'glue-cure', name: 'Time before glued treads are walked on', us: '24 hours', source: COMMON_PRACTICE },
];

// Fixtures.

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
const FIXTURES_MAKERS: Source = { title: 'Limits as makers of plank print them', standing: 'from memory' };
const APPLIANCES: Source = { title: 'Guides to fitting kitchen appliances', standing: 'reported' };
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
    source: FIXTURES_MAKERS,
  },
  {
    id: 'furniture-back',
    name: 'Wait before furniture goes back on a click floor',
    us: 'up to 24 hours',
    source: FIXTURES_MAKERS,
  },
  {
    id: 'glue-wait',
    name: 'Wait before furniture goes back on a glued floor',
    us: '24 to 72 hours',
    source: FIXTURES_MAKERS,
  },
  {
    id: 'fridge-clearance',
    name: 'Air left above a fridge, unless its maker says otherwise',
    us: '1 in',
    metric: '25 mm',
    source: APPLIANCES,
  },
];
