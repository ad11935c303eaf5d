/** Figures the handbook quotes on joints of trim. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
