/** What to ask for a project's shopping list: the answers kept, and the sums that its rooms and picks suffice for. */

import { type Command, fullName } from '../../../src/bot/command.ts';
import { parseLine } from '../../../src/bot/grammar.ts';
import { pickFor } from '../../../src/bot/pick.ts';
import { factsOf } from '../../../src/measure/option.ts';
import type { Habits } from '../../../src/measure/reading.ts';
import { readRoomsApart } from '../../../src/measure/room-apart.ts';
import type { Project } from '../../../src/project/project.ts';
import { inScope, type Room, roomNamed, sameName } from '../../../src/project/room.ts';
import { type Untold, untoldIn } from '../../../src/words/shopping.ts';

export interface ListAsks {
  /** Lines to ask. */
  readonly asks: readonly string[];
  /** What cannot be asked yet. */
  readonly untold: readonly Untold[];
}

interface KeptAsk {
  readonly name: string;
  readonly told: ReadonlyMap<string, string>;
  readonly ask: string;
  /** Rooms of the project that it is about; undefined where others are told. */
  readonly rooms: readonly Room[] | undefined;
}

/** Sums about places: each kept one counts. */
const OF_PLACES = ['prep squeaks', 'prep patch', 'prep level', 'trim edges'];

/** Kept asks with their rooms as they are now, then what rooms and picks give for the rooms that no kept ask is about. */
export function listAsks(project: Project, commands: readonly Command[], habits: Habits): ListAsks {
  const hints = untoldIn(habits.units);
  const kept = keptAsks(project, commands, habits);
  const rooms = inScope(project.rooms);
  const picked = (name: string, option: string): boolean => {
    const command = commands.find((one) => fullName(one) === name);
    return command !== undefined && pickFor(project.picks, command, option, commands) !== undefined;
  };
  const ofRooms = (name: string) => roomAsks(name, kept, rooms, project, commands);
  const [planks, tearout, list, reset, finish] = (
    ['floor planks', 'prep tearout', 'trim list', 'trim reset', 'trim finish'] as const
  ).map(ofRooms);
  const asks: string[] = [];
  const untold: Untold[] = [];
  if (rooms.length === 0 && kept.length === 0) return { asks, untold: [hints.rooms] };
  const take = (of: RoomAsks | undefined, name: string, sufficient: boolean, missing: Untold | undefined): void => {
    asks.push(...(of?.asks ?? []));
    if (!of || of.left.length === 0) return;
    if (sufficient) asks.push(`${name} room: ${named(of.left)}`);
    else if (missing) untold.push(missing);
  };
  for (const group of byFloor(tearout?.left ?? [])) {
    const sufficient = group[0]?.floor !== undefined || picked('prep tearout', 'floor');
    if (sufficient) asks.push(`prep tearout room: ${named(group)}`);
    else untold.push(hints.floor(group.map(({ name }) => name)));
  }
  take(tearout && { ...tearout, left: [] }, 'prep tearout', true, undefined);
  for (const one of kept) {
    const ask = asked(one.name, one.told);
    if (OF_PLACES.includes(one.name) && !asks.includes(ask)) asks.push(ask);
  }
  if (!kept.some(({ name }) => name.startsWith('prep ') && OF_PLACES.includes(name))) untold.push(hints.subfloor);
  take(planks, 'floor planks', picked('floor planks', 'plank'), hints.plank);
  if (!kept.some(({ name }) => name === 'trim edges')) {
    if (picked('trim edges', 'doorways')) asks.push('trim edges');
    else untold.push(hints.doorways);
  }
  const setAgain = (reset?.asks.length ?? 0) > 0;
  asks.push(...(reset?.asks ?? []));
  const newTrim = picked('trim list', 'stock');
  take(list && setAgain ? { ...list, left: [] } : list, 'trim list', newTrim, hints.trim);
  const trimmed = setAgain || newTrim || (list?.asks.length ?? 0) > 0;
  take(trimmed || finish === undefined ? finish : { ...finish, left: [] }, 'trim finish', true, undefined);
  return { asks, untold };
}

/** A line that begins with its command's whole name, whatever was typed. */
export function asked(name: string, told: ReadonlyMap<string, string>): string {
  return `${name} ${[...told].map(([option, text]) => `${option}: ${text}`).join(', ')}`.trimEnd();
}

interface RoomAsks {
  readonly asks: readonly string[];
  /** Rooms that none of them is about. */
  readonly left: readonly Room[];
}

/** Kept asks of one command, the latest for each room; one that tells nothing but what is picked gives way to a sum over all rooms. */
function roomAsks(
  name: string,
  kept: readonly KeptAsk[],
  rooms: readonly Room[],
  project: Project,
  commands: readonly Command[],
): RoomAsks {
  const command = commands.find((one) => fullName(one) === name);
  let left = [...rooms];
  const asks: string[] = [];
  for (const one of [...kept].reverse()) {
    if (one.name !== name || !command || tellsNothingNew(one, command, project, commands)) continue;
    const about = one.rooms;
    if (about && !about.some((room) => left.includes(room))) continue;
    if (about) left = left.filter((room) => !about.includes(room));
    const told = new Map(about ? [...one.told, ['room', named(about)] as const] : one.told);
    asks.unshift(asked(name, told));
    // A sum of rooms that the project does not know stands for the whole of it where the project has no rooms.
  }
  return { asks, left };
}

function tellsNothingNew(
  { told, rooms }: KeptAsk,
  command: Command,
  { picks }: Project,
  commands: readonly Command[],
): boolean {
  if (!rooms) return false;
  return [...told].every(([option, text]) => {
    if (option === 'room') return true;
    const schema = command.options.shape[option];
    const standard = schema ? factsOf(schema).standard : undefined;
    return text === (pickFor(picks, command, option, commands) ?? standard);
  });
}

function keptAsks(project: Project, commands: readonly Command[], habits: Habits): readonly KeptAsk[] {
  return project.kept.flatMap(({ ask }): KeptAsk[] => {
    const parsed = parseLine(ask, commands, habits);
    if (!parsed.ok) return [];
    const told = parsed.told;
    return [{ name: fullName(parsed.command), told, ask, rooms: roomsOf(told.get('room'), project, habits) }];
  });
}

/** The project's rooms that a text names, whatever their shapes were then. */
function roomsOf(text: string | undefined, { rooms }: Project, habits: Habits): readonly Room[] | undefined {
  if (text === undefined) return undefined;
  // An area joined to a room is of that room, and no room of the project.
  const read = readRoomsApart(text, { option: 'room', habits, note: () => undefined });
  const names = read.ok ? read.value.map(({ name }) => name) : text.split(/\s*;\s*/);
  const known = names.map((name) => roomNamed(rooms, name));
  const found = known.filter((room) => room !== undefined);
  return found.length === known.length
    ? rooms.filter((room) => found.some((one) => sameName(one.name, room.name)))
    : undefined;
}

function named(rooms: readonly Room[]): string {
  return rooms.map(({ name }) => name).join('; ');
}

/** Rooms with one floor on them together. */
function byFloor(rooms: readonly Room[]): readonly (readonly Room[])[] {
  const groups = new Map<string, Room[]>();
  for (const room of rooms) groups.set(room.floor ?? '', [...(groups.get(room.floor ?? '') ?? []), room]);
  return [...groups.values()];
}
