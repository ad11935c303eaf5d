/** Weights as people type them: of a load, and of a floor by its area. */

import { KILOGRAMS_PER_POUND } from '../prep/tearout-amounts.ts';
import { notALaidWeight, notAWeight, weightReadIn } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { sayWeight } from './say.ts';

const FIGURE = '(\\d{1,6}(?:[.,]\\d{1,3})?)';
const WEIGHT = new RegExp(`^${FIGURE} ?([a-z#]*\\.?)$`);
const LAID = new RegExp(`^${FIGURE} ?([a-z]+)\\.? ?(?:/|per|an?) ?(.+)$`);
const POUNDS = /^(?:lbs?|pounds?|#)\.?$/;
const KILOGRAMS = /^(?:kgs?|kilos?|kilograms?|kilogrammes?)\.?$/;
const SQUARE_METRES: readonly (readonly [RegExp, number])[] = [
  [/^(?:sq\.? ?yds?|sq\.? ?yards?|square yards?|yd2|yd²)\.?$/, 0.83612736],
  [/^(?:sq\.? ?ft|sq\.? ?feet|square (?:foot|feet)|sf|ft2|ft²)\.?$/, 0.09290304],
  [/^(?:sq\.? ?m|square met(?:re|er)s?|m2|m²)\.?$/, 1],
];

/** A figure with a decimal point or comma. */
export function figureOf(typed: string): number {
  return Number(typed.replace(',', '.'));
}

/** Kilograms from `least` to `most`; a bare number is pounds or kilograms by habit, and that is noted. */
export function readWeight(text: string, reading: Reading, least: number, most: number): Read<number> {
  const match = WEIGHT.exec(plain(text));
  const unit = match?.[2] ?? '';
  const { units } = reading.habits;
  const bare = units === 'metric' ? 'kg' : 'lb';
  const inPounds = POUNDS.test(unit) || (unit === '' && bare === 'lb');
  const known = unit === '' || inPounds || KILOGRAMS.test(unit);
  const value = match?.[1] && known ? figureOf(match[1]) * (inPounds ? KILOGRAMS_PER_POUND : 1) : Number.NaN;
  if (!(value >= least - 1e-9 && value <= most + 1e-9)) {
    const say = (kilograms: number) => sayWeight(kilograms, reading.habits);
    return unread(notAWeight({ option: reading.option, got: text }, say(least), say(most)));
  }
  if (unit === '' && match?.[1]) reading.note(weightReadIn(match[1], bare === 'kg' ? 'kilograms' : 'pounds'));
  return read(value);
}

/** Kilograms a square metre; undefined for `usual`. From 0.1 to 200. */
export function readLaidWeight(text: string, reading: Reading): Read<number | undefined> {
  const typed = plain(text);
  if (/^(?:usual|standard|typical|unknown)$/.test(typed)) return read(undefined);
  const match = LAID.exec(typed);
  const [unit, per] = [match?.[2] ?? '', match?.[3] ?? ''];
  const area = SQUARE_METRES.find(([word]) => word.test(per))?.[1];
  const kilograms = POUNDS.test(unit)
    ? KILOGRAMS_PER_POUND
    : KILOGRAMS.test(unit)
      ? 1
      : unit === 'g'
        ? 0.001
        : Number.NaN;
  const value = match?.[1] && area !== undefined ? (figureOf(match[1]) * kilograms) / area : Number.NaN;
  if (!(value >= 0.1 && value <= 200)) return unread(notALaidWeight({ option: reading.option, got: text }));
  return read(value);
}

function plain(text: string): string {
  return text.normalize('NFC').trim().toLowerCase().replace(/\s+/g, ' ');
}
