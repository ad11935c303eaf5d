/** Pairs of sides in a sentence, and what each is the size of: a room, a plank, a corner left out, or some thing. */

import { unitIn } from '../input/parse-length.ts';
import type { Reading } from '../input/reading.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import { pairPattern, readSide, SIDE, TIMES } from '../input/rooms/room-text.ts';
import { CLAIMED, NAMELESS, PLANK_NOUN, ROOM, type SentenceSheet, THINGS, word } from '../input/trade-words.ts';
import { TICKS_PER_INCH } from '../units/length.ts';

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
export function findPairs(sheet: SentenceSheet, text: string, reading: Reading): Pair[] {
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

// Built-ins that no plank is laid under.

const FIXTURE =
  '(?:islands?|hearths?|fireplaces?|chimneys?|tubs?|bathtubs?|showers?|vanity|stairwell|stair (?:opening|hole)|pillars?|columns?|cabinets?|peninsula|built-?ins?)(?![a-z])';
const FIXTURE_BEFORE = new RegExp(
  `(?<![a-z])${FIXTURE}(?: (?:is|are|of|thats|that's|that is|which is|about|at|measures|measuring|takes?(?: up)?|base|,))* ?[:=(]? ?$`,
);
const FIXTURE_AFTER = new RegExp(`^ ?(?:(?:in|inch|ft|foot) )?(?:(?!with |and |no |has )[a-z]+ )?${FIXTURE}`);
/** Sides of a built-in without units are inches from here on: a 30x60 tub. */
const FIXTURE_INCHES = 16;

function isFixture(before: string, after: string): boolean {
  return FIXTURE_BEFORE.test(before) || FIXTURE_AFTER.test(after);
}

function fixtureSides(typed: string): string {
  const bare = /^(\d+)(?: ?(?:x|by) ?)(\d+)$/.exec(typed.trim());
  const [one, other] = [Number(bare?.[1]), Number(bare?.[2])];
  return Math.min(one, other) >= FIXTURE_INCHES ? `${inFeet(one)} x ${inFeet(other)}` : typed;
}

function inFeet(inches: number): string {
  return inches % 12 === 0 ? `${inches / 12}'` : `${Math.floor(inches / 12)}'${inches % 12}"`;
}

/** What stands right before and behind a pair, up to what divides it from others. */
interface Around {
  readonly before: string;
  readonly after: string;
}

/** The role that words beside a pair give it; undefined where they say nothing. */
export function roleBeside(pair: Pair, { before, after }: Around): PairRole | undefined {
  const near = before.split(' ').slice(-6).join(' ');
  const noun =
    NOUN_AFTER.test(after) || (NOUN_BEFORE.test(near) && (LINKED_BEFORE.test(near) || pair.kind === 'plank'));
  if (pair.kind !== 'plank' && LEFT_OUT.test(after)) return 'room';
  if (noun) return pair.kind === 'plank' || pair.kind === 'either' ? 'plank' : 'doubt';
  if (isFixture(before, after)) return 'room';
  if (THINGS.test(near) || DOOR.test(after.slice(0, 12))) return 'thing';
  const behind = after.split(' ').slice(0, 4).join(' ');
  const [room] = mentionsIn(behind, behind);
  return THINGS.test(room && room.from <= 1 ? '' : behind) ? 'thing' : undefined;
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

const SIDES = pairPattern().source.replace(/\(\?<[a-z]+>/g, '(?:');
const ANGLE = '\\d{1,2}(?:\\.\\d+)? ?(?:°|deg(?:rees?)?)';
const BAY = `,? with (?:an? )?(?:angled |slanted )?bay ${SIDES}(?: (?:at |of )?${ANGLE})?(?: on the (?:far|near|left|right)(?: wall)?)?`;
const CUT = `,? ?(?:less|minus|without|-) ?(?:an? |the )?${SIDES}(?: corner)?(?: cut| taken)?(?: off)? (?:diagonally|clipped|slanted|angled|(?:at )?${ANGLE})`;
const CLIPPED = `,? with (?:an? )?(?:clipped|angled|slanted|diagonal) corner ${SIDES}`;
const SHAPED = new RegExp(
  `${SIDES}(?: (?!with |less |minus )[a-z]{3,}){0,2}(?:${BAY}|${CUT}|${CLIPPED})+(?![a-z\\d])`,
  'g',
);

/** Claims such rooms where the room reader reads them. */
export function findShapedRooms(sheet: SentenceSheet, text: string, silent: Reading): readonly Pair[] {
  const found = [...sheet.rest().matchAll(SHAPED)].map(({ 0: all, index }) => ({ all, index }));
  return found.flatMap(({ all, index }): Pair[] => {
    const typed = text.slice(index, index + all.length).trim();
    if (!readRooms(typed, silent).ok) return [];
    const claimed = sheet.claim(new RegExp(all.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')));
    return claimed ? [{ from: claimed.index, to: claimed.to, typed, kind: 'room' }] : [];
  });
}

interface Place {
  readonly from: number;
  readonly to: number;
}

/** A word for a room where it stands. */
export interface Mention extends Place {
  /** As typed; empty for a room without a name of its own. */
  readonly name: string;
  readonly plural: boolean;
}

/** Every word for a room in what is left of the plain text. */
export function mentionsIn(rest: string, text: string): Mention[] {
  return [...rest.matchAll(ROOM)].map(({ index, 0: found }) => {
    const to = index + found.length;
    return { from: index, to, name: NAMELESS.test(found) ? '' : text.slice(index, to), plural: /s$/.test(found) };
  });
}

/** What it costs to look across a divider: the sooner a word is reached, the likelier it names the sides. */
const DIVIDERS: readonly (readonly [RegExp, number])[] = [
  [/[.\n?]/g, 8],
  [/[;+]|(?<![a-z])(?:and|plus|minus|with)(?![a-z])|&/g, 6],
  [new RegExp(`${CLAIMED}+`, 'g'), 5],
  [/,/g, 4],
];
const UNNAMED = 26;

interface Chain {
  readonly cost: number;
  readonly given: readonly (Mention | undefined)[];
}

/** The mention that belongs to each pair: all of them together as near as can be, none given twice. */
export function namesOf(
  pairs: readonly Place[],
  mentions: readonly Mention[],
  rest: string,
): readonly (Mention | undefined)[] {
  let chains: readonly Chain[] = [{ cost: 0, given: [] }];
  pairs.forEach((pair, i) => {
    const before = mentions.filter(({ from, to }) => from >= (pairs[i - 1]?.to ?? 0) && to <= pair.from).at(-1);
    const after = mentions.find(({ from, to }) => from >= pair.to && to <= (pairs[i + 1]?.from ?? rest.length));
    const choices = [
      { mention: undefined, cost: UNNAMED },
      ...(before
        ? [{ mention: before, cost: apart(rest.slice(before.to, pair.from)) + (before.name === '' ? 3 : 0) }]
        : []),
      ...(after
        ? [{ mention: after, cost: 1 + apart(rest.slice(pair.to, after.from)) + (after.name === '' ? 3 : 0) }]
        : []),
    ];
    chains = choices.flatMap(({ mention, cost }): Chain[] => {
      const free = chains.filter(({ given }) => mention === undefined || given.at(-1) !== mention);
      const best = free.reduce<Chain | undefined>(
        (least, one) => (least && least.cost <= one.cost ? least : one),
        undefined,
      );
      return best ? [{ cost: best.cost + cost, given: [...best.given, mention] }] : [];
    });
  });
  return chains.reduce((least, one) => (one.cost < least.cost ? one : least)).given;
}

function apart(between: string): number {
  const crossed = DIVIDERS.map(([divider, cost]) => (between.match(divider)?.length ?? 0) * cost);
  return crossed.reduce((sum, cost) => sum + cost, between.length / 10);
}

export interface RoomList {
  /** The room option's text; empty when no room is told. */
  readonly given: string;
  readonly doubt?: { readonly why: 'rooms counted' | 'room unsized'; readonly got: string };
  /** Rooms named in passing, without a size. */
  readonly passed: readonly string[];
  /** Counts of rooms, each the number of sizes told or of rooms of one size. */
  readonly repeated: readonly string[];
  /** Sides of built-ins that are left out of a room. */
  readonly builtIns: readonly string[];
}

/** How many rooms a word or a pair stands for, with the place of what follows. */
interface Count {
  readonly n: number;
  readonly to: number;
  readonly got: string;
}

const COUNT =
  /(?<![\w.,/])(?:(?<n>[2-9]|10)|(?<both>both)(?: the| my| our)?) (?=(?:[a-z]+ ){0,2}[a-z]*(?:rooms|closets|halls|hallways|offices|zimmer)(?![a-z])|\u2588[\u2588 ]*(?:[a-z]+ ){0,2}[a-z]*(?:rooms|closets|halls|hallways|offices|zimmer)(?![a-z]))/;
const CORNER =
  /(?<![a-z])(?:minus|less|without|missing|lacking|subtract(?:ing)?|tak(?:e|ing) (?:away|out|off)|leav(?:e|ing) out|except(?: for)?|not counting|-) ?(?:an? |the )?$/;
const LEFT_OUT =
  /^ ?(?:[a-z]+ ){0,4}(?:missing|cut ?out|cut off|taken (?:out|off|away)|left out|notched|removed|subtracted|notch|bite|bitten (?:out|off)|jog|chunk (?:gone|out))(?![a-z])/;
/** Something joined to a room by “and” alone, with no sides of its own. */
const JOINED = /^(?: [a-z]+){0,2} ?(?:and|plus|&|\+) (?:the |my |an? |our )?(?<name>[a-z]{3,})(?= ?(?:[,.;?\n]|$))/;
const NO_ROOM = word(
  `${PLANK_NOUN}|boxes|cartons|packs|that|this|need|using|use|with|have|thanks|then|waste|tax|trim|baseboards?|skirting|underlay(?:ment)?|more|stuff|done|ready`,
);
const LIST = /^(?:[\s,&+\u2588]|and|plus|the|my|a|an|our)*$/;

/** Claims the counts of rooms; must come before anybody asks what figures are left over. */
export function findRoomCounts(sheet: SentenceSheet): readonly Count[] {
  return sheet
    .claimAll(COUNT)
    .map(({ groups, to, 0: got }) => ({ n: groups?.n ? Number(groups.n) : 2, to, got: got.trim() }));
}

/**
 * The rooms whose sides are `pairs`, with the names given to them. Corners left out are taken from the room before,
 * built-ins from that room or the first one behind.
 */
export function listRooms(
  pairs: readonly Pair[],
  given: readonly (Mention | undefined)[],
  counts: readonly Count[],
  mentions: readonly Mention[],
  rest: string,
): RoomList {
  const corner = pairs.map(
    (pair, i) =>
      i > 0 && (CORNER.test(rest.slice(pairs[i - 1]?.to ?? 0, pair.from)) || LEFT_OUT.test(rest.slice(pair.to))),
  );
  const fixed: boolean[] = [];
  for (const [i, { from, to }] of pairs.entries()) {
    const before = rest.slice(pairs[i - 1]?.to ?? 0, from);
    const goesOn = fixed[i - 1] === true && /^ ?(?:and|,|plus|&) ?(?:a |an )?$/.test(before);
    fixed.push(!corner[i] && (goesOn || isFixture(before, rest.slice(to, pairs[i + 1]?.from))));
  }
  const leavesRooms = fixed.includes(false);
  const rooms: string[] = [];
  let ahead = '';
  const builtIns: string[] = [];
  const repeated: string[] = [];
  const used = new Set<Count>();
  let doubt: RoomList['doubt'];
  let [left, shared] = [0, ''];
  pairs.forEach((pair, i) => {
    if (corner[i]) {
      rooms.push(`${rooms.pop() ?? ''} - ${pair.typed}`);
      return;
    }
    if (fixed[i] && leavesRooms) {
      builtIns.push(pair.typed.trim());
      const taken = ` - ${fixtureSides(pair.typed)}`;
      const room = rooms.pop();
      if (room === undefined) ahead += taken;
      else rooms.push(room + taken);
      return;
    }
    const mention = given[i];
    const count = counts.find(({ to }) => to === pair.from || (mention !== undefined && to === mention.from));
    if (count && mention) {
      const following = given.slice(i + 1).findIndex((next, j) => next !== undefined || corner[i + 1 + j]);
      const group = following < 0 ? pairs.length - i : following + 1;
      // “3 rooms: 10x12, 11x13 and hall 3x14” counts the hall too.
      const toTheEnd = pairs.length - i === count.n;
      if (group !== 1 && group !== count.n && !toTheEnd)
        doubt = { why: 'rooms counted', got: `${count.got} ${mention.name || 'rooms'}` };
      shared = mention.name.replace(/s$/, '');
      left = group;
      used.add(count);
      const each =
        count.to === pair.from ||
        !/[,;.\n]/.test(rest.slice(mention.to, pair.from)) ||
        /^ ?each(?![a-z])/.test(rest.slice(pair.to));
      if (group === 1 && !each) doubt = { why: 'rooms counted', got: `${count.got} ${mention.name || 'rooms'}` };
      if (group === 1) {
        for (let n = 1; n < count.n; n++) rooms.push(named(shared, pair.typed));
      }
      repeated.push(`${count.got} ${mention.name || 'rooms'}`);
    }
    rooms.push(named(left > 0 ? shared : (mention?.name ?? ''), pair.typed) + ahead);
    ahead = '';
    left--;
  });
  const uncounted = counts.find((count) => !used.has(count));
  if (uncounted) doubt = { why: 'rooms counted', got: uncounted.got };
  const passed = mentions.filter(
    ({ name }) => name !== '' && !given.some((one) => one?.name.toLowerCase() === name.toLowerCase()),
  );
  const unknown = pairs
    .map(({ to }) => JOINED.exec(rest.slice(to, to + 80))?.groups?.name)
    .find((name) => name !== undefined && !NO_ROOM.test(name));
  if (unknown !== undefined && !doubt) doubt = { why: 'room unsized', got: unknown };
  const listed = passed.find((one) =>
    mentions.some(
      (other) =>
        other !== one &&
        given.includes(other) &&
        LIST.test(one.to <= other.from ? rest.slice(one.to, other.from) : rest.slice(other.to, one.from)),
    ),
  );
  if (listed && !doubt) doubt = { why: 'room unsized', got: listed.name };
  return {
    given: rooms.join('; '),
    passed: passed.map(({ name }) => name),
    repeated,
    builtIns,
    ...(doubt && { doubt }),
  };
}

function named(name: string, typed: string): string {
  return name === '' ? typed : `${name} ${typed}`;
}

/** The words for rooms and whose they are, of pairs that may be rooms. */
export function findRoomNames(pairs: readonly Pair[], sheet: SentenceSheet, text: string) {
  const rest = sheet.rest();
  const mentions = mentionsIn(rest, text);
  return { mentions, given: namesOf(pairs, mentions, rest) };
}
