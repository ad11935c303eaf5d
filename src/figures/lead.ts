/** Figures for lead paint on trim. */

import type { Country } from '../prep/old-materials.ts';
import { type Area, SQUARE_TICKS_PER_SQUARE_FOOT } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited } from './cited.ts';

const RRP = {
  title: 'Renovation, Repair and Painting rule: questions and answers',
  publisher: 'US EPA',
  standing: 'published',
} as const;
const MEMORY = { title: 'National rules on lead in paint', standing: 'from memory' } as const;

function year(where: string, value: number, source: Cited<number>['source']): Cited<number> {
  return { name: `Homes whose paint may hold lead, ${where}`, said: `built before ${value}`, value, source };
}

/** Paint of a home built before this year may hold lead. */
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

/** The figures that an answer about a home of one country leans on. */
export function leadFigures(country: Country): readonly Cited<unknown>[] {
  return [LEAD_YEARS[country], ...(country === 'us' ? [MINOR_WORK] : [])];
}
