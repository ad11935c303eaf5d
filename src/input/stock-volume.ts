/** Volumes of tubes and what paint covers, as their labels tell them: 10.1 fl oz, 300 ml, 350 sq ft a gallon, 10 m² per litre. */

import { coverageUnread, volumeUnread } from '../text/trim-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** 231 in³ a US gallon, 128 fl oz: NIST Handbook 44, appendix C. */
const LITRES_PER_GALLON = 3.785411784;
const LITRES_PER_OUNCE = LITRES_PER_GALLON / 128;
const SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

const FIGURE = '(\\d{1,5}(?:[.,]\\d{1,3})?)';
const VOLUME = new RegExp(
  `^${FIGURE}\\s*(fl\\.?\\s*oz\\.?|oz\\.?|ounces?|ml|millilit(?:re|er)s?|l|lit(?:re|er)s?)?$`,
  'i',
);
const COVERAGE = new RegExp(
  `^${FIGURE}\\s*(sq\\.?\\s*ft\\.?|square feet|ft2|ft²|sq\\.?\\s*m|square met(?:re|er)s|m2|m²)\\s*(?:/|per|a|an)\\s*(gal(?:lon)?|quart|qt|l|lit(?:re|er))$`,
  'i',
);

/** The least and most litres in a tube. */
const TUBE = { least: 0.02, most: 2 } as const;
/** The least and most square metres a litre. */
const SPREAD = { least: 0.5, most: 50 } as const;

/** Litres of a tube; a bare number is in fluid ounces or millilitres by habit. */
export function readVolume(text: string, reading: Reading): Read<number> {
  const match = VOLUME.exec(text.trim());
  const metric = reading.habits.units === 'metric';
  const unit = match?.[2]?.toLowerCase() ?? (metric ? 'ml' : 'oz');
  const per = unit.startsWith('l') ? 1 : unit.startsWith('m') ? 0.001 : LITRES_PER_OUNCE;
  const litres = match ? figure(match[1]) * per : Number.NaN;
  if (litres >= TUBE.least && litres <= TUBE.most) return read(litres);
  return unread(volumeUnread({ option: reading.option, got: text }, metric ? '300 ml' : '10.1 fl oz'));
}

/** Square metres that a litre covers once. */
export function readCoverage(text: string, reading: Reading): Read<number> {
  const match = COVERAGE.exec(text.trim());
  const area = match ? figure(match[1]) * (/m/i.test(match[2] ?? '') ? 1 : SQUARE_METRES_PER_SQUARE_FOOT) : Number.NaN;
  const of = match?.[3]?.toLowerCase() ?? '';
  const coverage = area / (of.startsWith('l') ? 1 : of.startsWith('q') ? LITRES_PER_GALLON / 4 : LITRES_PER_GALLON);
  if (coverage >= SPREAD.least && coverage <= SPREAD.most) return read(coverage);
  const metric = reading.habits.units === 'metric';
  return unread(
    coverageUnread({ option: reading.option, got: text }, metric ? '10 m² per litre' : '350 sq ft per gallon'),
  );
}

function figure(typed: string | undefined): number {
  return Number((typed ?? '').replace(',', '.'));
}
