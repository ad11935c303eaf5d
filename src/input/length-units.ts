/** The units a length is typed in: their words, their marks and their exact size in ticks. */

import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_METRE, TICKS_PER_MM, TICKS_PER_YARD } from '../units/length.ts';
import type { Units } from './reading.ts';

export type LengthUnit = 'ft' | 'in' | 'yd' | 'm' | 'cm' | 'mm';

interface Unit {
  readonly ticks: bigint;
  readonly units: Units;
  /** The plural word. */
  readonly word: string;
  readonly one: string;
  /** How the unit is typed, longest first, as the source of a pattern. */
  readonly typed: string;
}

/** From the largest to the smallest. */
export const UNITS: Readonly<Record<LengthUnit, Unit>> = {
  m: { ticks: BigInt(TICKS_PER_METRE), units: 'metric', word: 'metres', one: 'metre', typed: 'met(?:re|er)s?|m' },
  yd: { ticks: BigInt(TICKS_PER_YARD), units: 'imperial', word: 'yards', one: 'yard', typed: 'yards?|yds?' },
  ft: { ticks: BigInt(TICKS_PER_FOOT), units: 'imperial', word: 'feet', one: 'foot', typed: "feet|foot|ft|'" },
  in: { ticks: BigInt(TICKS_PER_INCH), units: 'imperial', word: 'inches', one: 'inch', typed: 'inch(?:es)?|ins?|"' },
  cm: { ticks: BigInt(TICKS_PER_MM * 10), units: 'metric', word: 'cm', one: 'cm', typed: 'centimet(?:re|er)s?|cms?' },
  mm: { ticks: BigInt(TICKS_PER_MM), units: 'metric', word: 'mm', one: 'mm', typed: 'millimet(?:re|er)s?|mms?' },
};

/** The longest length read: 100 m in ticks. */
export const MOST_TICKS: bigint = 100n * BigInt(TICKS_PER_METRE);

/** Every unit, the largest first. */
export const UNIT_NAMES: readonly LengthUnit[] = ['m', 'yd', 'ft', 'in', 'cm', 'mm'];

/**
 * A unit as typed, each in its own named group: a mark, or a word that ends before another word begins ("3mx4m" has two).
 * Its end can be told in one way only: two ways for one mark make an engine that goes back try both at every mark.
 */
export const UNIT_PATTERN: string = `(?:${UNIT_NAMES.map(
  (unit) => `(?<${unit}>(?:${UNITS[unit].typed})(?:(?<=['"])|(?<!['"])(?:(?![a-z])|(?=x *[\\d.,(]))))`,
).join('|')})`;

/** The words of all units, without their marks, as the source of a pattern. */
export const UNIT_WORDS: string = UNIT_NAMES.map((unit) => UNITS[unit].typed.replace(/\|["']$/, '')).join('|');

/** The unit whose group a match of UNIT_PATTERN filled. */
export function unitMatched(match: RegExpExecArray): LengthUnit | undefined {
  return UNIT_NAMES.find((unit) => match.groups?.[unit] !== undefined);
}
