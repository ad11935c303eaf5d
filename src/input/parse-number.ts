/** Exact numbers (whole, decimal with either mark, grouped, fractions, mixed), units of length, counts, percentages and choices. */

import { closest } from 'fastest-levenshtein';
import { notACount, notAmong, notAPercent } from '../text/length-problems-text.ts';
import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_METRE, TICKS_PER_MM, TICKS_PER_YARD } from '../units/length.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';

export type LengthUnit = 'ft' | 'in' | 'yd' | 'm' | 'cm' | 'mm';

interface Unit {
  readonly ticks: bigint;
  readonly units: Units;
  readonly word: string;
  readonly one: string;
  /** How the unit is typed, longest first, as a regular expression source. */
  readonly typed: string;
}

/** From largest to smallest. */
export const UNITS: Readonly<Record<LengthUnit, Unit>> = {
  m: { ticks: BigInt(TICKS_PER_METRE), units: 'metric', word: 'metres', one: 'metre', typed: 'met(?:re|er)s?|m' },
  yd: { ticks: BigInt(TICKS_PER_YARD), units: 'imperial', word: 'yards', one: 'yard', typed: 'yards?|yds?' },
  ft: { ticks: BigInt(TICKS_PER_FOOT), units: 'imperial', word: 'feet', one: 'foot', typed: "feet|foot|ft|'" },
  in: { ticks: BigInt(TICKS_PER_INCH), units: 'imperial', word: 'inches', one: 'inch', typed: 'inch(?:es)?|ins?|"' },
  cm: { ticks: BigInt(TICKS_PER_MM * 10), units: 'metric', word: 'cm', one: 'cm', typed: 'centimet(?:re|er)s?|cms?' },
  mm: { ticks: BigInt(TICKS_PER_MM), units: 'metric', word: 'mm', one: 'mm', typed: 'millimet(?:re|er)s?|mms?' },
};

/** The longest length accepted: 100 m in ticks. */
export const MOST_TICKS: bigint = 100n * BigInt(TICKS_PER_METRE);

/** Every unit, largest first. */
export const UNIT_NAMES: readonly LengthUnit[] = ['m', 'yd', 'ft', 'in', 'cm', 'mm'];

/**
 * A unit as typed, each in its own named group: a symbol, or a word that ends before another begins ("3mx4m" has two).
 * It can end in only one way; otherwise the regex engine would try both at every mark when it backtracks.
 */
export const UNIT_PATTERN: string = `(?:${UNIT_NAMES.map(
  (unit) => `(?<${unit}>(?:${UNITS[unit].typed})(?:(?<=['"])|(?<!['"])(?:(?![a-z])|(?=x *[\\d.,(]))))`,
).join('|')})`;

/** The words of all units without their symbols, as a regular expression source. */
export const UNIT_WORDS: string = UNIT_NAMES.map((unit) => UNITS[unit].typed.replace(/\|["']$/, '')).join('|');

/** The unit whose group a match of UNIT_PATTERN filled. */
export function unitMatched(match: RegExpExecArray): LengthUnit | undefined {
  return UNIT_NAMES.find((unit) => match.groups?.[unit] !== undefined);
}

/** An exact ratio of whole numbers; `bottom` is positive. */
export interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

/** A number as typed, not yet evaluated: the meaning of its separators depends on the unit after it. */
export interface Numeral {
  readonly typed: string;
  readonly end: number;
  /** Set for fractions and mixed numbers, which are never ambiguous. */
  readonly ratio?: Ratio;
}

/** A number that may be thousands or a decimal, in both readings. */
export interface Doubt {
  readonly whole: string;
  readonly decimal: string;
  /** Its value as a decimal. */
  readonly asDecimal: Ratio;
  /** Whether the whole number is an acceptable length. */
  readonly wholeFits: boolean;
}

const FRACTION = /(\d+)\/(\d+)(?![\d.,])/y;
const TIGHT_MIXED = /(\d+)(?: +|-)(\d+)\/(\d+)(?![\d.,])/y;
const LOOSE_MIXED = /(\d+)(?: *- *| +)(\d+)\/(\d+)(?![\d.,])/y;
const DECIMAL = /\d{1,3}(?: \d{3})+(?![\d/])(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+/y;

/**
 * The number starting at `start` of a plain text, if there is one. `loose` allows spaces around the hyphen of a mixed
 * number, which in a sum would be a minus. No fraction starts after a slash: 12/3/4 divides twice.
 */
export function numeralAt(text: string, start: number, loose: boolean): Numeral | undefined {
  const mixed = matchAt(loose ? LOOSE_MIXED : TIGHT_MIXED, text, start);
  if (mixed) {
    const [whole, top, bottom] = [BigInt(mixed[1] ?? 0), BigInt(mixed[2] ?? 0), BigInt(mixed[3] ?? 0)];
    if (top < bottom) return { ...numeral(mixed, start), ratio: { top: whole * bottom + top, bottom } };
  }
  const fraction = text[start - 1] === '/' ? undefined : matchAt(FRACTION, text, start);
  if (fraction) {
    const [top, bottom] = [BigInt(fraction[1] ?? 0), BigInt(fraction[2] ?? 0)];
    if (top < bottom) return { ...numeral(fraction, start), ratio: { top, bottom } };
  }
  const decimal = matchAt(DECIMAL, text, start);
  return decimal && numeral(decimal, start);
}

/**
 * Evaluates a numeral in `unit` (undefined for a plain number) for a user whose decimal mark is `mark`. One separator
 * before exactly three digits is ambiguous: 1,220 mm is thousands since nobody measures in µm; 3,805 m is a decimal
 * since no room is 3,805 meters long; a point before inches is a decimal, as in 6.125". Otherwise the user is asked.
 */
export function valued(numeral: Numeral, unit: LengthUnit | undefined, mark: '.' | ','): Ratio | Doubt | undefined {
  if (numeral.ratio) return numeral.ratio;
  const typed = numeral.typed.replaceAll(' ', '');
  const marks = typed.replace(/\d/g, '');
  const last = marks.at(-1);
  if (last === undefined) return { top: BigInt(typed), bottom: 1n };
  if (marks.length > 1) {
    if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(typed)) return decimalRatio(typed.replaceAll(',', ''));
    if (/^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/.test(typed)) return decimalRatio(typed.replaceAll('.', '').replace(',', '.'));
    return undefined;
  }
  const decimal = typed.replace(',', '.');
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(typed)) return decimalRatio(decimal);
  const whole = typed.replace(/[.,]/, '');
  if (unit === undefined) return decimalRatio(last === mark ? decimal : whole);
  if (unit === 'mm') return decimalRatio(last === ',' || mark === ',' ? whole : decimal);
  if (unit === 'm' || last === mark) return decimalRatio(decimal);
  if (last === '.' && UNITS[unit].units === 'imperial') return decimalRatio(decimal);
  const asDecimal = decimalRatio(decimal);
  const size = UNITS[unit].ticks;
  if (asDecimal.top * size > MOST_TICKS * asDecimal.bottom) return asDecimal;
  return { whole, decimal: decimal.replace('.', mark), asDecimal, wholeFits: BigInt(whole) * size <= MOST_TICKS };
}

/** A nonnegative ratio rounded once to a whole number, half up. */
export function roundedRatio({ top, bottom }: Ratio): bigint {
  return (2n * top + bottom) / (2n * bottom);
}

/** Whether a numeral is only digits, as a larger part of a length has to be. */
export function isWhole(numeral: Numeral): boolean {
  return /^\d+$/.test(numeral.typed);
}

/** The two halves of a decimal that may have meant feet and inches: 12.6, 12.10 or 12.11, but not 12.5 or 12.25. */
export function feetAndInchesIn(numeral: Numeral): readonly [feet: string, inch: string] | undefined {
  const match = /^(\d+)[.,]([1-9]|1[01])$/.exec(numeral.typed);
  return match?.[1] === undefined || match[2] === undefined || match[2] === '5' ? undefined : [match[1], match[2]];
}

export function matchAt(sticky: RegExp, text: string, start: number): RegExpExecArray | undefined {
  sticky.lastIndex = start;
  return sticky.exec(text) ?? undefined;
}

function numeral(match: RegExpExecArray, start: number): Numeral {
  return { typed: match[0], end: start + match[0].length };
}

function decimalRatio(typed: string): Ratio {
  const [whole = '', part = ''] = typed.split('.');
  return { top: BigInt(`0${whole}${part}`), bottom: 10n ** BigInt(part.length) };
}

/** A whole number from `least` to `most`; `none` is 0. */
export function readCount(text: string, reading: Reading, least: number, most: number): Read<number> {
  const match = /^(?:(\d{1,9})|none|no)$/i.exec(text.trim().replace(/[,\s](?=\d{3}\b)/g, ''));
  const value = match ? Number(match[1] ?? 0) : Number.NaN;
  if (!(value >= least && value <= most)) return unread(notACount({ option: reading.option, got: text }, least, most));
  return read(value);
}

/** A percentage from 0 to 100 in hundredths of a percent: `8.25 %`, `8,25`, `none`. */
export function readPercent(text: string, reading: Reading): Read<number> {
  const match = /^(?:(\d{1,3})(?:[.,](\d{1,2}))?\s*(?:%|percent|per cent|pct)?|none|no)$/i.exec(text.trim());
  const value = match ? Number(match[1] ?? 0) * 100 + Number((match[2] ?? '').padEnd(2, '0')) : Number.NaN;
  if (!(value >= 0 && value <= 10_000)) return unread(notAPercent({ option: reading.option, got: text }));
  return read(value);
}

/** One of a few words; for a near miss, suggests the closest. */
export function readChoice<const T extends string>(
  text: string,
  reading: Reading,
  choices: readonly [T, ...T[]],
): Read<T> {
  const word = text.trim().toLowerCase();
  const choice = choices.find((candidate) => candidate === word);
  if (choice !== undefined) return read(choice);
  return unread(
    notAmong(
      { option: reading.option, got: text },
      choices,
      closest(word.slice(0, 40), choices as unknown as string[]),
    ),
  );
}
