/** The rooms of a sentence written in the grammar's own words, and what of them is in doubt. */

import { PLANK_NOUN, word } from '../../input/trade-words.ts';
import { type Mention, mentionsIn, namesOf } from './names.ts';
import type { Pair } from './pairs.ts';
import type { SentenceSheet } from './sheet.ts';

export interface RoomsSaid {
  /** The room option's text; empty when no room is told. */
  readonly given: string;
  readonly doubt?: { readonly why: 'rooms counted' | 'room unsized'; readonly got: string };
  /** Rooms named in passing, without a size. */
  readonly passed: readonly string[];
  /** Counts of rooms, each the number of sizes told or of rooms of one size. */
  readonly repeated: readonly string[];
}

/** How many rooms a word or a pair stands for, with the place of what follows. */
interface Count {
  readonly n: number;
  readonly to: number;
  readonly got: string;
}

const COUNT =
  /(?<![\w.,/])(?:(?<n>[2-9]|10)|(?<both>both)(?: the| my| our)?) (?=(?:[a-z]+ ){0,2}[a-z]*(?:rooms|closets|halls|hallways|offices|zimmer)(?![a-z])|\u2588[\u2588 ]*(?:[a-z]+ ){0,2}[a-z]*(?:rooms|closets|halls|hallways|offices|zimmer)(?![a-z]))/;
const CORNER = /(?<![a-z])(?:minus|less|without|-) ?(?:an? |the )?$/;
/** Something joined to a room by “and” alone, with no sides of its own. */
const JOINED = /^(?: [a-z]+){0,2} ?(?:and|plus|&|\+) (?:the |my |an? |our )?(?<name>[a-z]{3,})(?= ?(?:[,.;?\n]|$))/;
const NO_ROOM = word(
  `${PLANK_NOUN}|boxes|cartons|packs|that|this|need|using|use|with|have|thanks|then|waste|tax|trim|baseboards?|skirting|underlay(?:ment)?|more|stuff|done|ready`,
);
const LIST = /^(?:[\s,&+\u2588]|and|plus|the|my|a|an|our)*$/;

/** Claims the counts of rooms; must come before anybody asks what figures are left over. */
export function claimCounts(sheet: SentenceSheet): readonly Count[] {
  return sheet
    .claimAll(COUNT)
    .map(({ groups, to, 0: got }) => ({ n: groups?.n ? Number(groups.n) : 2, to, got: got.trim() }));
}

/** The rooms whose sides are `pairs`, with the names given to them; corners left out go to the room before. */
export function roomsSaid(
  pairs: readonly Pair[],
  given: readonly (Mention | undefined)[],
  counts: readonly Count[],
  mentions: readonly Mention[],
  rest: string,
): RoomsSaid {
  const corner = pairs.map((pair, i) => i > 0 && CORNER.test(rest.slice(pairs[i - 1]?.to ?? 0, pair.from)));
  const rooms: string[] = [];
  const repeated: string[] = [];
  const used = new Set<Count>();
  let doubt: RoomsSaid['doubt'];
  let [left, shared] = [0, ''];
  pairs.forEach((pair, i) => {
    if (corner[i]) {
      rooms.push(`${rooms.pop() ?? ''} - ${pair.typed}`);
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
    rooms.push(named(left > 0 ? shared : (mention?.name ?? ''), pair.typed));
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
  return { given: rooms.join('; '), passed: passed.map(({ name }) => name), repeated, ...(doubt && { doubt }) };
}

function named(name: string, typed: string): string {
  return name === '' ? typed : `${name} ${typed}`;
}

/** The words for rooms and whose they are, of pairs that may be rooms. */
export function givenNames(pairs: readonly Pair[], sheet: SentenceSheet, text: string) {
  const rest = sheet.rest();
  const mentions = mentionsIn(rest, text);
  return { mentions, given: namesOf(pairs, mentions, rest) };
}
