/** Checks that a line built from a user's text keeps all of it and adds no numbers. */

import { distance } from 'fastest-levenshtein';
import { plainSigns } from './rooms/room-text.ts';
import { ROOM, withFigures } from './trade-words.ts';

/** Fifty rooms have no more numbers than this; a line with more isn't corrected. */
const MOST_FIGURES = 600;
const MOST_SLIPS = 20;

/**
 * How a text was typed: as a command line, where every word counts, or as a sentence, from which filler may be dropped.
 */
export type Typing = 'line' | 'sentence';

/** A number in a text: its possible readings, each one or more exact numbers, and its unit. */
interface Figure {
  readonly readings: readonly (readonly string[])[];
  readonly unit: string | undefined;
}

/** Units by how they are typed; a number without one matches any. */
const UNITS: readonly (readonly [unit: string, typed: string])[] = [
  ['sq ft', 'sq(?:uare)?\\.? ?-?(?:ft|feet|foot)|sqft|sf|(?:ft|feet|foot) ?\\^?2'],
  ['sq m', 'sq(?:uare)?\\.? ?-?(?:met(?:er|re)s?|m)|sqm|qm|m ?\\^?2'],
  ['ft', "feet|foot|ft|'(?!')"],
  ['in', `inch(?:es)?|ins?|"|''|zoll`],
  ['yd', 'yards?|yds?'],
  ['mm', 'mms?|millimet(?:re|er)s?'],
  ['cm', 'cms?|centimet(?:re|er)s?'],
  ['m', 'met(?:re|er)s?|m'],
  ['%', '%|percent|per cent|pct'],
  ['°', '°|deg(?:rees?)?'],
];
const UNIT = UNITS.map(([, typed], i) => `(?<u${i}>(?:${typed})(?![a-z²³]))`).join('|');
const MIXED = '(?:(?<whole>\\d{1,9})(?: ?- ?| ))?(?<top>\\d{1,9}) ?/ ?(?<bottom>\\d{1,9})(?!\\d)';
const FIGURE = new RegExp(`(?:${MIXED}|(?<plain>\\d+(?:[.,]\\d+)*|[.,]\\d+))(?: ?-? ?(?:${UNIT}))?`, 'g');

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Words that join numbers or that parsers skip; a line may omit them. */
const JOINING = new Set(
  (
    'the my our and for are measures about approx approximately roughly circa per each every with from has its ' +
    'feet foot inch inches ins yard yards yds metre metres meter meters sqft sqm square percent deg degree degrees ' +
    'carton cartons box boxes pack packs packet packets package packages case cases floor trim prep please thanks'
  ).split(' '),
);

/** Parts of a room that a sentence may mention besides the rooms themselves. */
const PART = /(?<![a-z])(?:bay|closet|alcove|nook|corner|notch|pantry|island|hearth)(?=s?(?![a-z]))/g;

/** Whether a line has a number that isn't in any of the texts. */
export function invents(line: string, texts: readonly string[]): boolean {
  const typed = texts.flatMap(figuresIn);
  const made = figuresIn(line);
  return (
    made.length > MOST_FIGURES ||
    made.some((figure) => !typed.some((one) => isSame(figure, one) || isPartOf(figure, one)))
  );
}

/** Whether a line lacks a number, a name or, for a command line, a word that was typed. */
export function drops(line: string, typed: string, typing: Typing): boolean {
  const [held, given] = [[...figuresIn(line)], figuresIn(typed)];
  const lost = given.length > MOST_FIGURES || given.some((figure) => !isTaken(figure, held));
  return lost || (typing === 'line' ? dropsWord(line, typed) : dropsName(line, typed));
}

/** Removes a possible reading of a number from those a line has; false if none is there. */
function isTaken(figure: Figure, held: Figure[]): boolean {
  const same = held.findIndex((one) => isSame(figure, one));
  if (same >= 0) {
    held.splice(same, 1);
    return true;
  }
  return figure.readings.some((numbers) => {
    if (numbers.length < 2) return false;
    const places = numbers.map((number) => held.findIndex((one) => hasReading(one, [number])));
    if (places.some((place) => place < 0) || new Set(places).size < places.length) return false;
    for (const place of places.sort((one, other) => other - one)) held.splice(place, 1);
    return true;
  });
}

function isSame(one: Figure, other: Figure): boolean {
  if (one.unit !== undefined && other.unit !== undefined && one.unit !== other.unit) return false;
  return one.readings.some((numbers) => hasReading(other, numbers));
}

/** Whether one number is a part of another with a comma: `48,10` may also be 48 and 10. */
function isPartOf(one: Figure, other: Figure): boolean {
  const [number, ...more] = one.readings[0] ?? [];
  return (
    number !== undefined && more.length === 0 && other.readings.some((all) => all.length > 1 && all.includes(number))
  );
}

function hasReading({ readings }: Figure, numbers: readonly string[]): boolean {
  return readings.some((one) => one.length === numbers.length && one.every((number, i) => number === numbers[i]));
}

function figuresIn(text: string): readonly Figure[] {
  return [...plain(text).matchAll(FIGURE)].map(({ groups = {} }): Figure => {
    const at = UNITS.findIndex((_, i) => groups[`u${i}`] !== undefined);
    return { readings: readingsOf(groups), unit: UNITS[at]?.[0] };
  });
}

function readingsOf(groups: Readonly<Record<string, string | undefined>>): Figure['readings'] {
  const { whole, top, bottom, plain: typed = '' } = groups;
  if (top !== undefined && bottom !== undefined) {
    const part = ratio(BigInt(top), BigInt(bottom));
    if (whole === undefined) return [[part]];
    return [[ratio(BigInt(whole) * BigInt(bottom) + BigInt(top), BigInt(bottom))], [decimal(whole), part]];
  }
  // No measurement has this many digits, so they are compared as typed.
  if (typed.length > 40) return [[typed]];
  const parts = typed.split(/[.,]/);
  const [first = '', second] = parts;
  if (second === undefined) return [[decimal(typed)]];
  const whole3 = parts.length > 1 && first !== '' && parts.slice(1).every(({ length }) => length === 3);
  return [
    ...(parts.length === 2 ? [[decimal(`${first || '0'}.${second}`)]] : []),
    ...(parts.length === 3 ? [[decimal(`${first}${second}.${parts[2]}`)]] : []),
    ...(whole3 ? [[decimal(parts.join(''))]] : []),
    ...(first === '' ? [] : [parts.map(decimal)]),
  ];
}

/** A decimal number normalized, without redundant zeros. */
function decimal(typed: string): string {
  const [whole = '', part = ''] = typed.split('.');
  const digits = part.replace(/(?<!0)0+$/, '');
  return ratio(BigInt(`${whole || '0'}${digits}`), 10n ** BigInt(digits.length));
}

function ratio(top: bigint, bottom: bigint): string {
  if (bottom === 0n) return `${top}/0`;
  let [a, b] = [top, bottom];
  while (b > 0n) [a, b] = [b, a % b];
  return a === 0n ? '0' : bottom === a ? `${top / a}` : `${top / a}/${bottom / a}`;
}

function plain(text: string): string {
  const digits = text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[\uff01-\uff5e]/g, (wide) => wide.normalize('NFKC'))
    .replace(/[²³]/g, (sign) => `^${sign.normalize('NFKC')}`);
  return withFigures(plainSigns(digits));
}

function wordsIn(text: string): readonly string[] {
  const words = plain(text).match(/[\p{L}\p{M}]{3,}/gu) ?? [];
  return words.map((word) => word.toLowerCase()).filter((word) => !JOINING.has(word));
}

/**
 * Each word must occur as often as it was typed; a word of the line that wasn't typed may be the correction of one
 * typo.
 */
function dropsWord(line: string, typed: string): boolean {
  const held = [...wordsIn(line)];
  const slips = wordsIn(typed).filter((word) => !isPulled(held, (one) => one === word));
  return slips.length > MOST_SLIPS || slips.some((word) => !isPulled(held, (one) => isNear(word, one)));
}

function isPulled(words: string[], wanted: (word: string) => boolean): boolean {
  const place = words.findIndex(wanted);
  if (place >= 0) words.splice(place, 1);
  return place >= 0;
}

function dropsName(line: string, typed: string): boolean {
  const held = plain(line);
  const names = [...plain(typed).matchAll(ROOM), ...plain(typed).matchAll(PART)].map(([name]) => stem(name));
  return names.some((name) => !/^(?:room|area|space|floor area)$/.test(name) && !held.includes(name));
}

function stem(name: string): string {
  return name.trim().replace(/(?:ie)?s$/, '');
}

/** The same word or a typo of it: two letters wrong or swapped, or one in a short word. */
function isNear(word: string, other: string): boolean {
  if (word === other) return true;
  const letters = (of: string): string => [...of].sort().join('');
  const most = Math.min(word.length, other.length) <= 4 && letters(word) !== letters(other) ? 1 : 2;
  return Math.abs(word.length - other.length) <= most && distance(word, other) <= most;
}
