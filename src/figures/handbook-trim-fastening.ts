/** Figures the handbook quotes on nails, caulk, filler and paint for trim. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const NAVEDTRA: Source = { title: 'NAVEDTRA 14044', publisher: 'US Navy', section: 'p. 208', standing: 'published' };
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
    name: 'Nail for 9/16 in base over 1/2 in wallboard',
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
