/** Fills missing options from the user's project: rooms, picks and settings. What was typed always wins. */

import { distance } from 'fastest-levenshtein';
import { askLine, fullName, isCalculating } from '../input/command-shape.ts';
import { COUNTRY_NAMES } from '../input/parse-house.ts';
import { factsOf, type Preferences } from '../input/reading.ts';
import { folded } from '../input/rooms/room-text.ts';
import { roomGiven } from '../input/rooms/rooms-apart.ts';
import type { Settings } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { inScope, type Room, type Rooms, roomNamed, roomsText, sameName } from '../project/project-room.ts';
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
import { readInTime } from '../workers/time-limits.ts';
import type { Command } from './command.ts';

/** The rooms a text names, in its order, and the text with their shapes in place of the names. */
interface NamedRooms {
  readonly text: string;
  readonly named: Rooms;
  /** Whether the text was nothing but names. */
  readonly all: boolean;
}

const EVERY =
  /^(?:all|every|each|the whole|whole)(?: (?:of )?(?:the|my|our))?(?: (?:rooms?|flat|home|house|floor|project))?$/;
const BUT = /^(?<every>.*?)(?<!\s)\s*(?:but|except(?: for)?|without)\s+(?:the\s+)?(?<rest>.+)$/;

/** Project rooms named in a `room` text: `bedroom`, `bedroom and hall`, `all but the bath`, `bedroom; 12 x 14`. */
export function namedRooms(text: string, rooms: Rooms): NamedRooms | undefined {
  return readInTime(() => roomsNamed(text, rooms));
}

function roomsNamed(text: string, rooms: Rooms): NamedRooms | undefined {
  const plain = folded(text);
  const every = everyRoom(plain, rooms);
  if (every && every.length > 0) return { text: every.map(roomGiven).join('; '), named: every, all: true };
  const alone = roomsIn(text, rooms);
  if (alone) return { text: alone.map(roomGiven).join('; '), named: alone, all: true };
  const parts = text.split(/[;\r\n]+/).map((part) => ({ part: part.trim(), found: roomsIn(part, rooms) }));
  const named = parts.flatMap(({ found }) => found ?? []);
  if (named.length === 0) return undefined;
  const whole = parts
    .filter(({ part }) => part !== '')
    .map(({ part, found }) => found?.map(roomGiven).join('; ') ?? part);
  return { text: whole.join('; '), named, all: false };
}

function everyRoom(plain: string, rooms: Rooms): Rooms | undefined {
  if (EVERY.test(plain)) return inScope(rooms);
  const { every = '', rest = '' } = BUT.exec(plain)?.groups ?? {};
  const without = EVERY.test(every) ? roomsIn(rest, rooms) : undefined;
  return without && inScope(rooms).filter((room) => !without.includes(room));
}

/** The rooms of a text that is nothing but room names. */
function roomsIn(text: string, rooms: Rooms): Rooms | undefined {
  const whole = nearest(text, rooms);
  if (whole) return [whole];
  const names = text.split(/(?:(?<!\s)\s+)?(?:[,;&+]|\band\b|\r?\n)\s*/iu).filter((name) => name.trim() !== '');
  const found = names.map((name) => nearest(name, rooms));
  const rest = found.filter((room) => room !== undefined);
  return rest.length > 0 && rest.length === names.length ? [...new Set(rest)] : undefined;
}

/** A room by its name. A typo in a longer name is forgiven if only one room can be meant. */
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

export function isRead(command: Command, option: string, text: string, preferences: Preferences): boolean {
  const schema = command.options.shape[option];
  const reading = { option, preferences, note: () => undefined };
  return (
    schema !== undefined &&
    readInTime(
      () => schema.safeParse({ text, reading }).success,
      () => false,
    )
  );
}

/**
 * The pick for an option of a command, by the most specific name: command and option (`edges stock`), another command
 * with the same option, or the option alone.
 */
export function pickFor(
  picks: Readonly<Record<string, string>>,
  command: Command,
  option: string,
  commands: readonly Command[],
): string | undefined {
  const own = textOf(picks, `${command.name} ${option}`);
  if (own !== undefined) return own;
  const alike = commands.find(
    (other) => sameOption(command, other, option) && textOf(picks, `${other.name} ${option}`),
  );
  return alike ? textOf(picks, `${alike.name} ${option}`) : textOf(picks, option);
}

/** One command for each meaning that an option of this name has. */
export function meaningsOf(option: string, commands: readonly Command[]): readonly Command[] {
  const having = commands.filter((command) => isCalculating(command) && option in command.options.shape);
  return having.filter((command, i) => !having.slice(0, i).some((other) => sameOption(command, other, option)));
}

function sameOption(one: Command, other: Command, option: string): boolean {
  const [first, second] = [one.options.shape[option], other.options.shape[option]];
  if (!first || !second || !isCalculating(other)) return false;
  return first === second || factsOf(first).summary === factsOf(second).summary;
}

function textOf(picks: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(picks, key) ? picks[key] : undefined;
}

/** What is saved for the user. */
export interface Holdings {
  readonly project?: Project | undefined;
  readonly settings?: Settings | undefined;
}

interface Filled {
  /** In the command's own order. */
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly notes: readonly string[];
  readonly problem?: Problem;
}

/** Fills in the options of a calculating command that weren't typed. Never throws. */
export function filled(
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
  { project, settings }: Holdings,
  commands: readonly Command[],
  preferences: Preferences,
): Filled {
  if (!isCalculating(command)) return { optionTexts, notes: [] };
  const whole = new Map([...optionTexts].filter(([, text]) => text !== ''));
  const notes: string[] = [];
  const parts: string[] = [];
  const used = project ? fillRooms(command, whole, project, notes, parts) : [];
  const options = Object.keys(command.options.shape);
  if (project) {
    for (const [option, text] of ofRooms(command, used)) {
      if (whole.has(option) || !isRead(command, option, text, preferences)) continue;
      whole.set(option, text);
      parts.push(optionPart(option, text));
    }
    // Picks for places in other rooms belong to other answers.
    const others = project.rooms.filter((room) => !used.includes(room));
    for (const option of options) {
      const picked = whole.has(option) ? undefined : pickFor(project.picks, command, option, commands);
      const text = picked && pickWithout(`${command.name} ${option}`, picked, others, project.rooms);
      if (picked !== text) notes.push(pickElsewhere(project.name, option));
      if (text === undefined) continue;
      if (isRead(command, option, text, preferences)) {
        whole.set(option, text);
        parts.push(optionPart(option, text));
      } else notes.push(pickUnread(project.name, option, text));
    }
    const box = BY_AREA.includes(fullName(command)) && !whole.has('box') ? project.picks.plank : undefined;
    if (box !== undefined && isRead(command, 'box', box, preferences)) {
      whole.set('box', box);
      parts.push(optionPart('box', box));
    }
    if (parts.length > 0) notes.push(filledNote(project.name, parts));
  }
  const own = options.flatMap((option) => {
    const text = whole.has(option) ? undefined : pickFor(settings?.standards ?? {}, command, option, commands);
    if (text === undefined || !isRead(command, option, text, preferences)) return [];
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
  const problem = floorProblem(command, optionTexts, used, ordered);
  return { optionTexts: ordered, notes, ...(problem && { problem }) };
}

function pair(map: ReadonlyMap<string, string>, name: string): [string, string][] {
  const text = map.get(name);
  return text === undefined ? [] : [[name, text]];
}

/** Counted by area, which rooms give as well. */
const BY_AREA = ['floor estimate', 'floor enough'];

/** Puts in the project's rooms where none were typed, or in place of their names; returns the rooms that are used. */
function fillRooms(
  command: Command,
  whole: Map<string, string>,
  { name, rooms }: Project,
  notes: string[],
  parts: string[],
): Rooms {
  const option = BY_AREA.includes(fullName(command)) ? 'area' : 'room';
  const schema = command.options.shape[option];
  if (!schema) return [];
  const typed = whole.get(option);
  if (typed !== undefined) {
    const found = namedRooms(typed, rooms);
    if (!found) return [];
    whole.set(option, found.text);
    notes.push(roomByName(name, found.named));
    return found.all ? found.named : [];
  }
  const all = inScope(rooms);
  if ((option === 'room' && factsOf(schema).kind !== 'room') || all.length === 0) return [];
  whole.set(option, roomsText(all));
  parts.push(roomsPart(all.map((room) => room.name)));
  return all;
}

/** What the rooms themselves say: their doors, and their floor if it is the same everywhere. */
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

/** Whether `floor` is the covering that comes up, not a measurement or a height. */
function takesCovering({ shape }: Command['options']): boolean {
  return shape.floor !== undefined && factsOf(shape.floor).names === 'covering';
}

/** If only some rooms have a floor saved, the others are assumed to have the same one, and the answer says so. */
function floorsOf(rooms: Rooms): ReadonlySet<string> {
  return new Set(rooms.flatMap(({ floor }) => floor ?? []));
}

/** Rooms with different floors must not all be treated as carpet. */
function floorProblem(
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
  rooms: Rooms,
  ordered: ReadonlyMap<string, string>,
): Problem | undefined {
  const floors = floorsOf(rooms);
  if (optionTexts.has('floor') || !takesCovering(command.options) || floors.size < 2) return undefined;
  const [first] = rooms.filter(({ floor }) => floor !== undefined);
  const same = rooms.filter(({ floor }) => floor === first?.floor);
  const fix = new Map([...ordered, ['room', roomsText(same)], ['floor', first?.floor ?? '']]);
  return floorsDiffer(
    rooms.flatMap(({ name, floor }) => (floor === undefined ? [] : [[name, floor] as const])),
    askLine(command, fix),
  );
}
