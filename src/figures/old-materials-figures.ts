/** Figures for asbestos in old floors and lead paint on trim. */

import type { Country } from '../prep/old-materials.ts';
import { type Area, SQUARE_TICKS_PER_SQUARE_FOOT } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited } from './cited.ts';

const ASBESTOS_YEAR: Cited<number> = {
  name: 'Resilient floor and its glue that OSHA presumes to hold asbestos',
  said: 'laid up to 1980, unless tested; later is not presumed free of it',
  value: 1980,
  source: {
    title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
    publisher: 'OSHA',
    standing: 'published',
  },
};

const ASBESTOS_PRESUMED: Cited<string> = {
  name: 'Resilient floor, backing or glue that was not tested',
  said: 'presumed to hold asbestos, whatever its year, unless positively certain',
  value: 'presume',
  source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
};

const MARGIN_US: Cited<number> = {
  name: 'House of the US whose untested resilient floor is refused',
  said: 'built up to 1989; later only with proof',
  value: 1989,
  source: CAUTIOUS_DEFAULT,
};

const MARGIN_ELSEWHERE: Cited<number> = {
  name: 'House elsewhere, or with metric sizes, whose untested resilient floor is refused',
  said: 'built up to 2005; later only with proof (sale ended in the UK in 1999, in Australia in 2003)',
  value: 2005,
  source: CAUTIOUS_DEFAULT,
};

/** Untested resilient floors are refused in a house built up to this year. */
export const ASBESTOS_MARGIN: Readonly<Record<Country, Cited<number>>> = {
  us: MARGIN_US,
  canada: MARGIN_ELSEWHERE,
  uk: MARGIN_ELSEWHERE,
  australia: MARGIN_ELSEWHERE,
  elsewhere: MARGIN_ELSEWHERE,
};

const ASBESTOS_WORK: Cited<string> = {
  name: 'What is never done to such a floor',
  said: 'sand, dry sweep, dry scrape, drill, saw, or chip it by machine',
  value: 'recommended work practices',
  source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
};

export const ASBESTOS_FIGURES: readonly Cited<unknown>[] = [
  ASBESTOS_YEAR,
  ASBESTOS_PRESUMED,
  MARGIN_US,
  MARGIN_ELSEWHERE,
  ASBESTOS_WORK,
];

export function asbestosFigures(country: Country): readonly Cited<unknown>[] {
  return [ASBESTOS_YEAR, ASBESTOS_PRESUMED, ASBESTOS_MARGIN[country], ASBESTOS_WORK];
}

// Lead paint on trim.

const RRP = {
  title: 'Renovation, Repair and Painting rule: questions and answers',
  publisher: 'US EPA',
  standing: 'published',
} as const;
const MEMORY = { title: 'National rules on lead in paint', standing: 'from memory' } as const;

function year(where: string, value: number, source: Cited<number>['source']): Cited<number> {
  return { name: `Homes whose paint may hold lead, ${where}`, said: `built before ${value}`, value, source };
}

/** Paint in a home built before this year may contain lead. */
export const LEAD_YEARS: Readonly<Record<Country, Cited<number>>> = {
  us: year('US', 1978, RRP),
  canada: year('Canada', 1990, MEMORY),
  uk: year('UK', 1992, MEMORY),
  australia: year('Australia', 1997, MEMORY),
  elsewhere: year('other countries: the latest of these', 1997, CAUTIOUS_DEFAULT),
};

export const MINOR_WORK: Cited<Area> = {
  name: 'Minor repair of old paint, in the US',
  said: 'up to 6 sq ft a room in 30 days, a removed part counted whole; not where a painted part is destroyed as it comes off; paid work beyond it falls under the rule',
  value: 6n * SQUARE_TICKS_PER_SQUARE_FOOT,
  source: RRP,
};

export const LEAD_FIGURES: readonly Cited<unknown>[] = [...Object.values(LEAD_YEARS), MINOR_WORK];

export function leadFigures(country: Country): readonly Cited<unknown>[] {
  return [LEAD_YEARS[country], ...(country === 'us' ? [MINOR_WORK] : [])];
}
