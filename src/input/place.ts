/** Where a damage lies and how large it is: two sides, and its distances from the left and the bottom wall. */

import {
  lengthFalse,
  partReadIn,
  placeMissing,
  placeRead,
  placeSide,
  sizeMissing,
} from '../text/prep-problems-text.ts';
import type { Length } from '../units/length.ts';
import { unitIn, unitsOf } from './length.ts';
import { type LengthUnit, UNITS } from './length-units.ts';
import { type Found, screened } from './place-found.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';
import { pairPattern, readSide, SIDE } from './rooms/room-side.ts';

/** A damage: its near left corner's distances from the walls, its sides, and what else was said of it. */
export interface ToldDamage {
  readonly left: Length;
  readonly bottom: Length;
  readonly across: Length;
  readonly up: Length;
  readonly units: Units;
  readonly found: Found;
}

const FROM = '(?: ?(?:in|out|away|up|over|off))? ?(?:from|off|to) (?:the )?';
const WALL = '(?: ?-?(?:hand )?(?: ?(?:wall|side|edge))?)';
const left = new RegExp(`(?<side>${SIDE})${FROM}left${WALL}(?![a-z])`);
const bottom = new RegExp(`(?<side>${SIDE})${FROM}(?:bottom|lower|near|front)${WALL}(?![a-z])`);
const OTHER_WALL = new RegExp(`${SIDE}${FROM}(?:right|top|upper|far|back)${WALL}(?![a-z])`);
const NOUGHT = '(?<![\\d./])0(?: ?(?:\'|"|ft|in|mm|cm|m))?';
const AT_LEFT = new RegExp(`(?<side>${NOUGHT})${FROM}left${WALL}`);
const AT_BOTTOM = new RegExp(`(?<side>${NOUGHT})${FROM}(?:bottom|lower|near|front)${WALL}`);
const NO_DISTANCE = new RegExp(`^${NOUGHT}$`);
const PAIR = new RegExp(pairPattern().source);
const AT = new RegExp(`(?:at|@) ?(?<a>${SIDE})(?: ?,? ?(?:and|,) ?| )(?<b>${SIDE})`);
const FILLER =
  /(?<![a-z])(?:damage[ds]?|at|and|size|about|approx(?:imately)?|roughly|it|is|it's|wide|long|deep|across|up|tall|high|by)(?![a-z])|[@~,;.]/g;
const LONGEST_TEXT = 300;

/**
 * `20 x 30 in at 3' from left, 5' from bottom`: the first side runs across, the second up. A damage at a wall is 0 from it.
 * Other words are screened for what is unsafe. Never throws.
 */
export function readDamage(text: string, reading: Reading): Read<ToldDamage> {
  const typed = withoutHidden(text.trim(), ' ').slice(0, LONGEST_TEXT);
  const got = { option: reading.option, got: typed };
  const plain = plainSigns(typed).replace(/\s+/g, ' ');
  const metric = reading.habits.units === 'metric';
  const rest = new Rest(plain);
  const fromLeft = rest.claim(left) ?? rest.claim(AT_LEFT);
  const fromBottom = rest.claim(bottom) ?? rest.claim(AT_BOTTOM);
  const other = rest.claim(OTHER_WALL);
  const size = rest.claim(PAIR);
  const pair = fromLeft || fromBottom ? undefined : rest.claim(AT);
  const [a, b] = [size?.groups?.a, size?.groups?.b];
  // What is unsafe comes before what is missing: an ask must not be mended round it.
  const unit: LengthUnit = unitIn(a ?? '') ?? unitIn(b ?? '') ?? (metric ? 'mm' : 'in');
  const [x, y] = [fromLeft?.groups?.side ?? pair?.groups?.a, fromBottom?.groups?.side ?? pair?.groups?.b];
  const whole = [a, b, x, y].every((side) => side !== undefined);
  const mended = whole ? `${a} x ${b} at ${x} from left, ${y} from bottom, unsure` : undefined;
  const found = screened(rest.text.replace(FILLER, ' '), reading, mended);
  if (!found.ok) return found;
  const nothing = { left: zero, bottom: zero, across: zero, up: zero, units: unitsOf(unit), found: found.value };
  if (found.value.hazards.length > 0) return read(nothing);
  if (other) return unread(placeSide(got));
  if (a === undefined || b === undefined) return unread(sizeMissing(got));
  if (x === undefined || y === undefined) return unread(placeMissing(got));
  if (pair) reading.note(placeRead(x, y));
  const lengths: Length[] = [];
  for (const [side, bare] of [
    [a, unitIn(b) ?? unit],
    [b, unitIn(a) ?? unit],
    [x, metric ? 'mm' : 'in'],
    [y, metric ? 'mm' : 'in'],
  ] as const) {
    const stated = unitIn(side) ?? (side === a || side === b ? (unitIn(a) ?? unitIn(b)) : undefined);
    if (stated === undefined && !/^0$/.test(side)) reading.note(partReadIn(side, UNITS[bare].word));
    const length = lengths.length < 2 ? readSide(side, bare, reading) : distanceAt(side, bare, reading);
    if (!length.ok) return unread(lengthFalse(got, length.expected));
    lengths.push(length.length);
  }
  const [across = zero, up = zero, fromX = zero, fromY = zero] = lengths;
  return read({ ...nothing, left: fromX, bottom: fromY, across, up });
}

const zero = 0 as Length;

/** How far from a wall: nothing at the wall itself, which no side of a damage is. */
function distanceAt(side: string, unit: LengthUnit, reading: Reading) {
  if (NO_DISTANCE.test(side)) return { ok: true, length: zero } as const;
  return readSide(side, unit, reading);
}

/** A text from which what was understood is taken out. */
class Rest {
  text: string;
  constructor(text: string) {
    this.text = text;
  }
  claim(pattern: RegExp): RegExpExecArray | undefined {
    const match = pattern.exec(this.text);
    if (match) this.text = `${this.text.slice(0, match.index)} ; ${this.text.slice(match.index + match[0].length)}`;
    return match ?? undefined;
  }
}
