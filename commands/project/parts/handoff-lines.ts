/** What a summary tells of a project: lines of a label and its items, the gravest and the plainest first. */

import type { Context } from '../../../src/chat/command.ts';
import { sayArea, sayAreasOfSum, sayCut, sayLength } from '../../../src/input/format.ts';
import { hostZone, sayMoment } from '../../../src/input/moment.ts';
import { readRooms } from '../../../src/input/rooms/parse-room.ts';
import { roomTold } from '../../../src/input/rooms/rooms-apart.ts';
import type { Project } from '../../../src/project/project.ts';
import { inScope } from '../../../src/project/project-room.ts';
import type { Caution, Reply } from '../../../src/reply/reply.ts';
import { FOUND } from '../../../src/text/found-text.ts';
import { STAGE_IN } from '../../../src/text/progress-text.ts';
import { HANDOFF, SHORT_CAUTIONS } from '../../../src/text/sheets-text.ts';
import { trimHeadline } from '../../../src/text/trim-text.ts';
import { doubleArea } from '../../../src/units/geometry.ts';
import { ticks } from '../../../src/units/length.ts';
import type { GuidesResult } from '../../floor/floor-guides.ts';
import type { TrimResult } from '../../trim/trim-results.ts';
import { findingsOf } from './found.ts';
import { progressReply } from './progress.ts';
import { roomsProgress } from './progress-say.ts';
import { asksOf, type Here, replyOr } from './sheet-asks.ts';
import { type JobAsk, listAsks } from './shopping-asks.ts';
import { guidesOfFloor } from './shopping-lines.ts';

/** A line of the summary. `never`: it is not left out, whatever the length; the others go from the last on. */
export interface HandoffLine {
  readonly label: string;
  readonly items: readonly string[];
  readonly never?: true;
  /** Of cautions: what each is about. */
  readonly topics?: readonly string[];
}

/** Every line that has something to tell, in the order read. */
export async function handoffLines(here: Here): Promise<readonly HandoffLine[]> {
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
  // Short ones of several topics may say the same.
  const care = new Map(cautions.map((one) => [sayShort(one), one.topic]));
  const lines: readonly HandoffLine[] = [
    { label: labels.call, items: [...new Set([...refused, ...found.calls])], never: true },
    { label: labels.care, items: [...care.keys()], topics: [...care.values()], never: true },
    { label: labels.rooms, items: roomItems(project, context), never: true },
    { label: labels.floor, items: floors.map((reply) => floorItem(reply, context)) },
    { label: labels.found, items: found.told },
    { label: labels.stage, items: [progressReply(project, [], undefined, context).headline.replace(/\.$/, '')] },
    { label: labels.waits, items: waitItems(project, context) },
    { label: labels.tearout, items: tearout.map((one) => tearoutItem(one, tearout.length)) },
    { label: labels.trim, items: trims.map((reply) => trimItem(reply, context)) },
    { label: labels.open, items: listAsks(project, context).untold.map(({ what }) => what) },
    { label: labels.missing, items: [...new Set(here.missing)].map((text) => text.split(':', 1)[0] ?? text) },
    { label: labels.rows, items: floors.flatMap(rowItems) },
  ];
  return lines.filter(({ items }) => items.length > 0);
}

/** The gravest are told of first by the answers that they come from; a refusal is told as what it is. */
function sayShort({ topic, text }: Caution): string {
  return SHORT_CAUTIONS[topic] ?? text;
}

interface Answered {
  readonly ask: JobAsk;
  readonly reply: Reply;
  /** What is refused for safety, and who does it. */
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

/** Which rooms it is about, why nobody here does it, and who does. */
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

function roomItems({ rooms }: Project, { habits }: Context): readonly string[] {
  const reading = { option: 'room', habits, note: () => undefined };
  const areas = inScope(rooms).map((room) => {
    const read = readRooms(roomTold(room), reading);
    const told = read.ok ? read.value.rooms : [];
    return { name: room.name, square: told.reduce((sum, { outline }) => sum + doubleArea(outline), 0n) / 2n };
  });
  const sum = areas.reduce((total, { square }) => total + square, 0n);
  const said = sayAreasOfSum(
    areas.map(({ square }) => square),
    habits,
  );
  return [
    ...(areas.length > 1 ? [HANDOFF.all(sayArea(sum, habits))] : []),
    ...areas.map(({ name }, i) => HANDOFF.room(name, said[i] ?? '')),
  ];
}

function floorItem({ data }: Reply, { habits }: Context): string {
  const { plank, rules, count } = (data as GuidesResult).floor;
  const size = `${sayCut(ticks(plank.width), habits)} × ${sayCut(ticks(plank.length), habits)}`;
  return HANDOFF.floor(size, rules.pattern.name, count.cartons ?? 0, plank.perCarton, count.planks ?? 0);
}

function rowItems({ data }: Reply): readonly string[] {
  const { regions } = (data as GuidesResult).floor;
  return regions.flatMap(({ name, rows }) => (rows.length > 0 ? [HANDOFF.rows(name, rows.length)] : []));
}

/** Sticks and pieces; what they cost is between the asker and the shop. */
function trimItem({ data }: Reply, { habits }: Context): string {
  const { stock, sticks, pieces } = data as TrimResult;
  const bought = stock.flatMap(({ length, have }, i) => {
    const count = sticks.filter((stick) => stick.stock === i).length;
    return have === undefined && count > 0 ? [[count, sayLength(ticks(length), habits)] as const] : [];
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
