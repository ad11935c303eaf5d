/** Rooms of a project in an ask: by name, or all of them where none is told. */

import { distance } from 'fastest-levenshtein';
import { roomTold } from '../input/rooms/rooms-apart.ts';
import { folded, inScope, type Room, type Rooms, roomNamed, sameName } from '../project/project-room.ts';
import { readInTime } from '../workers/time-limits.ts';

/** The rooms that a text names, in its order, and the text with their shapes in place of their names. */
export interface NamedRooms {
  readonly text: string;
  readonly named: Rooms;
  /** Whether nothing but names was told. */
  readonly all: boolean;
}

const EVERY =
  /^(?:all|every|each|the whole|whole)(?: (?:of )?(?:the|my|our))?(?: (?:rooms?|flat|home|house|floor|project))?$/;
const BUT = /^(?<every>.*?)(?<!\s)\s*(?:but|except(?: for)?|without)\s+(?:the\s+)?(?<rest>.+)$/;

/** Names of the project's rooms in a text told for rooms: `bedroom`, `bedroom and hall`, `all but the bath`, `bedroom; 12 x 14`. */
export function namedRooms(text: string, rooms: Rooms): NamedRooms | undefined {
  return readInTime(() => roomsNamed(text, rooms));
}

function roomsNamed(text: string, rooms: Rooms): NamedRooms | undefined {
  const plain = folded(text);
  const every = everyRoom(plain, rooms);
  if (every && every.length > 0) return { text: every.map(roomTold).join('; '), named: every, all: true };
  const alone = roomsIn(text, rooms);
  if (alone) return { text: alone.map(roomTold).join('; '), named: alone, all: true };
  const parts = text.split(/[;\r\n]+/).map((part) => ({ part: part.trim(), found: roomsIn(part, rooms) }));
  const named = parts.flatMap(({ found }) => found ?? []);
  if (named.length === 0) return undefined;
  const whole = parts
    .filter(({ part }) => part !== '')
    .map(({ part, found }) => found?.map(roomTold).join('; ') ?? part);
  return { text: whole.join('; '), named, all: false };
}

function everyRoom(plain: string, rooms: Rooms): Rooms | undefined {
  if (EVERY.test(plain)) return inScope(rooms);
  const { every = '', rest = '' } = BUT.exec(plain)?.groups ?? {};
  const without = EVERY.test(every) ? roomsIn(rest, rooms) : undefined;
  return without && inScope(rooms).filter((room) => !without.includes(room));
}

/** The rooms of a text that holds nothing but their names. */
function roomsIn(text: string, rooms: Rooms): Rooms | undefined {
  const whole = nearest(text, rooms);
  if (whole) return [whole];
  const names = text.split(/(?:(?<!\s)\s+)?(?:[,;&+]|\band\b|\r?\n)\s*/iu).filter((name) => name.trim() !== '');
  const found = names.map((name) => nearest(name, rooms));
  const rest = found.filter((room) => room !== undefined);
  return rest.length > 0 && rest.length === names.length ? [...new Set(rest)] : undefined;
}

/** A room by its name, one slip in a longer name forgiven where only one room is meant. */
function nearest(text: string, rooms: Rooms): Room | undefined {
  const name = folded(text)
    .replace(/^(?:the|my|our) /, '')
    .replace(/^['"“”]+/, '')
    .replace(/(?<!['"“”.!?])['"“”.!?]+$/, '');
  const exact = roomNamed(rooms, name) ?? rooms.find((room) => sameName(room.name, `${name} room`));
  if (exact || name.length < 5 || /\d/.test(name)) return exact;
  const close = rooms.filter((room) => distance(folded(room.name), name) === 1);
  return close.length === 1 ? close[0] : undefined;
}
