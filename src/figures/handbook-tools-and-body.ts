/** Figures the handbook quotes on nailers, saws, knees, wounds and hidden lines. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const NAIL_GUN: Source = {
  title: 'Nail Gun Safety: A Guide for Construction Contractors',
  publisher: 'OSHA and NIOSH',
  year: 2011,
  standing: 'reported',
};
const NAIL_GUN_MEMORY: Source = {
  title: 'Nail Gun Safety: A Guide for Construction Contractors',
  publisher: 'OSHA and NIOSH',
  year: 2011,
  standing: 'from memory',
};
const PNEUMATIC: Source = { title: '29 CFR 1926.302(b)(3)', publisher: 'OSHA', standing: 'reported' };
const TABLE_SAWS: Source = {
  title: 'Table saw blade contact injuries',
  publisher: 'CPSC',
  year: 2011,
  standing: 'published',
};
const KNEES: Source = {
  title: 'Preventing Knee Injuries and Disorders in Carpet Layers, 90-104',
  publisher: 'NIOSH',
  year: 1990,
  standing: 'published',
};
const TETANUS: Source = { title: 'Tetanus schedule', publisher: 'CDC', standing: 'reported' };
const RINSING: Source = {
  title: 'First aid for chemicals in the eye',
  publisher: 'Hospitals and safety offices',
  standing: 'reported',
};
const NEC: Source = {
  title: 'National Electrical Code',
  publisher: 'NFPA',
  section: '300.4(A)(1)',
  standing: 'reported',
};
const NOISE: Source = {
  title: 'Criteria for a Recommended Standard: Occupational Noise Exposure, 98-126',
  publisher: 'NIOSH',
  year: 1998,
  standing: 'published',
};
const EMERGENCY: Source = { title: 'Emergency and poison control numbers', standing: 'reported' };

export const TOOLS_AND_BODY_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'nailer-visits',
    name: 'Emergency visits a year for nail gun injuries, US',
    us: 'about 37,000',
    source: NAIL_GUN,
  },
  {
    id: 'nailer-contact-risk',
    name: 'Risk with a contact trigger against a sequential one',
    us: 'twice the risk',
    source: NAIL_GUN,
  },
  {
    id: 'nailer-hand-distance',
    name: 'How far the free hand stays from the nail',
    us: '12 in',
    metric: '30 cm',
    source: NAIL_GUN_MEMORY,
  },
  {
    id: 'nailer-brad-pressure',
    name: 'Air pressure for brads, to start with',
    us: '70 to 90 psi',
    metric: '5 to 6 bar',
    source: COMMON_PRACTICE,
  },
  {
    id: 'nailer-muzzle-pressure',
    name: 'Pressure above which a nailer needs a muzzle safety',
    us: '100 psi',
    metric: '7 bar',
    source: PNEUMATIC,
  },
  { id: 'saw-visits', name: 'Treated table-saw blade contacts a year, US', us: 'about 67,300', source: TABLE_SAWS },
  {
    id: 'saw-hand-distance',
    name: "How far hands stay from a miter saw's blade",
    us: '6 in',
    metric: '15 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'saw-small-piece',
    name: 'Piece too short to hold at a miter saw by hand',
    us: 'shorter than 8 in',
    metric: 'shorter than 20 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'saw-noise',
    name: "Time at 100 dBA, as loud as many saws, that uses up a day's share",
    us: '15 minutes',
    source: NOISE,
  },
  {
    id: 'knee-claims',
    name: "Carpet layers' share of knee injury claims against their share of the workforce",
    us: '108 times',
    source: KNEES,
  },
  {
    id: 'knee-break',
    name: 'How often to get up off the knees',
    us: 'every 20 to 30 minutes',
    source: COMMON_PRACTICE,
  },
  {
    id: 'tetanus-dirty',
    name: 'Years after which a dirty or puncture wound wants a booster',
    us: '5 years',
    source: TETANUS,
  },
  {
    id: 'tetanus-clean',
    name: 'Years after which a clean small wound wants a booster',
    us: '10 years',
    source: TETANUS,
  },
  { id: 'eye-rinse', name: 'How long an eye is rinsed', us: '15 minutes or more', source: RINSING },
  {
    id: 'press-wound',
    name: 'How long to press before calling for help if it still bleeds',
    us: '10 minutes',
    source: COMMON_PRACTICE,
  },
  {
    id: 'emergency-number',
    name: 'Emergency number',
    us: '911',
    metric: 'your emergency number (112, 999, 000)',
    source: EMERGENCY,
  },
  {
    id: 'poison-number',
    name: 'Poison control',
    us: '1-800-222-1222',
    metric: 'your poison center',
    source: EMERGENCY,
  },
  {
    id: 'cable-depth',
    name: 'How far holes for cables stand from the face of a stud or joist, at the least',
    us: '1 1/4 in',
    metric: '32 mm',
    source: NEC,
  },
];
