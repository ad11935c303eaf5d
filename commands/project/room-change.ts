/** Actions on the rooms of a project: the rooms afterward and what changed in words, or why it can't be done. */

import { choice, text } from '../../src/input/options.ts';
import { singleLine } from '../../src/input/parse-label.ts';
import { type RoomAction, type RoomFact, readRoomChange } from '../../src/input/parse-room-change.ts';
import { type Colons, type Preferences, type Reading, read } from '../../src/input/reading.ts';
import { readRoomsApart } from '../../src/input/rooms/rooms-apart.ts';
import { measuresIn, withoutGiven } from '../../src/project/measurements.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import {
  changedRoom,
  inScope,
  type Room,
  type Rooms,
  roomNamed,
  roomsText,
  sameName,
  withoutRoom,
  withRoom,
} from '../../src/project/project-room.ts';
import { afterRooms, type Following } from '../../src/project/rooms-follow.ts';
import type { Problem } from '../../src/reply/reply.ts';
import {
  noteTooLong,
  noteUnknown,
  roomNameTaken,
  roomNotRead,
  roomsTooLong,
  roomTooLong,
  roomUnknown,
  tooManyNotes,
  tooManyRoomsKept,
} from '../../src/text/project-problems-text.ts';
import { CHANGED } from '../../src/text/project-text.ts';
import { readInTime } from '../../src/workers/time-limits.ts';

type RoomStep = { readonly rooms: Rooms; readonly said: readonly string[] } | { readonly problem: Problem };

/** Pure, except for what it notes through `reading`. */
function roomStep(rooms: Rooms, permission: RoomAction, reading: Reading): RoomStep {
  if (permission.do === 'list') return { rooms, said: [] };
  if (permission.do === 'shape') return shaped(rooms, permission, reading);
  const room = roomNamed(rooms, permission.name);
  const names = rooms.map(({ name }) => name);
  if (!room) return { problem: roomUnknown(permission.name, names, fixFor(names[0])) };
  switch (permission.do) {
    case 'show':
      return { rooms, said: [] };
    case 'remove':
      return { rooms: withoutRoom(rooms, room.name), said: [CHANGED.roomRemoved(room.name)] };
    case 'rename':
      return renamed(rooms, room, permission.to, reading);
    case 'scope': {
      if (room.inScope === permission.within) return { rooms, said: [] };
      const next = changedRoom(rooms, room.name, { inScope: permission.within });
      return fits(next, [(permission.within ? CHANGED.scopeIn : CHANGED.scopeOut)(room.name)]);
    }
    case 'unnote':
      return withoutNote(rooms, room, permission.note);
    case 'fact':
      return withFact(rooms, room, permission.fact, singleLine(permission.text));
  }
}

function named(name: string, text: string): string {
  return /\d/.test(name) ? `${name} = ${text}` : `${name} ${text}`;
}

function shaped(rooms: Rooms, permission: RoomAction & { readonly do: 'shape' }, reading: Reading): RoomStep {
  const text = permission.name === undefined ? permission.text : named(permission.name, permission.text);
  const apart = readRoomsApart(text, reading);
  if (!apart.ok) {
    const [{ expected, fix }] = apart.problems;
    return {
      problem: /\d/.test(text)
        ? { option: 'ask', got: text, expected, fix: fix === undefined ? undefined : `project room ${fix}` }
        : roomNotRead(text),
    };
  }
  let after = rooms;
  const said: string[] = [];
  for (const { name, text: shape, named: given } of apart.value) {
    const other = roomNamed(rooms, name);
    // The same room twice is one room; with another shape it's an additional one.
    const own = !given || (permission.more && other && other.text !== shape) ? freeRoomName(name, after) : name;
    const before = roomNamed(after, own);
    if (!before && after.length >= LIMITS.rooms) return { problem: tooManyRoomsKept(own, LIMITS.rooms) };
    if (shape.length > LIMITS.room) return { problem: roomTooLong(own, LIMITS.room) };
    if (before?.text === shape) continue;
    after = withRoom(after, before ? { ...before, text: shape } : { name: own, text: shape, notes: [], inScope: true });
    said.push(before ? CHANGED.roomShape(before.name, before.text, shape) : CHANGED.roomAdded(own, shape));
  }
  return fits(after, said);
}

function freeRoomName(name: string, rooms: Rooms): string {
  if (!roomNamed(rooms, name)) return name;
  for (let number = 2; ; number++) if (!roomNamed(rooms, `${name} ${number}`)) return `${name} ${number}`;
}

function renamed(rooms: Rooms, room: Room, to: string, reading: Reading): RoomStep {
  const other = roomNamed(rooms, to);
  if (other && !sameName(other.name, room.name)) return { problem: roomNameTaken(to) };
  const again = readRoomsApart(named(to, room.text), { ...reading, note: () => undefined });
  const read = again.ok ? again.value[0] : undefined;
  if (!read || read.name !== to || read.text !== room.text || again.ok === false || again.value.length !== 1)
    return {
      problem: again.ok ? roomNotRead(to) : { ...again.problems[0], option: 'ask', got: to, fix: undefined },
    };
  return fits(changedRoom(rooms, room.name, { name: to }), [CHANGED.roomRenamed(room.name, to)]);
}

function withFact(rooms: Rooms, room: Room, fact: RoomFact, text: string): RoomStep {
  if (text.length > LIMITS.note)
    return { problem: noteTooLong(text, LIMITS.note, `project room ${room.name} ${fact} …`) };
  if (fact === 'note') {
    if (room.notes.length >= LIMITS.notes) return { problem: tooManyNotes(room.name, LIMITS.notes) };
    return {
      rooms: changedRoom(rooms, room.name, { notes: [...room.notes, text] }),
      said: [CHANGED.roomFact(room.name, 'note', text)],
    };
  }
  const words = fact === 'floor' ? 'floor now' : 'doors';
  if (/^(?:none|clear|unknown|-)$/i.test(text)) {
    const { [fact]: _before, ...others } = room;
    return { rooms: rooms.map((one) => (one === room ? others : one)), said: [CHANGED.roomFactGone(room.name, words)] };
  }
  if (room[fact] === text) return { rooms, said: [] };
  return { rooms: changedRoom(rooms, room.name, { [fact]: text }), said: [CHANGED.roomFact(room.name, words, text)] };
}

function withoutNote(rooms: Rooms, room: Room, which: number | 'all'): RoomStep {
  const gone = which === 'all' ? undefined : room.notes[which - 1];
  if (which !== 'all' && gone === undefined) return { problem: noteUnknown(room.name, which, room.notes.length) };
  if (room.notes.length === 0) return { rooms, said: [] };
  const notes = which === 'all' ? [] : room.notes.filter((_, i) => i !== which - 1);
  const said = gone === undefined ? CHANGED.notesGone(room.name) : CHANGED.noteGone(room.name, gone);
  return { rooms: changedRoom(rooms, room.name, { notes }), said: [said] };
}

/** All rooms together must still fit into one request. */
function fits(rooms: Rooms, said: readonly string[]): RoomStep {
  return roomsText(inScope(rooms)).length > LIMITS.roomsGiven
    ? { problem: roomsTooLong(LIMITS.roomsGiven) }
    : { rooms, said };
}

/** A room that exists, to type in place of one that doesn't. */
function fixFor(first: string | undefined): string | undefined {
  return first === undefined ? undefined : `project room ${first}`;
}

/** The default of each option: nothing about the room changes. */
export const ROOM_NOT_GIVEN = 'as it is' as const;

const given = (summary: string, example: string, colons?: Colons) =>
  text({ summary, example, standard: ROOM_NOT_GIVEN, ...(colons && { colons }) }, (typed) => read(typed.trim()));

export const roomOptions = {
  room: text(
    {
      summary: 'A room: “bedroom 12x14”, “add bath 5x8”, “remove bath”, “bath out of scope”',
      example: 'bedroom 12 x 14 ft',
      standard: 'list',
      names: 'room',
      colons: 'rooms',
    },
    (typed) => read(typed.trim()),
  ),
  size: given('Its sides, or a walk around its walls', '12 x 14 ft', 'rooms'),
  floor: given('The floor that’s there now', 'carpet'),
  doors: given('Its doors, and where they are', '32 in on wall 2', 'any'),
  note: given('Something to remember about it', 'squeaks by the window', 'any'),
  scope: choice(['as it is', 'in', 'out'], {
    summary: 'Is this room part of the job? in or out',
    standard: ROOM_NOT_GIVEN,
    example: 'out',
  }),
  name: given('Its new name', 'study'),
};

export interface RoomAsk {
  readonly room: string;
  readonly size: string;
  readonly floor: string;
  readonly doors: string;
  readonly note: string;
  readonly scope: 'as it is' | 'in' | 'out';
  readonly name: string;
}

// All actions succeed, or none is done.

/** `requested`: they only want to look. */
type Permissions =
  | { readonly permissions: readonly RoomAction[]; readonly requested: boolean }
  | { readonly problem: Problem };

/** First what the text says, then what the other options add about the same room. */
export function roomActions(ask: RoomAsk, rooms: Rooms): Permissions {
  const [said, ...more] = readInTime(() => actionsInWords(ask.room, rooms));
  const facts = [
    ['floor', ask.floor],
    ['openings', ask.doors],
    ['note', ask.note],
  ] as const;
  const others = [ask.size, ask.floor, ask.doors, ask.note, ask.scope, ask.name].some(
    (text) => text !== ROOM_NOT_GIVEN,
  );
  if (!others)
    return { permissions: [said, ...more], requested: more.length === 0 && (said.do === 'list' || said.do === 'show') };
  const alone = said.do === 'shape' && !/\d/.test(said.text) && ask.size !== ROOM_NOT_GIVEN ? said.text : undefined;
  const name = alone ?? ('name' in said && said.name !== undefined ? said.name : nameIn(ask.room));
  if (name === '' || (said.do === 'list' && alone === undefined))
    return {
      problem: roomUnknown(
        ask.room,
        rooms.map((room) => room.name),
        'project room bedroom, floor: carpet',
      ),
    };
  return {
    requested: false,
    permissions: [
      ...(alone !== undefined || said.do === 'show' ? [] : [said]),
      ...more,
      ...(ask.size === ROOM_NOT_GIVEN ? [] : [{ do: 'shape' as const, name, text: ask.size }]),
      ...facts.flatMap(([fact, text]) => (text === ROOM_NOT_GIVEN ? [] : [{ do: 'fact' as const, name, fact, text }])),
      ...(ask.scope === ROOM_NOT_GIVEN ? [] : [{ do: 'scope' as const, name, within: ask.scope === 'in' }]),
      ...(ask.name === ROOM_NOT_GIVEN ? [] : [{ do: 'rename' as const, name, to: ask.name }]),
    ],
  };
}

/** Facts may follow after a comma: `hall floor carpet, doors 30 in on wall 2`. */
function actionsInWords(text: string, rooms: Rooms): readonly [RoomAction, ...RoomAction[]] {
  const [first = '', ...facts] = text.split(
    /(?:(?<!\s)\s+)?[,;]\s*(?:and )?(?=(?:floor|doors?|openings?|notes?) [^:])/i,
  );
  const said = readRoomChange(first, rooms);
  if (said.do !== 'fact' && said.do !== 'show' && said.do !== 'scope') return [readRoomChange(text, rooms)];
  return [said, ...facts.map((fact) => readRoomChange(`${said.name} ${fact}`, rooms))];
}

function nameIn(text: string): string {
  return text
    .replace(/^(?:add|new) (?:room )?/i, '')
    .replace(/(?:(?<!\s)\s+)?(?:[=:]\s*)?\d.*$/s, '')
    .replace(/(?<!\s)\s+walk$/i, '')
    .trim();
}

export type Steps =
  | { readonly parts: Following; readonly said: readonly string[]; readonly notes: readonly string[] }
  | { readonly problem: Problem };

/** All or none. Everything else that mentions a room follows its new name. */
export function roomSteps(before: Following, permissions: readonly RoomAction[], preferences: Preferences): Steps {
  const { rooms, picks, kept, found, stages, measures } = before;
  let parts: Following = { rooms, picks, kept, found, stages, measures };
  const said: string[] = [];
  const notes: string[] = [];
  for (const permission of permissions) {
    const reading = {
      option: 'room',
      preferences,
      note: (line: string) => void (notes.includes(line) || notes.push(line)),
    };
    const step = roomStep(parts.rooms, permission, reading);
    if ('problem' in step) return step;
    // A new shape replaces lengths that were measured for the old one.
    const anew = parts.rooms.filter(({ name, text }) => roomNamed(step.rooms, name)?.text !== text);
    const after = afterRooms(
      { ...parts, measures: anew.reduce((all, { name }) => withoutGiven(all, name), parts.measures) },
      step.rooms,
    );
    parts = { ...after, measures: measuresIn(after.measures, after.rooms) };
    said.push(...step.said);
  }
  return { parts, said, notes };
}
