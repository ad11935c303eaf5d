/** The house: year built, country, haulage of debris, trim to remove, and asbestos test. */

import { type Country, LITRES_PER_CUBIC_YARD, type Tested, type TrimPart } from '../prep/old-floor.ts';
import {
  countryElsewhere,
  notACountry,
  notAHaul,
  notTested,
  notTrim,
  yearRead,
  yearUnknown,
} from '../text/prep-problems-text.ts';
import { TICKS_PER_METRE } from '../units/length.ts';
import { readLength, readLengthIn, unitIn } from './parse-length.ts';
import { weightFigure } from './parse-weight.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

const FILLER = /\b(?:built|build|was|is|it|its|the|in|year|house|home|flat|from|dated|dates|constructed|completed)\b/g;
const ABOUT = /^(?:about|around|circa|ca|c|approx|approximately|roughly|maybe|probably|say|perhaps)\b|\?$|\bish$/g;
/** How far off a year given as “about” may be. */
const MARGIN = 5;

/** The earliest year the text allows; undefined, with a note, if none is certain. Never a Problem. */
export function readHouseYear(text: string, reading: Reading): Read<number | undefined> {
  const typed = text.trim();
  const plain = typed
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[‘’ʼ`´]/g, "'")
    .replace(/[–—−]/g, '-')
    .replace(/~/g, 'about ')
    .replace(/(?<![.,!])[.,!]+$|\.(?=\s)/g, '')
    .replace(/\s+/g, ' ');
  const year = earliest(plain);
  const known = year !== undefined && year >= 1500 && year <= 2100;
  if (!known && !/^(?:unknown|not known|not sure|don't know|no idea)$/.test(plain)) reading.note(yearUnknown(typed));
  if (known && plain !== String(year)) reading.note(yearRead(typed, year));
  return read(known ? year : undefined);
}

function earliest(plain: string): number | undefined {
  const words = plain.replace(FILLER, ' ').replace(/\s+/g, ' ').trim();
  const later = /^(after|post|since)[ -]?(\d{4})$/.exec(words);
  if (later) return Number(later[2]) + (later[1] === 'since' ? 0 : 1);
  const atLeast = /^(\d{4}) (?:or|and) (?:later|newer|after|younger)$/.exec(words);
  if (atLeast) return Number(atLeast[1]);
  const about = words.search(ABOUT) >= 0;
  const bare = words.replace(ABOUT, '').trim();
  const one = single(bare);
  if (one !== undefined) return about ? one - MARGIN : one;
  const range = /^(?:between )?(\d{4}) ?(?:-|to|or|and) ?(\d{4}|\d{2})$/.exec(bare);
  if (!range) return undefined;
  const [from, to] = [Number(range[1]), Number(range[2])];
  return Math.min(from, to < 100 ? from - (from % 100) + to : to) - (about ? MARGIN : 0);
}

/** A year, the first year of a decade, or a two-digit year of the last century with its apostrophe. */
function single(plain: string): number | undefined {
  const year = /^(\d{4})$/.exec(plain);
  if (year) return Number(year[1]);
  const decade = /^(?:(?:early|mid|late)[ -]?)?(\d{3}0)'?s$/.exec(plain);
  if (decade) return Number(decade[1]);
  const short = /^(?:(?:early|mid|late)[ -]?)?'?([3-9]0)'?s$/.exec(plain) ?? /^'([3-9]\d)$/.exec(plain);
  return short ? 1900 + Number(short[1]) : undefined;
}

// Countries; those without their own years are `elsewhere`.

const NAMES: readonly (readonly [Country, RegExp])[] = [
  ['us', /^(?:us|usa|u\.s\.?|u\.s\.a\.?|united states|united states of america|america|the states|the us)$/],
  ['canada', /^(?:ca|can|canada)$/],
  ['uk', /^(?:uk|gb|u\.k\.?|united kingdom|great britain|britain|england|scotland|wales|northern ireland|the uk)$/],
  ['australia', /^(?:au|aus|australia|oz)$/],
  ['elsewhere', /^(?:elsewhere|other|another|none of these|abroad)$/],
];

/** A country's name in answers and as typed. */
export const COUNTRY_NAMES: Readonly<Record<Country, string>> = {
  us: 'US',
  canada: 'Canada',
  uk: 'UK',
  australia: 'Australia',
  elsewhere: 'elsewhere',
};

/** Whether words name a country that has its own years. */
export function isCountry(text: string): boolean {
  const plain = text.trim().toLowerCase();
  return NAMES.some(([country, names]) => country !== 'elsewhere' && names.test(plain));
}

/**
 * `US`, `Canada`, `UK`, `Australia`, or any other country's name as elsewhere, with a note; undefined for `not told`.
 * Never throws.
 */
export function readCountry(text: string, reading: Reading): Read<Country | undefined> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ').slice(0, 60);
  if (/^(?:not told|as set|unknown)$/.test(plain)) return read(undefined);
  const known = NAMES.find(([, names]) => names.test(plain))?.[0];
  if (known) return read(known);
  if (!/^\p{L}[\p{L} .'-]{2,}$/u.test(plain)) return unread(notACountry({ option: reading.option, got: text }));
  reading.note(countryElsewhere(text.trim()));
  return read('elsewhere');
}

/** How debris leaves; for a trailer, the liters it holds. */
type Haul = { readonly kind: 'pickup' | 'container' } | { readonly kind: 'trailer'; readonly litres: number };

const LITRES: readonly (readonly [RegExp, number])[] = [
  [/^(?:cu\.? ?yds?|cubic yards?|yd3|yd³|yds?|yards?)$/, LITRES_PER_CUBIC_YARD],
  [/^(?:cu\.? ?ft|cubic (?:foot|feet)|ft3|ft³)$/, LITRES_PER_CUBIC_YARD / 27],
  [/^(?:cu\.? ?m|cubic met(?:re|er)s?|m3|m³)$/, 1000],
  [/^(?:l|lit(?:re|er)s?)$/, 1],
];

/** `pickup`, `container`, `trailer 3 cu yd`, `trailer 2 m³`, `trailer 5 x 8 x 2 ft`. */
export function readHaul(text: string, reading: Reading): Read<Haul> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (/^(?:pick-?up|pick up|truck)(?: truck)?$/.test(plain)) return read({ kind: 'pickup' });
  if (/^(?:container|roll-?off|skip)$/.test(plain)) return read({ kind: 'container' });
  const size = /^trailer,? (?:of )?(.+)$/.exec(plain)?.[1] ?? '';
  const litres = volumeOf(size) ?? boxOf(size, reading) ?? Number.NaN;
  if (!(litres >= 50 && litres <= 100_000)) return unread(notAHaul({ option: reading.option, got: text }));
  return read({ kind: 'trailer', litres });
}

function volumeOf(size: string): number | undefined {
  const match = /^(\d{1,5}(?:[.,]\d{1,3})?) ?(.+)$/.exec(size);
  const litres = LITRES.find(([word]) => word.test(match?.[2] ?? ''))?.[1];
  return match?.[1] && litres !== undefined ? weightFigure(match[1]) * litres : undefined;
}

function boxOf(size: string, reading: Reading): number | undefined {
  const sides = size.split(/ ?(?:x|×|by) ?/);
  const unit = unitIn(size) ?? (reading.preferences.units === 'metric' ? 'm' : 'ft');
  const read = sides.flatMap((side) => {
    const length = readLengthIn(side, reading, unit);
    return length.ok ? [length.value / TICKS_PER_METRE] : [];
  });
  return sides.length === 3 && read.length === 3 ? read.reduce((product, side) => product * side, 1000) : undefined;
}

const MOST = 100;

/**
 * `none`, or parts separated by ; or , such as `40 ft x 3 in`, `36 in x 1 in`, `2 x 7 ft x 2 1/4 in`. Bare lengths are
 * feet or meters, bare heights inches or millimeters.
 */
export function readTrim(text: string, reading: Reading): Read<readonly TrimPart[]> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (/^(?:none|no|0)$/.test(plain)) return read([]);
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and /).map((part) => partOf(part, reading));
  const given = parts.flatMap((part) => (part ? [part] : []));
  if (given.length < parts.length || parts.length > MOST) return unread(notTrim({ option: reading.option, got: text }));
  return read(given);
}

function partOf(text: string, reading: Reading): TrimPart | undefined {
  const sides = text.split(/ ?(?:x|×|by) ?/);
  const counted = sides.length === 3 && /^\d{1,3}$/.test(sides[0] ?? '');
  const [long, high] = counted ? sides.slice(1) : sides;
  if (long === undefined || high === undefined || sides.length > (counted ? 3 : 2)) return undefined;
  const metric = reading.preferences.units === 'metric';
  const length = readLength(long, reading, metric ? 'm' : 'ft');
  const height = readLength(high, reading, metric ? 'mm' : 'in');
  const count = counted ? Number(sides[0]) : 1;
  return length.ok && height.ok && count > 0 ? { length: length.value, height: height.value, count } : undefined;
}

// Asbestos test: only one plain word means that it is clear.

/**
 * `clear`, `asbestos` (or `positive`), or `no` (or `not tested`). Anything else is questioned, never taken as clear.
 */
export function readTested(text: string, reading: Reading): Read<Tested> {
  const plain = text.trim().toLowerCase();
  if (plain === 'clear') return read('clear');
  if (/^(?:no|none|not|not yet|not tested|untested|unknown|never)$/.test(plain)) return read('no');
  if (/^(?:asbestos|asbestos found|positive|tested positive|contains asbestos|has asbestos)$/.test(plain)) {
    return read('asbestos');
  }
  return unread(notTested({ option: reading.option, got: text }));
}
