/** What a project needs in all: the answers of the commands anybody can use, added up and rounded once. */

import { pickFor } from '../../src/chat/autofill.ts';
import type { AnsweredRequest, Command, Context, Outcome } from '../../src/chat/command.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { type Line, mergeNeeds, type Tally, tally } from '../../src/project/needs.ts';
import type { KeptAsk, Project } from '../../src/project/project.ts';
import { inScope, type Room, type Rooms, sameName } from '../../src/project/project-room.ts';
import type { Need } from '../../src/reply/need.ts';
import type { Caution } from '../../src/reply/reply.ts';
import { type NotGiven, notGivenIn, SHOPPING } from '../../src/text/shopping-text.ts';

// A cache, so that looking at sheets again doesn't compute them again.

/** Enough for a few projects; answers with pictures are large. */
const MOST_ANSWERS = 24;

const knownAnswers = new Map<string, Promise<AnsweredRequest>>();

/** Cache key: everything that fills in a request, so that any change of the project makes it another one. */
export async function filledFrom(project: Project, context: Context): Promise<string> {
  const standards = (await context.access?.ownersSettings())?.standards;
  return JSON.stringify([project.name, project.rooms, project.picks, standards, context.preferences]);
}

/** Like `context.ask`, but for the project as it is now, which may differ from when the message came, and cached. */
export async function asksOnce(project: Project, context: Context): Promise<Context['ask']> {
  const from = await filledFrom(project, context);
  return (line) => {
    const key = `${from}\n${line}`;
    const requested = knownAnswers.get(key) ?? context.ask(line, project);
    // Moves it to the end, so that what was used least recently is dropped first.
    knownAnswers.delete(key);
    knownAnswers.set(key, requested);
    requested.catch(() => knownAnswers.delete(key));
    const [oldest] = knownAnswers.keys();
    if (knownAnswers.size > MOST_ANSWERS && oldest !== undefined) knownAnswers.delete(oldest);
    return requested;
  };
}

// Saved answers add work to the job: a command, for rooms as they are now, with some options of its own.

/** Work at one spot: each saved answer is separate. Everything else is added up over the rooms of the job. */
export const OF_PLACES: readonly string[] = ['prep squeaks', 'prep patch', 'prep level', 'prep moisture'];

export interface Work {
  readonly saved: KeptAsk;
  /** The command's full name. */
  readonly name: string;
  /** As they were typed. */
  readonly own: ReadonlyMap<string, string>;
  /** As they are now; undefined for all rooms, or if none are given. */
  readonly rooms: Rooms | undefined;
  /** Whether its command has an option for rooms. */
  readonly byRoom: boolean;
}

/** Leaves out answers that can't be read anymore, or whose rooms are gone or not part of the job. */
function savedWork(project: Project, { parse }: Pick<Context, 'parse'>): readonly Work[] {
  return project.kept.flatMap((saved) => {
    const work = workOf(saved, project, parse);
    return typeof work === 'string' ? [] : [work];
  });
}

/** `gone`: none of its rooms is part of the job; `unread`: its request can't be read anymore. */
export function workOf(saved: KeptAsk, { rooms }: Project, parse: Context['parse']): Work | 'gone' | 'unread' {
  const parsed = parse(saved.ask);
  if (!parsed) return 'unread';
  const about = saved.rooms && inScope(rooms).filter(({ name }) => saved.rooms?.some((one) => sameName(one, name)));
  if (about?.length === 0) return 'gone';
  const name = fullName(parsed.command);
  const byRoom =
    'room' in parsed.command.options.shape && (!OF_PLACES.includes(name) || parsed.optionTexts.has('room'));
  const own = new Map([...parsed.optionTexts].filter(([option]) => saved.own.includes(option)));
  return { saved, name, own, rooms: about, byRoom };
}

/** Always starts with the command's full name, whatever they typed. */
function requestLine(name: string, options: ReadonlyMap<string, string>): string {
  return `${name} ${[...options].map(([option, text]) => `${option}: ${text}`).join(', ')}`.trimEnd();
}

/** Its own options; the project fills in everything else. */
export function todaysLine({ name, own, rooms, byRoom }: Work): string {
  return requestLine(name, new Map([...(rooms && byRoom ? [['room', namesOf(rooms)] as const] : []), ...own]));
}

function namesOf(rooms: Rooms): string {
  return rooms.map(({ name }) => name).join('; ');
}

export interface JobAsk {
  /** The command's full name. */
  readonly name: string;
  readonly line: string;
  /** Empty if it isn't about rooms. */
  readonly rooms: readonly string[];
  /** For work at one spot, the id of the saved answer it comes from. */
  readonly saved?: string;
}

interface ListAsks {
  readonly asks: readonly JobAsk[];
  /** What's missing before more can be computed. */
  readonly notGiven: readonly NotGiven[];
}

/**
 * The floor of all rooms, what comes out of them, the trim, and work from saved answers. It never uses a saved figure: each
 * request is computed for the project as it is.
 */
export function listAsks(
  project: Project,
  { commands, parse, preferences }: Pick<Context, 'commands' | 'parse' | 'preferences'>,
): ListAsks {
  const hints = notGivenIn(preferences.units);
  const rooms = inScope(project.rooms);
  const work = savedWork(project, { parse });
  if (rooms.length === 0 && work.length === 0) return { asks: [], notGiven: [hints.rooms] };
  const job: Job = { project, rooms, work, commands };
  const asks: JobAsk[] = [];
  const notGiven: NotGiven[] = [];
  const take = (name: string, of: Rooms): void => void asks.push(...(of.length > 0 ? [overRooms(job, name, of)] : []));

  const tearout = tearoutAsks(job);
  asks.push(...tearout.asks);
  if (tearout.bare.length > 0) notGiven.push(hints.floor(tearout.bare.map(({ name }) => name)));

  const places = work.filter(({ name }) => OF_PLACES.includes(name));
  asks.push(...placeAsks(places));
  if (!places.some(({ name }) => name !== 'prep moisture')) notGiven.push(hints.subfloor);

  if (has(job, 'floor planks', 'plank')) take('floor planks', rooms);
  else if (rooms.length > 0) notGiven.push(hints.plank);

  if (has(job, 'trim edges', 'doorways') || has(job, 'trim edges', 'stairs'))
    asks.push({ name: 'trim edges', line: requestLine('trim edges', ownOf(job, 'trim edges')), rooms: [] });
  else notGiven.push(hints.doorways);

  const reset = roomsOf(job, 'trim reset');
  take('trim reset', reset);
  // If the old boards go back up, new ones are needed only in rooms with a saved answer for them.
  const picked = has(job, 'trim list', 'stock') && reset.length === 0;
  const list = picked ? rooms : roomsOf(job, 'trim list').filter((room) => !reset.includes(room));
  take('trim list', list);
  if (list.length === 0 && reset.length === 0 && rooms.length > 0) notGiven.push(hints.trim);
  const finish = roomsOf(job, 'trim finish');
  take(
    'trim finish',
    rooms.filter((room) => [...reset, ...list, ...finish].includes(room)),
  );
  return { asks, notGiven };
}

/** Only for rooms with a saved tear-out. */
export function savedTearouts(
  project: Project,
  { commands, parse }: Pick<Context, 'commands' | 'parse'>,
): readonly JobAsk[] {
  const work = savedWork(project, { parse });
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

/** A pick counts, and so does an option of an answer saved for this work. */
function has(job: Job, name: string, option: string): boolean {
  return picked(job, name, option) || of(job, name).some(({ own }) => own.has(option));
}

function picked({ project, commands }: Job, name: string, option: string): boolean {
  const command = commands.find((one) => fullName(one) === name);
  return command !== undefined && pickFor(project.picks, command, option, commands) !== undefined;
}

/** Rooms of the job with a saved answer for this command. */
function roomsOf(job: Job, name: string): Rooms {
  const saved = of(job, name);
  return job.rooms.filter((room) => saved.some(({ rooms }) => rooms === undefined || rooms.includes(room)));
}

/** From the latest saved answer, without options the project has picks for. */
function ownOf(job: Job, name: string): ReadonlyMap<string, string> {
  const own = new Map(of(job, name).flatMap((one) => [...one.own]));
  return new Map([...own].filter(([option]) => !picked(job, name, option)));
}

/** Together, so that offcuts and sticks from one room serve another. */
function overRooms(job: Job, name: string, rooms: Rooms): JobAsk {
  const options = new Map([...roomOption(job, rooms), ...ownOf(job, name)]);
  return { name, line: requestLine(name, options), rooms: rooms.map((room) => room.name) };
}

/** If all rooms of the job are meant, none is named and the project fills them in. */
function roomOption({ project }: Job, rooms: Rooms): readonly (readonly [string, string])[] {
  return rooms.length === inScope(project.rooms).length ? [] : [['room', namesOf(rooms)]];
}

/** The same spot saved twice counts once. */
function placeAsks(places: readonly Work[]): readonly JobAsk[] {
  const asks = places.map((one) => ({
    name: one.name,
    line: todaysLine(one),
    rooms: (one.rooms ?? []).map((room) => room.name),
    saved: one.saved.id,
  }));
  return asks.filter(({ line }, i) => asks.findIndex((one) => one.line === line) === i);
}

/** Rooms with the same floor come out together. `bare` rooms have no floor on record. */
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

export interface Listed {
  readonly lines: readonly Line[];
  readonly notGiven: readonly NotGiven[];
  /** Requests that couldn't be answered, in words. */
  readonly unread: readonly string[];
  /** Requests that are refused for safety, in words. */
  readonly refused: readonly string[];
  readonly cautions: readonly Caution[];
}

type Given = Pick<Listed, 'unread' | 'refused' | 'cautions'> & { readonly needs: readonly Need[] };

/** A cache, so that ticking something off doesn't lay floors again. */
const known = new Map<string, Promise<Given>>();
const MOST_KNOWN = 500;

/** What's been bought doesn't matter here. */
export async function listOf(project: Project, context: Context): Promise<Listed> {
  const { asks, notGiven } = listAsks(project, context);
  const from = await filledFrom(project, context);
  const askAs = await asksOnce(project, context);
  const given: Given[] = [];
  // Moisture readings don't need anything from the store.
  const bought = asks.filter(({ name }) => name !== 'prep moisture');
  for (const ask of bought) given.push(await once(`${from}\n${ask.line}`, () => askFor(ask, askAs)));
  const topics = new Map(given.flatMap(({ cautions }) => cautions).map((caution) => [caution.topic, caution]));
  return {
    lines: mergeNeeds(given.flatMap(({ needs }) => needs)),
    notGiven,
    unread: given.flatMap(({ unread }) => unread),
    refused: given.flatMap(({ refused }) => refused),
    cautions: [...topics.values()],
  };
}

export function talliesOf({ lines }: Listed, project: Project): readonly Tally[] {
  return tally(lines, project.shopping);
}

async function askFor({ name, line }: JobAsk, askAs: Context['ask']): Promise<Given> {
  const { outcome } = await askAs(guidesOfFloor(line));
  return givenBy(name, outcome);
}

function givenBy(name: string, outcome: Outcome): Given {
  const nothing = { needs: [], unread: [], refused: [], cautions: [] };
  if ('problems' in outcome) {
    const [{ expected }] = outcome.problems;
    return { ...nothing, unread: [SHOPPING.unread(name, expected)] };
  }
  if ('why' in outcome) {
    const { why, call, cautions } = outcome;
    return { ...nothing, refused: [SHOPPING.refused(name, why, call)], cautions };
  }
  return { ...nothing, needs: outcome.needs ?? [], cautions: outcome.cautions };
}

/** Guides need the same planks but aren't compared with other patterns, which takes several times as long. */
export function guidesOfFloor(ask: string): string {
  return ask.replace(/^floor planks/, 'floor guides');
}

function once(key: string, work: () => Promise<Given>): Promise<Given> {
  const before = known.get(key);
  if (before) return before;
  const given = work();
  known.set(key, given);
  // Failures aren't cached.
  given.catch(() => known.delete(key));
  const [oldest] = known.keys();
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
  return given;
}
