/** Pairs of sides in a sentence, and what each is the size of: a room, a plank, a corner left out, or some thing. */

import { unitIn } from '../../input/parse-length.ts';
import type { Reading } from '../../input/reading.ts';
import { pairPattern, readSide, SIDE, TIMES } from '../../input/rooms/room-text.ts';
import { PLANK_NOUN, THINGS, word } from '../../input/trade-words.ts';
import { TICKS_PER_INCH } from '../../units/length.ts';
import type { SentenceSheet } from './sheet.ts';

export type PairRole = 'room' | 'plank' | 'thing' | 'doubt';
/** What its size alone could be. */
type Kind = 'room' | 'plank' | 'either' | 'neither';

export interface Pair {
  readonly from: number;
  readonly to: number;
  readonly typed: string;
  readonly kind: Kind;
}

/** A trade notation of feet and inches, 12-6 x 14-3, is no pair of its last halves. */
const WHOLE = '(?<!\\d ?- ?)';
const LAST = '(?! ?-\\d)';
const PAIR = new RegExp(`${WHOLE}${pairPattern().source}${LAST}`);
const TRIPLE = new RegExp(
  `(?<![\\w./])(?<![x] ?)(?<a>${SIDE})${TIMES}(?<b>${SIDE})${TIMES}(?<c>\\d+(?:[.,]\\d+)? ?mm)(?: ?thick)?(?!${TIMES}[\\d.,])`,
);
const SQUARE = /(?<![\w./])(?<a>\d+(?:[.,]\d+)?(?:'| ?(?:ft|foot|feet|m|met(?:er|re)s?)))[ -]square(?![a-z])/;

/** Claims every pair of sides. Readings are silent: a pair is read again, aloud, by the reader of its option. */
export function claimPairs(sheet: SentenceSheet, text: string, reading: Reading): Pair[] {
  const found = [TRIPLE, PAIR, SQUARE].flatMap((pattern) => sheet.claimAll(pattern));
  return found
    .sort((one, other) => one.index - other.index)
    .map(({ index, to, groups }) => ({
      from: index,
      to,
      typed: text.slice(index, to).trim(),
      kind: groups?.c === undefined ? kindOf(groups?.a ?? '', groups?.b ?? groups?.a ?? '', reading) : 'plank',
    }));
}

/** What two sides could be the size of; bounds are custom of the trade: planks to 13 in and 8 ft, rooms from 2 ft. */
function kindOf(a: string, b: string, reading: Reading): Kind {
  const unit = unitIn(`${a} ; ${b}`);
  if (!unit) return bareKind(figure(a), figure(b));
  const one = readSide(a, unitIn(b) ?? unit, reading);
  const other = readSide(b, unitIn(a) ?? unit, reading);
  if (!one.ok || !other.ok) return 'neither';
  const [width = 0, length = 0] = [one.length, other.length].map((side) => side / TICKS_PER_INCH).sort((x, y) => x - y);
  const small = width >= 1 && width <= 13 && length >= 10 && length <= 96;
  const mixed = [a, b].some((side) => ['in', 'cm', 'mm'].includes(unitIn(side) ?? ''));
  if (small && mixed && (unit === 'in' || unit === 'cm' || unit === 'mm' || length <= 96))
    return length >= 2 * width ? 'plank' : 'either';
  return width >= 24 ? 'room' : 'either';
}

function bareKind(a: number, b: number): Kind {
  const [least, most] = a < b ? [a, b] : [b, a];
  if (!(least > 0)) return 'neither';
  if (most >= 300) return least <= 400 && most <= 2600 && most >= 2 * least ? 'plank' : 'room';
  if (least <= 12 && most >= 30) return 'plank';
  if (most >= 80) return least <= 30 ? 'plank' : 'neither';
  if (least <= 12 && most >= 20 && most >= 2 * least) return 'either';
  return most <= 60 ? 'room' : 'neither';
}

function figure(side: string): number {
  return Number(
    side
      .trim()
      .replace(',', '.')
      .split(/[^\d.]/)[0],
  );
}

const NOUN_AFTER = new RegExp(
  `^ ?(?:long |wide |in |size |vinyl |laminate |click |lvp |luxury |rigid |core ){0,3}(?:${PLANK_NOUN})(?![a-z])`,
);
const NOUN_BEFORE = new RegExp(
  `(?<![a-z])(?:${PLANK_NOUN})(?![a-z])(?: size| sizes)? ?(?:(?:that|which|they) ?)?(?:is|are|r|come|comes|measure|measures|of|at|size|in|as|:|=|-|\\(|,|\\n| ){0,4}$`,
);
const DOOR = word('doors?|doorways?');
const LINKED_BEFORE = new RegExp(
  `(?:${PLANK_NOUN})(?![a-z])(?: size| sizes)?(?: ?[:=(]| (?:is|are|r|of|that|come|comes|measure)(?![a-z]))`,
);

/** What stands right before and behind a pair, up to what divides it from others. */
interface Around {
  readonly before: string;
  readonly after: string;
}

/** The role that words beside a pair give it; undefined where they say nothing. */
export function saidRole(pair: Pair, { before, after }: Around): PairRole | undefined {
  const near = before.split(' ').slice(-6).join(' ');
  const noun =
    NOUN_AFTER.test(after) || (NOUN_BEFORE.test(near) && (LINKED_BEFORE.test(near) || pair.kind === 'plank'));
  if (noun) return pair.kind === 'plank' || pair.kind === 'either' ? 'plank' : 'doubt';
  if (THINGS.test(near) || DOOR.test(after.slice(0, 12))) return 'thing';
  return THINGS.test(after.split(' ').slice(0, 4).join(' ')) ? 'thing' : undefined;
}

/** The role of each pair from what is said of it, the room that is named by it and, where both are silent, its size. */
export function rolesOf(
  pairs: readonly Pair[],
  said: readonly (PairRole | undefined)[],
  named: readonly boolean[],
  carton: boolean,
): PairRole[] {
  const sized = pairs.map(({ kind }, i): PairRole | undefined => {
    if (said[i] && said[i] !== 'doubt') return said[i];
    if (named[i]) return 'room';
    return kind === 'plank' || kind === 'room' ? kind : undefined;
  });
  const plank = sized.includes('plank');
  return pairs.map(({ kind }, i): PairRole => {
    if (said[i] === 'doubt' && !(kind === 'room' && plank)) return 'doubt';
    const role = sized[i];
    if (role) return role;
    if (kind === 'neither') return 'doubt';
    if (plank) return 'room';
    if (pairs.length === 1) return carton ? 'doubt' : 'room';
    return carton && pairs.length === 2 && sized.includes('room') ? 'plank' : 'doubt';
  });
}
