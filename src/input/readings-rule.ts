/** How flat a floor must be, a ramp to fill, and what a bag of levelling compound fills. */

import { notARamp, notARule, notAYield } from '../text/prep-problems-text.ts';
import { type Area, areaOf, type Length } from '../units/length.ts';
import { unitIn, unitsOf } from './length.ts';
import type { LengthUnit } from './length-units.ts';
import { figureOf } from './price.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';
import { pairPattern, readSide, SIDE } from './rooms/room-side.ts';

/** A rule by name, or the maker's own. */
export type ToldRule =
  | { readonly name: 'floating' | 'nail-down' }
  | { readonly name: 'own'; readonly gap: Length; readonly over: Length };

const RULE = new RegExp(`^(?<gap>${SIDE}) (?:in|over|per|under) (?:a |an |any )?(?<over>${SIDE})$`);
const RAMP = new RegExp(
  `^${pairPattern().source}(?: ?[,;] ?| )(?:height |rise |by |at )?(?<height>${SIDE})(?: high| deep| rise)?$`,
);
const LONGEST_RULE = 120;

function plainOf(text: string): string {
  return plainSigns(withoutHidden(text.trim(), ' ')).slice(0, LONGEST_RULE).replace(/\s+/g, ' ');
}

/** `floating`, `nail-down`, or `1/8 in in 6 ft`. Never throws. */
export function readRule(text: string, reading: Reading): Read<ToldRule> {
  const plain = plainOf(text);
  const name = /^(?:(float(?:ing)?|click|vinyl)|nail(?:ed)?[ -]?down|nailed)(?: floor| plank| wood)?$/.exec(plain);
  if (name) return read({ name: name[1] === undefined ? 'nail-down' : 'floating' });
  const match = RULE.exec(plain);
  const { gap, over } = match?.groups ?? {};
  const bad = unread(notARule({ option: reading.option, got: text }));
  if (gap === undefined || over === undefined) return bad;
  const metric = unitsOf(unitIn(over) ?? (reading.habits.units === 'metric' ? 'm' : 'ft')) === 'metric';
  const [small, large] = [readSide(gap, metric ? 'mm' : 'in', reading), readSide(over, metric ? 'm' : 'ft', reading)];
  if (!small.ok || !large.ok || small.length * 10 > large.length) return bad;
  return read({ name: 'own', gap: small.length, over: large.length });
}

export interface ToldRamp {
  readonly area: Area;
  readonly height: Length;
}

/** `3 x 4 ft, 1/2 in`: sides and height; or `none`. Never throws. */
export function readRamp(text: string, reading: Reading): Read<ToldRamp> {
  const plain = plainOf(text);
  if (/^(?:none|no)$/.test(plain)) return read({ area: 0n, height: 0 as Length });
  const metric = reading.habits.units === 'metric';
  const bad = unread(notARamp({ option: reading.option, got: text }));
  const match = RAMP.exec(plain);
  const { a, b, height } = match?.groups ?? {};
  if (a === undefined || b === undefined || height === undefined) return bad;
  const bare: LengthUnit = metric ? 'm' : 'ft';
  const [one, other, rise] = [
    readSide(a, unitIn(b) ?? bare, reading),
    readSide(b, unitIn(a) ?? bare, reading),
    readSide(height, metric ? 'mm' : 'in', reading),
  ];
  if (!one.ok || !other.ok || !rise.ok || rise.length > Math.min(one.length, other.length)) return bad;
  return read({ area: areaOf(one.length, other.length), height: rise.length });
}

/** One bag: litres it fills, kilograms it weighs. */
export interface ToldBag {
  readonly litres: number;
  readonly kilograms: number;
}

/** Exactly 0.3048³ m³ and 0.45359237 kg (NIST SP 811, from memory). */
const LITRES_PER_CUBIC_FOOT = 28.316846592;
const KILOGRAMS_PER_POUND = 0.45359237;

const NUMBER = '\\d+(?:[.,]\\d+)?|[.,]\\d+';
const WEIGHT = `(?<weight>${NUMBER}) ?(?<unit>lbs?|pounds?|kgs?|kilos?)(?: ?-?bags?)?`;
const VOLUME = new RegExp(
  `^(?<volume>${NUMBER}) ?(?<measure>cu(?:bic|\\.)? ?(?:ft|feet|foot)\\.?|ft ?(?:³|\\^?3)|cf|l|lit(?:re|er)s?) ?(?:per|a|/|,|from|in)? ?(?:a )?${WEIGHT}$`,
);
const RATE = new RegExp(
  `^(?<rate>${NUMBER}) ?kg(?: ?/ ?| per )m(?:²|\\^?2)(?: ?/ ?| per | and )mm ?(?:,|;|in)? ?${WEIGHT}$`,
);

/** `0.45 cu ft per 50 lb`, `13 L per 25 kg`, `1.7 kg/m²/mm, 25 kg` (a m² of a mm is a litre). Never throws. */
export function readYield(text: string, reading: Reading): Read<ToldBag> {
  const plain = plainOf(text);
  const groups = (VOLUME.exec(plain) ?? RATE.exec(plain))?.groups;
  const figure = (typed: string | undefined): number => {
    const ratio = typed === undefined ? undefined : figureOf(typed, reading.habits);
    return ratio ? Number(ratio.top) / Number(ratio.bottom) : Number.NaN;
  };
  const kilograms = figure(groups?.weight) * (/^[lp]/.test(groups?.unit ?? '') ? KILOGRAMS_PER_POUND : 1);
  const cubicFeet = /f/.test(groups?.measure ?? '');
  const litres =
    groups?.rate === undefined
      ? figure(groups?.volume) * (cubicFeet ? LITRES_PER_CUBIC_FOOT : 1)
      : kilograms / figure(groups.rate);
  // Cement-based powders weigh from 1 to 2.5 kg a litre filled: else the figures were turned round.
  const heavy = kilograms / litres;
  if (!(kilograms >= 1 && kilograms <= 1500 && heavy >= 0.5 && heavy <= 4))
    return unread(notAYield({ option: reading.option, got: text }));
  return read({ litres, kilograms });
}
