/** Figures for asbestos in old floors. */

import type { Country } from '../prep/old-materials.ts';
import { CAUTIOUS_DEFAULT, type Cited } from './cited.ts';

export const ASBESTOS_YEAR: Cited<number> = {
  name: 'Resilient floor and its glue that OSHA presumes to hold asbestos',
  said: 'laid up to 1980, unless tested; later is not presumed free of it',
  value: 1980,
  source: {
    title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
    publisher: 'OSHA',
    standing: 'published',
  },
};

export const ASBESTOS_PRESUMED: Cited<string> = {
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
  name: 'House elsewhere, or told in metric, whose untested resilient floor is refused',
  said: 'built up to 2005; later only with proof (sale ended in the UK in 1999, in Australia in 2003)',
  value: 2005,
  source: CAUTIOUS_DEFAULT,
};

/** Untested resilient floors are refused in a house of up to this year. */
export const ASBESTOS_MARGIN: Readonly<Record<Country, Cited<number>>> = {
  us: MARGIN_US,
  canada: MARGIN_ELSEWHERE,
  uk: MARGIN_ELSEWHERE,
  australia: MARGIN_ELSEWHERE,
  elsewhere: MARGIN_ELSEWHERE,
};

export const ASBESTOS_DEEDS: Cited<string> = {
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
  ASBESTOS_DEEDS,
];

/** The figures that an answer about a house of one country leans on. */
export function asbestosFigures(country: Country): readonly Cited<unknown>[] {
  return [ASBESTOS_YEAR, ASBESTOS_PRESUMED, ASBESTOS_MARGIN[country], ASBESTOS_DEEDS];
}
