/** Figures for dry enough: limits by method, how many readings, and what a leak allows. */

import type { Source } from '../reply/source.ts';
import { type Cited, TRADE_CUSTOM } from './cited.ts';

export type MoistureMethod = 'wood' | 'chloride' | 'rh';

const WOOD: Source = { title: 'Wood flooring installation guidelines', publisher: 'NWFA', standing: 'reported' };

/** Percent moisture content, pounds per 1000 sq ft in 24 h, percent relative humidity. */
export const MOISTURE_LIMITS: Readonly<Record<MoistureMethod, Cited<number>>> = {
  wood: { name: 'Moisture of a wood subfloor', said: 'at most 12 %', value: 12, source: WOOD },
  chloride: {
    name: 'Moisture of concrete, calcium chloride test',
    said: 'at most 3 lb per 1000 sq ft in 24 h, or the maker’s limit',
    value: 3,
    source: { title: 'F1869', publisher: 'ASTM', standing: 'reported' },
  },
  rh: {
    name: 'Moisture of concrete, humidity inside the slab',
    said: 'at most 75 % RH, or the maker’s limit',
    value: 75,
    source: { title: 'F2170', publisher: 'ASTM', standing: 'reported' },
  },
};

/** From here on drying alone is no answer: the water’s source is looked for. */
export const MOISTURE_STOPS: Readonly<Record<MoistureMethod, Cited<number>>> = {
  wood: { name: 'Moisture at which wood decays', said: '20 % and more', value: 20, source: TRADE_CUSTOM },
  chloride: {
    name: 'Concrete too wet to wait for, calcium chloride test',
    said: '5 lb and more',
    value: 5,
    source: TRADE_CUSTOM,
  },
  rh: {
    name: 'Concrete too wet to wait for, humidity inside the slab',
    said: '90 % RH and more',
    value: 90,
    source: TRADE_CUSTOM,
  },
};

/** Points of moisture content between subfloor and wood flooring. */
export const MOISTURE_SPREAD: Cited<{ readonly strip: number; readonly wide: number }> = {
  name: 'Wood subfloor against wood flooring',
  said: 'within 4 points of moisture, 2 for wide boards',
  value: { strip: 4, wide: 2 },
  source: WOOD,
};

export const WOOD_READINGS: Cited<{ readonly count: number; readonly squareFeet: number }> = {
  name: 'Moisture readings of a wood subfloor',
  said: 'at least 20 per 1000 sq ft',
  value: { count: 20, squareFeet: 1000 },
  source: WOOD,
};

export const CONCRETE_TESTS: Cited<{ readonly first: number; readonly more: number; readonly squareFeet: number }> = {
  name: 'Moisture tests of concrete',
  said: '3 for the first 1000 sq ft, 1 for each 1000 more',
  value: { first: 3, more: 1, squareFeet: 1000 },
  source: { title: 'F1869 and F2170', publisher: 'ASTM', standing: 'from memory' },
};

export const DRY_WITHIN: Cited<{ readonly from: number; readonly to: number }> = {
  name: 'After a leak, dry within',
  said: '24 to 48 hours',
  value: { from: 24, to: 48 },
  source: {
    title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
    publisher: 'US EPA',
    standing: 'published',
  },
};

/** Square feet. */
export const MOULD_AREA: Cited<number> = {
  name: 'Mould that you may clean up yourself',
  said: 'under about 10 sq ft',
  value: 10,
  source: { title: 'Mold cleanup in your home', publisher: 'US EPA', standing: 'reported' },
};

export const MOISTURE_FIGURES = [
  ...Object.values(MOISTURE_LIMITS),
  ...Object.values(MOISTURE_STOPS),
  MOISTURE_SPREAD,
  WOOD_READINGS,
  CONCRETE_TESTS,
  DRY_WITHIN,
  MOULD_AREA,
];
