/** `project handoff`: the job for whoever does it next, in one message or as files to print or to compute with. */

import { closest } from 'fastest-levenshtein';
import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { filesOf } from '../../src/chat/files.ts';
import { drawable } from '../../src/drawing/text.ts';
import { sayArea, sayAreasOfSum, sayCut, sayLength } from '../../src/input/format.ts';
import { hostZone, sayDate, sayMoment } from '../../src/input/moment.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { roomGiven } from '../../src/input/rooms/rooms-apart.ts';
import type { Project } from '../../src/project/project.ts';
import { inScope, sameName } from '../../src/project/project-room.ts';
import { isSharedPart } from '../../src/project/share-scope.ts';
import { SHEET_KEYS } from '../../src/reply/job-sheet.ts';
import { type Action, type Caution, type FileForm, type Reply, type Result, reply } from '../../src/reply/reply.ts';
import { noSuchRoom } from '../../src/text/floor-problems-text.ts';
import { FOUND } from '../../src/text/found-text.ts';
import { HANDOFF, SHORT_CAUTIONS, STAGE_IN } from '../../src/text/sheets-text.ts';
import { trimHeadline } from '../../src/text/trim-text.ts';
import { doubleArea } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';
import type { GuidesResult } from '../floor/floor-guides.ts';
import type { TrimResult } from '../trim/trim-results.ts';
import { findingsOf } from './found.ts';
import { asksOf, gatherSheets, type Here, replyOr, type Wanted } from './job-sheets.ts';
import { progressReply } from './progress.ts';
import { roomsProgress } from './progress-table.ts';
import { projectHere } from './project-command.ts';
import { sheetsReply } from './sheets.ts';
import { asksOnce, guidesOfFloor, type JobAsk, listAsks } from './shopping-needs.ts';

// The most serious lines come first.

/** Lines with `never` stay however long the message gets; of the others, the last go first. */
interface HandoffLine {
  readonly label: string;
  readonly items: readonly string[];
  readonly never?: true;
  /** For cautions: the topic of each. */
  readonly topics?: readonly string[];
}

/** In reading order, without empty lines. */
async function handoffLines(here: Here): Promise<readonly HandoffLine[]> {
  const { labels } = HANDOFF;
  const { project, context } = here;
  const found = await findingsOf(project, context);
  const refused: string[] = [];
  const replies = async (name: string): Promise<readonly Answered[]> => {
    const all = await answersTo(here, name);
    const [not, done] = [all.filter(isRefused), all.filter((one) => !isRefused(one))];
    refused.push(...not.map(refusal));
    return done;
  };
  const tearout = await replies('prep tearout');
  const floors = (await replies('floor planks')).map(({ reply }) => reply);
  const trims = [...(await replies('trim list')), ...(await replies('trim edges'))].map(({ reply }) => reply);
  const cautions = [
    ...found.cautions,
    ...[...tearout.map(({ reply }) => reply), ...floors, ...trims].flatMap((reply) => reply.cautions),
  ];
  // The short cautions for several topics can be the same.
  const care = new Map(cautions.map((one) => [sayShort(one), one.topic]));
  const lines: readonly HandoffLine[] = [
    { label: labels.call, items: [...new Set([...refused, ...found.calls])], never: true },
    { label: labels.care, items: [...care.keys()], topics: [...care.values()], never: true },
    { label: labels.rooms, items: roomItems(project, context), never: true },
    { label: labels.floor, items: floors.map((reply) => floorItem(reply, context)) },
    { label: labels.found, items: found.given },
    { label: labels.stage, items: [progressReply(project, [], undefined, context).headline.replace(/\.$/, '')] },
    { label: labels.waits, items: waitItems(project, context) },
    { label: labels.tearout, items: tearout.map((one) => tearoutItem(one, tearout.length)) },
    { label: labels.trim, items: trims.map((reply) => trimItem(reply, context)) },
    { label: labels.open, items: listAsks(project, context).notGiven.map(({ what }) => what) },
    { label: labels.missing, items: [...new Set(here.missing)].map((text) => text.split(':', 1)[0] ?? text) },
    { label: labels.rows, items: floors.flatMap(rowItems) },
  ];
  return lines.filter(({ items }) => items.length > 0);
}

/** The answers put the most serious caution first. */
function sayShort({ topic, text }: Caution): string {
  return SHORT_CAUTIONS[topic] ?? text;
}

interface Answered {
  readonly ask: JobAsk;
  readonly reply: Reply;
  /** Set where the work is refused for safety. */
  readonly refused?: { readonly why: string; readonly call: string };
}

async function answersTo(here: Here, name: string): Promise<readonly Answered[]> {
  const answers: Answered[] = [];
  for (const ask of asksOf(here, name)) {
    const { outcome } = await here.ask(guidesOfFloor(ask.line));
    const reply = replyOr(outcome, name, here.missing);
    if (reply) answers.push({ ask, reply, ...('why' in outcome && { refused: outcome }) });
  }
  return answers;
}

function isRefused({ refused }: Answered): boolean {
  return refused !== undefined;
}

/** Names the rooms, the reason, and who does it instead. */
function refusal({ ask: { name, rooms }, refused }: Answered): string {
  return FOUND.call(rooms.length === 0 ? name : rooms.join(', '), refused?.why ?? '', refused?.call ?? '').replace(
    /\.$/,
    '',
  );
}

function tearoutItem({ ask, reply }: Answered, of: number): string {
  const rooms = of > 1 ? ask.rooms : [];
  const said = reply.headline.replace(/\.$/, '');
  return rooms.length > 0 ? `${rooms.join(', ')}: ${said}` : said;
}

function roomItems({ rooms }: Project, { preferences }: Context): readonly string[] {
  const reading = { option: 'room', preferences, note: () => undefined };
  const areas = inScope(rooms).map((room) => {
    const read = readRooms(roomGiven(room), reading);
    const given = read.ok ? read.value.rooms : [];
    return { name: room.name, square: given.reduce((sum, { outline }) => sum + doubleArea(outline), 0n) / 2n };
  });
  const sum = areas.reduce((total, { square }) => total + square, 0n);
  const said = sayAreasOfSum(
    areas.map(({ square }) => square),
    preferences,
  );
  return [
    ...(areas.length > 1 ? [HANDOFF.all(sayArea(sum, preferences))] : []),
    ...areas.map(({ name }, i) => HANDOFF.room(name, said[i] ?? '')),
  ];
}

function floorItem({ data }: Reply, { preferences }: Context): string {
  const { plank, rules, count } = (data as GuidesResult).floor;
  const size = `${sayCut(ticks(plank.width), preferences)} × ${sayCut(ticks(plank.length), preferences)}`;
  return HANDOFF.floor(size, rules.pattern.name, count.cartons ?? 0, plank.perCarton, count.planks ?? 0);
}

function rowItems({ data }: Reply): readonly string[] {
  const { regions } = (data as GuidesResult).floor;
  return regions.flatMap(({ name, rows }) => (rows.length > 0 ? [HANDOFF.rows(name, rows.length)] : []));
}

/** Leaves out the cost, which is between the user and the store. */
function trimItem({ data }: Reply, { preferences }: Context): string {
  const { stock, sticks, pieces } = data as TrimResult;
  const bought = stock.flatMap(({ length, have }, i) => {
    const count = sticks.filter((stick) => stick.stock === i).length;
    return have === undefined && count > 0 ? [[count, sayLength(ticks(length), preferences)] as const] : [];
  });
  return trimHeadline(bought, pieces.length, undefined).replace(/\.$/, '');
}

function waitItems(project: Project, context: Context): readonly string[] {
  const zone = hostZone();
  return roomsProgress(project, context.now()).flatMap(({ room, stages }) =>
    stages.flatMap(({ stage, state, mark }) =>
      state === 'waiting' && mark?.until !== undefined
        ? [HANDOFF.wait(room, STAGE_IN[stage], sayMoment(mark.until, zone))]
        : [],
    ),
  );
}

// Whole lines are dropped to fit one message, the least important first, and the summary says which.

/** Characters in a plain Discord message, the strictest of the platforms. */
export const ONE_MESSAGE = 2000;

/** Drops whole lines, then shortens lists; a figure is never cut. */
export function fitted(title: string, lines: readonly HandoffLine[]): readonly HandoffLine[] {
  let all = lines;
  let kept = chosen(title, all);
  while (textOf(title, kept).length > ONE_MESSAGE) {
    const shorter = shortened(all);
    if (!shorter) break;
    all = shorter;
    kept = chosen(title, all);
  }
  return kept;
}

/** Goes through the optional lines in order and keeps each one that still fits. */
function chosen(title: string, lines: readonly HandoffLine[]): readonly HandoffLine[] {
  const kept = new Set(lines.filter(({ never }) => never));
  const withLeft = (): readonly HandoffLine[] => {
    const left = lines.filter((line) => !kept.has(line)).map(({ label }) => label);
    const given = lines.filter((line) => kept.has(line));
    return left.length === 0 ? given : [...given, { label: HANDOFF.labels.left, items: left }];
  };
  for (const line of lines) {
    if (kept.has(line)) continue;
    kept.add(line);
    // Later lines may have to go, so their labels need room too.
    if (textOf(title, withLeft()).length > ONE_MESSAGE) kept.delete(line);
  }
  return withLeft();
}

export function textOf(title: string, lines: readonly HandoffLine[]): string {
  return [title, ...lines.map((line) => `${line.label}: ${itemsOf(line)}`)].join('\n');
}

function itemsOf({ items }: HandoffLine): string {
  return items.join('; ');
}

/** Shortens the list of rooms first, because losing a room hurts nobody, and then the list of whom to call. */
function shortened(lines: readonly HandoffLine[]): readonly HandoffLine[] | undefined {
  const labels: readonly string[] = [HANDOFF.labels.rooms, HANDOFF.labels.call];
  const long = labels.flatMap((label) => lines.filter((line) => line.label === label && line.items.length > 2))[0];
  if (!long) return undefined;
  const [last = ''] = long.items.slice(-1);
  const before = /^and (\d+) more/.exec(last);
  const count = before ? Number(before[1]) + 1 : 2;
  const more = long.label === HANDOFF.labels.call ? HANDOFF.moreCalls(count) : HANDOFF.more(count);
  return lines.map((line) => (line === long ? { ...long, items: [...long.items.slice(0, -2), more] } : line));
}

interface HandoffAsk {
  readonly as: 'text' | FileForm['form'];
  readonly wanted: Wanted;
  readonly paper?: 'letter' | 'a4';
}

/** The summary as plain text. */
interface HandoffResult extends Result {
  readonly kind: 'handoff';
  readonly text: string;
}

const ACTIONS: readonly Action[] = [
  { label: HANDOFF.actions.pdf, ask: 'project handoff as: pdf' },
  { label: HANDOFF.actions.csv, ask: 'project handoff as: csv' },
  { label: HANDOFF.actions.share, ask: 'project share' },
];

async function answerHandoff({ as, wanted, paper }: HandoffAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  // Somebody with a share of one part gets that part, not a summary of everything.
  const part = isSharedPart(await context.access?.share());
  const names = project.rooms.map(({ name }) => name);
  const { room } = wanted;
  if (!part && room !== undefined && names.length > 0 && !names.some((name) => sameName(name, room))) {
    return { problems: [{ ...noSuchRoom(room, names, closest(room, names)), option: 'room' }] };
  }
  const all = wanted.key === undefined && wanted.room === undefined;
  if (as === 'text' && all && !part) {
    const here = { project, wanted, context, missing: [], ask: await asksOnce(project, context) };
    const title = HANDOFF.title(project.name, sayDate(context.now(), hostZone()));
    const lines = fitted(title, await handoffLines(here));
    const given = lines.filter(({ topics }) => topics === undefined);
    const cautions = lines.flatMap(({ items, topics = [] }) =>
      topics.map((topic, i) => ({ topic, text: items[i] ?? topic })),
    );
    const data: HandoffResult = { kind: 'handoff', text: textOf(title, lines) };
    return reply({
      headline: title,
      lines: [],
      opens: 'list',
      blocks: [
        { kind: 'facts', section: 'list', facts: given.map((line) => ({ label: line.label, value: itemsOf(line) })) },
      ],
      assumed: context.assumed,
      cautions,
      actions: ACTIONS,
      data,
    });
  }
  const gathered = await gatherSheets(project, wanted, context);
  const sheets = sheetsReply(gathered, context);
  if (as === 'text') return sheets;
  const boxed = as === 'pdf' && [project.name, ...project.rooms.map(({ name }) => name)].some(isBoxed);
  const given = boxed ? { ...sheets, assumed: [...sheets.assumed, HANDOFF.boxed] } : sheets;
  return withFiles(given, filesOf(gathered, as, paper), project.name);
}

/** Whether the PDF's font lacks some of its letters. */
function isBoxed(name: string): boolean {
  return !name.includes('□') && drawable(name).includes('□');
}

function withFiles(reply: Reply, files: NonNullable<Reply['files']>, project: string): Reply {
  const headline = files.length > 0 ? HANDOFF.files(project, files.length) : HANDOFF.noFiles(project);
  return { ...reply, headline, files };
}

export default defineCommand({
  group: 'project',
  name: 'handoff',
  summary: 'The job in one message for whoever works on it next, or as PDF, CSV or JSON',
  phrases: [
    'print the job sheet',
    'give me a pdf of the plan',
    'one page summary for the installer',
    'export as csv',
    'write it all up for my helper',
    'job sheet to print',
    'download the cut list',
    'summary for whoever does the trim',
    'hand off the job to my cousin',
    'can i get this as a file',
    'make a sheet for the guy who lays it',
    'export the project',
    'print labels and cut list',
    'a paper version for the garage',
    'json of my project',
    'summary of the job in one message',
    'printable plan for bedroom',
    'pdf please',
    'sheet for the saw',
    'send me the drawing as a file',
    'make a pdf of the plan for my contractor',
    'print job sheets',
    "i need papers for the guy who's helping me saturday",
    'export everything as files',
    'can you give me a cut sheet to hand to my helper',
    'put the whole job into one document i can email the installer',
    'csv of the shopping and cuts please',
    'download my plan',
    'a one page summary for the handyman',
    "hand this over to my brother in law, he's doing the trim",
    'files for the contractor',
    'i want a printout of all of it for the folder',
    'get me the pdf',
    "write up the job for whoever takes over, rooms, plank, what's left",
    'sheet for the guy on the saw with only cuts on it',
    'send the paperwork for bedroom and hall',
    'packet for my landlord with sizes and materials',
    'give me something on paper i can tape to the wall of the garage',
    'save as pdf',
    'could i have a drawing of the rooms as a file',
    'adjuster wants documents, can you make a report of the job',
    'job sheet for the tearout crew',
    "i'm hiring out the subfloor, what can i give him in writing",
    'export',
    'turn my project into a printable',
    'labels and cut lists on paper for each room',
    'spreadsheet version',
    'work order for the fitter, lounge and hall only',
    'the fitter is polish and likes pictures, make him a sheet with drawings',
    'need a file i can open at work',
    'produce the handoff papers',
    "bundle up the plan for my dad, he doesn't do chat",
    'printed sheet with the rooms and the plank info for the store',
    'zip of all the sheets',
    "document the job for the next guy, i'm leaving town thursday",
    'can i get this in a file rather than chat',
    'json export',
    'make the trim carpenter a list with lengths and doors',
    'hard copy of measurements and layout please',
    'summary document for my wife to bring to the store',
  ],
  options: z.object({
    as: choice(['text', 'pdf', 'csv', 'json'], { summary: 'One message, or files', standard: 'text' }),
    of: choice(['all', ...SHEET_KEYS], { summary: 'Which sheets', standard: 'all' }),
    room: text({ summary: 'For which room', example: 'bedroom', standard: 'all' }, (typed) => read(typed.trim())),
    paper: choice(['usual', 'letter', 'a4'], {
      summary: 'Paper size of the PDF; “usual” goes by your units',
      standard: 'usual',
    }),
  }),
  examples: [
    { ask: 'project handoff', headline: 'Upstairs flat, 21 Nov 2026' },
    { ask: 'project handoff pdf, of: guide, room: bedroom', headline: 'Upstairs flat: 1 file to hand out.' },
  ],
  run: ({ as, of, room, paper }, context) => {
    const wanted = { ...(of !== 'all' && { key: of }), ...(room.toLowerCase() !== 'all' && { room }) };
    return answerHandoff({ as, wanted, ...(paper !== 'usual' && { paper }) }, context);
  },
});
