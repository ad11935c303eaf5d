/** Reads a request for a length to be measured, the measured length, or that it is no longer needed. */

import { distance } from 'fastest-levenshtein';
import { readInTime } from '../../workers/time-limits.ts';

/** What it is a length of; the room as the project calls it, where one is named. */
export interface MeasuredPlace {
  readonly room?: string;
  readonly wall?: number;
  /** Something else of the room: the height of its ceiling. */
  readonly what?: string;
}

type ParsedMeasurement =
  | { readonly do: 'list' }
  | { readonly do: 'ask'; readonly place: MeasuredPlace }
  | { readonly do: 'tell'; readonly place?: MeasuredPlace; readonly length: string }
  /** By its number in the list, or all. */
  | { readonly do: 'withdraw'; readonly place?: MeasuredPlace; readonly no?: number }
  | { readonly do: 'unread' };

const WALL =
  /\bwall\s*(?:no\.?\s*|number\s*|#\s*)?(?<wall>\d{1,3})\b(?!\s*(?:['"′″/.,]\d|['"′″]|(?:ft|cm|mm|m)\b|in\b(?!\s+\p{L})))/iu;
const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const IN_WORDS = new RegExp(`\\bwall (${NUMBERS.join('|')})\\b`, 'i');
const FILLER =
  /^(?:[\s,:=?–—-]+|(?:(?:of|in|at|on|the|my|our|is|are|was|to|be|for|about|exactly|now|measures|measured|how|long|wide|high|what's|what|length|please|room|ask|it|its|it's)\b(?:'s)?))+/i;
const ASKING =
  /^(?:(?:please|can|could|will|would|someone|somebody|you|i|we|need|want|ask|for|know|tell|me|to|get|how|long|is|what's|what|which|measure|remeasure|again|check|the|length|of)\b[\s,:]*)+/i;
const WITHDRAW =
  /^(?:withdraw|cancel|drop|remove|forget|never ?mind|no longer ask(?: for)?|stop asking(?: for)?|don't (?:ask|measure))\b[\s:]*/i;

/** Reads a text about measuring; `rooms` are the names of the project's rooms. Never throws. */
export function readMeasurement(text: string, rooms: readonly string[]): ParsedMeasurement {
  return readInTime(() => measurementIn(text, rooms));
}

function measurementIn(text: string, rooms: readonly string[]): ParsedMeasurement {
  const said = text
    .trim()
    .replace(/[’‘]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(IN_WORDS, (_all, word: string) => `wall ${NUMBERS.indexOf(word.toLowerCase()) + 1}`);
  if (/^(?:|list|show|open|all|questions?|what(?: is|'s) (?:asked|open|to measure))[?.!]?$/i.test(said))
    return { do: 'list' };
  const gone = WITHDRAW.exec(said);
  if (gone) return withdrawn(said.slice(gone[0].length), rooms);
  const wall = WALL.exec(said);
  const without = wall ? `${said.slice(0, wall.index)} ${said.slice(wall.index + wall[0].length)}` : said;
  const { room, rest } = roomIn(without, rooms);
  if (wall) {
    const left = tidy(rest);
    const place = { ...(room !== undefined && { room }), wall: Number(wall.groups?.wall) };
    if (left === '') return { do: 'ask', place };
    return /^[\d.½¼¾⅛⅜⅝⅞]/.test(left) ? { do: 'tell', place, length: left } : { do: 'unread' };
  }
  if (/^[\d.½¼¾⅛⅜⅝⅞]/.test(said)) return { do: 'tell', length: said.replace(/[.!]$/, '') };
  if (room === undefined) return { do: 'unread' };
  const [, thing = '', length] =
    /^(.*?)(?:\b(?:is|measures|:|=)\s*|(?<!\s)\s+)?([\d.½¼¾⅛⅜⅝⅞].*)?$/i.exec(rest.replace(/(?<![?.!])[?.!]+$/, '')) ??
    [];
  const what = tidy(thing.replace(ASKING, ''))
    .replace(/\s+/g, ' ')
    .replace(/(?:(?<!\s)\s+)?\b(?:of|in|is|the|:|=)$/gi, '')
    .trim();
  if (what === '' || !/\p{L}/u.test(what)) return { do: 'unread' };
  return length === undefined
    ? { do: 'ask', place: { room, what } }
    : { do: 'tell', place: { room, what }, length: tidy(length) };
}

function withdrawn(text: string, rooms: readonly string[]): ParsedMeasurement {
  const said = text.replace(/(?<![.!?])[.!?]+$/, '').trim();
  if (/^(?:all|everything|them all|all of them|)$/i.test(said)) return { do: 'withdraw' };
  const no = /^(?:no\.? ?|number |question |#)?(\d{1,3})$/i.exec(said)?.[1];
  if (no !== undefined) return { do: 'withdraw', no: Number(no) };
  const place = readMeasurement(said, rooms);
  return place.do === 'ask' ? { do: 'withdraw', place: place.place } : { do: 'unread' };
}

/** The longest of the rooms' names in a text, and the text without it. */
function roomIn(text: string, rooms: readonly string[]): { readonly room?: string; readonly rest: string } {
  const plain = text.toLowerCase();
  for (const room of [...rooms].sort((one, other) => other.length - one.length)) {
    const name = room.toLowerCase().replace(/[’‘]/g, "'");
    const at = plain.search(
      new RegExp(
        `(?<![\\p{L}\\d])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+')}(?![\\p{L}\\d])`,
        'u',
      ),
    );
    if (at < 0) continue;
    const behind = text.slice(at + name.length).replace(/^'s\b/, '');
    return { room, rest: `${text.slice(0, at).replace(/\b(?:of|in) (?:the |my )?$/i, '')} ${behind}` };
  }
  return roomMistyped(text, rooms) ?? { rest: text };
}

/** A room of one longer word with one slip in it, where only one can be meant. */
function roomMistyped(text: string, rooms: readonly string[]) {
  const near = [...text.matchAll(/\p{L}{5,}/gu)].flatMap((word) =>
    rooms.flatMap((room) => (distance(word[0].toLowerCase(), room.toLowerCase()) === 1 ? [{ room, word }] : [])),
  );
  const [only, ...more] = near;
  if (!only || more.length > 0) return undefined;
  const { index, 0: typed } = only.word;
  const before = text.slice(0, index).replace(/\b(?:of|in) (?:the |my )?$/i, '');
  return { room: only.room, rest: `${before} ${text.slice(index + typed.length).replace(/^'s\b/, '')}` };
}

/** Without the words round it. */
function tidy(text: string): string {
  const left = text.trim().replace(ASKING, '').replace(FILLER, '');
  return left
    .replace(/(?<![\s,:=?!–—-])[\s,:=?!–—-]+$|(?<=[^\d])\.$/g, '')
    .replace(/^(?:long|is)$/i, '')
    .trim();
}
