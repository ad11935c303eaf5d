/** Everyday sentences about a job under way, as the line of the command that keeps it: bought, spent, done, found, noted. */

import { readLength } from '../input/parse-length.ts';
import { readPlank } from '../input/parse-plank.ts';
import type { Preferences } from '../input/reading.ts';
import { readMeasurement } from '../input/rooms/parse-measurement.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import { folded } from '../input/rooms/room-text.ts';
import { readRoomsApart, roomGiven } from '../input/rooms/rooms-apart.ts';
import { EMPTY_MEASURES } from '../project/measurements.ts';
import type { Project } from '../project/project.ts';
import { inScope, roomNamed } from '../project/project-room.ts';
import { measured } from './measured.ts';
import { readSentence } from './sentence.ts';

/** Each word by itself: “i have” beside “i” and “have” would be tried both ways at every one. */
const WE =
  "(?:i |we |my (?:dad|husband|wife|son|brother|buddy|partner) |he |she |they |i've |we've |i'm |we're |just |also |already |have |am |are )*";

/** A question is no news of the job: how many boxes to buy is worked out, and not ticked off. */
const QUESTION = /\?|^(?:how|what|which|when|where|why|do|does|can|should|is|are)\b|\bhow (?:many|much)\b|\benough\b/i;

/** Rows in place are how far a floor is laid, which another command goes on with. */
const ROWS = /\b(?:rows? \d+|\d+[a-z]? rows?)\b/i;

interface Saying {
  readonly said: RegExp;
  readonly unless?: RegExp;
  readonly line: (text: string) => string;
}

/** When it was done, which the day of the message says. */
const WHEN_DONE = / (?:today|tonight|just now|this (?:morning|afternoon|evening))[.!]*$/i;

/** News: each begins a sentence that is no question. */
const NEWS: readonly Saying[] = [
  {
    said: new RegExp(`^${WE}(?=(?:bought|purchased|picked up|returned|opened|took back|brought back)\\b.)`, 'i'),
    line: (text) => `project shopping ${text}`,
  },
  { said: new RegExp(`^${WE}(?=not bought\\b.)`, 'i'), line: (text) => `project shopping ${text}` },
  {
    said: new RegExp(`^${WE}(?=(?:spent|paid|refund(?:ed)?|got back)\\b.*\\d)`, 'i'),
    line: (text) => `project spend ${text}`,
  },
  {
    said: /^(?:the |my |our )?(?=(?:insurer|insurance|landlord)(?: company)?(?: will| is|'ll)? (?:pay(?:s|ing)?|cover(?:s|ing)?)\b.)/i,
    line: (text) => `project spend ${text}`,
  },
  { said: /^(?:set )?(?:my |our |the )?(?=budget\b.*(?:\d|none|off))/i, line: (text) => `project spend ${text}` },
  { said: /^(?:make a |take a |add a |write a )?(?=note(?: that)?[: ].)/i, line: (text) => `project log ${text}` },
  { said: new RegExp(`^${WE}(?=(?:found|discovered)\\b.)`, 'i'), line: (text) => `project found ${text}` },
  {
    said: new RegExp(
      `^${WE}(?=(?:broke|ruined|wasted|damaged|cracked|miscut)\\b.*\\b(?:planks?|boards?|box(?:es)?)\\b)`,
      'i',
    ),
    line: (text) => `project log note ${text}`,
  },
  {
    said: new RegExp(
      `^${WE}(?=(?:done|finished|completed|skip(?:ped|ping)?|acclimati(?:ng|zing|sing)|tore out|ripped out|laid|caulked|painted|not (?:flat|dry)|still wet)\\b.)`,
      'i',
    ),
    unless: ROWS,
    line: (text) => `project progress ${text.replace(WHEN_DONE, '')}`,
  },
  {
    said: /^(?=(?:the )?[\p{L}\d][\p{L}\d' -]{0,40} (?:is|are|isn't|aren't) (?:not |still |now |all |too )*(?:flat|dry|wet|damp|done|finished|empty|cleared|laid|caulked|painted)[.!]?$)/iu,
    unless: ROWS,
    line: (text) => `project progress ${text}`,
  },
];

/** A line of a list taken out by its number. */
const REMOVED: readonly (readonly [said: RegExp, line: string])[] = [
  [/^(?:remove|delete|strike|drop) (?:the )?note (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i, 'project log remove'],
  [/^(?:remove|delete|strike|drop) (?:the )?finding (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i, 'project found remove'],
  [
    /^(?:remove|delete|strike|drop) (?:the )?(?:entry|cost|expense) (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i,
    'project spend remove',
  ],
];

/** Questions about the job: each takes the whole sentence. */
const ASKED: readonly (readonly [said: RegExp, line: string])[] = [
  [/^(?:show )?(?:me )?(?:my |the |our |all )?notes[.?!]?$/i, 'project log'],
  [/^what (?:have (?:i|we)|did (?:i|we)|was) (?:found|find)(?: so far)?[.?!]?$/i, 'project found'],
];

/** The line that does what a sentence about a job says; undefined for any other text. */
export function jobLine(said: string): string | undefined {
  const requested = ASKED.find(([pattern]) => pattern.test(said));
  if (requested) return requested[1];
  for (const [pattern, line] of REMOVED) {
    const no = pattern.exec(said)?.[1];
    if (no !== undefined) return `${line} ${no}`;
  }
  if (QUESTION.test(said)) return undefined;
  for (const { said: pattern, unless, line } of NEWS) {
    const found = unless?.test(said) ? null : pattern.exec(said);
    if (found) return line(said.slice(found[0].length));
  }
  return undefined;
}

const ADD =
  /^add (?:a |an |the |my |another |room ){0,4}(?<room>.+?)(?: to (?:my |the )?(?:project|flat|home|house|list))?[.!]?$/i;
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
const BASEBOARD =
  /^(?:my |the |our )?baseboards? (?:is|are|comes? in|costs?) (?=[^\d]{0,60}\d)(?<stock>.{1,300}?)[.!]?$/i;
const REMOVE = /^(?:remove|delete|drop) (?:the |my )?(?:room )?(?<name>[\p{L}\d' -]{1,40}?)[.!]?$/iu;
const RENAME =
  /^(?:rename|call) (?:the |my )?(?:room )?(?<from>[\p{L}\d' -]{1,40}?)(?: to | as |: | (?=the ))(?:the )?(?<to>[\p{L}\d' -]{1,40}?)(?: now)?[.!]?$/iu;
const SIZE =
  /^(?:make |change |set )?(?:the |my )?(?<name>[\p{L}\d' -]{1,40}?) (?:(?:is|measures|to|should be) )(?:actually |really |now |only )*(?<size>[\d.,'"½¼¾].*?)[.!]?$/iu;
/** “Actually it’s 12 x 15”: said of what was told last. */
const ITS_SIZE =
  /^(?:(?:it|that|this|the room)(?:'s| is| was)?|its|make (?:it|that)|should be|it should be)(?: (?:actually|really|more like|now))? (?<size>\d[\d.,'"½¼¾ xbyftinm]*?)[.!]?$/iu;
/** Words of a correction, which name no room. */
const NO_NAME =
  /^(?:actually|no|nope|sorry|wait|oops|make|it|its|it's|that|that's|this|is|i|meant|should|be|and|the|room|really|now|,| )*$/i;
const FLOOR =
  /^(?:there is |there's )?(?<before>[\p{L} -]{3,40}?) (?:is )?(?:in|on the floor of) the (?<room>[\p{L}\d' -]{1,40}?)(?: now| at the moment)?[.!]?$/iu;
const PICKED =
  /^(?:i |we |i've |we've |i have |we have |i'm |we're )*(?:picked|pick|chose|chosen|decided on|going with|settled on|using|want to use) (?:the |a |an )?(?<what>.*\d.*?)[.!]?$/i;
/** Words of a question or of a shop: what holds one is no list of rooms alone. */
const ASKING =
  /\?|\b(?:how|what|which|need|want|enough|buy|box(?:es)?|cartons?|packs?|planks?|boards?|tiles?|cost|price|per|do|does|can|is|are|have|has|carpet|laminate|paint|readings?|gap|for)\b/i;

type InUse = Pick<Project, 'rooms' | 'picks'>;

/** The line of `project room` or `project pick` that does what a sentence says; undefined for any other text. */
export function roomLine(said: string, project: InUse, preferences: Preferences): string | undefined {
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
    changeLine(said, project, preferences) ??
    pickLine(said, project, preferences) ??
    addLine(said, project, preferences)
  );
}

const SUPPOSED =
  /^(?:(?:and|but) )?(?:what if|suppose|say|if) (?:the |my )?(?<name>[\p{L}\d' -]{1,40}?) (?:was|were|is|had been|would be|becomes?) (?:actually |only )?(?<size>\d[\d.,'"½¼¾ xbyftinm]*?)(?: instead)?[?.!]*$/iu;

/** What the rooms would take if one had another size: worked out, and nothing is changed. */
export function supposedLine(said: string, { rooms, picks }: InUse, preferences: Preferences): string | undefined {
  const { name = '', size = '' } = SUPPOSED.exec(said)?.groups ?? {};
  const room = name === '' ? undefined : roomNamed(rooms, name);
  if (!room || !isSize(size, preferences)) return undefined;
  const given = inScope(rooms).map((one) => roomGiven(one === room ? { name: room.name, text: size } : one));
  return picks.plank === undefined ? `area room: ${given.join('; ')}` : `planks room: ${given.join('; ')}`;
}

const STOCKED =
  /^(?:(?:the|my|our|but|ok|so|uh oh|home) )*(?:store|shop|they|place|depot)(?: only)? (?:only |just )?(?:has|have|had|got|carries|carry)(?: only| just)? (?<count>\d{1,3})(?: (?:more|boxes|cartons|packs|cases|full|whole)){0,3}(?: (?:left|in stock|there|available|on the shelf))?(?: (?:of|in|from) (?:that|this|the same|my|the|our|one) (?:lot|batch|run|dye lot|number|code))?(?: left| in stock)?[.!]*$/i;

/** Whether what a store has of one lot is enough for the rooms. */
export function stockedLine(said: string): string | undefined {
  const count = STOCKED.exec(said)?.groups?.count;
  return count === undefined ? undefined : `enough have: ${count} boxes`;
}

const LEFT_OUT =
  /^(?:ok |and |so |actually |now )*(?:without|skip|drop|scratch|forget(?: about)?|not doing|we're not doing|were not doing|no) (?:the )?(?<name>[\p{L}\d' -]{1,40}?)(?: then| after all| for now| anymore)?[.!]?$/iu;

/** What is said of a room that is there. */
function changeLine(said: string, { rooms }: InUse, preferences: Preferences): string | undefined {
  const of = (name: string | undefined): boolean => name !== undefined && roomNamed(rooms, name) !== undefined;
  const gone = REMOVE.exec(said)?.groups?.name;
  if (of(gone)) return `project room remove ${gone}`;
  const left = LEFT_OUT.exec(said)?.groups?.name;
  if (of(left)) return `project room ${left} out of scope`;
  const { from, to } = RENAME.exec(said)?.groups ?? {};
  if (of(from)) return `project room rename ${from} to ${to}`;
  const { include, within } = WITHIN.exec(said)?.groups ?? {};
  if (of(include ?? within)) return `project room ${include ?? within} in scope`;
  if (!said.includes('?') && of(FACT.exec(said)?.groups?.name))
    return `project room ${said.replace(/^(?:the|my) /i, '')}`;
  const { name, size } = SIZE.exec(said)?.groups ?? {};
  if (of(name) && isSize(size ?? '', preferences)) return `project room ${name}, size: ${size}`;
  const its = ITS_SIZE.exec(said)?.groups?.size;
  const [only, ...more] = rooms;
  // With one room there is no other that “it” could be.
  if (its !== undefined && only && more.length === 0 && isSize(its, preferences))
    return `project room ${only.name}, size: ${its}`;
  const { before, room } = FLOOR.exec(said)?.groups ?? {};
  return of(room) &&
    /^(?:carpet|laminate|vinyl|sheet vinyl|tile|tiles|lino(?:leum)?|hardwood|wood)$/i.test(before ?? '')
    ? `project room ${room}, floor: ${before}`
    : undefined;
}

/** A plank said to be chosen, or told alone to a project that has no rooms it could be worked out for. */
function pickLine(said: string, { rooms, picks }: InUse, preferences: Preferences): string | undefined {
  const what = PICKED.exec(said)?.groups?.what ?? (rooms.length === 0 && picks.plank === undefined ? said : '');
  return /\d/.test(what) && readPlank(what, { option: 'plank', preferences, note: () => undefined }).ok
    ? `project pick plank: ${what}`
    : undefined;
}

/** Rooms to add; told alone, with their names, they are meant for a project that has no plank to work out. */
function addLine(said: string, { rooms, picks }: InUse, preferences: Preferences): string | undefined {
  const reading = { option: 'room', preferences, note: () => undefined };
  const room = ADD.exec(said)?.groups?.room;
  if (room !== undefined && /\d/.test(room) && readRooms(room, reading).ok) return `project room add ${room}`;
  const unsized = UNSIZED.exec(said)?.groups?.name;
  if (unsized !== undefined && !ASKING.test(unsized)) return `project room add ${unsized}`;
  const plainly = said.replace(/^(?:a|an|another|the|my|our) /i, '');
  const given = /^room (?<room>\p{L}.*)$/iu.exec(said)?.groups?.room;
  if (given !== undefined && (roomAt(given, rooms) || (/\d/.test(given) && !ASKING.test(given))))
    return `project room ${given}`;
  if (picks.plank !== undefined || !/\d/.test(said)) return undefined;
  const { name, size } = SIZE.exec(said)?.groups ?? {};
  if (name !== undefined && NO_NAME.test(name)) return undefined;
  if (name !== undefined && size !== undefined && !/\d/.test(name) && !ASKING.test(name) && isSize(size, preferences))
    return `project room ${name} ${size}`;
  const found = namedRooms(plainly, preferences);
  if (ASKING.test(said.replace(/\b(?:is|are)\b/gi, ' '))) return undefined;
  if (ASKING.test(said)) return found && `project room ${found}`;
  const apart = readRoomsApart(plainly, reading);
  if (!apart.ok || !apart.value.every(({ named, name: of }) => named && !NO_NAME.test(of)))
    return found && `project room ${found}`;
  const plain = readSentence(plainly, preferences);
  return plain.kind === 'nothing' || plain.topic === 'planks' ? `project room ${plainly}` : undefined;
}

const ASKS_FOR =
  /\?|^(?:how|what|which|should|can|is|do|does|are|will|why|when|where|any)\b|\b(?:how (?:many|much)|need|boxes)\b/i;

/** The rooms that a sentence names with their sides, where it says no more: “hall is 4x18 and the bedroom is 12x12”. */
function namedRooms(said: string, preferences: Preferences): string | undefined {
  const { room, plank, size, carton, price, areas } = measured(said, preferences);
  const more = (plank ?? size ?? carton ?? price) !== undefined || areas.length > 0;
  if (ASKS_FOR.test(said)) return undefined;
  return room !== undefined && !more && room.split('; ').every((one) => /^\p{L}/u.test(one)) ? room : undefined;
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

/** How a sentence begins that asks for a wall. */
const ASKS_WALL =
  /^(?:how (?:long|wide) (?:is|are)|what(?:'?s| is) the length of|(?:re)?measure|ask (?:for|about|how long)|(?:i |we )?need (?:(?:the )?(?:length|measurement)s? of|(?:the )?wall)|check|length of|the length of)\b/i;
const WITHDRAWN = /^(?:withdraw|cancel|never ?mind|forget|don't measure|no longer ask(?: for)?) (?=.*\bwall\b)/i;
const TOLD =
  /\bwall\s*(?:no\.?\s*|number\s*|#\s*)?(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b/i;
/** What else of a room is asked for by these words alone. */
const THING = /^(?:(?:re)?measure|ask (?:for|about)) (?=.{3,60} (?:of|in) )/i;

/** Whoever is asked sees it without being named. */
const ASK_SOMEBODY = /^ask (?!for\b|about\b|how\b)\S+ (?:for|about|to measure|how long)\b/i;

/** The line of `project measure` for a sentence; undefined for any other text. */
export function measuringLine(
  typed: string,
  { rooms, measures = EMPTY_MEASURES }: Pick<Project, 'rooms'> & Partial<Pick<Project, 'measures'>>,
  preferences: Preferences,
): string | undefined {
  const said = typed.replace(ASK_SOMEBODY, 'how long is');
  if (measures.open.length > 0 && /^withdraw (?:all|everything)[.!]?$/i.test(said))
    return 'project measure withdraw all';
  const reading = { option: 'do', preferences, note: () => undefined };
  const bare = said.replace(/^(?:it(?:'s| is| measures)|that(?:'s| is)) /i, '').replace(/[.!]$/, '');
  if (measures.open.length > 0 && /^[\d.½¼¾⅛⅜⅝⅞]/.test(bare) && readLength(bare, reading, 'ft').ok)
    return `project measure ${bare}`;
  const names = [...new Set([...rooms.map(({ name }) => name), ...measures.open.map(({ room }) => room)])];
  const read = readMeasurement(said, names);
  if (WITHDRAWN.test(said)) return read.do === 'withdraw' ? `project measure ${said}` : undefined;
  if (!TOLD.test(said)) return THING.test(said) && read.do === 'ask' ? `project measure ${bareAsk(said)}` : undefined;
  if (read.do === 'ask') return ASKS_WALL.test(said) ? `project measure ${bareAsk(said)}` : undefined;
  // What stands in a wall is told with its place, and is no length of it.
  const place = /^(?:the |my )*(?:wall\b|.{1,60}\bwall\s*#?\d)/i.test(said) && read.do === 'tell';
  const length =
    /^\d+,\d+ ?(?:m|cm|mm)$/i.test(place ? read.length : '') || (place && readLength(read.length, reading, 'ft').ok);
  return length ? `project measure ${said}` : undefined;
}

function bareAsk(said: string): string {
  return said.replace(/^(?:re)?measure /i, '').replace(/(?<![?!.])[?!.]+$/, '');
}
