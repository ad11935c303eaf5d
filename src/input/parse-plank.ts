/** A plank product from free text: size, carton contents and price, thickness, pad and lock. */

import {
  cartonMissing,
  notOfAPlank,
  plankCountExample,
  plankSizeExample,
  plankTooLong,
  sizeMissing,
  sizeOutOfRange,
  sizeReadIn,
  sizeTurned,
  thicknessRead,
  thickOutOfRange,
} from '../text/floor-problems-text.ts';
import { hiddenSignTyped } from '../text/room-problems-text.ts';
import { areaOf, type Length, TICKS_PER_INCH, TICKS_PER_METRE } from '../units/length.ts';
import { sayLength } from './format.ts';
import { unitIn, unitsOf } from './parse-length.ts';
import { type LengthUnit, UNITS } from './parse-number.ts';
import { cartonOf, cartonPrice, claimCarton, claimPrice, type Unclaimed, unclaimed } from './parse-plank-price.ts';
import { type ParsedPlank, type Preferences, type Read, type Reading, read, type Units, unread } from './reading.ts';
import { type Flaw, problemsOf } from './rooms/room-flaw.ts';
import {
  hiddenSign,
  LETTER,
  pairPattern,
  plainSigns,
  readSide,
  SIDE,
  TIMES,
  withoutHidden,
} from './rooms/room-text.ts';

const END = `(?![${LETTER}])`;
const PAD = '(?:pad(?:ding)?|underlay(?:ment)?|backing)';
const NO_PAD = new RegExp(
  `(?:no|without(?: an?)?|not?) ?-?(?:attached )?${PAD}${END}|un-?padded${END}|${PAD} not attached`,
);
const WITH_PAD = new RegExp(
  `(?:(?:with )?(?:an? )?(?:pre-?)?attached ${PAD}|${PAD} (?:is )?(?:pre-?)?attached|with (?:an? )?${PAD}|padded|(?<![${LETTER}])${PAD})${END}`,
);
const NO_LOCK = new RegExp(
  `(?:(?:no|without(?: an?)?) ?-?(?:end )?(?:locks?|locking|click)|glue(?:d)?[ -]?down|glued?|loose[ -]?lay|loose|nail(?:ed)?[ -]?down)${END}`,
);
const LOCK = new RegExp(
  `(?:click(?:[ -]?(?:lock|together|in))?|(?:inter)?lock(?:ing|s|ed)?|float(?:ing)?|snap(?:[ -]?together)?)${END}`,
);
/** Boards made for herringbone, with mirrored end locks. */
const HANDED = new RegExp(
  `(?:a ?(?:/|\\+|&|and) ?b|left(?:-hand(?:ed)?)? ?(?:/|\\+|&|and) ?right(?:[ -]hand(?:ed)?)?|(?:left|right)-handed|handed)(?: (?:boards?|planks?))?${END}`,
);
/** The wear layer is printed on every carton but changes nothing here. */
const WEAR = new RegExp(`(?<!\\d)\\d+(?:[.,]\\d+)? ?-?mils?${END}(?: wear ?-?layer)?`);
const THICK = new RegExp(`(?<before>${SIDE}) ?-?thick(?:ness)?${END}|thick(?:ness)? ?[:=]? ?(?<after>${SIDE})`);
const LONE = new RegExp(`(?<![${LETTER}\\d.,/])(?<before>${SIDE})(?![${LETTER}\\d])`);

interface Make {
  readonly attachedPad?: boolean;
  readonly lock: 'click' | 'none';
  /** True for boards that come as mirror images, A and B. */
  readonly handed?: boolean;
}

/** Claims the pad and the lock; planks click together unless the text says otherwise. */
function claimMake(rest: Unclaimed): Make {
  rest.claim(WEAR);
  const pad = rest.claim(NO_PAD) ? false : rest.claim(WITH_PAD) ? true : undefined;
  const handed = rest.claim(HANDED) !== undefined;
  const lock = rest.claim(NO_LOCK) ? 'none' : 'click';
  if (lock === 'click') rest.claim(LOCK);
  return { lock, ...(handed && { handed }), ...(pad !== undefined && { attachedPad: pad }) };
}

/** Claims a thickness that is called one. */
function claimThickness(rest: Unclaimed, reading: Reading): Length | Flaw | undefined {
  return thicknessOf(rest.claim(THICK), reading);
}

/**
 * Claims a remaining length with a unit once the size has been claimed, and notes that it was taken as the thickness.
 */
function claimLoneThickness(text: string, rest: Unclaimed, reading: Reading): Length | Flaw | undefined {
  const lone = rest.left().find(({ words }) => {
    const typed = LONE.exec(words)?.groups?.before;
    return typed === words && unitIn(typed) !== undefined;
  });
  if (!lone) return undefined;
  const length = thicknessOf(rest.claim(new RegExp(lone.words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))), reading);
  if (typeof length === 'number') reading.note(thicknessRead(text.slice(lone.from, lone.to)));
  return length;
}

function thicknessOf(found: RegExpExecArray | undefined, reading: Reading): Length | Flaw | undefined {
  if (!found) return undefined;
  const typed = found.groups?.before ?? found.groups?.after ?? found[0];
  const side = readSide(typed, 'mm', reading);
  if (side.ok && side.length <= TICKS_PER_INCH) return side.length;
  const expected = side.ok ? thickOutOfRange() : side.expected;
  return { from: found.index, to: found.index + found[0].length, expected, mends: () => [] };
}

// Size: two sides in either order, and a third if the thickness is typed with them.

interface Size {
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

/**
 * Claims the size of a plank. A side without a unit takes the other's, or else the user's inches or millimeters, with a
 * note.
 */
function claimSize(text: string, rest: Unclaimed, reading: Reading): Size | Flaw {
  const metric = reading.preferences.units === 'metric';
  const triple = rest.claim(TRIPLE);
  const found = triple ?? rest.claimFirst(PAIRS);
  const { a, b, c } = found?.groups ?? {};
  if (!found || a === undefined || b === undefined) {
    const whole = { from: 0, to: text.length };
    return { from: 0, to: 0, shown: whole, expected: sizeMissing(), mends: () => [] };
  }
  const stated = unitIn(a) ?? unitIn(b) ?? (c === undefined ? undefined : unitIn(c));
  // No plank is so many inches long.
  const long = [a, b].some((side) => /^\d+$/.test(side.trim()) && Number(side) * TICKS_PER_INCH > LONGEST);
  const unit: LengthUnit = stated ?? (metric || long ? 'mm' : 'in');
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
  const saying = { units, decimal: reading.preferences.decimal };
  if (!stated) reading.note(sizeReadIn(typed, UNITS[unit].word));
  if (one.length > other.length) reading.note(sizeTurned(typed, sayLength(width, saying), sayLength(length, saying)));
  return { width, length, units, ...(third && { thickness: third.length }) };
}

/** The size in each unit planks are sold in, for numbers that make no plank in their own. */
function likelier(a: string, b: string): string[] {
  const figure = (side: string) => /^[\d.,/ ]*\d/.exec(side)?.[0] ?? side;
  const less = { ft: 'in', m: 'cm' }[String(unitIn(a) ? undefined : unitIn(b))];
  const mixed = less ? [`${a} ${less} x ${b}`] : [];
  return [...mixed, ...['mm', 'in', 'cm'].map((unit) => `${figure(a)} x ${figure(b)} ${unit}`)];
}

const LONGEST_TEXT = 500;

const FILLER =
  /^(?:planks?|boards?|pieces?|pcs|tiles?|vinyl|luxury|rigid|core|lvp|lvt|spc|wpc|laminate|floor|flooring|of|with|each|the|an?|and|per|in|is|are|at|for|to|it|that|covers?|covering|coverage|has|holds|contains|size|sizes|nominal|cartons?|box(?:es)?|packs?|cases?|bx|ctn|pkg|long|wide|end|ends|joints?|price|costs?|thick|approx(?:imately)?|about|total|x)$/;

type Parsed =
  | { readonly ok: true; readonly value: ParsedPlank; readonly notes: readonly string[] }
  | { readonly ok: false; readonly flaws: readonly [Flaw, ...Flaw[]] };

/** Whether a text asks for our example plank, for someone who doesn't have one yet. */
export function isExamplePlank(text: string): boolean {
  return /^(?:an? |the )?example(?: plank)?$/i.test(text.trim());
}

/**
 * The example plank as it could be typed. It never goes on an order or list, and the user is told that it is an
 * example.
 */
export function examplePlank({ units }: Preferences): string {
  return `${plankSizeExample(units === 'metric')}, ${plankCountExample()}`;
}

/**
 * A plank with its carton, in any order: `6 x 48 in, 20 sq ft/carton, $2.89/sq ft`. The smaller side is the width. If
 * the count or area of a carton is missing, it is computed; a printed area within 2 % of size × count stands. A price
 * per sq ft, m² or plank becomes the carton's, in whole cents, rounded half up once. What can't be interpreted is
 * reported, never ignored; the fix of a Problem parses. Never throws.
 */
export function readPlank(text: string, reading: Reading): Read<ParsedPlank> {
  const parsed = parse(isExamplePlank(text) ? examplePlank(reading.preferences) : text, reading);
  if (parsed.ok) {
    for (const note of parsed.notes) reading.note(note);
    return read(parsed.value);
  }
  return unread(...problemsOf(parsed.flaws, text, reading.option, (mended) => parse(mended, reading).ok));
}

function parse(text: string, { option, preferences }: Reading): Parsed {
  const notes: string[] = [];
  const reading: Reading = { option, preferences, note: (assumed) => notes.push(assumed) };
  const whole = (expected: string, ...mends: string[]): Parsed => ({
    ok: false,
    flaws: [{ from: 0, to: text.length, expected, mends: () => mends }],
  });
  if (text.length > LONGEST_TEXT) return whole(plankTooLong(LONGEST_TEXT));
  if (hiddenSign(text) !== undefined) return whole(hiddenSignTyped(), withoutHidden(text, ''));
  const rest = unclaimed(plainSigns(text));
  const price = claimPrice(text, rest, reading);
  const named = claimThickness(rest, reading);
  const size = claimSize(text, rest, reading);
  const make = claimMake(rest);
  const units = 'mends' in size ? preferences.units : size.units;
  const { given, flaws } = claimCarton(text, rest, units, reading);
  const lone = named === undefined ? claimLoneThickness(text, rest, reading) : undefined;
  const plankArea = 'mends' in size ? undefined : areaOf(size.width, size.length);
  const uncounted = !given.count && !given.area && flaws.length === 0;
  const count = uncounted ? rest.claim(/(?<![^\u2588 ,;]) {0,9}(?<figure>\d{1,3}) {0,9}(?![^\u2588 ,;])/) : undefined;
  const carton =
    plankArea !== undefined && (given.count || given.area) ? cartonOf(given, plankArea, units, reading) : undefined;
  if (uncounted) flaws.push(count ? loneCount(count) : cartonNotGiven(text));
  if (carton && 'mends' in carton) flaws.push(carton);
  flaws.push(...price.flaws, ...leftFlaws(rest));
  for (const thick of [named, lone]) if (typeof thick === 'object') flaws.push(thick);
  if ('mends' in size) flaws.push(size);
  const settled = carton && 'count' in carton ? carton : undefined;
  const cost = price.given && settled ? cartonPrice(price.given, settled, reading) : undefined;
  if (cost && 'mends' in cost) flaws.push(cost);
  const [first, ...others] = flaws;
  if (first || 'mends' in size || !settled) return { ok: false, flaws: first ? [first, ...others] : [unplaced(text)] };
  const thickness = [named, size.thickness, lone].find((thick) => typeof thick === 'number');
  const value: ParsedPlank = {
    plank: { width: size.width, length: size.length, perCarton: settled.count, lock: make.lock },
    cartonArea: settled.area,
    units,
    ...(cost && 'cents' in cost && { cartonPrice: cost }),
    ...(make.handed && make.lock === 'click' && { handed: true }),
    ...(make.attachedPad !== undefined && { attachedPad: make.attachedPad }),
    ...(thickness !== undefined && { thickness }),
  };
  return { ok: true, notes, value };
}

/** A flaw for every run of words that says nothing about a plank. */
function leftFlaws(rest: Unclaimed): Flaw[] {
  return rest.left().flatMap(({ from, to, words }) => {
    const known = words.split(new RegExp(`[^${LETTER}\\d.$€£-]+`)).every((word) => {
      const bare = word.replace(/^[.-]+|(?<![.-])[.-]+$/g, '');
      return bare === '' || FILLER.test(bare);
    });
    if (known && /^[\s.()/:=@~x-]*$/.test(words.replace(new RegExp(`[${LETTER}]`, 'g'), ''))) return [];
    return [{ from, to, expected: notOfAPlank(), mends: () => [''] }];
  });
}

/** A lone number without any carton was probably the count. */
function loneCount(found: RegExpExecArray): Flaw {
  const place = { from: found.index, to: found.index + found[0].length };
  return {
    ...place,
    expected: cartonMissing(),
    mends: () => [` ${found.groups?.figure} per carton `],
  };
}

function cartonNotGiven(text: string): Flaw {
  const end = text.length;
  const shown = { from: 0, to: end };
  return { from: end, to: end, shown, expected: cartonMissing(), mends: () => [] };
}

function unplaced(text: string): Flaw {
  return { from: 0, to: text.length, expected: notOfAPlank(), mends: () => [] };
}

// Text from which parsed parts are removed, so that nothing typed gets lost unnoticed.

type Claimed = RegExpExecArray;

export class Rest {
  text: string;

  constructor(text: string) {
    this.text = text;
  }

  /** The first match, removed; spaces replace it, so that later matches keep their positions. */
  claim(pattern: RegExp): Claimed | undefined {
    const match = pattern.exec(this.text);
    if (!match) return undefined;
    const to = match.index + match[0].length;
    this.text = this.text.slice(0, match.index) + ' '.repeat(match[0].length) + this.text.slice(to);
    return match;
  }

  claimAll(pattern: RegExp): readonly Claimed[] {
    const all: Claimed[] = [];
    for (let found = this.claim(pattern); found; found = this.claim(pattern)) all.push(found);
    return all.sort((a, b) => a.index - b.index);
  }
}
