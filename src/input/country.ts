/** The country a home is in, as people type it; those without years of their own are `elsewhere`. */

import type { Country } from '../prep/old-materials.ts';
import { countryElsewhere, notACountry } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

const NAMES: readonly (readonly [Country, RegExp])[] = [
  ['us', /^(?:us|usa|u\.s\.?|u\.s\.a\.?|united states|united states of america|america|the states|the us)$/],
  ['canada', /^(?:ca|can|canada)$/],
  ['uk', /^(?:uk|gb|u\.k\.?|united kingdom|great britain|britain|england|scotland|wales|northern ireland|the uk)$/],
  ['australia', /^(?:au|aus|australia|oz)$/],
  ['elsewhere', /^(?:elsewhere|other|another|none of these|abroad)$/],
];

/** How a country is told back, and typed. */
export const COUNTRY_NAMES: Readonly<Record<Country, string>> = {
  us: 'US',
  canada: 'Canada',
  uk: 'UK',
  australia: 'Australia',
  elsewhere: 'elsewhere',
};

/** Whether words name a country that has years of its own. */
export function isCountry(text: string): boolean {
  const plain = text.trim().toLowerCase();
  return NAMES.some(([country, names]) => country !== 'elsewhere' && names.test(plain));
}

/** `US`, `Canada`, `UK`, `Australia`, any other country’s name as elsewhere, which is noted; undefined for `not told`. Never throws. */
export function readCountry(text: string, reading: Reading): Read<Country | undefined> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ').slice(0, 60);
  if (/^(?:not told|as set|unknown)$/.test(plain)) return read(undefined);
  const known = NAMES.find(([, names]) => names.test(plain))?.[0];
  if (known) return read(known);
  if (!/^\p{L}[\p{L} .'-]{2,}$/u.test(plain)) return unread(notACountry({ option: reading.option, got: text }));
  reading.note(countryElsewhere(text.trim()));
  return read('elsewhere');
}
