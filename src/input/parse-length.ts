/** One length in any form people type, exact to the tick. */

import type { Problem } from '../reply/reply.ts';
import {
  bareRead,
  decimalFeetRead,
  doubtfulCentimetres,
  doubtfulMark,
  notAboveZero,
  notALength,
  partTooLarge,
  rounded,
  tooLong,
  typedExample,
} from '../text/length-problems-text.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../units/length.ts';
import { sayLength } from './format.ts';
import {
  type Doubt,
  feetAndInchesIn,
  isWhole,
  type LengthUnit,
  MOST_TICKS,
  matchAt,
  type Numeral,
  numeralAt,
  type Ratio,
  roundedRatio,
  UNIT_NAMES,
  UNIT_PATTERN,
  UNITS,
  unitMatched,
  valued,
} from './parse-number.ts';
import { type Preferences, type Read, type Reading, read, type Units, unread } from './reading.ts';

// Scanning one quantity: a length of one or more parts, an area, or a number without a unit.

/** `top` / `bottom` in ticks to the `power`: 0 a plain number, 1 a length, 2 an area. */
export interface Quantity extends Ratio {
  readonly power: 0 | 1 | 2;
  readonly typed: string;
  readonly end: number;
  readonly unit?: LengthUnit;
  /** Set when a single decimal may have been meant as feet and inches. */
  readonly feetAndInches?: readonly [feet: string, inch: string];
  /** Set when a hyphen was read as a joint rather than a minus. */
  readonly hyphen?: boolean;
}

interface Scan {
  readonly reading: Reading;
  /** The unit assumed when interpreting the separators of a number without one. */
  readonly bare?: LengthUnit;
  /** In a sum, a hyphen with spaces is a minus, and areas are allowed. */
  readonly sum: boolean;
}

const UNIT = new RegExp(
  ` {0,2}(?<square>(?:sq\\.?|square) *)?${UNIT_PATTERN}(?<two>(?<=[a-z])(?:²|\\^2|2(?![\\d.,/]| *(?:["']|in|ft|foot|feet|cm|mm))))?\\.?`,
  'y',
);
const TIGHT_JOINT = /-(?=[\d.,])| *(?<spoken>, *(?:and +)?|and +)?/y;
const LOOSE_JOINT = / *- *| *(?<spoken>, *(?:and +)?|and +)?/y;
const AFTER_METRES = / *(\d{1,3})(?!\d)/y;

/** The quantity starting at `start`, a Problem if the input there is ambiguous or wrong, undefined if there is none. */
export function quantityAt(text: string, start: number, scan: Scan): Quantity | Problem | undefined {
  const numeral = numeralAt(text, start, !scan.sum);
  if (!numeral) return undefined;
  const named = unitAt(text, numeral.end, scan.sum);
  const value = valued(numeral, named?.unit ?? scan.bare, scan.reading.preferences.decimal);
  if (value === undefined) return undefined;
  const end = named?.end ?? numeral.end;
  const typed = text.slice(start, end).trim();
  if ('whole' in value) {
    return doubt(numeral, typed.slice(numeral.typed.length), value, scan);
  }
  const feetAndInches = feetAndInchesIn(numeral);
  const hyphen = numeral.typed.includes('-') ? { hyphen: true } : {};
  const lone = { ...value, typed, end, ...(feetAndInches && { feetAndInches }), ...hyphen };
  if (!named) return { ...lone, power: 0 };
  const size = UNITS[named.unit].ticks;
  if (named.square) return { ...lone, top: value.top * size * size, power: 2, unit: named.unit };
  const one: Quantity = { ...lone, top: value.top * size, power: 1, unit: named.unit };
  return isWhole(numeral) ? joined(text, start, one, named.unit, scan) : one;
}

/** `quantity` with the lesser parts after it, each of a smaller unit of the same system: 12' 6 1/2", 3 m 80 cm. */
function joined(
  text: string,
  start: number,
  quantity: Quantity,
  unit: LengthUnit,
  scan: Scan,
): Quantity | Problem | undefined {
  const joint = matchAt(scan.sum ? TIGHT_JOINT : LOOSE_JOINT, text, quantity.end);
  if (!joint) return quantity;
  const next = quantity.end + joint[0].length;
  const numeral = numeralAt(text, next, !scan.sum);
  // A hyphen joins feet and inches; between meters and centimeters it can only be a minus. In a sum it is also a minus
  // before a bare fraction, since the joint is written 12'-0 5/8".
  const fraction = numeral?.ratio !== undefined && numeral.ratio.top < numeral.ratio.bottom;
  const joins = !joint[0].includes('-') || (unit === 'ft' && !(scan.sum && fraction));
  const spoken = joint.groups?.spoken !== undefined;
  const part = numeral && joins ? partAt(text, quantity.end, next, numeral, unit, spoken, scan) : undefined;
  if (!numeral || !part) return quantity;
  const typed = text.slice(start, part.end).trim();
  const got = { option: scan.reading.option, got: typed };
  if (part.doubtful && quantity.top < MOST_TICKS) {
    const { decimal } = scan.reading.preferences;
    const metres = /^\d+/.exec(quantity.typed)?.[0] ?? '';
    return doubtfulCentimetres(got, `${metres}${decimal}${numeral.typed} m`, `${metres} m ${numeral.typed} cm`);
  }
  const lesser = valued(numeral, part.unit, scan.reading.preferences.decimal);
  if (lesser === undefined) return undefined;
  // A thousand of the smaller unit would exceed the larger one, so no separator is ambiguous here.
  const value = 'whole' in lesser ? lesser.asDecimal : lesser;
  const size = UNITS[part.unit].ticks;
  const top = quantity.top * value.bottom + value.top * size;
  const limit = UNITS[unit].ticks / size;
  if (value.top >= limit * value.bottom) {
    const parts = { part: UNITS[part.unit].word, limit: Number(limit), whole: UNITS[unit].word };
    return partTooLarge(got, parts, carried(top, value.bottom, unit, scan));
  }
  const hyphen = quantity.hyphen || joint[0].includes('-') || numeral.typed.includes('-');
  const { feetAndInches: _, ...rest } = quantity;
  const sum: Quantity = { ...rest, top, bottom: value.bottom, typed, end: part.end, ...(hyphen && { hyphen: true }) };
  return isWhole(numeral) ? joined(text, start, sum, part.unit, scan) : sum;
}

interface Part {
  readonly unit: LengthUnit;
  readonly end: number;
  readonly doubtful?: boolean;
}

/** The unit of a smaller part: named, or implied (inches after feet; 3m80 has centimeters, 3m805 millimeters). */
function partAt(
  text: string,
  from: number,
  next: number,
  numeral: Numeral,
  above: LengthUnit,
  spoken: boolean,
  scan: Scan,
): Part | undefined {
  const named = unitAt(text, numeral.end, scan.sum);
  if (named) {
    const smaller = UNIT_NAMES.indexOf(named.unit) > UNIT_NAMES.indexOf(above);
    return smaller && !named.square && UNITS[named.unit].units === UNITS[above].units ? named : undefined;
  }
  if (spoken) return undefined;
  if (above === 'ft') return { unit: 'in', end: numeral.end };
  const figures = above === 'm' ? matchAt(AFTER_METRES, text, from)?.[1] : undefined;
  if (figures === undefined || next + figures.length !== numeral.end) return undefined;
  return { unit: figures.length === 3 ? 'mm' : 'cm', end: numeral.end, doubtful: figures.length === 1 };
}

function unitAt(
  text: string,
  start: number,
  areas: boolean,
): { unit: LengthUnit; end: number; square: boolean } | undefined {
  const match = matchAt(UNIT, text, start);
  const unit = match && unitMatched(match);
  if (!match || !unit) return undefined;
  const two = match.groups?.two;
  const square = match.groups?.square !== undefined || two !== undefined;
  if (!square) return { unit, end: start + match[0].length, square };
  if (areas) return { unit, end: start + match[0].length, square };
  return two === '2' ? { unit, end: start + match[0].length - 1, square: false } : undefined;
}

/** Both readings of an ambiguous number, each followed by the unit `behind` it. */
function doubt(numeral: Numeral, behind: string, { whole, decimal, wholeFits }: Doubt, scan: Scan): Problem {
  const got = { option: scan.reading.option, got: `${numeral.typed}${behind}` };
  const readings = { whole: `${whole}${behind}`, decimal: `${decimal}${behind}` };
  return doubtfulMark(got, readings, wholeFits ? readings.whole : readings.decimal);
}

/** The sum of the parts formatted with carrying: 12' 14" is 13' 2". */
function carried(top: bigint, bottom: bigint, unit: LengthUnit, scan: Scan): string {
  const whole = roundedRatio({ top, bottom });
  if (whole > MOST_TICKS) return typedExample(UNITS[unit].units === 'metric', scan.reading.preferences.decimal);
  return sayLength(ticks(Number(whole)), { units: UNITS[unit].units, decimal: scan.reading.preferences.decimal });
}

// Normalizing text: one character per mark (feet, inches, fractions, minus), lowercase.

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/**
 * Text with curly quotes, primes, special spaces, minus signs and fractions in plain form, lowercase. Only full-width
 * characters go through NFKC; on the whole text it would turn 6½ into 61/2 and 5² into 52.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\uff01-\uff5e]/g, (wide) => wide.normalize('NFKC'))
    .replace(/[\u200b-\u200d\u2060\ufeff]/g, '')
    .replace(/\s/g, ' ')
    .replace(/[‘’‛´`′ʹʼ]/g, "'")
    .replace(/[“”„‟″ʺ]/g, '"')
    .replace(/''/g, '"')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/(\d?)([½¼¾⅛⅜⅝⅞⅓⅔])/g, (_, digit: string, sign: string) =>
      digit === '' ? (VULGAR[sign] ?? sign) : `${digit} ${VULGAR[sign] ?? sign}`,
    )
    .replace(/[⁄∕]/g, '/')
    .toLowerCase();
}

const LONGEST_TEXT = 100;
const NAMED = new RegExp(`(?<![a-z])${UNIT_PATTERN}`, 'g');
/** Words and marks that are a unit only after a number: "12 in the hall" has inches, "laid in the hall" doesn't. */
const NEEDS_FIGURE = /^(?:m|ins?|["'])$/;

/**
 * One length in ticks, positive and at most 100 m. A number without a unit is in `bare`, with a note. Also noted: input
 * finer than a tick (rounded once, half up), and decimal feet that may have meant feet and inches. Never throws:
 * anything else becomes a Problem with a length to type instead.
 */
export function readLength(text: string, reading: Reading, bare: LengthUnit): Read<Length> {
  return lengthOf(text, reading, bare, true);
}

/** Like readLength, but a number without a unit is in `unit` because its context says so, without a note. */
export function readLengthIn(text: string, reading: Reading, unit: LengthUnit): Read<Length> {
  return lengthOf(text, reading, unit, false);
}

/** The largest unit named in the text; undefined if there is none. */
export function unitIn(text: string): LengthUnit | undefined {
  const plain = plainText(text);
  const named = new Set<LengthUnit>();
  for (const match of plain.matchAll(NAMED)) {
    const unit = unitMatched(match);
    const behindFigure = /[\d)] {0,2}$/.test(plain.slice(Math.max(0, match.index - 3), match.index));
    if (unit && (behindFigure || !NEEDS_FIGURE.test(match[0]))) named.add(unit);
  }
  return UNIT_NAMES.find((unit) => named.has(unit));
}

export function unitsOf(unit: LengthUnit): Units {
  return UNITS[unit].units;
}

/** An example length in the user's units, for a Problem's fix. */
function lengthExample(preferences: Preferences): string {
  return typedExample(preferences.units === 'metric', preferences.decimal);
}

/** If `unit` is feet and 12.6 may have meant 12' 6", notes how it was read; returns whether it did. */
export function noteDecimalFeet(quantity: Quantity, unit: LengthUnit, length: Length, reading: Reading): boolean {
  if (unit !== 'ft' || !quantity.feetAndInches) return false;
  const [feet, inch] = quantity.feetAndInches;
  const said = sayLength(length, { units: 'imperial', decimal: reading.preferences.decimal });
  reading.note(decimalFeetRead(quantity.typed, quantity.unit ? said : `${quantity.typed} feet, ${said}`, feet, inch));
  return true;
}

/** Notes the unit assumed for a number without one. */
export function noteBare(typed: string, unit: LengthUnit, atMostOne: boolean, reading: Reading): void {
  reading.note(bareRead(typed, atMostOne ? UNITS[unit].one : UNITS[unit].word));
}

function lengthOf(text: string, reading: Reading, bare: LengthUnit, tellBare: boolean): Read<Length> {
  const typed = text.trim();
  const got = { option: reading.option, got: typed };
  const example = lengthExample(reading.preferences);
  if (typed.length > LONGEST_TEXT) return unread(notALength(got, example));
  const plain = plainText(typed).replace(/(\d)\.$/, '$1');
  const minus = /^- */.exec(plain)?.[0].length ?? 0;
  const quantity = quantityAt(plain, minus, { reading, bare, sum: false });
  if (!quantity) return unread(notALength(got, example));
  if ('expected' in quantity) return unread({ ...quantity, got: typed });
  if (quantity.end !== plain.length || quantity.power === 2) return unread(notALength(got, example));

  const unit = quantity.unit ?? bare;
  const top = quantity.power === 0 ? quantity.top * UNITS[bare].ticks : quantity.top;
  const whole = roundedRatio({ top, bottom: quantity.bottom });
  if (whole <= 0n) return unread(notAboveZero(got, example));
  if (top > MOST_TICKS * quantity.bottom) return unread(tooLong(got, inSmallerUnit(quantity, bare) ?? example));
  if (minus > 0) return unread(notAboveZero(got, quantity.typed));

  const length = ticks(Number(whole));
  if (noteDecimalFeet(quantity, unit, length, reading)) return read(length);
  if (tellBare && quantity.power === 0) noteBare(quantity.typed, bare, quantity.top <= quantity.bottom, reading);
  if (top % quantity.bottom !== 0n) {
    reading.note(rounded(typed, sayLength(length, { units: unitsOf(unit), decimal: reading.preferences.decimal })));
  }
  return read(length);
}

/** 3800 is too long in meters, so it probably meant 3800 mm; undefined if that doesn't help either. */
function inSmallerUnit(quantity: Quantity, bare: LengthUnit): string | undefined {
  const unit: LengthUnit = unitsOf(bare) === 'metric' ? 'mm' : 'in';
  const fits = quantity.power === 0 && quantity.top * UNITS[unit].ticks <= MOST_TICKS * quantity.bottom;
  return fits && unit !== bare ? `${quantity.typed} ${unit}` : undefined;
}

// Lengths scattered in a sentence.

const LOOSE_LENGTH =
  /(?<![\d./,$-])(\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|\.\d{1,4})?) ?(mm|cm|"|in(?:ch(?:es)?)?|'|ft|feet|foot|m(?![a-z]))?(?![\d%/])/g;

const FEET_AND_INCHES =
  /(?<!\d)(\d{1,2}) ?(?:'|ft|feet) ?(\d{1,2}(?:[ -]\d{1,2}\/\d{1,2})?) ?(?:"|in(?:ch(?:es)?)?(?![a-z]))/g;

/** By the first letters of the unit. */
const INCHES_PER: readonly (readonly [RegExp, number])[] = [
  [/^mm$/, 1 / 25.4],
  [/^cm$/, 1 / 2.54],
  [/^m$/, 1 / 0.0254],
  [/^(?:'|f)/, 12],
];

/** All lengths of a sentence, each with its unit as written; without one they are inches, or millimeters for metric users. */
export function lengthsIn(
  text: string,
  metric: boolean,
): readonly { readonly length: Length; readonly unit: string }[] {
  const whole = text.replace(
    FEET_AND_INCHES,
    (_, foot: string, inch: string) => `${Number(foot) * 12 + (numberIn(inch) ?? 0)}"`,
  );
  return [...whole.matchAll(LOOSE_LENGTH)].flatMap(({ 1: figure = '', 2: unit = '' }) => {
    const value = numberIn(figure);
    if (value === undefined) return [];
    const factor = INCHES_PER.find(([name]) => name.test(unit))?.[1] ?? (unit === '' && metric ? 1 / 25.4 : 1);
    return [{ length: ticks(Math.round(value * factor * TICKS_PER_INCH)), unit }];
  });
}

function numberIn(figure: string): number | undefined {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(figure);
  if (!mixed) return Number(figure);
  const [, whole = '0', top = '0', bottom = '1'] = mixed;
  return Number(bottom) === 0 ? undefined : Number(whole) + Number(top) / Number(bottom);
}
