/** Figures that the answers about tearing out, tools and the body quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// Tearing out.

const CRI: Source = {
  title: 'CRI 104/105, Standard for Installation of Carpet',
  publisher: 'Carpet and Rug Institute',
  section: '§11.1',
  standing: 'published',
};

export const TEARING_OUT_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'carpet-strip-width',
    name: 'Width of a strip of old carpet',
    us: '3 ft',
    metric: '90 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'carpet-glued-strip-width',
    name: 'Width of a strip of carpet that is glued down',
    us: '1 ft',
    metric: '30 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'carpet-blade-change',
    name: 'Cut of old carpet after which a knife blade is dull',
    us: '30 ft',
    metric: '9 m',
    source: TRADE_CUSTOM,
  },
  {
    id: 'carpet-pace',
    name: 'Carpet and pad that one person cuts, rolls and carries out',
    us: '100 to 250 sq ft an hour',
    metric: '10 to 25 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'tack-strip-height',
    name: 'Thickness of tack strip, at least',
    us: '1/4 in',
    metric: '6 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-gully',
    name: 'Distance of tack strip from the wall, at most',
    us: '3/8 in',
    metric: '10 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-wide',
    name: 'Width of tack strip in a long room, unless two strips lie side by side',
    us: '1 3/4 in',
    metric: '45 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-long-room',
    name: 'Room length beyond which tack strip is wider or doubled',
    us: '30 ft',
    metric: '9 m',
    source: CRI,
  },
  {
    id: 'tack-strip-pace',
    name: 'Tack strip that one person pries up',
    us: '40 to 100 ft an hour',
    metric: '12 to 30 m an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'staple-pace',
    name: 'Staples that one person pulls',
    us: '200 to 600 an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'staple-spacing',
    name: 'Spacing of staples along the edges of a carpet pad',
    us: '6 to 12 in',
    metric: '15 to 30 cm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'vinyl-strip-width',
    name: 'Width of a strip of sheet vinyl that has tested clear',
    us: '6 to 12 in',
    metric: '15 to 30 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'asbestos-presumed-year',
    name: 'Year up to which a resilient floor and its glue are presumed to hold asbestos, unless tested',
    us: '1980',
    source: {
      title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
      publisher: 'OSHA',
      standing: 'published',
    },
  },
  {
    id: 'tile-removal-pace',
    name: 'Ceramic tile that one person breaks up and carries out',
    us: '10 to 25 sq ft an hour',
    metric: '1 to 2.5 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'tile-laid-weight',
    name: 'Ceramic tile with its mortar',
    us: '4 to 10 lb a sq ft',
    metric: '20 to 50 kg/m²',
    source: TRADE_CUSTOM,
  },
  {
    id: 'chipping-respirator',
    name: 'Protection factor of the respirator for powered chipping indoors, with water or a vacuum at the tool',
    us: '10',
    source: {
      title: '29 CFR 1926.1153(c)(1), Table 1: handheld powered chipping tools',
      publisher: 'OSHA',
      standing: 'reported',
    },
  },
  {
    id: 'laminate-pace',
    name: 'Laminate that one person unlocks and stacks',
    us: '80 to 200 sq ft an hour',
    metric: '7 to 18 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'wood-section-length',
    name: 'Length of the sections that nailed-down wood is sawn into',
    us: '12 to 18 in',
    metric: '30 to 45 cm',
    source: COMMON_PRACTICE,
  },
];

// Tools and body.

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
