/** Figures the handbook quotes on lead paint, dust, masks and fumes. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
  { id: 'lead-oldest-share', name: 'Share of the oldest homes with some lead paint', us: '87 %', source: LEAD_SHARES },
  {
    id: 'lead-newest-share',
    name: 'Share of homes built from 1960 to 1977 with some lead paint',
    us: '24 %',
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
  { id: 'silica-collector', name: "Dust a grinder's collector must hold back", us: '99 %', source: SILICA },
  { id: 'n95-holds', name: 'Particles an N95 holds back at the least', us: '95 %', source: FILTERS },
  { id: 'p100-holds', name: 'Particles a P100 holds back at the least', us: '99.97 %', source: FILTERS },
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
