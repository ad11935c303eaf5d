/** A plank's size: two sides in either order, and a third when the thickness is typed with them. */

import { sizeMissing, sizeOutOfRange, sizeReadIn, sizeTurned } from '../text/plank-problems-text.ts';
import { type Length, TICKS_PER_INCH, TICKS_PER_METRE } from '../units/length.ts';
import { unitIn, unitsOf } from './length.ts';
import { type LengthUnit, UNITS } from './length-units.ts';
import type { Unclaimed } from './plank-claim.ts';
import type { Reading, Units } from './reading.ts';
import type { Flaw } from './rooms/room-flaw.ts';
import { LETTER } from './rooms/room-plain.ts';
import { pairPattern, readSide, SIDE, TIMES } from './rooms/room-side.ts';
import { sayLength } from './say-length.ts';

export interface Size {
  readonly width: Length;
  readonly length: Length;
  readonly thickness?: Length;
  readonly units: Units;
}

const COUNTED = `(?<=\\d) ?-?(?:per(?![${LETTER}])|/|an?(?![${LETTER}])|ct|count|each|p(?:ie)?ce?s|planks|boards|pack|in a)`;
/** "6x48,10 per carton": 48,10 could be a decimal, but no length is counted by the carton. */
const PAIRS = [pairPattern(COUNTED), pairPattern()];
const TRIPLE = new RegExp(
  `(?<![${LETTER}\\d./])(?<a>${SIDE})${TIMES}(?<b>${SIDE})${TIMES}(?<c>${SIDE})(?: ?thick)?(?!${TIMES}[\\d.,])`,
);
const SHORTEST = TICKS_PER_INCH;
const WIDEST = TICKS_PER_METRE;
const LONGEST = 4 * TICKS_PER_METRE;

/** Claims the size of a plank. A side without a unit takes the other's, else inches or millimetres by habit, which is noted. */
export function claimSize(text: string, rest: Unclaimed, reading: Reading): Size | Flaw {
  const metric = reading.habits.units === 'metric';
  const triple = rest.claim(TRIPLE);
  const found = triple ?? rest.claimFirst(PAIRS);
  const { a, b, c } = found?.groups ?? {};
  if (!found || a === undefined || b === undefined) {
    const whole = { from: 0, to: text.length };
    return { from: 0, to: 0, shown: whole, expected: sizeMissing(), mends: () => [] };
  }
  const stated = unitIn(a) ?? unitIn(b) ?? (c === undefined ? undefined : unitIn(c));
  const unit: LengthUnit = stated ?? (metric ? 'mm' : 'in');
  const place = { from: found.index, to: found.index + found[0].length };
  const typed = text.slice(place.from, place.to).trim();
  const flaw = (expected: string, ...mends: string[]): Flaw => ({
    ...place,
    expected,
    mends: () => [...mends, ...likelier(a, b)],
  });
  const one = readSide(a, unitIn(b) ?? unit, reading);
  if (!one.ok) return flaw(one.expected, ...one.mends.map((mend) => `${mend} x ${b}`));
  const other = readSide(b, unitIn(a) ?? unit, reading);
  if (!other.ok) return flaw(other.expected, ...other.mends.map((mend) => `${a} x ${mend}`));
  const third = c === undefined ? undefined : readSide(c, unit, reading);
  if (third && !third.ok) return flaw(third.expected, `${a} x ${b}`);
  const [width, length] = one.length <= other.length ? [one.length, other.length] : [other.length, one.length];
  const thick = third && third.length > TICKS_PER_INCH;
  if (thick || width < SHORTEST || width > WIDEST || length > LONGEST) return flaw(sizeOutOfRange());
  const units = unitsOf(unit);
  const saying = { units, decimal: reading.habits.decimal };
  if (!stated) reading.note(sizeReadIn(typed, UNITS[unit].word));
  if (one.length > other.length) reading.note(sizeTurned(typed, sayLength(width, saying), sayLength(length, saying)));
  return { width, length, units, ...(third && { thickness: third.length }) };
}

/** The size in each unit planks are sold in, for figures that make no plank in their own. */
function likelier(a: string, b: string): string[] {
  const figure = (side: string) => /^[\d.,/ ]*\d/.exec(side)?.[0] ?? side;
  const less = { ft: 'in', m: 'cm' }[String(unitIn(a) ? undefined : unitIn(b))];
  const mixed = less ? [`${a} ${less} x ${b}`] : [];
  return [...mixed, ...['mm', 'in', 'cm'].map((unit) => `${figure(a)} x ${figure(b)} ${unit}`)];
}
