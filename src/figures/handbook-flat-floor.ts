/** Figures quoted by the handbook on flatness, high spots and leveling compound. */

import { CAUTIOUS_DEFAULT, COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
    source: { title: 'Trade guidance for levelling', standing: 'reported' },
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
