/** Figures quoted by the handbook on concrete: cracks, drying, moisture tests and basements. */

import type { Source } from '../reply/reply.ts';
import { CAUTIOUS_DEFAULT } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

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
    us: '75 % RH',
    source: F710,
  },
  {
    id: 'slab-rh-plank',
    name: 'Humidity inside a slab, common limit for click plank',
    us: '85 % RH',
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
  { id: 'rh-probe-depth', name: 'Depth of a probe in a slab that dries from the top', us: '40 %', source: F2170 },
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
    us: '60 %, better 30 to 50 %',
    source: {
      title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
      publisher: 'US EPA',
      standing: 'published',
    },
  },
];
