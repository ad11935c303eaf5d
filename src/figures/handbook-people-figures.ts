/** Figures that the answers about buying, planning, money and people quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// People.

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
    us: '10% or $1,000, whichever is less',
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
  { id: 'dry-within', name: 'Time in which wet materials are dried or removed', us: '24 to 48 hours', source: MOLD },
  {
    id: 'permit-exempt',
    name: 'Finish work that needs no permit in the model code',
    us: 'painting, papering, tiling, carpeting, and similar',
    source: PERMITS,
  },
  {
    id: 'vinyl-price',
    name: 'Price of click vinyl plank',
    us: 'about $1.50 to $5 a sq ft',
    metric: 'about $16 to $54 a m²',
    source: PRICES,
  },
  {
    id: 'laminate-price',
    name: 'Price of laminate',
    us: 'about $1 to $5 a sq ft',
    metric: 'about $11 to $54 a m²',
    source: PRICES,
  },
  {
    id: 'pad-price',
    name: 'Price of underlayment',
    us: 'about $0.30 to $1 a sq ft',
    metric: 'about $3 to $11 a m²',
    source: PRICES,
  },
];

// Planning.

export const PLANNING_QUOTED: readonly QuotedFigure[] = [
  { id: 'tear-out-room', name: 'Tear-out of a carpeted room, one person', us: '1 to 4 hours', source: TRADE_CUSTOM },
  {
    id: 'lay-pace',
    name: 'Floating plank laid by a beginner',
    us: '20 to 40 sq ft an hour',
    metric: '2 to 4 m² an hour',
    source: TRADE_CUSTOM,
  },
  { id: 'nosing-stick', name: 'Usual length of a stair nosing', us: '94 in', metric: '2.4 m', source: COMMON_PRACTICE },
  { id: 'stair-wide', name: 'Usual width of a stair', us: '36 in', metric: '90 cm', source: COMMON_PRACTICE },
];

// Buying.

const F3261: Source = {
  title: 'F3261, Resilient Flooring in Modular Format with Rigid Polymeric Core',
  publisher: 'ASTM',
  year: 2020,
  section: 'wear layer by grade',
  standing: 'reported',
};
const MAKERS: Source = { title: 'Sizes as makers of click plank print them', standing: 'from memory' };
const STORES: Source = { title: 'Return rules as stores post them', standing: 'from memory' };

export const BUYING_QUOTED: readonly QuotedFigure[] = [
  { id: 'extra-straight', name: 'Extra for straight rows, rule of thumb', us: '5 to 10%', source: TRADE_CUSTOM },
  { id: 'extra-diagonal', name: 'Extra for diagonal rows, rule of thumb', us: '10 to 15%', source: TRADE_CUSTOM },
  { id: 'extra-herringbone', name: 'Extra for herringbone, rule of thumb', us: '15 to 20%', source: TRADE_CUSTOM },
  { id: 'extra-mistakes', name: 'Allowance for mistakes on top of a computed count', us: '3%', source: TRADE_CUSTOM },
  { id: 'cartons-open', name: 'Cartons to draw from at a time', us: 'three or four', source: COMMON_PRACTICE },
  { id: 'spare-planks', name: 'Planks to keep for repairs', us: 'six to ten planks', source: TRADE_CUSTOM },
  { id: 'return-days', name: 'Days a store allows for unopened cartons', us: '30 to 90 days', source: STORES },
  { id: 'restock-fee', name: 'Restocking fee on special orders', us: '15 to 25%', source: STORES },
  { id: 'wear-light', name: 'Wear layer for a guest room', us: '6 mil', metric: '0.15 mm', source: MAKERS },
  { id: 'wear-family', name: 'Wear layer for a family', us: '12 mil', metric: '0.3 mm', source: MAKERS },
  { id: 'wear-hard', name: 'Wear layer of the commercial grade', us: '20 mil', metric: '0.5 mm', source: F3261 },
  { id: 'plank-thin', name: 'Thin click plank', us: '4 mm', source: MAKERS },
  { id: 'plank-usual', name: 'Usual thickness of click plank', us: '5 to 8 mm', source: MAKERS },
  {
    id: 'width-usual',
    name: 'Plank width that suits most rooms',
    us: '6 to 7 in',
    metric: '15 to 18 cm',
    source: MAKERS,
  },
  { id: 'width-wide', name: 'Wide plank', us: '9 in', metric: '23 cm', source: MAKERS },
  { id: 'hall-width', name: 'Width of an ordinary hall', us: '3 ft', metric: '90 cm', source: COMMON_PRACTICE },
];

// Before and after.

const WEIGHTS: Source = { title: 'Weights of cartons of vinyl plank', standing: 'reported' };
const STORE: Source = { title: 'Installation guide of a maker of rigid-core plank', year: 2021, standing: 'published' };
const BEETLES: Source = { title: 'Inspectors’ pages on wood-destroying insects', standing: 'reported' };
const DRILLS: Source = {
  title: 'National Electrical Code',
  publisher: 'NFPA',
  section: '314.27(B)',
  standing: 'from memory',
};

export const BEFORE_AND_AFTER_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'order-flat',
    name: 'Flatness to check before ordering',
    us: '3/16 in in 10 ft',
    metric: '5 mm in 3 m',
    source: COMMON_PRACTICE,
  },
  { id: 'order-spare-carton', name: 'Cartons kept closed until the end', us: 'one', source: COMMON_PRACTICE },
  {
    id: 'order-height',
    name: 'Height to plan for with plank and pad',
    us: 'about 5/16 in',
    metric: 'about 8 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'delivery-box', name: 'A carton of vinyl plank', us: '35 to 60 lb', metric: '16 to 27 kg', source: WEIGHTS },
  {
    id: 'delivery-off-slab',
    name: 'How far cartons stand off a concrete slab, one maker',
    us: '4 in',
    metric: '10 cm',
    source: STORE,
  },
  {
    id: 'delivery-room-range',
    name: 'Room temperature one maker names for laying',
    us: '35 to 100 °F',
    metric: '2 to 38 °C',
    source: STORE,
  },
  {
    id: 'record-planks',
    name: 'Planks worth keeping for repairs',
    us: 'a carton of the same lot',
    source: COMMON_PRACTICE,
  },
  {
    id: 'beetle-hole',
    name: 'Exit hole of a powderpost beetle',
    us: '1/32 to 1/16 in',
    metric: 'about 1 to 2 mm',
    source: BEETLES,
  },
  { id: 'outlet-box-kind', name: 'Box that may sit in a floor', us: 'one listed for floors', source: DRILLS },
];
