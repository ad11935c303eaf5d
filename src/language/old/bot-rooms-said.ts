/** Everyday sentences about the rooms and the plank of a project in use, as the line of the command that keeps it. */

import { readPlank } from '../../input/parse-plank.ts';
import type { Preferences } from '../../input/reading.ts';
import { readRooms } from '../../input/rooms/parse-room.ts';
import { readRoomsApart } from '../../input/rooms/rooms-apart.ts';
import type { Project } from '../../project/project.ts';
import { folded, roomNamed } from '../../project/project-room.ts';
import { readPlain } from './plain-sentence.ts';

const ADD =
  /^add (?:a |an |the |my |another |room )*(?<room>.+?)(?: to (?:my |the )?(?:project|flat|home|house|list))?[.!]?$/i;
const SCOPE =
  /^(?:(?:exclude|leave out) (?:the )?(?<except>[\p{L}\d' -]{1,40}?)|leave (?:the )?(?<left>[\p{L}\d' -]{1,40}?) (?:as it is|out(?: of (?:it|the job|scope))?|alone)|(?:the )?(?<out>[\p{L}\d' -]{1,40}?) (?:is out of scope|stays as it is|is out of the job))[.!]?$/iu;
const WITHIN =
  /^(?:include (?:the )?(?<include>[\p{L}\d' -]{1,40}?)|(?:the )?(?<within>[\p{L}\d' -]{1,40}?) is (?:back )?in(?: scope| the job| again)*)[.!]?$/iu;
/** What is told of a room behind its name. */
const FACT = /^(?:the |my )?(?<name>[\p{L}\d' -]{1,40}?),? (?:floor|doors?|notes?|has|with)\b.*$/iu;
const UNSIZED = /^add (?:a |an |the |my |another )*(?<name>\p{L}[\p{L} ]{2,30}?)[.!]?$/iu;
const BUILT =
  /^(?:the |my |our )?(?:house|home|flat|building|it)?(?: is| was)? ?built (?:in |about |around )?(?<year>(?:1[6-9]|20)\d\d)[.!]?$/i;
const PATTERN =
  /^(?:use|lay (?:it )?in|go with|going with) (?:the |a )?(?<pattern>herringbone|thirds|half|stair-step|scattered|offcut-first)(?: pattern)?[.!]?$/i;
const BASEBOARD = /^(?:my |the |our )?baseboards? (?:is|are|comes? in|costs?) (?<stock>.*\d.*?)[.!]?$/i;
const REMOVE = /^(?:remove|delete|drop) (?:the |my )?(?:room )?(?<name>[\p{L}\d' -]{1,40}?)[.!]?$/iu;
const RENAME =
  /^(?:rename|call) (?:the |my )?(?:room )?(?<from>[\p{L}\d' -]{1,40}?)(?: to | as |: | (?=the ))(?:the )?(?<to>[\p{L}\d' -]{1,40}?)(?: now)?[.!]?$/iu;
const SIZE =
  /^(?:make |change |set )?(?:the |my )?(?<name>[\p{L}\d' -]{1,40}?) (?:(?:is|measures|to|should be) )(?:actually |really |now |only )*(?<size>[\d.,'"½¼¾].*?)[.!]?$/iu;
const FLOOR =
  /^(?:there is |there's )?(?<before>[\p{L} -]{3,40}?) (?:is )?(?:in|on the floor of) the (?<room>[\p{L}\d' -]{1,40}?)(?: now| at the moment)?[.!]?$/iu;
const PICKED =
  /^(?:i |we |i've |we've |i have |we have |i'm |we're )*(?:picked|pick|chose|chosen|decided on|going with|settled on|using|want to use) (?:the |a |an )?(?<what>.*\d.*?)[.!]?$/i;
/** Words of a question or of a shop: what holds one is no list of rooms alone. */
const ASKING =
  /\?|\b(?:how|what|which|need|want|enough|buy|box(?:es)?|cartons?|packs?|planks?|boards?|tiles?|cost|price|per|do|does|can|is|are|have|has|carpet|laminate|paint|readings?|gap|for)\b/i;

type InUse = Pick<Project, 'rooms' | 'picks'>;

/** The line of `project room` or `project pick` that does what a sentence says; undefined for any other text. */
export function projectRoomsSaid(said: string, project: InUse, preferences: Preferences): string | undefined {
  const { except, left, out } = SCOPE.exec(said)?.groups ?? {};
  const name = except ?? left ?? out;
  if (name !== undefined) return `project room ${name} out of scope`;
  const { year } = BUILT.exec(said)?.groups ?? {};
  if (year !== undefined) return `project pick built: ${year}`;
  const { pattern } = PATTERN.exec(said)?.groups ?? {};
  if (pattern !== undefined) return `project pick pattern: ${pattern.toLowerCase()}`;
  const { stock } = BASEBOARD.exec(said)?.groups ?? {};
  if (stock !== undefined) return `project pick baseboard: ${stock}`;
  return (
    changeSaid(said, project, preferences) ??
    pickSaid(said, project, preferences) ??
    addSaid(said, project, preferences)
  );
}

/** What is said of a room that is there. */
function changeSaid(said: string, { rooms }: InUse, preferences: Preferences): string | undefined {
  const of = (name: string | undefined): boolean => name !== undefined && roomNamed(rooms, name) !== undefined;
  const gone = REMOVE.exec(said)?.groups?.name;
  if (of(gone)) return `project room remove ${gone}`;
  const { from, to } = RENAME.exec(said)?.groups ?? {};
  if (of(from)) return `project room rename ${from} to ${to}`;
  const { include, within } = WITHIN.exec(said)?.groups ?? {};
  if (of(include ?? within)) return `project room ${include ?? within} in scope`;
  if (!said.includes('?') && of(FACT.exec(said)?.groups?.name))
    return `project room ${said.replace(/^(?:the|my) /i, '')}`;
  const { name, size } = SIZE.exec(said)?.groups ?? {};
  if (of(name) && isSize(size ?? '', preferences)) return `project room ${name}, size: ${size}`;
  const { before, room } = FLOOR.exec(said)?.groups ?? {};
  return of(room) &&
    /^(?:carpet|laminate|vinyl|sheet vinyl|tile|tiles|lino(?:leum)?|hardwood|wood)$/i.test(before ?? '')
    ? `project room ${room}, floor: ${before}`
    : undefined;
}

/** A plank said to be chosen, or told alone to a project that has no rooms it could be worked out for. */
function pickSaid(said: string, { rooms, picks }: InUse, preferences: Preferences): string | undefined {
  const what = PICKED.exec(said)?.groups?.what ?? (rooms.length === 0 && picks.plank === undefined ? said : '');
  return /\d/.test(what) && readPlank(what, { option: 'plank', preferences, note: () => undefined }).ok
    ? `project pick plank: ${what}`
    : undefined;
}

/** Rooms to add; told alone, with their names, they are meant for a project that has no plank to work out. */
function addSaid(said: string, { rooms, picks }: InUse, preferences: Preferences): string | undefined {
  const reading = { option: 'room', preferences, note: () => undefined };
  const room = ADD.exec(said)?.groups?.room;
  if (room !== undefined && /\d/.test(room) && readRooms(room, reading).ok) return `project room add ${room}`;
  const unsized = UNSIZED.exec(said)?.groups?.name;
  if (unsized !== undefined && !ASKING.test(unsized)) return `project room add ${unsized}`;
  const given = /^room (?<room>\p{L}.*)$/iu.exec(said)?.groups?.room;
  if (given !== undefined && (roomAt(given, rooms) || (/\d/.test(given) && !ASKING.test(given))))
    return `project room ${given}`;
  if (picks.plank !== undefined || !/\d/.test(said)) return undefined;
  const { name, size } = SIZE.exec(said)?.groups ?? {};
  if (name !== undefined && size !== undefined && !/\d/.test(name) && !ASKING.test(name) && isSize(size, preferences))
    return `project room ${name} ${size}`;
  if (ASKING.test(said)) return undefined;
  const apart = readRoomsApart(said, reading);
  if (!apart.ok || !apart.value.every(({ named }) => named)) return undefined;
  const plain = readPlain(said, preferences);
  return plain.kind === 'nothing' || plain.topic === 'planks' ? `project room ${said}` : undefined;
}

/** Whether a text is the shape of a room and nothing else. */
function isSize(text: string, preferences: Preferences): boolean {
  return !ASKING.test(text) && readRooms(`room: ${text}`, { option: 'room', preferences, note: () => undefined }).ok;
}

/** Whether a text begins with the name of a room that is there. */
function roomAt(text: string, rooms: InUse['rooms']): boolean {
  const plain = folded(text);
  return rooms.some(({ name }) => plain === folded(name) || plain.startsWith(`${folded(name)} `));
}
