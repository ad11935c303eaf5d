/** Figures quoted by the handbook on film, crawl spaces, leaks, mold and odors. */

import type { Source } from '../reply/reply.ts';
import { TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
    us: '20 %',
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
