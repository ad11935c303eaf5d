/** Figures the handbook quotes on special places and weights. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const LOADS: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'Table R301.5',
  standing: 'reported',
};
const GUARDS: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R312.1',
  standing: 'published',
};
const RISERS: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R311.7.5.1',
  standing: 'reported',
};
const MOBILE: Source = {
  title: 'Manufactured Home Construction and Safety Standards',
  publisher: 'HUD',
  section: '24 CFR 3280.305',
  standing: 'reported',
};
const RIGID: Source = { title: 'Instructions of a maker of rigid-core plank', year: 2022, standing: 'published' };
const WEIGHTS: Source = { title: 'Weights of cartons of vinyl plank and laminate', standing: 'reported' };
const CARPET: Source = { title: 'Carpet and pad weights', standing: 'reported' };
const ADA: Source = {
  title: 'ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  year: 2010,
  section: '303',
  standing: 'published',
};

export const SPECIAL_PLACES_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'floor-load-rooms',
    name: 'What a floor is designed to carry beyond itself, living rooms',
    us: '40 lb a sq ft',
    metric: '195 kg per m²',
    source: LOADS,
  },
  {
    id: 'floor-load-bedrooms',
    name: 'The same, bedrooms',
    us: '30 lb a sq ft',
    metric: '146 kg per m²',
    source: LOADS,
  },
  {
    id: 'plank-weight',
    name: 'Weight of rigid-core vinyl plank',
    us: '1 1/2 to 3 lb a sq ft',
    metric: '7 to 15 kg per m²',
    source: WEIGHTS,
  },
  {
    id: 'plank-box-weight',
    name: 'A carton of vinyl plank',
    us: '35 to 60 lb',
    metric: '16 to 27 kg',
    source: WEIGHTS,
  },
  {
    id: 'laminate-box-weight',
    name: 'A carton of laminate',
    us: '30 to 45 lb',
    metric: '14 to 20 kg',
    source: WEIGHTS,
  },
  {
    id: 'carpet-with-pad-weight',
    name: 'Carpet with its pad',
    us: '5 to 10 lb a sq yd',
    metric: '2.7 to 5.4 kg per m²',
    source: CARPET,
  },
  {
    id: 'carpet-only-weight',
    name: 'Carpet alone',
    us: '4 to 4 1/2 lb a sq yd',
    metric: '2.2 to 2.4 kg per m²',
    source: CARPET,
  },
  {
    id: 'guard-height',
    name: 'Height of a guard over the finished floor, at the least',
    us: '36 in',
    metric: '914 mm',
    source: GUARDS,
  },
  { id: 'guard-opening', name: 'Ball that may not fit through a guard', us: '4 in', metric: '102 mm', source: GUARDS },
  { id: 'stairs-alike', name: 'How far risers of a stair may differ', us: '3/8 in', metric: '9.5 mm', source: RISERS },
  {
    id: 'mobile-floor-load',
    name: 'What the floor of a manufactured home is designed to carry',
    us: '40 lb a sq ft',
    metric: '195 kg per m²',
    source: MOBILE,
  },
  {
    id: 'mobile-wall-limit',
    name: 'Flooring thicker than this may not run under the load-bearing walls',
    us: '1/8 in',
    metric: '3 mm',
    source: MOBILE,
  },
  {
    id: 'mobile-not-allowed',
    name: 'Places one maker of rigid-core plank rules out',
    us: 'boats, campers, RVs and sunrooms',
    source: RIGID,
  },
  {
    id: 'reducer-reach',
    name: 'Height difference that an ordinary reducer covers',
    us: 'about 1/2 in',
    metric: 'about 12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'lip-vertical',
    name: 'Edge that may stand straight up for wheels',
    us: '1/4 in',
    metric: '6.4 mm',
    source: ADA,
  },
  { id: 'lip-beveled', name: 'Highest edge with a bevel', us: '1/2 in', metric: '13 mm', source: ADA },
  { id: 'lip-slope', name: 'Steepest bevel of that edge', us: '1 in 2', source: ADA },
  { id: 'ramp-slope', name: 'Ramp beyond that', us: '1 in 12', source: ADA },
];
