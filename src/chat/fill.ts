/** An ask filled from what its asker keeps: rooms, picks and standards where nothing is told; what is told always wins. */

import { askLine, isCalculating } from '../input/command-shape.ts';
import { COUNTRY_NAMES } from '../input/parse-house.ts';
import { factsOf, type Habits } from '../input/reading.ts';
import type { Settings } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { inScope, type Rooms, roomsText } from '../project/project-room.ts';
import { pickWithout } from '../project/rooms-follow.ts';
import type { Problem } from '../reply/reply.ts';
import {
  filledNote,
  floorsDiffer,
  optionPart,
  pickElsewhere,
  pickUnread,
  roomByName,
  roomsPart,
  standardsNote,
} from '../text/project-text.ts';
import type { Command } from './command.ts';
import { namedRooms } from './fill-rooms.ts';
import { isRead, pickFor } from './pick.ts';

/** What an asker keeps. */
export interface Holdings {
  readonly project?: Project | undefined;
  readonly settings?: Settings | undefined;
}

export interface Filled {
  /** The options in the command's own order. */
  readonly told: ReadonlyMap<string, string>;
  readonly notes: readonly string[];
  readonly problem?: Problem;
}

/** Fills what is not told of a calculating command. Never throws. */
export function filled(
  command: Command,
  told: ReadonlyMap<string, string>,
  { project, settings }: Holdings,
  commands: readonly Command[],
  habits: Habits,
): Filled {
  if (!isCalculating(command)) return { told, notes: [] };
  const whole = new Map([...told].filter(([, text]) => text !== ''));
  const notes: string[] = [];
  const parts: string[] = [];
  const used = project ? fillRooms(command, whole, project, notes, parts) : [];
  const options = Object.keys(command.options.shape);
  if (project) {
    for (const [option, text] of ofRooms(command, used)) {
      if (whole.has(option) || !isRead(command, option, text, habits)) continue;
      whole.set(option, text);
      parts.push(optionPart(option, text));
    }
    // What is picked for places in rooms that this is not about is for other answers.
    const others = project.rooms.filter((room) => !used.includes(room));
    for (const option of options) {
      const picked = whole.has(option) ? undefined : pickFor(project.picks, command, option, commands);
      const text = picked && pickWithout(`${command.name} ${option}`, picked, others, project.rooms);
      if (picked !== text) notes.push(pickElsewhere(project.name, option));
      if (text === undefined) continue;
      if (isRead(command, option, text, habits)) {
        whole.set(option, text);
        parts.push(optionPart(option, text));
      } else notes.push(pickUnread(project.name, option, text));
    }
    if (parts.length > 0) notes.push(filledNote(project.name, parts));
  }
  const own = options.flatMap((option) => {
    const text = whole.has(option) ? undefined : pickFor(settings?.standards ?? {}, command, option, commands);
    if (text === undefined || !isRead(command, option, text, habits)) return [];
    whole.set(option, text);
    return [optionPart(option, text)];
  });
  if (settings?.country && options.includes('country') && !whole.has('country')) {
    const name = COUNTRY_NAMES[settings.country];
    whole.set('country', name);
    own.push(optionPart('country', name));
  }
  if (own.length > 0) notes.push(standardsNote(own));
  const ordered = new Map([...options, ...whole.keys()].flatMap((name) => pair(whole, name)));
  const problem = floorProblem(command, told, used, ordered);
  return { told: ordered, notes, ...(problem && { problem }) };
}

function pair(map: ReadonlyMap<string, string>, name: string): [string, string][] {
  const text = map.get(name);
  return text === undefined ? [] : [[name, text]];
}

/** Puts the project's rooms where none are told, or in place of their names; gives those that the ask is about. */
function fillRooms(
  command: Command,
  whole: Map<string, string>,
  { name, rooms }: Project,
  notes: string[],
  parts: string[],
): Rooms {
  const schema = command.options.shape.room;
  if (!schema) return [];
  const typed = whole.get('room');
  if (typed !== undefined) {
    const found = namedRooms(typed, rooms);
    if (!found) return [];
    whole.set('room', found.text);
    notes.push(roomByName(name, found.named));
    return found.all ? found.named : [];
  }
  const all = inScope(rooms);
  if (factsOf(schema).kind !== 'room' || all.length === 0) return [];
  whole.set('room', roomsText(all));
  parts.push(roomsPart(all.map((room) => room.name)));
  return all;
}

/** What the rooms themselves tell: their doors, and the floor that is on all of them now. */
function ofRooms({ options }: Command, rooms: Rooms): readonly (readonly [string, string])[] {
  const doors = rooms.flatMap(({ name, openings }) =>
    (openings?.split(/(?:(?<!\s)\s+)?[;\r\n]+\s*/) ?? []).map((door) =>
      rooms.length > 1 && /\bwall\b/i.test(door) && !/\bwall \S+ (?:of|in)\b/i.test(door)
        ? door.replace(/\bwall\s+\S*[\d]/i, (wall) => `${wall} of ${name}`)
        : door,
    ),
  );
  const floors = floorsOf(rooms);
  const [floor] = floors;
  return [
    ...(doors.length > 0 && 'doors' in options.shape ? [['doors', doors.join('; ')] as const] : []),
    ...(floors.size === 1 && floor !== undefined && takesCovering(options) ? [['floor', floor] as const] : []),
  ];
}

/** Whether `floor` is what comes up, and not what is measured or how high it is. */
function takesCovering({ shape }: Command['options']): boolean {
  return shape.floor !== undefined && factsOf(shape.floor).names === 'covering';
}

/** The floors told of the rooms; where a floor is told for some, the others are taken to have it too, and the answer says it. */
function floorsOf(rooms: Rooms): ReadonlySet<string> {
  return new Set(rooms.flatMap(({ floor }) => floor ?? []));
}

/** Rooms with different floors on them are not all taken for carpet. */
function floorProblem(
  command: Command,
  told: ReadonlyMap<string, string>,
  rooms: Rooms,
  ordered: ReadonlyMap<string, string>,
): Problem | undefined {
  const floors = floorsOf(rooms);
  if (told.has('floor') || !takesCovering(command.options) || floors.size < 2) return undefined;
  const [first] = rooms.filter(({ floor }) => floor !== undefined);
  const same = rooms.filter(({ floor }) => floor === first?.floor);
  const fix = new Map([...ordered, ['room', roomsText(same)], ['floor', first?.floor ?? '']]);
  return floorsDiffer(
    rooms.flatMap(({ name, floor }) => (floor === undefined ? [] : [[name, floor] as const])),
    askLine(command, fix),
  );
}
