/** Figures that the answers about floors that stay, stairs, pads and troubles quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// Covering over.

const COLLECTION: Source = {
  title: 'Bulky waste: collection rules of a US city',
  publisher: 'City of DeKalb, FAQ 221',
  standing: 'published',
};
const HAULING: Source = { title: 'Hauling guides', standing: 'reported' };

export const COVERING_OVER_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'grout-joint-limit',
    name: 'Width of a grout joint that some makers of click plank let you leave open',
    us: '1/4 in',
    metric: '6 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'tile-lip',
    name: 'Height difference between two tiles above which the edge is ground or filled',
    us: '1/16 in',
    metric: '1.5 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'vinyl-layers-covered',
    name: 'Layers of old vinyl that makers of click plank commonly let you cover',
    us: 'one layer',
    source: TRADE_CUSTOM,
  },
  {
    id: 'bundle-length',
    name: 'Length of a carpet roll that a collection takes, at most',
    us: '4 ft',
    metric: '1.2 m',
    source: COLLECTION,
  },
  {
    id: 'bundle-weight',
    name: 'Weight of a carpet roll that a collection takes, at most',
    us: '50 lb',
    metric: '23 kg',
    source: COLLECTION,
  },
  {
    id: 'bundles-weekly',
    name: 'Carpet rolls that a collection takes in a week, at most',
    us: '10 rolls a week',
    source: COLLECTION,
  },
  {
    id: 'trash-can-size',
    name: 'Trash can that a collection takes, at most',
    us: '32 gallons',
    metric: '120 L',
    source: COLLECTION,
  },
  {
    id: 'smallest-dumpster',
    name: 'Smallest roll-off container',
    us: '10 cubic yards',
    metric: '8 m³',
    source: HAULING,
  },
  {
    id: 'pickup-bed',
    name: 'Level bed of a pickup, 8 ft long',
    us: '2 cubic yards',
    metric: '1.5 m³',
    source: HAULING,
  },
];

// Special places.

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

const CAR_LOADING: Source = {
  title: '49 CFR 575.6, steps for determining a correct load limit',
  publisher: 'US Department of Transportation, NHTSA',
  section: '(a)(5)',
  standing: 'reported',
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
    id: 'car-capacity',
    name: 'People and cargo a car may carry together',
    us: '800 to 900 lb',
    metric: '360 to 410 kg',
    source: { title: 'Door stickers of common cars', standing: 'from memory' },
  },
  {
    id: 'person-weight',
    name: 'A person, as car makers’ loading steps count one',
    us: '150 lb',
    metric: '68 kg',
    source: CAR_LOADING,
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

// Pad and sound.

const IBC = {
  title: 'International Building Code, Sound transmission',
  publisher: 'ICC',
  year: 2021,
  section: '1206',
  standing: 'reported',
} as const;

export const PAD_AND_SOUND_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'underlay-vinyl',
    name: 'Thickest underlayment that makers of click vinyl commonly allow',
    us: '1/16 in',
    metric: '1.5 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'underlay-laminate',
    name: 'Usual thickness of underlayment below laminate',
    us: '1/8 in',
    metric: '3 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'underlay-roll',
    name: 'What a roll of underlayment usually covers',
    us: '100 sq ft',
    metric: '10 m²',
    source: TRADE_CUSTOM,
  },
  {
    id: 'sound-code',
    name: 'IIC and STC between dwellings, tested in a laboratory, at least',
    us: '50',
    source: IBC,
  },
  { id: 'sound-code-field', name: 'The same, measured in the finished building', us: '45', source: IBC },
  {
    id: 'sound-house-rule',
    name: 'IIC that rules of condominiums commonly want',
    us: '50 to 60',
    source: TRADE_CUSTOM,
  },
];

// Floor care.

const CARE: Source = { title: 'Care guides for vinyl plank', standing: 'reported' };
const CARTONS: Source = { title: 'Instructions of a maker of rigid-core plank', year: 2022, standing: 'published' };

export const FLOOR_CARE_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'scratch-shallow',
    name: 'Scratch that hardly catches a fingernail',
    us: 'surface only',
    source: COMMON_PRACTICE,
  },
  { id: 'mop-often', name: 'How often to damp-mop', us: 'about once a week', source: CARE },
  {
    id: 'sun-surface',
    name: 'Floor temperature behind glass above which plank may soften or swell',
    us: 'about 120 °F',
    metric: 'about 50 °C',
    source: CARE,
  },
  { id: 'cartons-to-open', name: 'Cartons opened to inspect before laying', us: '2 or 3', source: CARTONS },
];

// Floor troubles.

const FLOOR_TROUBLES_RIGID: Source = {
  title: 'Instructions of makers of rigid-core plank',
  year: 2022,
  standing: 'published',
};
const FLAT: Source = { title: 'F710 and makers’ instructions', publisher: 'ASTM', standing: 'reported' };

export const FLOOR_TROUBLES_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'trouble-gap-wall',
    name: 'Gap at every wall of a floating floor',
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'trouble-flat',
    name: 'Flatness a floating floor wants',
    us: '3/16 in in 10 ft',
    metric: '5 mm in 3 m',
    source: FLAT,
  },
  {
    id: 'trouble-room-range',
    name: 'Room temperature makers name, strictest',
    us: '55 to 85 °F',
    metric: '13 to 29 °C',
    source: FLOOR_TROUBLES_RIGID,
  },
  {
    id: 'trouble-sunroom-run',
    name: 'Longest run one maker allows without steady heating and cooling',
    us: '30 ft',
    metric: '9 m',
    source: FLOOR_TROUBLES_RIGID,
  },
  {
    id: 'trouble-sink-allowed',
    name: 'Movement underfoot that is common in a floating floor',
    us: 'about 1/16 in',
    metric: '1 to 2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'trouble-settle',
    name: 'Time in which new-floor noises often settle',
    us: 'a few weeks',
    source: COMMON_PRACTICE,
  },
];
