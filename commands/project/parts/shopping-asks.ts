/** What to ask for a project's lists: the work of the job, each piece of it for the rooms and picks as they are now. */

import { pickFor } from '../../../src/chat/autofill.ts';
import type { Command, Context } from '../../../src/chat/command.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import type { Project } from '../../../src/project/project.ts';
import { inScope, type Room, type Rooms } from '../../../src/project/project-room.ts';
import { type Untold, untoldIn } from '../../../src/text/shopping-text.ts';
import { namesOf, OF_PLACES, requestLine, savedWork, todaysLine, type Work } from './saved-work.ts';

/** One request that gives a part of the lists. */
export interface JobAsk {
  /** The command's full name. */
  readonly name: string;
  readonly line: string;
  /** Names of the rooms that it is about; none where it is about no rooms. */
  readonly rooms: readonly string[];
  /** Of work at a place: the saved answer that it comes from, by its id. */
  readonly saved?: string;
}

export interface ListAsks {
  readonly asks: readonly JobAsk[];
  /** What cannot be asked yet. */
  readonly untold: readonly Untold[];
}

/**
 * The work of a job: the floor of all its rooms, what comes out of them, the trim; and what saved answers add to it. Figures
 * of a saved answer are in none of it: each request is worked out from the project as it is.
 */
export function listAsks(project: Project, { commands, habits }: Pick<Context, 'commands' | 'habits'>): ListAsks {
  const hints = untoldIn(habits.units);
  const rooms = inScope(project.rooms);
  const work = savedWork(project, { commands, habits });
  if (rooms.length === 0 && work.length === 0) return { asks: [], untold: [hints.rooms] };
  const job: Job = { project, rooms, work, commands };
  const asks: JobAsk[] = [];
  const untold: Untold[] = [];
  const take = (name: string, of: Rooms): void => void asks.push(...(of.length > 0 ? [overRooms(job, name, of)] : []));

  const tearout = tearoutAsks(job);
  asks.push(...tearout.asks);
  if (tearout.bare.length > 0) untold.push(hints.floor(tearout.bare.map(({ name }) => name)));

  const places = work.filter(({ name }) => OF_PLACES.includes(name));
  asks.push(...placeAsks(places));
  if (!places.some(({ name }) => name !== 'prep moisture')) untold.push(hints.subfloor);

  if (has(job, 'floor planks', 'plank')) take('floor planks', rooms);
  else if (rooms.length > 0) untold.push(hints.plank);

  if (has(job, 'trim edges', 'doorways') || has(job, 'trim edges', 'stairs'))
    asks.push({ name: 'trim edges', line: requestLine('trim edges', ownOf(job, 'trim edges')), rooms: [] });
  else untold.push(hints.doorways);

  const reset = roomsOf(job, 'trim reset');
  take('trim reset', reset);
  // Where the old boards go back, new ones are bought only for rooms that an answer was saved for.
  const picked = has(job, 'trim list', 'stock') && reset.length === 0;
  const list = picked ? rooms : roomsOf(job, 'trim list').filter((room) => !reset.includes(room));
  take('trim list', list);
  if (list.length === 0 && reset.length === 0 && rooms.length > 0) untold.push(hints.trim);
  const finish = roomsOf(job, 'trim finish');
  take(
    'trim finish',
    rooms.filter((room) => [...reset, ...list, ...finish].includes(room)),
  );
  return { asks, untold };
}

/** What comes out of the rooms that a tear-out was saved for. */
export function savedTearouts(
  project: Project,
  { commands, habits }: Pick<Context, 'commands' | 'habits'>,
): readonly JobAsk[] {
  const work = savedWork(project, { commands, habits });
  const job: Job = { project, rooms: inScope(project.rooms), work, commands };
  return tearoutAsks({ ...job, rooms: roomsOf(job, 'prep tearout') }).asks;
}

interface Job {
  readonly project: Project;
  readonly rooms: Rooms;
  readonly work: readonly Work[];
  readonly commands: readonly Command[];
}

function of({ work }: Job, name: string): readonly Work[] {
  return work.filter((one) => one.name === name);
}

/** Whether the project, or an answer saved for this work, says what an option is. */
function has(job: Job, name: string, option: string): boolean {
  return picked(job, name, option) || of(job, name).some(({ own }) => own.has(option));
}

function picked({ project, commands }: Job, name: string, option: string): boolean {
  const command = commands.find((one) => fullName(one) === name);
  return command !== undefined && pickFor(project.picks, command, option, commands) !== undefined;
}

/** The rooms of the job that answers were saved for. */
function roomsOf(job: Job, name: string): Rooms {
  const saved = of(job, name);
  return job.rooms.filter((room) => saved.some(({ rooms }) => rooms === undefined || rooms.includes(room)));
}

/** Options that the project has no pick for, as the latest answer saved for this work has them. */
function ownOf(job: Job, name: string): ReadonlyMap<string, string> {
  const own = new Map(of(job, name).flatMap((one) => [...one.own]));
  return new Map([...own].filter(([option]) => !picked(job, name, option)));
}

/** One sum over some rooms of the job, so that offcuts and sticks of one serve another. */
function overRooms(job: Job, name: string, rooms: Rooms): JobAsk {
  const options = new Map([...roomOption(job, rooms), ...ownOf(job, name)]);
  return { name, line: requestLine(name, options), rooms: rooms.map((room) => room.name) };
}

/** No room is named where all of the job are meant: the project fills them in. */
function roomOption({ project }: Job, rooms: Rooms): readonly (readonly [string, string])[] {
  return rooms.length === inScope(project.rooms).length ? [] : [['room', namesOf(rooms)]];
}

/** Places, each once however often it was saved. */
function placeAsks(places: readonly Work[]): readonly JobAsk[] {
  const asks = places.map((one) => ({
    name: one.name,
    line: todaysLine(one),
    rooms: (one.rooms ?? []).map((room) => room.name),
    saved: one.saved.id,
  }));
  return asks.filter(({ line }, i) => asks.findIndex((one) => one.line === line) === i);
}

/** Rooms with one floor on them come out together; those whose floor was looked at apart, with what was said of it. */
function tearoutAsks(job: Job): { readonly asks: readonly JobAsk[]; readonly bare: Rooms } {
  const ownIn = (room: Room): ReadonlyMap<string, string> => {
    const saved = of(job, 'prep tearout').filter(({ rooms }) => rooms === undefined || rooms.includes(room));
    const own = new Map(saved.flatMap((one) => [...one.own]));
    if (room.floor !== undefined) own.delete('floor');
    return own;
  };
  const groups = new Map<string, { readonly own: ReadonlyMap<string, string>; readonly rooms: Room[] }>();
  for (const room of job.rooms) {
    const own = ownIn(room);
    const key = JSON.stringify([room.floor ?? null, ...own]);
    const group = groups.get(key);
    if (group) group.rooms.push(room);
    else groups.set(key, { own, rooms: [room] });
  }
  const known = [...groups.values()].filter(
    ({ own, rooms: [first] }) => first?.floor !== undefined || own.has('floor') || picked(job, 'prep tearout', 'floor'),
  );
  const asks = known.map(({ own, rooms }): JobAsk => {
    const options = new Map([...roomOption(job, rooms), ...own]);
    return { name: 'prep tearout', line: requestLine('prep tearout', options), rooms: rooms.map(({ name }) => name) };
  });
  return { asks, bare: job.rooms.filter((room) => !known.some(({ rooms }) => rooms.includes(room))) };
}
