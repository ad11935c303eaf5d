/** Updates everything that names a room when the room is renamed or removed. */

import { folded } from '../input/rooms/room-text.ts';
import { LONGEST_FINDING } from './findings.ts';
import { type Measures, renamedIn } from './measurements.ts';
import type { Content } from './project.ts';
import { LIMITS } from './project-limits.ts';
import { type Rooms, renameMarks, sameName } from './project-room.ts';
import { NAMING, withOptionsSaid } from './saved-request.ts';

/** The parts of a project that can name a room. */
export type Following = Pick<Content, 'rooms' | 'picks' | 'kept' | 'found' | 'stages'> & {
  readonly measures: Measures;
};

/** Picks that list positions in rooms, separated by semicolons. Doorways of edges have names of their own. */
const PLACES = /^(?!edges )(?:\S+ )?(?:doorways|holes|doors|corners|bay)$/;

/** Replaces a room's old name where it is a separate word; longer names of other rooms that contain it stay. */
function renamedText(text: string, from: string, to: string, rooms: Rooms): string {
  return text.replace(namesPattern([...rooms.map(({ name }) => name), from]), (found, at: number) => {
    if (folded(found) !== folded(from)) return found;
    // A name with a digit is set off from the sides after it.
    const sides = /^\s+(?:\d|walk\b)/.test(text.slice(at + found.length));
    return sides && /\d/.test(to) && !/(?:to|of|in|from|and)\s+$/i.test(text.slice(0, at)) ? `${to} =` : to;
  });
}

/** A pattern for the names of rooms as they occur in a text, longest first. */
function namesPattern(names: readonly string[]): RegExp {
  const words = [...names]
    .sort((one, other) => other.length - one.length)
    .map((name) =>
      name
        .trim()
        .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
        .replace(/\s+/g, '\\s+'),
    );
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'giu');
}

export function roomsNamedIn(text: string, rooms: Rooms): Rooms {
  if (rooms.length === 0) return [];
  const found = new Set([...text.matchAll(namesPattern(rooms.map(({ name }) => name)))].map(([name]) => folded(name)));
  return rooms.filter(({ name }) => found.has(folded(name)));
}

/** A pick without its entries that name one of these rooms; undefined if none is left. */
export function pickWithout(key: string, text: string, gone: Rooms, rooms: Rooms): string | undefined {
  if (!PLACES.test(key) || gone.length === 0) return text;
  const entries = text.split(/(?:(?<!\s)\s+)?;\s*/);
  const left = entries.filter((entry) => !roomsNamedIn(entry, rooms).some((room) => gone.includes(room)));
  if (left.length === entries.length) return text;
  return left.length === 0 ? undefined : left.join('; ');
}

/** The parts after a room of `before` was renamed; `rooms` already has the new names. */
function afterRename(parts: Following, from: string, to: string, rooms: Rooms): Following {
  const renamed = (text: string): string => renamedText(text, from, to, parts.rooms);
  // What would become too long to save stays as it is.
  const within = (text: string, before: string, most: number): string => (text.length > most ? before : text);
  const said = (text: string, most: number): string => within(renamed(text), text, most);
  const name = (one: string): string => (sameName(one, from) ? to : one);
  return {
    rooms: rooms.map((room) =>
      room.openings === undefined ? room : { ...room, openings: said(room.openings, LIMITS.note) },
    ),
    picks: Object.fromEntries(
      Object.entries(parts.picks).map(([key, text]) => [
        key,
        PLACES.test(key) || key === 'edges doorways' ? said(text, LIMITS.pick) : text,
      ]),
    ),
    kept: parts.kept.map((one) => ({
      ...one,
      ask: within(withOptionsSaid(one.ask, NAMING, renamed), one.ask, LIMITS.ask),
      headline: said(one.headline, LIMITS.headline),
      ...(one.rooms && { rooms: one.rooms.map(name) }),
    })),
    found: parts.found.map((one) => ({
      ...one,
      text: said(one.text, LONGEST_FINDING),
      ...(one.room !== undefined && { room: name(one.room) }),
    })),
    stages: renameMarks(parts.stages, from, to),
    measures: renamedIn(parts.measures, from, to),
  };
}

function afterRemoval(parts: Following, gone: string): Following {
  const room = parts.rooms.filter(({ name }) => sameName(name, gone));
  return {
    ...parts,
    picks: Object.fromEntries(
      Object.entries(parts.picks).flatMap(([key, text]) => {
        const left = pickWithout(key, text, room, parts.rooms);
        return left === undefined ? [] : [[key, left]];
      }),
    ),
    kept: parts.kept.map((one) =>
      one.rooms ? { ...one, rooms: one.rooms.filter((name) => !sameName(name, gone)) } : one,
    ),
  };
}

/**
 * What follows from renamed or removed rooms between two states of a project; anyone who may change the rooms changes
 * it along with them.
 */
export function afterRooms(before: Following, rooms: Rooms): Following {
  if (before.rooms.length === rooms.length) {
    const at = before.rooms.findIndex(({ name }, i) => name !== rooms[i]?.name);
    const [from, to] = [before.rooms[at]?.name, rooms[at]?.name];
    return from === undefined || to === undefined ? { ...before, rooms } : afterRename(before, from, to, rooms);
  }
  const gone = before.rooms.filter(({ name }) => !rooms.some((one) => sameName(one.name, name)));
  return { ...gone.reduce((parts, { name }) => afterRemoval(parts, name), before), rooms };
}
