/** Figures that the answers about old materials, dust, damp and smell quote. */

import type { Source } from '../reply/reply.ts';
import { CAUTIOUS_DEFAULT, COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// Asbestos floors.

const OSHA: Source = {
  title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
  publisher: 'OSHA',
  year: 1997,
  standing: 'published',
};
const NESHAP: Source = {
  title: 'National Emission Standard for Asbestos',
  publisher: 'US EPA',
  section: '40 CFR 61.141',
  standing: 'published',
};
const FELT: Source = {
  title: 'Clarification of asbestos materials that remain banned',
  publisher: 'US EPA',
  year: 1999,
  standing: 'reported',
};
const ABROAD: Source = { title: 'National bans on asbestos', standing: 'reported' };
const LAB_PRICES: Source = { title: 'Lab prices for bulk samples', standing: 'from memory' };
const LAB: Source = {
  title: 'Asbestos for homeowners',
  publisher: 'Wisconsin State Laboratory of Hygiene',
  standing: 'published',
};

export const ASBESTOS_FLOORS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'asbestos-presumed-until',
    name: 'Year up to which resilient floors and their glue are presumed to hold asbestos',
    us: '1980',
    source: OSHA,
  },
  {
    id: 'asbestos-house-margin',
    name: 'House whose untested resilient floor is treated as asbestos, built up to',
    us: '1989',
    metric: '2005 outside the US',
    source: CAUTIOUS_DEFAULT,
  },
  {
    id: 'asbestos-counts-from',
    name: 'Share from which a material counts as containing asbestos',
    us: 'more than 1%',
    source: NESHAP,
  },
  {
    id: 'asbestos-felt-ban',
    name: 'Year from which flooring felt with asbestos may not be made in the US',
    us: '1989',
    source: FELT,
  },
  {
    id: 'asbestos-end-abroad',
    name: 'Years in which sale ended elsewhere',
    us: '1999 in the UK, 2003 in Australia',
    source: ABROAD,
  },
  {
    id: 'asbestos-sample-price',
    name: 'Lab price of one asbestos sample',
    us: 'about $25 to $100',
    source: LAB_PRICES,
  },
  {
    id: 'asbestos-sample-size',
    name: 'Piece of floor a lab wants',
    us: 'about 1 in by 1 in, every layer in it',
    metric: 'about 25 by 25 mm, every layer in it',
    source: LAB,
  },
];

// Lead and dust.

const RRP: Source = {
  title: 'Renovation, Repair and Painting rule: questions and answers',
  publisher: 'US EPA',
  standing: 'published',
};
const RRP_PRACTICES: Source = {
  title: 'Renovation, Repair and Painting rule: work practices',
  publisher: 'US EPA',
  section: '40 CFR 745.85',
  standing: 'reported',
};
const LEAD_SHARES: Source = {
  title: 'Protect Your Family From Lead in Your Home',
  publisher: 'US EPA',
  standing: 'reported',
};
const LEAD_ABROAD: Source = { title: 'National rules on lead in paint', standing: 'from memory' };
const DUST_LEVELS: Source = {
  title: 'Lead dust: action levels after abatement',
  publisher: 'US EPA',
  year: 2024,
  standing: 'from memory',
};
const SILICA: Source = {
  title: '29 CFR 1926.1153: respirable crystalline silica',
  publisher: 'OSHA',
  section: '(d)(1) and Table 1',
  standing: 'reported',
};
const FILTERS: Source = { title: 'Respirator filters, 42 CFR 84', publisher: 'NIOSH', standing: 'reported' };
const RODENTS: Source = { title: 'Clean up after rodents', publisher: 'CDC', standing: 'published' };

export const LEAD_AND_DUST_QUOTED: readonly QuotedFigure[] = [
  { id: 'lead-built-before', name: 'Homes whose paint may hold lead, US', us: '1978', source: RRP },
  {
    id: 'lead-built-before-abroad',
    name: 'Homes whose paint may hold lead, elsewhere',
    us: '1990 in Canada, 1992 in the UK, 1997 in Australia',
    source: LEAD_ABROAD,
  },
  {
    id: 'lead-oldest-year',
    name: 'Oldest group of homes in the survey of lead paint, built before',
    us: '1940',
    source: LEAD_SHARES,
  },
  { id: 'lead-oldest-share', name: 'Share of the oldest homes with some lead paint', us: '87%', source: LEAD_SHARES },
  {
    id: 'lead-newest-share',
    name: 'Share of homes built from 1960 to 1977 with some lead paint',
    us: '24%',
    source: LEAD_SHARES,
  },
  {
    id: 'lead-minor-area',
    name: 'Old paint a contractor may disturb in a room in 30 days before the federal rule applies',
    us: '6 sq ft',
    metric: '0.55 m²',
    source: RRP,
  },
  {
    id: 'lead-heat-gun-limit',
    name: 'Hottest a heat gun may run on lead paint in paid work',
    us: '1,100 °F',
    metric: '590 °C',
    source: RRP_PRACTICES,
  },
  {
    id: 'lead-plastic-reach',
    name: 'How far plastic on the floor reaches beyond the work',
    us: '6 ft',
    metric: '1.8 m',
    source: RRP_PRACTICES,
  },
  {
    id: 'lead-dust-floor-level',
    name: 'Lead dust on a floor below which cleaning after abatement is done',
    us: '5 µg per sq ft',
    metric: '54 µg per m²',
    source: DUST_LEVELS,
  },
  {
    id: 'silica-limit',
    name: "Silica in the air, an employer's limit over 8 hours",
    us: '50 µg per m³',
    source: SILICA,
  },
  { id: 'silica-collector', name: "Dust a grinder's collector must hold back", us: '99%', source: SILICA },
  { id: 'n95-holds', name: 'Particles an N95 holds back at the least', us: '95%', source: FILTERS },
  { id: 'p100-holds', name: 'Particles a P100 holds back at the least', us: '99.97%', source: FILTERS },
  {
    id: 'mask-change',
    name: 'How long a disposable mask lasts in dusty work',
    us: 'about 4 hours',
    source: COMMON_PRACTICE,
  },
  {
    id: 'droppings-soak',
    name: 'How long disinfectant stays on droppings before wiping',
    us: '5 minutes',
    source: RODENTS,
  },
  {
    id: 'droppings-bleach',
    name: 'Household bleach for rodent droppings',
    us: '1 1/2 cups to a gallon of water',
    metric: '1 part to 9 parts water',
    source: RODENTS,
  },
  { id: 'droppings-air-out', name: 'How long a room with droppings is aired first', us: '30 minutes', source: RODENTS },
];

// Damp and smell.

const EPA: Source = {
  title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
  publisher: 'US EPA',
  standing: 'published',
};
const CRAWL: Source = {
  title: 'International Residential Code, Under-floor space',
  publisher: 'ICC',
  year: 2021,
  section: 'R408',
  standing: 'reported',
};

export const DAMP_AND_SMELL_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'film-thickness',
    name: 'Film on concrete under a floating plank',
    us: '6 mil',
    metric: '0.15 mm',
    source: { title: 'Makers’ guides for floating plank', standing: 'reported' },
  },
  {
    id: 'film-lap',
    name: 'Overlap of film under a floating plank',
    us: '6 to 8 in',
    metric: '15 to 20 cm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'film-turn-up',
    name: 'Film left up the wall until the base goes on',
    us: '2 in',
    metric: '5 cm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'crawl-lap',
    name: 'Overlap of the ground cover in a sealed crawl space',
    us: '6 in',
    metric: '15 cm',
    source: CRAWL,
  },
  {
    id: 'crawl-turn-up',
    name: 'Ground cover up the wall of a sealed crawl space',
    us: '6 in',
    metric: '15 cm',
    source: CRAWL,
  },
  {
    id: 'crawl-vents',
    name: 'Vents of a crawl space with bare ground',
    us: '1 sq ft of vent for 150 sq ft',
    metric: '1 m² of vent for 150 m²',
    source: CRAWL,
  },
  {
    id: 'crawl-vents-covered',
    name: 'Vents of a crawl space whose ground is covered',
    us: '1 sq ft for 1500 sq ft',
    metric: '1 m² for 1500 m²',
    source: CRAWL,
  },
  { id: 'leak-dry-time', name: 'After a leak, dry within', us: '24 to 48 hours', source: EPA },
  {
    id: 'mold-diy-area',
    name: 'Mold that you may clean up yourself, less than about',
    us: '10 sq ft',
    metric: '1 m²',
    source: EPA,
  },
  {
    id: 'wood-decay-line',
    name: 'Moisture below which wood is kept so that it does not rot',
    us: '20%',
    source: {
      title: 'Improvements in decay resistance based on moisture exclusion',
      publisher: 'USDA Forest Products Laboratory',
      year: 2000,
      standing: 'published',
    },
  },
  {
    id: 'odor-primer-wait',
    name: 'Wait between the last coat of odor-blocking primer and the floor',
    us: '24 hours',
    source: TRADE_CUSTOM,
  },
  {
    id: 'odor-primer-coats',
    name: 'Coats of odor-blocking primer on a stained subfloor',
    us: 'two coats',
    source: TRADE_CUSTOM,
  },
];
