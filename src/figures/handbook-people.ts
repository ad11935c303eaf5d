/** Figures the handbook quotes on installers, rentals, insurance and permits. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const PRICES: Source = { title: 'Cost guides for installing vinyl plank, US, 2024 to 2026', standing: 'reported' };
const STAIR_PRICES: Source = { title: 'A cost guide for installing vinyl plank, US, 2026', standing: 'reported' };
const DEPOSITS: Source = {
  title: 'Business and Professions Code 7159.5',
  publisher: 'State of California',
  section: '(a)(3)',
  standing: 'published',
};
const USEFUL_LIFE: Source = { title: 'Guides for landlords and tenants', standing: 'reported' };
const DEDUCTIONS: Source = {
  title: 'Guide to tenants’ and landlords’ rights: deductions for carpet',
  publisher: 'California Department of Consumer Affairs',
  standing: 'reported',
};
const FLOOD: Source = {
  title: 'Flood insurance: proof of loss',
  publisher: 'FEMA, National Flood Insurance Program',
  standing: 'reported',
};
const MOLD: Source = {
  title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
  publisher: 'US EPA',
  standing: 'published',
};
const PERMITS: Source = {
  title: 'International Residential Code',
  publisher: 'ICC',
  section: 'R105.2',
  standing: 'reported',
};

export const PEOPLE_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'labor-click',
    name: 'Labor to lay click plank in a prepared room',
    us: 'about $1.50 to $4 a sq ft',
    metric: 'about $16 to $43 a m²',
    source: PRICES,
  },
  {
    id: 'labor-tear-out',
    name: 'Labor to take out carpet or a floating floor',
    us: 'about $0.50 to $1.50 a sq ft',
    metric: 'about $5 to $16 a m²',
    source: PRICES,
  },
  { id: 'labor-step', name: 'Labor for one stair step in plank', us: 'about $80 to $160', source: STAIR_PRICES },
  { id: 'labor-quotes', name: 'Quotes worth getting', us: 'three', source: COMMON_PRACTICE },
  {
    id: 'deposit-limit',
    name: 'Most a contractor may take up front in California',
    us: '10 % or $1,000, whichever is less',
    source: DEPOSITS,
  },
  { id: 'carpet-life', name: 'Useful life of carpet in deposit disputes', us: '5 to 10 years', source: USEFUL_LIFE },
  { id: 'carpet-example-age', name: "Age of the carpet in the state's example", us: '8 years', source: DEDUCTIONS },
  { id: 'carpet-example-life', name: "Life of the carpet in the state's example", us: '10 years', source: DEDUCTIONS },
  { id: 'carpet-example-cost', name: "Price of new carpet in the state's example", us: '$1,000', source: DEDUCTIONS },
  { id: 'carpet-example-charge', name: "What may be charged in the state's example", us: '$200', source: DEDUCTIONS },
  {
    id: 'flood-proof-of-loss',
    name: 'Time to send the proof of loss after a flood, US flood insurance',
    us: '60 days',
    source: FLOOD,
  },
  { id: 'dry-within', name: 'Time in which wet materials are dried or taken out', us: '24 to 48 hours', source: MOLD },
  {
    id: 'permit-exempt',
    name: 'Finish work that needs no permit in the model code',
    us: 'painting, papering, tiling, carpeting, and similar',
    source: PERMITS,
  },
];
