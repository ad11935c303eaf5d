/** What a project takes from a saved answer: new rooms, plank and rules it has no picks for, and work that joins the job. */

import { filled, meaningsOf, pickFor } from '../../src/chat/autofill.ts';
import type { Command, Context } from '../../src/chat/command.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { readRoomsApart } from '../../src/input/rooms/rooms-apart.ts';
import type { Settings } from '../../src/project/person.ts';
import type { Content, KeptAsk, Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import {
  changedRoom,
  doorwaysTogether,
  inScope,
  type Rooms,
  roomNamed,
  roomsText,
  withRoom,
} from '../../src/project/project-room.ts';
import { roomsNamedIn } from '../../src/project/rooms-follow.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { tooManyKept } from '../../src/text/project-problems-text.ts';
import { CHANGED, PROJECT } from '../../src/text/project-text.ts';
import { OF_PLACES } from './shopping-needs.ts';

/** Measured or found on the spot, so they apply to this work only and never become picks. */
const OF_ONE_WORK = [
  'planks',
  'only',
  'so-far',
  'readings',
  'ramp',
  'damage',
  'first-joist',
  'notch',
  'notch-length',
  'notch-place',
  'hole',
  'hole-edge',
  'area',
  'found',
  'walls',
  'tested',
  'below',
  'leak',
  'water',
  'mould',
];

export type AnsweredRooms = Pick<KeptAsk, 'id' | 'ask' | 'headline' | 'at'>;

export type KeepStep =
  | {
      readonly parts: Pick<Content, 'rooms' | 'picks' | 'kept'>;
      readonly said: readonly string[];
      readonly stays: readonly string[];
      /** Options that differ from the project's; as picks they would replace them. */
      readonly others: readonly (readonly [key: string, text: string])[];
      /** Shapes of rooms that don't belong to the project. */
      readonly outside?: string;
    }
  | { readonly problem: Problem };

/** Pure. */
export function keepStep(
  before: Project,
  ask: AnsweredRooms,
  context: Context,
  settings: Settings | undefined,
): KeepStep {
  const others = before.kept.filter((one) => one.ask !== ask.ask);
  if (others.length >= LIMITS.kept) return { problem: tooManyKept(LIMITS.kept) };
  const parsed = context.parse(ask.ask);
  const said = [CHANGED.kept(ask.headline)];
  if (!parsed)
    return {
      parts: { rooms: before.rooms, picks: before.picks, kept: [...others, { ...ask, own: [] }] },
      said,
      stays: [],
      others: [],
    };
  const { command, optionTexts } = parsed;
  const taken = takenRooms(before.rooms, optionTexts, command, context);
  const withRooms = { ...before, rooms: taken.rooms };
  const options = takenOptions(withRooms, command, optionTexts, taken.about, context, settings);
  const own = options.own.slice(0, LIMITS.picks);
  const about = taken.about ?? roomsInTexts(optionTexts, own, taken.rooms);
  const saved: KeptAsk = { ...ask, own, ...(about && { rooms: about.map(({ name }) => name) }) };
  return {
    parts: { rooms: taken.rooms, picks: options.picks, kept: [...others, saved] },
    said: [...said, ...taken.said, ...options.said],
    stays: [...taken.stays, ...options.stays],
    others: options.others,
    ...(taken.outside !== undefined && { outside: taken.outside }),
  };
}

interface TakenRooms {
  readonly rooms: Rooms;
  /** Undefined if the answer is about the whole job, or no rooms are given. */
  readonly about: Rooms | undefined;
  readonly said: readonly string[];
  readonly stays: readonly string[];
  readonly outside?: string;
}

/** A room with a name is added. One without a name is just a size they tried, unless the project has no rooms yet. */
function takenRooms(
  before: Rooms,
  optionTexts: ReadonlyMap<string, string>,
  command: Command,
  { preferences }: Context,
): TakenRooms {
  const text = optionTexts.get('room');
  const apart =
    text === undefined ? undefined : readRoomsApart(text, { option: 'room', preferences, note: () => undefined });
  if (!apart?.ok) return { rooms: before, about: undefined, said: [], stays: [] };
  const said: string[] = [];
  const stays: string[] = [];
  const outside: string[] = [];
  let rooms = before;
  const about = new Set<string>();
  for (const { name, text: shape, named } of apart.value) {
    const known = roomNamed(rooms, name);
    if (known && (named || known.text === shape)) {
      if (known.text !== shape) stays.push(PROJECT.roomStays(known.name));
      about.add(known.name);
      continue;
    }
    const more = known ? rooms : withAnother(rooms, { name, text: shape });
    if (more === rooms || (!named && before.length > 0)) {
      outside.push(named ? `${name} ${shape}` : shape);
      continue;
    }
    rooms = more;
    about.add(name);
    said.push(CHANGED.roomAdded(name, shape));
  }
  const found = rooms.filter(({ name }) => about.has(name));
  const whole = outside.length === 0 && inScope(rooms).every((room) => found.includes(room));
  const withFloor = floorTaken(rooms, found, command, optionTexts);
  return {
    rooms: withFloor.rooms,
    // Work at one spot stays tied to its room, even if that's the only one.
    about: whole && (found.length > 1 || !OF_PLACES.includes(fullName(command))) ? undefined : found,
    said: [...said, ...withFloor.said],
    stays,
    ...(outside.length > 0 && { outside: outside.join('; ') }),
  };
}

function withAnother(rooms: Rooms, room: { readonly name: string; readonly text: string }): Rooms {
  if (rooms.length >= LIMITS.rooms || room.text.length > LIMITS.room) return rooms;
  const more = withRoom(rooms, { ...room, notes: [], inScope: true });
  return roomsText(inScope(more)).length > LIMITS.roomsGiven ? rooms : more;
}

/** Only the rooms of the answer get the floor they tear out. */
function floorTaken(rooms: Rooms, found: Rooms, command: Command, optionTexts: ReadonlyMap<string, string>) {
  const floor = optionTexts.get('floor');
  const bare = found.filter((room) => room.floor === undefined);
  if (command.group !== 'prep' || !['tearout', 'plan'].includes(command.name)) return { rooms, said: [] };
  if (floor === undefined || floor.length > LIMITS.note) return { rooms, said: [] };
  return {
    rooms: bare.reduce((all, { name }) => changedRoom(all, name, { floor }), rooms),
    said: bare.map(({ name }) => CHANGED.roomFact(name, 'floor now', floor)),
  };
}

interface TakenOptions {
  readonly picks: Content['picks'];
  readonly own: readonly string[];
  readonly said: readonly string[];
  readonly stays: readonly string[];
  readonly others: readonly (readonly [string, string])[];
}

/** Takes the options that have no pick yet; the others apply only to this work. */
function takenOptions(
  project: Project,
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
  about: Rooms | undefined,
  { commands, preferences }: Context,
  settings: Settings | undefined,
): TakenOptions {
  const picks = new Map(Object.entries(project.picks));
  const own: string[] = [];
  const said: string[] = [];
  const stays: string[] = [];
  const others: (readonly [string, string])[] = [];
  const places = OF_PLACES.includes(fullName(command));
  const room = about?.map(({ name }) => name).join('; ');
  const given = filled(
    command,
    new Map(room === undefined || room === '' ? [] : [['room', room]]),
    { project, settings },
    commands,
    preferences,
  ).optionTexts;
  for (const [option, text] of optionTexts) {
    if (option === 'room' || given.get(option) === text) continue;
    const key = meaningsOf(option, commands).length > 1 ? `${command.name} ${option}` : option;
    const before = pickFor(Object.fromEntries(picks), command, option, commands);
    if (OF_ONE_WORK.includes(option) || command.name === 'lift') own.push(option);
    else if (before === text) continue;
    else if (before === undefined && picks.size < LIMITS.picks && text.length <= LIMITS.pick) {
      picks.set(key, text);
      said.push(CHANGED.pick(key, text));
    } else if (before === undefined || places) own.push(option);
    else if (key === 'edges doorways' && withDoorways(before, text) !== before) {
      picks.set(key, withDoorways(before, text));
      said.push(CHANGED.pick(key, withDoorways(before, text)));
    } else {
      stays.push(PROJECT.keptStays(key, before));
      if (text.length <= LIMITS.pick) others.push([key, text]);
    }
  }
  return { picks: Object.fromEntries(picks), own, said, stays, others };
}

function withDoorways(picked: string, more: string): string {
  const all = doorwaysTogether(picked, more);
  return all.length > LIMITS.pick ? picked : all;
}

/** For answers without rooms of their own: the one room that their texts mention. */
function roomsInTexts(
  optionTexts: ReadonlyMap<string, string>,
  own: readonly string[],
  rooms: Rooms,
): Rooms | undefined {
  if (optionTexts.has('room')) return undefined;
  const found = roomsNamedIn(own.map((option) => optionTexts.get(option) ?? '').join(' ; '), rooms);
  return found.length === 1 ? found : undefined;
}
