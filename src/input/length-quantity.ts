/** One quantity in a plain text: a length of one or several parts, an area, or a number without a unit. */

import type { Problem } from '../reply/reply.ts';
import { doubtfulCentimetres, doubtfulMark, partTooLarge, typedExample } from '../text/length-problems-text.ts';
import { ticks } from '../units/length.ts';
import {
  type Doubt,
  feetAndInchesIn,
  isWhole,
  matchAt,
  type Numeral,
  numeralAt,
  type Ratio,
  roundedRatio,
  valued,
} from './length-number.ts';
import { type LengthUnit, MOST_TICKS, UNIT_NAMES, UNIT_PATTERN, UNITS, unitMatched } from './length-units.ts';
import type { Reading } from './reading.ts';
import { sayLength } from './say-length.ts';

/** `top` / `bottom` in ticks to the `power`: 0 a plain number, 1 a length, 2 an area. */
export interface Quantity extends Ratio {
  readonly power: 0 | 1 | 2;
  readonly typed: string;
  readonly end: number;
  /** The largest unit in it. */
  readonly unit?: LengthUnit;
  /** Set when one decimal may have been meant as feet and inches. */
  readonly feetAndInches?: readonly [feet: string, inch: string];
  /** Set when a hyphen was read as a joint and not as a minus. */
  readonly hyphen?: boolean;
}

export interface Scan {
  readonly reading: Reading;
  /** The unit that the marks of a number without one are read for. */
  readonly bare?: LengthUnit;
  /** In a sum a hyphen with spaces is a minus, and areas are read. */
  readonly sum: boolean;
}

const UNIT = new RegExp(
  ` {0,2}(?<square>(?:sq\\.?|square) *)?${UNIT_PATTERN}(?<two>(?<=[a-z])(?:²|\\^2|2(?![\\d.,/]| *(?:["']|in|ft|foot|feet|cm|mm))))?\\.?`,
  'y',
);
const TIGHT_JOINT = /-(?=[\d.,])| *(?<spoken>, *(?:and +)?|and +)?/y;
const LOOSE_JOINT = / *- *| *(?<spoken>, *(?:and +)?|and +)?/y;
const AFTER_METRES = / *(\d{1,3})(?!\d)/y;

/** The quantity that begins at `start`, a Problem when what is typed there is doubtful or false, undefined when there is none. */
export function quantityAt(text: string, start: number, scan: Scan): Quantity | Problem | undefined {
  const numeral = numeralAt(text, start, !scan.sum);
  if (!numeral) return undefined;
  const named = unitAt(text, numeral.end, scan.sum);
  const value = valued(numeral, named?.unit ?? scan.bare, scan.reading.habits.decimal);
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

/** `quantity` with the lesser parts that follow it, each of a smaller unit of the same kind: 12' 6 1/2", 3 m 80 cm. */
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
  // Feet and inches are joined by a hyphen; between metres and centimetres it can only be a minus. So it is in a sum before
  // a fraction alone, since the joint is written 12'-0 5/8".
  const fraction = numeral?.ratio !== undefined && numeral.ratio.top < numeral.ratio.bottom;
  const joins = !joint[0].includes('-') || (unit === 'ft' && !(scan.sum && fraction));
  const spoken = joint.groups?.spoken !== undefined;
  const part = numeral && joins ? partAt(text, quantity.end, next, numeral, unit, spoken, scan) : undefined;
  if (!numeral || !part) return quantity;
  const typed = text.slice(start, part.end).trim();
  const got = { option: scan.reading.option, got: typed };
  if (part.doubtful && quantity.top < MOST_TICKS) {
    const { decimal } = scan.reading.habits;
    const metres = /^\d+/.exec(quantity.typed)?.[0] ?? '';
    return doubtfulCentimetres(got, `${metres}${decimal}${numeral.typed} m`, `${metres} m ${numeral.typed} cm`);
  }
  const lesser = valued(numeral, part.unit, scan.reading.habits.decimal);
  if (lesser === undefined) return undefined;
  // A thousand of a lesser unit would fill the greater one, so no mark is doubtful here.
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

/** The unit of a lesser part: named, or understood (inches after feet; 3m80 has centimetres, 3m805 millimetres). */
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

/** Both readings of a doubtful numeral, each with the unit `behind` it. */
function doubt(numeral: Numeral, behind: string, { whole, decimal, wholeFits }: Doubt, scan: Scan): Problem {
  const got = { option: scan.reading.option, got: `${numeral.typed}${behind}` };
  const readings = { whole: `${whole}${behind}`, decimal: `${decimal}${behind}` };
  return doubtfulMark(got, readings, wholeFits ? readings.whole : readings.decimal);
}

/** The sum of the parts as a length is said, each greater part filled: 12' 14" is 13' 2". */
function carried(top: bigint, bottom: bigint, unit: LengthUnit, scan: Scan): string {
  const whole = roundedRatio({ top, bottom });
  if (whole > MOST_TICKS) return typedExample(UNITS[unit].units === 'metric', scan.reading.habits.decimal);
  return sayLength(ticks(Number(whole)), { units: UNITS[unit].units, decimal: scan.reading.habits.decimal });
}
