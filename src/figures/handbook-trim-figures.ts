/** Figures that the answers about baseboards and trim quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
