/** Figures quoted by the handbook on old floors that stay, and on getting rid of those that go. */

import type { Source } from '../reply/reply.ts';
import { TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
