/** Figures the handbook quotes on asbestos in floors. */

import type { Source } from '../reply/reply.ts';
import { CAUTIOUS_DEFAULT } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
    us: 'more than 1 %',
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
