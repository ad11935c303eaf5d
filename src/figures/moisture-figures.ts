/** Moisture figures: limits by method, number of readings, and drying after a leak. */

import type { Source } from '../reply/reply.ts';
import { CAUTIOUS_DEFAULT, type Cited } from './cited.ts';

/** A wood meter, calcium chloride, relative humidity in the slab, or carbide. */
export type MoistureMethod = 'wood' | 'chloride' | 'rh' | 'cm';

/** One limit per method, except carbide, whose limit depends on the screed's binder. */
export type MoistureKind = 'wood' | 'chloride' | 'rh' | 'cement' | 'gypsum';

const WOOD: Source = { title: 'Wood flooring installation guidelines', publisher: 'NWFA', standing: 'reported' };
const CARBIDE: Source = { title: 'Trade guidance on screeds, carbide method', standing: 'reported' };

/** Source of the limits for concrete; the standard for the test method doesn't set any. */
const concrete = (method: string): Source => ({
  title: `F710 and flooring makers’ instructions; ${method} is only the test`,
  publisher: 'ASTM',
  standing: 'reported',
});

/** Percent moisture content, pounds per 1000 sq ft in 24 h, percent relative humidity, percent by carbide. */
export const MOISTURE_LIMITS: Readonly<Record<MoistureKind, Cited<number>>> = {
  wood: { name: 'Moisture of a wood subfloor', said: 'at most 12%', value: 12, source: WOOD },
  chloride: {
    name: 'Moisture of concrete, calcium chloride test',
    said: 'at most 3 lb per 1000 sq ft in 24 h, or the flooring maker’s limit; 5 lb is common for plank',
    value: 3,
    source: concrete('F1869'),
  },
  rh: {
    name: 'Moisture of concrete, humidity inside the slab',
    said: 'at most 75% RH, or the flooring maker’s limit; 85% is common for plank',
    value: 75,
    source: concrete('F2170'),
  },
  cement: {
    name: 'Moisture of a cement screed, carbide (CM) test',
    said: 'at most 2% CM, 1.8% where it is heated, or the flooring maker’s limit',
    value: 2,
    source: CARBIDE,
  },
  gypsum: {
    name: 'Moisture of a calcium sulfate (anhydrite) screed, carbide (CM) test',
    said: 'at most 0.5% CM, or the flooring maker’s limit',
    value: 0.5,
    source: CARBIDE,
  },
};

/** Above this, drying alone won't do: find the source of the water. */
export const MOISTURE_STOPS: Readonly<Record<MoistureKind, Cited<number>>> = {
  wood: {
    name: 'Wood is kept below',
    said: '20% moisture: serious decay needs fiber saturation, about 30%',
    value: 20,
    source: {
      title: 'Improvements in decay resistance based on moisture exclusion',
      publisher: 'USDA Forest Products Laboratory',
      year: 2000,
      standing: 'published',
    },
  },
  chloride: {
    name: 'Concrete too wet to wait for, calcium chloride test',
    said: '8 lb and more',
    value: 8,
    source: CAUTIOUS_DEFAULT,
  },
  rh: {
    name: 'Concrete too wet to wait for, humidity inside the slab',
    said: '90% RH and more',
    value: 90,
    source: CAUTIOUS_DEFAULT,
  },
  cement: {
    name: 'Cement screed too wet to wait for, carbide (CM) test',
    said: '4% CM and more',
    value: 4,
    source: CAUTIOUS_DEFAULT,
  },
  gypsum: {
    name: 'Calcium sulfate screed too wet to wait for, carbide (CM) test',
    said: '1% CM and more',
    value: 1,
    source: CAUTIOUS_DEFAULT,
  },
};

/** The range of the meters and tests, each in its unit. */
export const MOISTURE_RANGES: Readonly<
  Record<MoistureMethod, Cited<{ readonly least: number; readonly most: number }>>
> = {
  wood: range('a wood meter', 1, 60, '%'),
  chloride: range('a calcium chloride test', 0.1, 30, ' lb'),
  rh: range('a humidity probe in a slab', 10, 100, '% RH'),
  cm: range('a carbide test', 0.1, 15, '% CM'),
};

function range(name: string, least: number, most: number, unit: string) {
  return {
    name: `Readings from ${name}`,
    said: `from ${least} to ${most}${unit}; others are asked back`,
    value: { least, most },
    source: CAUTIOUS_DEFAULT,
  };
}

/** What many makers of plank allow on concrete, in the units of the limits. */
export const PLANK_ALLOWS: Cited<{ readonly chloride: number; readonly rh: number }> = {
  name: 'Moisture of concrete that many plank makers allow',
  said: '5 lb by calcium chloride, 85% RH inside the slab',
  value: { chloride: 5, rh: 85 },
  source: { title: 'Installation instructions of plank makers', standing: 'reported' },
};

/** Percentage points of moisture content between subfloor and wood flooring. */
export const MOISTURE_SPREAD: Cited<{ readonly strip: number; readonly wide: number }> = {
  name: 'Wood subfloor against wood flooring',
  said: 'within 4 points of moisture, 2 for boards of 3 in and wider; on average, here for each reading, which is stricter',
  value: { strip: 4, wide: 2 },
  source: WOOD,
};

export const WOOD_READINGS: Cited<{ readonly count: number; readonly squareFeet: number }> = {
  name: 'Moisture readings of a wood subfloor',
  said: 'at least 20 per 1000 sq ft; their average counts there, here each one, which is stricter',
  value: { count: 20, squareFeet: 1000 },
  source: WOOD,
};

export const CONCRETE_TESTS: Cited<{ readonly first: number; readonly more: number; readonly squareFeet: number }> = {
  name: 'Moisture tests of concrete',
  said: '3 in the first 1000 sq ft, 1 in each further 1000',
  value: { first: 3, more: 1, squareFeet: 1000 },
  source: { title: 'F1869 and F2170', publisher: 'ASTM', standing: 'reported' },
};

export const METHOD_NOT_GIVEN: Cited<string> = {
  name: 'Method of moisture readings, if not given',
  said: 'a meter on wood, where no unit is given and nothing hints at concrete; on concrete I ask for the test',
  value: 'wood',
  source: CAUTIOUS_DEFAULT,
};

const FILM: Cited<string> = {
  name: 'Film on concrete under a floating plank',
  said: '6 mil polyethylene where the plank has no barrier of its own and its maker asks for one',
  value: '6 mil',
  source: { title: 'Makers’ guides for floating plank', standing: 'reported' },
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
  name: 'Mold that you may clean up yourself',
  said: 'under about 10 sq ft',
  value: 10,
  source: { title: 'Mold cleanup in your home', publisher: 'US EPA', standing: 'reported' },
};

export const MOISTURE_FIGURES: readonly Cited<unknown>[] = [
  ...Object.values(MOISTURE_LIMITS),
  ...Object.values(MOISTURE_STOPS),
  ...Object.values(MOISTURE_RANGES),
  MOISTURE_SPREAD,
  PLANK_ALLOWS,
  WOOD_READINGS,
  CONCRETE_TESTS,
  FILM,
  METHOD_NOT_GIVEN,
  DRY_WITHIN,
  MOULD_AREA,
];

export function moistureFigures(kind: MoistureKind): readonly Cited<unknown>[] {
  const tests = kind === 'wood' ? [WOOD_READINGS, MOISTURE_SPREAD] : [CONCRETE_TESTS, FILM];
  return [MOISTURE_LIMITS[kind], MOISTURE_STOPS[kind], ...tests, DRY_WITHIN, MOULD_AREA];
}
