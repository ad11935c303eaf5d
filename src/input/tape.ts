/** Arithmetic in lengths as it is done with a tape in hand: 12'6" + 2 x 3'4 1/2" - 5/8", half of 3.8 m, 12'6" to mm. */

import type { Problem } from '../reply/reply.ts';
import {
  hyphenRead,
  notASum,
  sumNotAboveZero,
  sumTooLarge,
  sumTooLong,
  typedSumExample,
  wrongTarget,
} from '../text/length-problems-text.ts';
import { type Area, type Length, ticks } from '../units/length.ts';
import { noteDecimalFeet, unitsOf } from './length.ts';
import { roundedRatio } from './length-number.ts';
import type { Quantity } from './length-quantity.ts';
import { plainText } from './length-text.ts';
import { type LengthUnit, MOST_TICKS, UNIT_PATTERN, unitMatched } from './length-units.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { sayArea, sayNumber } from './say.ts';
import { type Saying, sayLength } from './say-length.ts';
import { type Terms, termsOf } from './tape-terms.ts';
import { asLength, type Sum, totalOf, type Value } from './tape-tree.ts';

/** What a sum comes to; `exact` is false when it was rounded to a tick, `to` is the unit asked for, `units` its system, else the first typed one's. */
export type Tape =
  | {
      readonly kind: 'length';
      readonly length: Length;
      readonly exact: boolean;
      readonly units: Units;
      readonly to?: LengthUnit;
    }
  | {
      readonly kind: 'area';
      readonly area: Area;
      readonly exact: boolean;
      readonly units: Units;
      readonly to?: LengthUnit;
    }
  | { readonly kind: 'number'; readonly value: number };

const LONGEST_TEXT = 300;
const MOST_SUM = MOST_TICKS * 100n;
const MOST_NUMBER = 1e15;
const TARGET = new RegExp(
  `(?<! ) +(?:in|to|into|as) +(?<square>(?:sq\\.?|square) *)?${UNIT_PATTERN}(?<two>²|2|\\^2)?\\.?(?<rest> and inches)?$`,
);

/**
 * The value of a sum, rounded once to a tick and above zero. Numbers without a unit multiply and divide; added to a length,
 * or added up by themselves, they are lengths in `bare`, which is noted. Length × length is an area, area ÷ length a length,
 * length ÷ length a number; anything else, and what comes to zero or below, is a Problem. Never throws on any text.
 */
export function readTape(text: string, reading: Reading, bare: LengthUnit): Read<Tape> {
  const got = { option: reading.option, got: text.trim() };
  const example = typedSumExample(reading.habits.units === 'metric', reading.habits.decimal);
  if (text.length > LONGEST_TEXT) return unread(sumTooLarge(got, `${LONGEST_TEXT} characters`, example));
  const plain = plainText(text)
    .replace(/(?<![ =?])[ =?]+$/, '')
    .trim();
  if (plain === '') return unread(notASum(got, '', example));
  const target = targetOf(plain);
  const terms = termsOf(target ? plain.slice(0, target.start) : plain, reading, got, example);
  if ('expected' in terms) return unread({ ...terms, got: got.got });
  for (const quantity of terms.quantities) noteDoubts(quantity, reading);

  const sum: Sum = { reading, bare: unitAtEnd(terms) ?? bare, got, example };
  const value = totalOf(terms, sum);
  if ('expected' in value) return unread(value);
  const units = unitsOf(target?.unit ?? terms.quantities.find(({ unit }) => unit)?.unit ?? bare);
  const tape = tapeOf(asLength(value, sum), { units, decimal: reading.habits.decimal }, sum, target);
  return 'expected' in tape ? unread(tape) : read(tape);
}

/** The unit of lengths that are only added up, where nothing but the last of them names one, in letters: 5 + 3 + 9 ft are feet. */
function unitAtEnd({ structure, quantities }: Terms): LengthUnit | undefined {
  const last = quantities.at(-1);
  const others = quantities.slice(0, -1);
  // Beside feet with a mark, and below one, a number is what is read off a tape: inches.
  const alike = others.every(({ unit, power, top, bottom }) => unit === undefined && power === 0 && top >= bottom);
  const named = last?.power === 1 && /[a-z]\.?$/i.test(last.typed.trim());
  return alike && named && /^q0(?:[+-]q\d+)+$/.test(structure) ? last.unit : undefined;
}

interface Target {
  readonly unit: LengthUnit;
  readonly square: boolean;
  readonly start: number;
}

/** The unit a sum is asked for in ("… to mm"), and where that begins. */
function targetOf(plain: string): Target | undefined {
  const match = TARGET.exec(plain);
  const unit = match && unitMatched(match);
  if (!match || !unit || (match.groups?.rest !== undefined && unit !== 'ft')) return undefined;
  const square = match.groups?.square !== undefined || match.groups?.two !== undefined;
  return { unit, square, start: match.index };
}

function noteDoubts(quantity: Quantity, reading: Reading): void {
  if (quantity.hyphen) reading.note(hyphenRead(quantity.typed, quantity.typed.replaceAll('-', ' ')));
  if (quantity.unit && quantity.power === 1 && quantity.top <= MOST_SUM * quantity.bottom) {
    noteDecimalFeet(quantity, quantity.unit, ticks(Number(roundedRatio(quantity))), reading);
  }
}

function tapeOf({ amount, power }: Value, saying: Saying, { got, example }: Sum, target?: Target): Tape | Problem {
  const whole = roundedRatio({ top: amount.n, bottom: amount.d });
  const figures = whole * amount.s;
  const exact = amount.d === 1n;
  const also = { units: saying.units, ...(target && { to: target.unit }) };
  if (power === 0) {
    const value = amount.valueOf();
    if (!(Math.abs(value) <= MOST_NUMBER)) return sumTooLong(got, sayNumber(MOST_NUMBER, saying), example);
    if (amount.s <= 0n || amount.n === 0n) return sumNotAboveZero(got, sayNumber(value, saying), example);
    return target ? wrongTarget(got, 'a number', example) : { kind: 'number', value };
  }
  if (power === 2) {
    if (whole > MOST_SUM * MOST_SUM) return sumTooLong(got, '100 km²', example);
    return figures <= 0n
      ? sumNotAboveZero(got, sayArea(figures, saying), example)
      : { kind: 'area', area: figures, exact, ...also };
  }
  if (whole > MOST_SUM) return sumTooLong(got, '10 km', example);
  const length = ticks(Number(figures));
  if (figures <= 0n) return sumNotAboveZero(got, sayLength(length, saying), example);
  return target?.square ? wrongTarget(got, 'a length', example) : { kind: 'length', length, exact, ...also };
}
