/** From the options of `project room` to deeds, and the deeds done one after the other, all or none. */

import type { Habits } from '../../../src/input/reading.ts';
import { type RoomDeed, roomSaid } from '../../../src/language/old/room-said.ts';
import { measuresIn, withoutTold } from '../../../src/project/measurements.ts';
import { type Rooms, roomNamed } from '../../../src/project/project-room.ts';
import { afterRooms, type Following } from '../../../src/project/rooms-follow.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { roomUnknown } from '../../../src/text/project-problems-text.ts';
import { readInTime } from '../../../src/workers/time-limits.ts';
import { NOT_TOLD, type RoomAsk } from './room-options.ts';
import { roomStep } from './room-step.ts';

/** The deeds of an ask; `asked`: it only asks to see. */
export type Deeds = { readonly deeds: readonly RoomDeed[]; readonly asked: boolean } | { readonly problem: Problem };

/** What an ask wants done: first what its text says, then what its other options tell of the same room. */
export function roomDeeds(ask: RoomAsk, rooms: Rooms): Deeds {
  const [said, ...more] = readInTime(() => deedsSaid(ask.room, rooms));
  const facts = [
    ['floor', ask.floor],
    ['openings', ask.doors],
    ['note', ask.note],
  ] as const;
  const others = [ask.size, ask.floor, ask.doors, ask.note, ask.scope, ask.name].some((text) => text !== NOT_TOLD);
  if (!others)
    return { deeds: [said, ...more], asked: more.length === 0 && (said.do === 'list' || said.do === 'show') };
  const alone = said.do === 'shape' && !/\d/.test(said.text) && ask.size !== NOT_TOLD ? said.text : undefined;
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
    asked: false,
    deeds: [
      ...(alone !== undefined || said.do === 'show' ? [] : [said]),
      ...more,
      ...(ask.size === NOT_TOLD ? [] : [{ do: 'shape' as const, name, text: ask.size }]),
      ...facts.flatMap(([fact, text]) => (text === NOT_TOLD ? [] : [{ do: 'fact' as const, name, fact, text }])),
      ...(ask.scope === NOT_TOLD ? [] : [{ do: 'scope' as const, name, within: ask.scope === 'in' }]),
      ...(ask.name === NOT_TOLD ? [] : [{ do: 'rename' as const, name, to: ask.name }]),
    ],
  };
}

/** What a text says of a room, and each further fact behind a comma: `hall floor carpet, doors 30 in on wall 2`. */
function deedsSaid(text: string, rooms: Rooms): readonly [RoomDeed, ...RoomDeed[]] {
  const [first = '', ...facts] = text.split(
    /(?:(?<!\s)\s+)?[,;]\s*(?:and )?(?=(?:floor|doors?|openings?|notes?) [^:])/i,
  );
  const said = roomSaid(first, rooms);
  if (said.do !== 'fact' && said.do !== 'show' && said.do !== 'scope') return [roomSaid(text, rooms)];
  return [said, ...facts.map((fact) => roomSaid(`${said.name} ${fact}`, rooms))];
}

/** The name in a text of a room and its sides. */
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

/** Does all deeds, or none where one cannot be done. What else names a room follows it. */
export function roomSteps(before: Following, deeds: readonly RoomDeed[], habits: Habits): Steps {
  const { rooms, picks, kept, found, stages, measures } = before;
  let parts: Following = { rooms, picks, kept, found, stages, measures };
  const said: string[] = [];
  const notes: string[] = [];
  for (const deed of deeds) {
    const reading = { option: 'room', habits, note: (line: string) => void (notes.includes(line) || notes.push(line)) };
    const step = roomStep(parts.rooms, deed, reading);
    if ('problem' in step) return step;
    // Told anew, a room is as it is told.
    const anew = parts.rooms.filter(({ name, text }) => roomNamed(step.rooms, name)?.text !== text);
    const after = afterRooms(
      { ...parts, measures: anew.reduce((all, { name }) => withoutTold(all, name), parts.measures) },
      step.rooms,
    );
    parts = { ...after, measures: measuresIn(after.measures, after.rooms) };
    said.push(...step.said);
  }
  return { parts, said, notes };
}
