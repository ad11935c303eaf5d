/** Figures that the answers about doorways, transitions, fixtures, baseboards and trim quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, type QuotedFigure } from './cited.ts';

// Figures that the answers about baseboards and trim quote.

// Baseboards.

const SHOE_SIZE: Source = { title: 'NAVEDTRA 14044', publisher: 'US Navy', standing: 'published' };
const SHOE_NAILED: Source = { title: 'This Old House', standing: 'reported' };

export const BASEBOARDS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'base-clearance',
    name: 'Space between the foot of the base and the floor',
    us: 'about 1/32 in, a business card or two',
    metric: 'just under 1 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'shoe-size',
    name: 'Shoe molding, thick and high',
    us: '1/2 x 3/4 in',
    metric: '12 x 19 mm',
    source: SHOE_SIZE,
  },
  {
    id: 'quarter-round-size',
    name: 'Quarter round sold for floors',
    us: '3/4 x 3/4 in',
    metric: '19 x 19 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'shoe-fastened-to', name: 'What shoe molding is nailed to', us: 'the baseboard', source: SHOE_NAILED },
  {
    id: 'base-gap-covered',
    name: 'Gap at the wall of a common room that the trim has to cover',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-height-usual',
    name: 'Height of baseboard in rooms with an 8 ft ceiling',
    us: '3 1/4 to 5 1/4 in',
    metric: '8 to 13 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-thickness-usual',
    name: 'Thickness of baseboard',
    us: '1/2 to 5/8 in',
    metric: '12 to 16 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'base-breakage',
    name: 'Boards that break when old base is pried off',
    us: '5 to 25%',
    source: COMMON_PRACTICE,
  },
];

// Trim joints.

const NAVEDTRA: Source = { title: 'NAVEDTRA 14044', publisher: 'US Navy', section: 'p. 208', standing: 'published' };
const MITERS: Source = { title: 'Trade guidance on miters', standing: 'reported' };
const SCARFS: Source = { title: 'Fine Homebuilding; trade guidance that prefers 45°', standing: 'reported' };

export const TRIM_JOINTS_QUOTED: readonly QuotedFigure[] = [
  { id: 'inside-joint-molded', name: 'Inside corner of molded base', us: 'coped', source: NAVEDTRA },
  { id: 'inside-joint-square', name: 'Inside corner of square-edged base', us: 'butted', source: NAVEDTRA },
  { id: 'cope-back-bevel', name: 'How far back a cope is undercut', us: '5 to 10°', source: COMMON_PRACTICE },
  {
    id: 'cope-widest-corner',
    name: 'Widest inside corner that is coped',
    us: 'just under 120°',
    source: COMMON_PRACTICE,
  },
  { id: 'straight-angle', name: 'A straight line', us: '180°', source: MITERS },
  { id: 'miter-square-corner', name: 'Saw setting for a square corner', us: '45°', source: MITERS },
  { id: 'miter-bay-corner', name: 'Saw setting for a 135° corner', us: '22.5°', source: MITERS },
  { id: 'miter-93-corner', name: 'Saw setting for a corner of 93°', us: '43.5°', source: MITERS },
  { id: 'miter-saw-reach', name: 'How far a miter saw swings', us: 'about 50°', source: COMMON_PRACTICE },
  {
    id: 'miter-outside-help',
    name: 'How much wider an outside miter may be set to close its face',
    us: 'half a degree',
    source: COMMON_PRACTICE,
  },
  {
    id: 'bullnose-setting',
    name: 'Saw setting at each end of the three pieces around a square bullnose corner',
    us: '22.5°',
    source: MITERS,
  },
  { id: 'scarf-setting', name: 'Saw setting for a scarf', us: '30° or 45°', source: SCARFS },
  {
    id: 'return-glue-up',
    name: 'Piece short enough to be glued on rather than nailed',
    us: '6 in and shorter',
    metric: '15 cm and shorter',
    source: COMMON_PRACTICE,
  },
  {
    id: 'trim-caulk-widest',
    name: "Widest gap that painter's caulk closes well",
    us: 'about 1/4 in',
    metric: 'about 6 mm',
    source: COMMON_PRACTICE,
  },
];

// Trim fastening.

const STUDS: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R602.3(5)',
  standing: 'reported',
};
const NAILING: Source = { title: 'Trade guidance on nailing trim', standing: 'reported' };
const PAINT: Source = { title: 'almanac.com on how far paint goes', standing: 'reported' };

export const TRIM_FASTENING_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'nail-into-stud',
    name: 'How far a nail goes into the stud',
    us: '3/4 to 1 in',
    metric: '20 to 25 mm',
    source: NAILING,
  },
  {
    id: 'nail-base-usual',
    name: 'Nail for the usual base over wallboard',
    us: '2 in',
    metric: '50 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'nail-shoe-usual',
    name: 'Brad for shoe into base',
    us: '1 to 1 1/4 in',
    metric: '25 to 32 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'nail-base-hand', name: 'Hand nail for base', us: '8d finish, 2 1/2 in', metric: '65 mm', source: NAVEDTRA },
  { id: 'nail-gauge-base', name: 'Gauge for base into studs', us: '15 or 16 gauge', source: NAILING },
  { id: 'nail-gauge-shoe', name: 'Gauge for shoe and thin trim', us: '18 gauge', source: NAILING },
  { id: 'nail-gauge-pin', name: 'Gauge of headless pins', us: '23 gauge', source: COMMON_PRACTICE },
  { id: 'nails-each-stud', name: 'Nails in base at every stud', us: 'two', source: NAVEDTRA },
  {
    id: 'nail-shoe-spacing',
    name: 'Spacing of brads in shoe',
    us: 'about every 12 to 16 in',
    metric: 'every 30 to 40 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'nail-from-end',
    name: "How far from a board's end nails stay",
    us: '1 to 2 in',
    metric: '3 to 5 cm',
    source: COMMON_PRACTICE,
  },
  { id: 'studs-apart', name: 'Studs, center to center', us: '16 in', metric: '40 cm', source: STUDS },
  {
    id: 'studs-apart-wide',
    name: 'Studs in some walls, center to center',
    us: '24 in',
    metric: '60 cm',
    source: STUDS,
  },
  {
    id: 'plate-height',
    name: 'Height of the bottom plate over the subfloor',
    us: '1 1/2 in',
    metric: '38 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'caulk-bead-top',
    name: 'Bead of caulk along the top of base',
    us: 'about 1/8 in',
    metric: 'about 3 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'sand-filler', name: 'Grit for filler', us: '120', source: COMMON_PRACTICE },
  { id: 'sand-before-paint', name: 'Grit before paint and between coats', us: '180 to 220', source: COMMON_PRACTICE },
  { id: 'paint-coats-trim', name: 'Coats of paint on trim', us: 'two', source: COMMON_PRACTICE },
  {
    id: 'paint-covers',
    name: 'What paint covers',
    us: '350 to 400 sq ft a gallon',
    metric: '8.5 to 10 m² a liter',
    source: PAINT,
  },
];

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
