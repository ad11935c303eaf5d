/** One length, read from any of the forms in which people type it, exactly to the tick. */

import {
  bareRead,
  decimalFeetRead,
  notAboveZero,
  notALength,
  rounded,
  tooLong,
  typedExample,
} from '../text/length-problems-text.ts';
import { type Length, ticks } from '../units/length.ts';
import { roundedRatio } from './length-number.ts';
import { type Quantity, quantityAt } from './length-quantity.ts';
import { plainText } from './length-text.ts';
import { type LengthUnit, MOST_TICKS, UNIT_NAMES, UNIT_PATTERN, UNITS, unitMatched } from './length-units.ts';
import { type Habits, type Read, type Reading, read, type Units, unread } from './reading.ts';
import { sayLength } from './say-length.ts';

const LONGEST_TEXT = 100;
const NAMED = new RegExp(`(?<![a-z])${UNIT_PATTERN}`, 'g');
/** Words and marks that stand for a unit only behind a figure: "12 in the hall" has inches, "laid in the hall" none. */
const NEEDS_FIGURE = /^(?:m|ins?|["'])$/;

/**
 * One length in ticks, above zero and at most 100 m. A number without a unit is taken in `bare`, and noted; so is what is
 * typed finer than a tick (rounded once, a half up), and decimal feet that may have been meant as feet and inches.
 * Never throws: what is no length comes back as a Problem with a length to type instead.
 */
export function readLength(text: string, reading: Reading, bare: LengthUnit): Read<Length> {
  return lengthOf(text, reading, bare, true);
}

/** As readLength, but a number without a unit is in `unit` because the text round it says so, and that is not noted. */
export function readLengthIn(text: string, reading: Reading, unit: LengthUnit): Read<Length> {
  return lengthOf(text, reading, unit, false);
}

/** The largest unit that the text names explicitly, undefined when it names none. */
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

/** The system of measures a unit belongs to. */
export function unitsOf(unit: LengthUnit): Units {
  return UNITS[unit].units;
}

/** A length this asker could type, for a Problem's fix. */
export function lengthExample(habits: Habits): string {
  return typedExample(habits.units === 'metric', habits.decimal);
}

/** Tells how 12.6 feet were read, when `unit` is feet and 12' 6" may have been meant; gives whether it did. */
export function noteDecimalFeet(quantity: Quantity, unit: LengthUnit, length: Length, reading: Reading): boolean {
  if (unit !== 'ft' || !quantity.feetAndInches) return false;
  const [feet, inch] = quantity.feetAndInches;
  const said = sayLength(length, { units: 'imperial', decimal: reading.habits.decimal });
  reading.note(decimalFeetRead(quantity.typed, quantity.unit ? said : `${quantity.typed} feet, ${said}`, feet, inch));
  return true;
}

/** Tells in which unit a number without one was read. */
export function noteBare(typed: string, unit: LengthUnit, atMostOne: boolean, reading: Reading): void {
  reading.note(bareRead(typed, atMostOne ? UNITS[unit].one : UNITS[unit].word));
}

function lengthOf(text: string, reading: Reading, bare: LengthUnit, tellBare: boolean): Read<Length> {
  const typed = text.trim();
  const got = { option: reading.option, got: typed };
  const example = lengthExample(reading.habits);
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
    reading.note(rounded(typed, sayLength(length, { units: unitsOf(unit), decimal: reading.habits.decimal })));
  }
  return read(length);
}

/** 3800 that is too long in metres, as the 3800 mm that were probably meant; undefined when that does not help either. */
function inSmallerUnit(quantity: Quantity, bare: LengthUnit): string | undefined {
  const unit: LengthUnit = unitsOf(bare) === 'metric' ? 'mm' : 'in';
  const fits = quantity.power === 0 && quantity.top * UNITS[unit].ticks <= MOST_TICKS * quantity.bottom;
  return fits && unit !== bare ? `${quantity.typed} ${unit}` : undefined;
}
