/** Fixtures in a room: `island 3x6 at 4' from left, 5' from bottom of living; post 4x4 in, 30 in from wall 2, 6 ft from wall 1`. */

import type { ParsedStanding, StandingPlace } from '../../layout/home-regions.ts';
import type { Problem } from '../../reply/reply.ts';
import { standingUnread } from '../../text/floor-problems-text.ts';
import { inches, type Length, ticks } from '../../units/length.ts';
import { readLength, readLengthIn, unitIn } from '../parse-length.ts';
import type { LengthUnit } from '../parse-number.ts';
import { Rest } from '../parse-plank.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { pairPattern, plainSigns, SIDE } from './room-text.ts';

const MOST_THINGS = 60;
const LEAST_SIDE = inches(0.5);

const SIDES: Readonly<Record<string, 'left' | 'right' | 'bottom' | 'top'>> = {
  left: 'left',
  right: 'right',
  bottom: 'bottom',
  lower: 'bottom',
  near: 'bottom',
  front: 'bottom',
  top: 'top',
  upper: 'top',
  far: 'top',
  back: 'top',
};
const WHERE =
  '(?<where>left|right|bottom|lower|near|front|top|upper|far|back)(?:[ -]?hand)?(?: (?:wall|side|edge))?(?![a-z])';
const FROM = '(?: ?(?:in|out|away|up|over|off))? ?(?:from|off) (?:the )?';
const CORNER = new RegExp(
  `(?<x>${SIDE}|0) ?(?:,|and|x|by) ?(?<y>${SIDE}|0)${FROM}(?<v>bottom|lower|near|front|top|upper|far|back)[ -](?<h>left|right)(?:[ -]?hand)? corner`,
);
const DISTANCE = new RegExp(
  `(?:(?:at|and) )?(?<side>${SIDE}|0(?: ?(?:in|ft|'|"))?)${FROM}(?:${WHERE}|wall (?<wall>\\d{1,3}))`,
);
const AGAINST = new RegExp(
  `(?:at|against|on|along|touching) (?:the )?(?:${WHERE.replace('?<where>', '?<where>')}|wall (?<wall>\\d{1,3}))`,
);
const PAIR = new RegExp(pairPattern().source.replace(/\$$/, ''));
const MIDDLE = /(?<![a-z])(?:in the (?:middle|centre|center)|centred|centered|centre|center|middle)(?![a-z])/;
const ROOM = /(?<![a-z])(?:of|in) (?:the )?(?<room>[\p{L}][\p{L}\p{N}'._&#+/ -]*?)(?<!\s)(?:\s*[.,])?\s*$/u;
const ROOM_BEHIND_SIZE =
  /^\s*(?:,|in|of) (?:the )?(?<room>\p{L}[\p{L}\p{N}'._&#+/ -]*?)(?=\s*,|\s{2}|\s+at(?![\p{L}])|$)/u;
const ROUND = new RegExp(
  `(?<side>${SIDE}) ?(?:-)?(?:round|diameter|across|square|dia)(?![a-z])|(?:round|diameter|square) (?:of )?(?<other>${SIDE})`,
);
const SMALL =
  /(?<![a-z])(?:post|column|pillar|vent|register|grille|grate|pipe|flange|drain|duct|box|pole|outlet|newel)s?(?![a-z])/;
const FILLER = /(?<![a-z])(?:an?|the|at|and|is|it|of|about|with|round|square|wide|long|deep)(?![a-z])|[,:;.()\s-]/g;

/** Fixtures separated by `;` or a newline, none for `none`. Reports all problems at once. */
export function readStanding(text: string, reading: Reading): Read<readonly ParsedStanding[]> {
  if (/^\s*(?:(?:none|no|no holes?|nothing|0)\s*)?$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const things: ParsedStanding[] = [];
  const wrong: string[] = [];
  const metric = reading.preferences.units === 'metric';
  const standard = metric
    ? 'island 0.9 x 1.8 m at 1.2 m from left, 1.5 m from bottom'
    : `island 3 x 6 ft at 4' from left, 5' from bottom`;
  if (parts.length > MOST_THINGS)
    return unread(standingUnread({ option: reading.option, got: text }, MOST_THINGS, standard));
  const mended = parts.map((part) => {
    const thing = thingOf(part, reading);
    if (thing) things.push(thing);
    else wrong.push(part);
    return thing ? part : standard;
  });
  if (parts.length === 0) wrong.push(text);
  const [first, ...more] = wrong.map(
    (got): Problem => standingUnread({ option: reading.option, got }, MOST_THINGS, mended.join('; ') || standard),
  );
  return first ? unread(first, ...more) : read(named(things));
}

/** Numbers fixtures of the same name in one room. */
function named(things: readonly ParsedStanding[]): readonly ParsedStanding[] {
  return things.map((thing, i) => {
    const alike = (other: ParsedStanding): boolean => other.name === thing.name && other.room === thing.room;
    if (things.filter(alike).length < 2) return thing;
    return { ...thing, name: `${thing.name} ${things.slice(0, i).filter(alike).length + 1}` };
  });
}

function thingOf(part: string, reading: Reading): ParsedStanding | undefined {
  const plain = plainSigns(part).replace(/\s+/g, ' ').trim();
  const rest = new Rest(plain);
  const places = placesIn(rest, reading);
  if (!places) return undefined;
  const size = sizeIn(rest, plain, reading);
  if (!size) return undefined;
  const behind = ROOM_BEHIND_SIZE.exec(rest.text.slice(size.end))?.groups?.room;
  const room = rest.claim(ROOM)?.groups?.room ?? behind;
  if (room !== undefined && room === behind)
    rest.text = rest.text.replace(new RegExp(`(?:in|of|,) (?:the )?${escaped(room)}`), ' ');
  const name = rest.text.replace(FILLER, ' ').replace(/\s+/g, ' ').trim();
  if (/\d/.test(name) || name.length > 30) return undefined;
  return { name: name === '' ? 'hole' : name, room, across: size.across, up: size.up, places };
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** The distances given, each from a side, a wall or a corner. Undefined if one can't be parsed. */
function placesIn(rest: Rest, reading: Reading): readonly StandingPlace[] | undefined {
  const bare: LengthUnit = reading.preferences.units === 'metric' ? 'm' : 'ft';
  const places: StandingPlace[] = [];
  let readable = true;
  const add = (from: Extract<StandingPlace, { distance: Length }>['from'] | undefined, text: string): void => {
    const distance = /^0+\D*$/.test(text) ? ticks(0) : lengthOf(text, bare, reading);
    if (from === undefined || distance === undefined) readable = false;
    else places.push({ from, distance });
  };
  for (const { groups } of rest.claimAll(CORNER)) {
    add(SIDES[groups?.h ?? ''], groups?.x ?? '');
    add(SIDES[groups?.v ?? ''], groups?.y ?? '');
  }
  for (const pattern of [DISTANCE, AGAINST]) {
    for (const { groups } of rest.claimAll(pattern)) {
      add(groups?.wall === undefined ? SIDES[groups?.where ?? ''] : Number(groups.wall), groups?.side ?? '0');
    }
  }
  if (rest.claim(MIDDLE)) places.push({ from: 'middle' });
  return readable ? places : undefined;
}

/** Two sides, or one for something round or square; `end` is where they end in the text. */
function sizeIn(rest: Rest, plain: string, reading: Reading): { across: Length; up: Length; end: number } | undefined {
  const metric = reading.preferences.units === 'metric';
  const bare: LengthUnit = SMALL.test(plain) ? (metric ? 'mm' : 'in') : metric ? 'm' : 'ft';
  // “4x4 in the hall”: that in isn't a unit.
  const pair = rest.claim(PAIR);
  const one = pair ? undefined : rest.claim(ROUND);
  const found = pair ?? one;
  if (!found) return undefined;
  const [a, b] = pair
    ? [pair.groups?.a ?? '', pair.groups?.b ?? '']
    : [one?.groups?.side ?? one?.groups?.other ?? '', ''];
  const word = /^(.*\d[^\d\s]*) in$/.exec(b);
  const follows = plain.slice(found.index + found[0].length);
  const preposition = word !== null && /^ (?:the )?(?!at |from |by |and |of |in )\p{L}/u.test(follows);
  const second = preposition ? (word[1] ?? b) : b;
  if (preposition)
    rest.text = `${rest.text.slice(0, found.index + found[0].length - 2)}in${rest.text.slice(found.index + found[0].length)}`;
  const across = sideOf(a, unitIn(second), bare, reading);
  const up = pair ? sideOf(second, unitIn(a), bare, reading) : across;
  if (across === undefined || up === undefined || across < LEAST_SIDE || up < LEAST_SIDE) return undefined;
  return { across, up, end: found.index + found[0].length - (preposition ? 3 : 0) };
}

/** A side in its own unit, in that of the other side, or in `bare`, with a note. */
function sideOf(text: string, other: LengthUnit | undefined, bare: LengthUnit, reading: Reading): Length | undefined {
  if (other === undefined) return lengthOf(text, bare, reading);
  const found = readLengthIn(text, reading, other);
  return found.ok ? found.value : undefined;
}

function lengthOf(text: string, bare: LengthUnit, reading: Reading): Length | undefined {
  const found = readLength(text, reading, bare);
  return found.ok ? found.value : undefined;
}
