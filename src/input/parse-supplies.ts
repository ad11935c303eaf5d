/** Nails, tubes and paint as labeled: 2 in, 50 mm or 8d; 10.1 fl oz or 300 ml; 350 sq ft per gallon or 10 m² per liter. */

import { coverageUnread, nailUnread, pennyRead, volumeUnread } from '../text/trim-problems-text.ts';
import { inches, type Length } from '../units/length.ts';
import { sayLength } from './format.ts';
import { readLength } from './parse-length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** Lengths in inches by penny size: 2d is 1 in, and each penny up to 10d adds 1/4 in. From memory: ASTM F1667. */
const PENNY = { least: 2, steady: 10 } as const;
const LONGER: Readonly<Record<string, number>> = { '12': 3.25, '16': 3.5, '20': 4 };

/** The length of the nails on hand; undefined if it is to be computed. A bare number is in inches or millimeters. */
export function readNail(text: string, reading: Reading): Read<Length | undefined> {
  if (/^\s*(?:computed|any|auto)\s*$/i.test(text)) return read(undefined);
  const metric = reading.preferences.units === 'metric';
  const size = /^\s*(\d{1,2})\s*(?:d|penny)\b(?:\s*(?:finish(?:ing)?\s+)?nails?)?\s*$/i.exec(text)?.[1];
  if (size !== undefined) {
    const penny = pennyInches(Number(size));
    if (penny !== undefined) {
      reading.note(pennyRead(text.trim(), sayLength(inches(penny), reading.preferences)));
      return read(inches(penny));
    }
  }
  const length = size === undefined ? readLength(text, reading, metric ? 'mm' : 'in') : undefined;
  if (length?.ok) return length;
  return unread(nailUnread({ option: reading.option, got: text }, metric ? '50 mm' : '2 in'));
}

function pennyInches(size: number): number | undefined {
  if (size >= PENNY.least && size <= PENNY.steady) return 0.5 + size / 4;
  return LONGER[String(size)];
}

/** 231 in³ per US gallon, 128 fl oz: NIST Handbook 44, appendix C. */
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

/** Smallest and largest tube in liters. */
const TUBE = { least: 0.02, most: 2 } as const;
/** Lowest and highest coverage in square meters per liter. */
const SPREAD = { least: 0.5, most: 50 } as const;

/** Liters of a tube; a bare number is in fluid ounces or milliliters, by the user's units. */
export function readVolume(text: string, reading: Reading): Read<number> {
  const match = VOLUME.exec(text.trim());
  const metric = reading.preferences.units === 'metric';
  const unit = match?.[2]?.toLowerCase() ?? (metric ? 'ml' : 'oz');
  const per = unit.startsWith('l') ? 1 : unit.startsWith('m') ? 0.001 : LITRES_PER_OUNCE;
  const litres = match ? figure(match[1]) * per : Number.NaN;
  if (litres >= TUBE.least && litres <= TUBE.most) return read(litres);
  return unread(volumeUnread({ option: reading.option, got: text }, metric ? '300 ml' : '10.1 fl oz'));
}

/** Square meters a liter covers with one coat. */
export function readCoverage(text: string, reading: Reading): Read<number> {
  const match = COVERAGE.exec(text.trim());
  const area = match ? figure(match[1]) * (/m/i.test(match[2] ?? '') ? 1 : SQUARE_METRES_PER_SQUARE_FOOT) : Number.NaN;
  const of = match?.[3]?.toLowerCase() ?? '';
  const coverage = area / (of.startsWith('l') ? 1 : of.startsWith('q') ? LITRES_PER_GALLON / 4 : LITRES_PER_GALLON);
  if (coverage >= SPREAD.least && coverage <= SPREAD.most) return read(coverage);
  const metric = reading.preferences.units === 'metric';
  return unread(
    coverageUnread({ option: reading.option, got: text }, metric ? '10 m² per liter' : '350 sq ft per gallon'),
  );
}

function figure(typed: string | undefined): number {
  return Number((typed ?? '').replace(',', '.'));
}
