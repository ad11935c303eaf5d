/** Position and size of damage, findings, areas of a floor, and panel sheets and adhesive tubes. */

import {
  damageSizeMissing,
  lengthFalse,
  notAPart,
  notASheet,
  notATube,
  partReadIn,
  placeMissing,
  placeRead,
  placeSide,
  tubeRead,
} from '../text/prep-problems-text.ts';
import {
  type Area,
  areaOf,
  inches,
  type Length,
  millimetres,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
} from '../units/length.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Found, foundAside, NOTHING_FOUND, screened } from './parse-found.ts';
import { unitIn, unitsOf } from './parse-length.ts';
import { type LengthUnit, numeralAt, UNITS, valued } from './parse-number.ts';
import { figureOf } from './parse-price.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { pairPattern, plainSigns, readSide, SIDE, withoutHidden } from './rooms/room-text.ts';

/** Damage: its sides, anything else said about it, and its place if that was said. */
export interface ParsedDamage {
  /** Its near left corner, from the walls. */
  readonly place: { readonly left: Length; readonly bottom: Length } | undefined;
  readonly across: Length;
  readonly up: Length;
  readonly units: Units;
  readonly found: Found;
}

const FROM = '(?: ?(?:in|out|away|up|over|off))? ?(?:from|off|to) (?:the )?';
const WALL = '(?: ?-?(?:hand )?(?: ?(?:wall|side|edge))?)';
const FROM_LEFT = new RegExp(`(?<side>${SIDE})${FROM}left${WALL}(?![a-z])`);
const FROM_BOTTOM = new RegExp(`(?<side>${SIDE})${FROM}(?:bottom|lower|near|front)${WALL}(?![a-z])`);
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
 * `20 x 30 in at 3' from left, 5' from bottom`: the first side runs across, the second up. Damage at a wall is 0 from
 * it. Without a place only its size is known. Other words are screened for hazards. Never throws.
 */
export function readDamage(text: string, reading: Reading): Read<ParsedDamage> {
  const typed = withoutHidden(text.trim(), ' ').slice(0, LONGEST_TEXT);
  const got = { option: reading.option, got: typed };
  const plain = plainSigns(typed).replace(/\s+/g, ' ');
  const metric = reading.preferences.units === 'metric';
  const rest = new Rest(plain);
  const fromLeft = rest.claim(FROM_LEFT) ?? rest.claim(AT_LEFT);
  const fromBottom = rest.claim(FROM_BOTTOM) ?? rest.claim(AT_BOTTOM);
  const other = rest.claim(OTHER_WALL);
  const size = rest.claim(PAIR);
  const pair = fromLeft || fromBottom ? undefined : rest.claim(AT);
  const [a, b] = [size?.groups?.a, size?.groups?.b];
  // Hazards take precedence over missing values, so that a fix never hides one.
  const unit: LengthUnit = unitIn(a ?? '') ?? unitIn(b ?? '') ?? (metric ? 'mm' : 'in');
  const [x, y] = [fromLeft?.groups?.side ?? pair?.groups?.a, fromBottom?.groups?.side ?? pair?.groups?.b];
  const placed = x !== undefined && y !== undefined;
  const at = placed ? ` at ${x} from left, ${y} from bottom` : '';
  const mended =
    a === undefined || b === undefined || (x === undefined) !== (y === undefined)
      ? undefined
      : `${a} x ${b}${at}, unsure`;
  const found = screened(rest.text.replace(FILLER, ' '), reading, mended);
  if (!found.ok) return found;
  const nothing = { place: undefined, across: zero, up: zero, units: unitsOf(unit), found: found.value };
  if (found.value.hazards.length > 0) return read(nothing);
  if (other) return unread(placeSide(got));
  if (a === undefined || b === undefined) return unread(damageSizeMissing(got));
  if (!placed && (x !== undefined || y !== undefined)) return unread(placeMissing(got));
  if (pair && placed) reading.note(placeRead(x, y));
  const lengths: Length[] = [];
  for (const [side, bare] of [
    [a, unitIn(b) ?? unit],
    [b, unitIn(a) ?? unit],
    ...(placed ? ([x, y] as const).map((side) => [side, metric ? 'mm' : 'in'] as const) : []),
  ] as const) {
    const stated = unitIn(side) ?? (side === a || side === b ? (unitIn(a) ?? unitIn(b)) : undefined);
    if (stated === undefined && !/^0$/.test(side)) reading.note(partReadIn(side, UNITS[bare].word));
    const length = lengths.length < 2 ? readSide(side, bare, reading) : distanceAt(side, bare, reading);
    if (!length.ok) return unread(lengthFalse(got, length.expected));
    lengths.push(length.length);
  }
  const [across = zero, up = zero, left = zero, bottom = zero] = lengths;
  return read({ ...nothing, place: placed ? { left, bottom } : undefined, across, up });
}

const zero = 0 as Length;

/** Distance from a wall; zero is allowed here, unlike for a side. */
function distanceAt(side: string, unit: LengthUnit, reading: Reading) {
  if (NO_DISTANCE.test(side)) return { ok: true, length: zero } as const;
  return readSide(side, unit, reading);
}

/** A text from which parsed parts are removed. */
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

/** `sides` if two were given, longer first; `line` if one was. */
export interface ParsedPart {
  readonly area: Area;
  readonly sides?: readonly [longer: Length, shorter: Length];
  readonly line?: Length;
  readonly units?: Units;
  readonly found: Found;
}

const NO_PART: ParsedPart = { area: 0n, found: NOTHING_FOUND };

const SQUARE =
  /(?<figure>(?<!\d|\d[.,])\d+(?:[.,]\d+)*) ?(?:(?<feet>sq(?:uare|\.)? ?(?:ft|feet|foot|')\.?|(?:ft|feet) ?(?:²|\^?2)|sf(?![a-z]))|(?<metres>sq(?:uare|\.)? ?m(?:et(?:re|er)s?)?(?![a-z])|m ?(?:²|\^?2)|qm))/;
const AREA_PAIR = new RegExp(pairPattern().source);
const LINE = new RegExp(`(?<![\\d./])(?<line>${SIDE})`);
const LONGEST_AREA = 200;
/** 5,000 m². */
const MOST: Area = 5000n * SQUARE_TICKS_PER_SQUARE_METRE;

/**
 * `4 x 6 ft`, `8 ft`, `20 m²`, or `none`. Sides without a unit are in `bare`, with a note; if only one has a unit, they
 * share it. Other words are screened for hazards. Never throws.
 */
export function readPart(text: string, reading: Reading, takes: { readonly line: boolean }): Read<ParsedPart> {
  const typed = withoutHidden(text.trim(), ' ');
  const got = { option: reading.option, got: typed.slice(0, LONGEST_AREA) };
  const metric = reading.preferences.units === 'metric';
  if (/^(?:none|no)$/i.test(typed)) return read(NO_PART);
  if (typed.length > LONGEST_AREA) return unread(notAPart(got, takes.line));
  const plain = plainSigns(typed).replace(/\s+/g, ' ');
  const match = SQUARE.exec(plain) ?? AREA_PAIR.exec(plain) ?? lineIn(plain, takes.line);
  const rest = match ? `${plain.slice(0, match.index)} ${plain.slice(match.index + match[0].length)}` : plain;
  const found = screened(rest, reading, match ? `${match[0]}, unsure` : undefined);
  if (!found.ok) return match || /unsure/.test(rest) ? found : unread(notAPart(got, takes.line));
  if (found.value.hazards.length > 0) return read({ ...NO_PART, found: found.value });
  if (!match) return unread(notAPart(got, takes.line));
  const { figure, a, b, line } = match.groups ?? {};
  if (figure !== undefined) {
    const area = squareOf(figure, match.groups?.metres !== undefined, reading);
    if (area === undefined || area <= 0n || area > MOST) return unread(notAPart(got, takes.line));
    return read({ area, units: match.groups?.metres === undefined ? 'imperial' : 'metric', found: found.value });
  }
  const sides = [a ?? line, b].filter((side) => side !== undefined);
  const stated = sides.map(unitIn);
  const bare: LengthUnit = metric ? 'm' : 'ft';
  const lengths: Length[] = [];
  for (const [i, side] of sides.entries()) {
    const length = readSide(side, stated[1 - i] ?? bare, reading);
    if (!length.ok) return unread(lengthFalse(got, length.expected));
    lengths.push(length.length);
  }
  if (stated.every((unit) => unit === undefined)) reading.note(partReadIn(match[0].trim(), UNITS[bare].word));
  const units = unitsOf(stated.find((unit) => unit !== undefined) ?? bare);
  const [one, other] = lengths;
  if (one === undefined) return unread(notAPart(got, takes.line));
  if (other === undefined) return read({ area: 0n, line: one, units, found: found.value });
  const sorted = one >= other ? ([one, other] as const) : ([other, one] as const);
  return read({ area: areaOf(one, other), sides: sorted, units, found: found.value });
}

function lineIn(plain: string, line: boolean): RegExpExecArray | undefined {
  return (line ? LINE.exec(plain) : null) ?? undefined;
}

function squareOf(figure: string, metres: boolean, reading: Reading): Area | undefined {
  const numeral = numeralAt(figure, 0, false);
  const value = numeral && valued(numeral, undefined, reading.preferences.decimal);
  if (!value || !('top' in value)) return undefined;
  return (value.top * (metres ? SQUARE_TICKS_PER_SQUARE_METRE : SQUARE_TICKS_PER_SQUARE_FOOT)) / value.bottom;
}

// A sheet of subfloor panel and a tube of adhesive, as printed on them.

const WHOLE_PAIR = new RegExp(`^${pairPattern().source}$`);
/** Exactly 231/128 in³ of 16.387064 ml each. */
const ML_PER_FLUID_OUNCE = 29.5735295625;

/** `4 x 8 ft`, `1220 x 2440 mm`: the longer side is the strength axis. Never throws. */
export function readSheet(text: string, reading: Reading): Read<{ readonly width: Length; readonly length: Length }> {
  const metric = reading.preferences.units === 'metric';
  const typed = withoutHidden(text.trim(), ' ').slice(0, 60);
  const bad = unread(notASheet({ option: reading.option, got: typed }));
  const match = WHOLE_PAIR.exec(plainSigns(typed));
  const { a, b } = match?.groups ?? {};
  if (a === undefined || b === undefined) return bad;
  const [one, other] = [
    readSide(a, unitIn(b) ?? (metric ? 'mm' : 'ft'), reading),
    readSide(b, unitIn(a) ?? (metric ? 'mm' : 'ft'), reading),
  ];
  if (!one.ok || !other.ok) return bad;
  const [width, length] = one.length <= other.length ? [one.length, other.length] : [other.length, one.length];
  return width < millimetres(300) || length > inches(192) ? bad : read({ width, length });
}

/** `28 fl oz`, `10.1 oz`, `825 ml`, as fluid ounces. A bare number is fluid ounces, with a note. Never throws. */
export function readTube(text: string, reading: Reading): Read<number> {
  const typed = withoutHidden(text.trim(), ' ').slice(0, 60);
  const match =
    /^(?<figure>\d+(?:[.,]\d+)*) ?(?<unit>(?:us )?(?:fl\.? ?)?oz\.?|fluid ounces?|ounces?|ml|cc|l(?:it(?:re|er)s?)?)?$/.exec(
      plainSigns(typed),
    );
  const ratio = match?.groups?.figure ? figureOf(match.groups.figure, reading.preferences) : undefined;
  const figure = ratio ? Number(ratio.top) / Number(ratio.bottom) : Number.NaN;
  const unit = match?.groups?.unit;
  const size =
    unit === undefined || /o/.test(unit) ? 1 : /^l/.test(unit) ? 1000 / ML_PER_FLUID_OUNCE : 1 / ML_PER_FLUID_OUNCE;
  const ounces = figure * size;
  if (!(ounces >= 1 && ounces <= 100)) return unread(notATube({ option: reading.option, got: typed }));
  if (unit === undefined) reading.note(tubeRead(typed));
  return read(ounces);
}

interface ParsedFinding {
  /** One of the project's names, if the text has one. */
  readonly room: string | undefined;
  /** Square ticks, if the text has a size. */
  readonly area: Area | undefined;
  readonly found: Found;
}

const ANY_PAIR = new RegExp(pairPattern().source);
const ANY_SQUARE = /(?<![\d.,])\d[\d.,]{0,12} ?(?:sq(?:uare|\.)? ?(?:ft|feet|foot|m)\.?|sqft|ft²|m²)/i;

const UNIT = /(?:ft|feet|foot|in|inch|inches|mm|cm|m|['"²])\s*\.?$/;

/** Reads one finding; `names` are the project's rooms. Never throws. */
export function readFinding(text: string, names: readonly string[], reading: Reading): ParsedFinding {
  return readInTime(() => findingIn(text, names, reading));
}

function findingIn(text: string, names: readonly string[], reading: Reading): ParsedFinding {
  const plain = plainSigns(text);
  const size = ANY_SQUARE.exec(plain)?.[0] ?? ANY_PAIR.exec(plain)?.[0];
  const part =
    size === undefined ? undefined : readPart(size.trim(), { ...reading, note: () => undefined }, { line: false });
  return {
    room: roomNamedIn(plain, names),
    area: part?.ok && part.value.area > 0n ? part.value.area : undefined,
    // A size in feet is no lumber: 2 x 3 ft stands beside no joist.
    found: foundAside(size !== undefined && UNIT.test(size) ? plain.replace(size, ' ') : text),
  };
}

/** Places where one finding may end and another begin, the surest last. */
const BETWEEN = [
  /(?:(?:(?<!\s)\s+)?(?:;|,(?:\s+and)?\s)|(?<!\s)\s+and\s)\s*/i,
  /(?:(?<!\s)\s+)?(?:;|,\s+and\s)\s*/i,
  /(?:(?<!\s)\s+)?;\s*/,
];

/** Splits findings of several rooms where each part says something about a room of its own. */
export function findingsApart(text: string, names: readonly string[]): readonly string[] {
  return readInTime(() => findingsIn(text, names));
}

function findingsIn(text: string, names: readonly string[]): readonly string[] {
  for (const between of BETWEEN) {
    const parts = text.split(between).filter((part) => part.trim() !== '');
    const rooms = parts.map((part) => roomNamedIn(part, names));
    const whole = parts.every((part, i) => rooms[i] !== undefined && saysMore(part, rooms[i] ?? ''));
    if (whole && new Set(rooms).size === parts.length && parts.length > 1) return parts;
  }
  return [text];
}

/** Whether a text says anything besides the name of a room. */
function saysMore(text: string, room: string): boolean {
  const rest = plainSigns(text).replace(plainSigns(room), ' ');
  return /\p{L}/u.test(rest.replace(/(?<!\p{L})(?:in|at|on|by|the|my|our|a|also|too|room)(?!\p{L})/gu, ' '));
}

/** The longest of the names that stand in a text as words of their own. */
export function roomNamedIn(text: string, names: readonly string[]): string | undefined {
  const plain = ` ${plainSigns(text).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  const named = names.filter((name) =>
    plain.includes(
      ` ${plainSigns(name)
        .replace(/[^\p{L}\p{N}]+/gu, ' ')
        .trim()} `,
    ),
  );
  return [...named].sort((a, b) => b.length - a.length)[0];
}
