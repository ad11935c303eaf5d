/** A deed done to the rooms of a project: the rooms after it and what changed in words, or why it cannot be done. */

import { oneLine } from '../../../src/input/parse-label.ts';
import type { Reading } from '../../../src/input/reading.ts';
import { readRoomsApart } from '../../../src/input/rooms/rooms-apart.ts';
import type { RoomDeed, RoomFact } from '../../../src/language/old/room-said.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
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
} from '../../../src/project/project-room.ts';
import type { Problem } from '../../../src/reply/reply.ts';
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
} from '../../../src/text/project-problems-text.ts';
import { CHANGED } from '../../../src/text/project-text.ts';

export type RoomStep = { readonly rooms: Rooms; readonly said: readonly string[] } | { readonly problem: Problem };

/** Does a deed to some rooms. Pure but for what `reading` notes. */
export function roomStep(rooms: Rooms, deed: RoomDeed, reading: Reading): RoomStep {
  if (deed.do === 'list') return { rooms, said: [] };
  if (deed.do === 'shape') return shaped(rooms, deed, reading);
  const room = roomNamed(rooms, deed.name);
  const names = rooms.map(({ name }) => name);
  if (!room) return { problem: roomUnknown(deed.name, names, fixFor(names[0])) };
  switch (deed.do) {
    case 'show':
      return { rooms, said: [] };
    case 'remove':
      return { rooms: withoutRoom(rooms, room.name), said: [CHANGED.roomRemoved(room.name)] };
    case 'rename':
      return renamed(rooms, room, deed.to, reading);
    case 'scope': {
      if (room.inScope === deed.within) return { rooms, said: [] };
      const next = changedRoom(rooms, room.name, { inScope: deed.within });
      return fits(next, [(deed.within ? CHANGED.scopeIn : CHANGED.scopeOut)(room.name)]);
    }
    case 'unnote':
      return withoutNote(rooms, room, deed.note);
    case 'fact':
      return withFact(rooms, room, deed.fact, oneLine(deed.text));
  }
}

function named(name: string, text: string): string {
  return /\d/.test(name) ? `${name} = ${text}` : `${name} ${text}`;
}

function shaped(rooms: Rooms, deed: RoomDeed & { readonly do: 'shape' }, reading: Reading): RoomStep {
  const text = deed.name === undefined ? deed.text : named(deed.name, deed.text);
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
  for (const { name, text: shape, named: told } of apart.value) {
    const other = roomNamed(rooms, name);
    // Told twice, it is the same room; told anew with another shape, one more.
    const own = !told || (deed.more && other && other.text !== shape) ? freeRoomName(name, after) : name;
    const before = roomNamed(after, own);
    if (!before && after.length >= LIMITS.rooms) return { problem: tooManyRoomsKept(own, LIMITS.rooms) };
    if (shape.length > LIMITS.room) return { problem: roomTooLong(own, LIMITS.room) };
    if (before?.text === shape) continue;
    after = withRoom(after, before ? { ...before, text: shape } : { name: own, text: shape, notes: [], inScope: true });
    said.push(before ? CHANGED.roomShape(before.name, before.text, shape) : CHANGED.roomAdded(own, shape));
  }
  return fits(after, said);
}

/** A room told without a name is a room of its own. */
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

/** Rooms that still fit into one ask. */
function fits(rooms: Rooms, said: readonly string[]): RoomStep {
  return roomsText(inScope(rooms)).length > LIMITS.roomsTold
    ? { problem: roomsTooLong(LIMITS.roomsTold) }
    : { rooms, said };
}

/** What to type for a room that is not there: one that is. */
function fixFor(first: string | undefined): string | undefined {
  return first === undefined ? undefined : `project room ${first}`;
}
