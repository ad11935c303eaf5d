/** Figures the handbook quotes on lead paint, dust, masks and fumes. */

import type { Source } from '../reply/reply.ts';
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
];
