/** Figures that the answers about the subfloor and the slab quote. */

import type { Source } from '../reply/reply.ts';
import { CAUTIOUS_DEFAULT, COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// Concrete slab.

const F710: Source = {
  title: 'F710 and flooring makers’ instructions',
  publisher: 'ASTM',
  standing: 'reported',
};
const F1869: Source = { title: 'F1869, calcium chloride test of concrete', publisher: 'ASTM', standing: 'reported' };
const F2170: Source = {
  title: 'F2170, relative humidity inside concrete',
  publisher: 'ASTM',
  section: '§10',
  standing: 'reported',
};
const D4263: Source = { title: 'D4263, plastic sheet test of concrete', publisher: 'ASTM', standing: 'reported' };

export const CONCRETE_SLAB_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'crack-question',
    name: 'Width of a crack in a slab from which somebody should look at it first',
    us: '1/4 in',
    metric: '6 mm',
    source: CAUTIOUS_DEFAULT,
  },
  {
    id: 'concrete-cure',
    name: 'Time in which concrete reaches its rated strength',
    us: '28 days',
    source: { title: 'Trade guidance on concrete floors', standing: 'reported' },
  },
  {
    id: 'concrete-drying',
    name: 'Drying of concrete from one side, rule of thumb',
    us: '28 to 30 days for each inch',
    metric: 'a day or a little more for each millimeter',
    source: {
      title: 'Artistry meets practicality: wet slabs',
      publisher: 'The Construction Specifier',
      standing: 'reported',
    },
  },
  {
    id: 'new-slab-wait',
    name: 'Age of a slab that makers of plank commonly want before they look at tests',
    us: '60 days',
    source: { title: 'Makers’ guides for floating plank', standing: 'reported' },
  },
  {
    id: 'slab-rh-limit',
    name: 'Humidity inside a slab, strict limit',
    us: '75% RH',
    source: F710,
  },
  {
    id: 'slab-rh-plank',
    name: 'Humidity inside a slab, common limit for click plank',
    us: '85% RH',
    source: F710,
  },
  {
    id: 'slab-chloride-limit',
    name: 'Calcium chloride test, strict limit',
    us: '3 lb per 1000 sq ft in 24 h',
    metric: '15 g/m² in 24 h',
    source: F710,
  },
  {
    id: 'slab-chloride-plank',
    name: 'Calcium chloride test, common limit for click plank, in 24 h',
    us: '5 lb',
    metric: '24 g/m²',
    source: F710,
  },
  {
    id: 'slab-tests',
    name: 'Number of moisture tests of a slab',
    us: '3 in the first 1000 sq ft and 1 in each further 1000',
    metric: '3 in the first 100 m² and 1 in each further 100',
    source: F2170,
  },
  { id: 'rh-probe-depth', name: 'Depth of a probe in a slab that dries from the top', us: '40%', source: F2170 },
  { id: 'chloride-hours', name: 'Time a calcium chloride dish stands', us: '60 to 72 hours', source: F1869 },
  {
    id: 'sheet-test-size',
    name: 'Side of the plastic sheet taped to the concrete',
    us: '18 in',
    metric: '45 cm',
    source: D4263,
  },
  { id: 'sheet-test-hours', name: 'Time the sheet stays down, at least', us: '16 hours', source: D4263 },
  {
    id: 'wood-readings',
    name: 'Number of meter readings on a wood subfloor',
    us: '20 per 1000 sq ft',
    metric: '20 per 100 m²',
    source: { title: 'Wood flooring installation guidelines', publisher: 'NWFA', standing: 'reported' },
  },
  {
    id: 'indoor-humidity',
    name: 'Humidity of indoor air, at most, and better',
    us: '60%, better 30 to 50%',
    source: {
      title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
      publisher: 'US EPA',
      standing: 'published',
    },
  },
];

// Firm subfloor.

const APA: Source = {
  title: 'Engineered Wood Construction Guide, E30V',
  publisher: 'APA',
  year: 2011,
  section: 'Table 14, pp. 39 and 40',
  standing: 'published',
};
const NWFA: Source = {
  title: 'A guide to subfloors used under wood flooring: NWFA installation guidelines',
  publisher: 'Wood Floor Business',
  standing: 'reported',
};
const NAHB: Source = {
  title: 'Residential Construction Performance Guidelines',
  publisher: 'NAHB',
  standing: 'reported',
};

export const FIRM_SUBFLOOR_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'wood-subfloor-moisture',
    name: 'Moisture of a wood subfloor, at most',
    us: '12%',
    source: { title: 'Wood flooring installation guidelines', publisher: 'NWFA', standing: 'reported' },
  },
  {
    id: 'plywood-on-joists',
    name: 'Plywood subfloor on joists 16 in apart, at least',
    us: '5/8 in',
    metric: '16 mm',
    source: NWFA,
  },
  {
    id: 'osb-on-joists',
    name: 'OSB subfloor on joists 16 in apart, at least',
    us: '23/32 in',
    metric: '18 mm',
    source: NWFA,
  },
  {
    id: 'usual-joist-spacing',
    name: 'Joists, center to center',
    us: '16 in',
    metric: '40 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'wide-joist-panel',
    name: 'Plywood or OSB subfloor on joists from 16 to 19.2 in apart, at least',
    us: '3/4 in',
    metric: '19 mm',
    source: NWFA,
  },
  { id: 'overlay-smooth', name: 'Plywood over a smooth subfloor, at least', us: '1/4 in', metric: '6 mm', source: APA },
  {
    id: 'overlay-boards',
    name: 'Plywood over boards or an uneven subfloor, at least',
    us: '11/32 in',
    metric: '9 mm',
    source: APA,
  },
  {
    id: 'overlay-thin-nails',
    name: 'Ring-shank nails in thin plywood: along the edges, and each way between',
    us: '3 in along the edges and 6 in between',
    metric: '75 mm along the edges and 150 mm between',
    source: APA,
  },
  {
    id: 'overlay-nails',
    name: 'Ring-shank nails in plywood over boards: along the edges, and each way between',
    us: '6 in along the edges and 8 in between',
    metric: '150 mm along the edges and 200 mm between',
    source: APA,
  },
  {
    id: 'overlay-edge',
    name: 'Distance of those nails from the edge of the panel',
    us: '3/8 in',
    metric: '10 mm',
    source: APA,
  },
  {
    id: 'overlay-offset',
    name: 'Offset of a seam from the seams below, at least',
    us: '2 in',
    metric: '50 mm',
    source: APA,
  },
  {
    id: 'overlay-gap',
    name: 'Gap between plywood sheets of a second layer',
    us: '1/32 in',
    metric: '1 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'joist-deflection',
    name: 'Bend of a floor joist under its full load, at most, for a span of 15 ft',
    us: '1/2 in over 15 ft',
    metric: '13 mm over 4.5 m',
    source: {
      title: 'International Residential Code, Table R301.7: floors, span divided by 360',
      publisher: 'ICC',
      standing: 'reported',
    },
  },
  {
    id: 'slope-benchmark',
    name: 'Height between two points of a wood floor in a new house, at most',
    us: '1/2 in within 20 ft',
    metric: '13 mm within 6 m',
    source: NAHB,
  },
  {
    id: 'overlay-usual',
    name: 'Plywood added over a subfloor, as most people buy it',
    us: '1/2 in',
    metric: '12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'squeak-screw-length',
    name: 'Screws through a 3/4 in panel into the joist',
    us: '2 to 2 1/2 in',
    metric: '50 to 65 mm',
    source: COMMON_PRACTICE,
  },
];

// Flat floor.

const COINS = {
  title: 'Coin specifications: cent, 1.52 mm thick',
  publisher: 'United States Mint',
  standing: 'published',
} as const;
const TABLE_1 = {
  title: '29 CFR 1926.1153(c)(1), Table 1: handheld grinders',
  publisher: 'OSHA',
  standing: 'reported',
} as const;

export const FLAT_FLOOR_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'floor-flatness',
    name: 'Flat enough for a floating floor',
    us: '3/16 in in 10 ft, or 1/8 in in 6 ft',
    metric: '5 mm in 3 m, or 3 mm in 2 m',
    source: { title: 'F710 and trade guidance for floating floors', publisher: 'ASTM', standing: 'reported' },
  },
  {
    id: 'floor-flatness-nailed',
    name: 'Flat enough for nailed-down wood',
    us: '1/4 in in 10 ft, or 3/16 in in 6 ft',
    metric: '6 mm in 3 m, or 5 mm in 2 m',
    source: { title: 'Hardwood Floors, February 2018', publisher: 'NWFA', year: 2018, standing: 'published' },
  },
  {
    id: 'straightedge-length',
    name: 'Length of the straightedge that checks a floor',
    us: '6 to 10 ft',
    metric: '2 to 3 m',
    source: COMMON_PRACTICE,
  },
  {
    id: 'straightedge-step',
    name: 'Distance between two places where the straightedge is set down',
    us: '2 ft',
    metric: '60 cm',
    source: COMMON_PRACTICE,
  },
  { id: 'penny-pair', name: 'Two US pennies, stacked', us: '1/8 in', metric: '3 mm', source: COINS },
  { id: 'penny-trio', name: 'Three US pennies, stacked', us: '3/16 in', metric: '4.5 mm', source: COINS },
  {
    id: 'panel-sanding',
    name: 'Most that is sanded off a panel at a seam',
    us: '1/16 in',
    metric: '1.5 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'grinder-airflow',
    name: 'Air that a vacuum moves at a shrouded grinder, for each inch of wheel',
    us: '25 cfm',
    metric: '0.7 m³ a minute',
    source: TABLE_1,
  },
  {
    id: 'grinder-hours',
    name: 'Hours of shrouded grinding indoors in a shift after which a respirator is required at work',
    us: '4 hours',
    source: TABLE_1,
  },
  {
    id: 'leveler-wood-stop',
    name: 'Dip in a wood floor that is a question about its structure first',
    us: '3/4 in',
    metric: '19 mm',
    source: CAUTIOUS_DEFAULT,
  },
  {
    id: 'leveler-weight',
    name: 'What leveling compound weighs for each inch of depth',
    us: '12 to 14 lb a sq ft',
    metric: '60 to 70 kg/m²',
    source: { title: 'Trade guidance for leveling', standing: 'reported' },
  },
  {
    id: 'leveler-pour',
    name: 'Deepest single pour of leveling compound',
    us: '1 in',
    metric: '25 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'leveler-walk',
    name: 'Wait before you walk on leveling compound',
    us: '2 to 6 hours',
    source: TRADE_CUSTOM,
  },
  {
    id: 'leveler-floor',
    name: 'Wait before plank goes over thin leveling compound',
    us: '24 hours',
    source: TRADE_CUSTOM,
  },
  {
    id: 'patch-dry',
    name: 'Wait before plank goes over a skim of cement patch',
    us: '1 to 4 hours',
    source: TRADE_CUSTOM,
  },
  {
    id: 'leveler-primer-dry',
    name: 'Wait between primer and leveling compound',
    us: '1 to 3 hours',
    source: TRADE_CUSTOM,
  },
];

// Mending.

const PANELS: Source = {
  title: 'Engineered Wood Construction Guide, E30: floors',
  publisher: 'APA',
  standing: 'reported',
};

export const MENDING_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'patch-screws',
    name: 'Screws along the edges of a subfloor panel',
    us: '6 in',
    metric: '150 mm',
    source: PANELS,
  },
  {
    id: 'squeak-screws',
    name: 'Screws along a joist against squeaks',
    us: '6 to 8 in',
    metric: '150 to 200 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'squeak-bite',
    name: 'Screw in the joist',
    us: 'an inch or more',
    metric: '25 mm or more',
    source: COMMON_PRACTICE,
  },
];
