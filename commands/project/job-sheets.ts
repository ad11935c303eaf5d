/** A project's answers gathered as sheets: shopping, tear-out, repairs, checklist, and each room's laying guide and cuts. */

import type { Context, Outcome } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayCut, sayLength, sayNumber } from '../../src/input/format.ts';
import { hostZone } from '../../src/input/moment.ts';
import type { Preferences } from '../../src/input/reading.ts';
import { roomOfArea } from '../../src/input/rooms/rooms-apart.ts';
import type { Tally } from '../../src/project/needs.ts';
import type { Project } from '../../src/project/project.ts';
import type { Signed } from '../../src/project/project-limits.ts';
import { isPast, type RoomProgress, sameName } from '../../src/project/project-room.ts';
import type { Shopping } from '../../src/project/purchases.ts';
import type { Share } from '../../src/project/shares.ts';
import type { JobSheet, SawEnd, SawPiece, SheetKey, Sheets, Tick } from '../../src/reply/job-sheet.ts';
import { type Block, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { SAW } from '../../src/text/drawing-text.ts';
import { isFillNote } from '../../src/text/project-text.ts';
import { REPAIR_TITLES, SHEETS, STAGE_IN } from '../../src/text/sheets-text.ts';
import { SHOPPING, STAGE_NAMES } from '../../src/text/shopping-text.ts';
import { sayTrimCut } from '../../src/text/trim-text.ts';
import { sawMarks } from '../../src/trim/sticks.ts';
import { type Cut, isOutside, kerfAlong } from '../../src/trim/walls.ts';
import { ticks } from '../../src/units/length.ts';
import type { Guide, GuidesResult } from '../floor/floor-guides.ts';
import type { TrimResult } from '../trim/trim-results.ts';
import { progressReply } from './progress.ts';
import { roomsProgress } from './progress-table.ts';
import { answerShopping } from './shopping.ts';
import { sayAmount, sayLeft, typeable } from './shopping-list.ts';
import { asksOnce, guidesOfFloor, type JobAsk, listAsks, listOf, talliesOf } from './shopping-needs.ts';

/** Everything if both are missing. */
export interface Wanted {
  readonly key?: SheetKey;
  readonly room?: string;
}

/** `missing` collects notes on what couldn't be answered. */
export interface Here {
  readonly project: Project;
  readonly wanted: Wanted;
  readonly context: Context;
  readonly missing: string[];
  readonly ask: Context['ask'];
}

/** The requests behind a project's lists that use this command. */
export function asksOf({ project, context }: Here, name: string): readonly JobAsk[] {
  return listAsks(project, context).asks.filter((one) => one.name === name);
}

/** Turns a refusal into a reply, so that it gets read; problems go into `missing`. */
export function replyOr(outcome: Outcome, name: string, missing: string[]): Reply | undefined {
  if ('problems' in outcome) {
    const [{ expected }] = outcome.problems;
    missing.push(SHOPPING.unread(name, expected));
    return undefined;
  }
  if (!('why' in outcome)) return outcome;
  return reply({
    headline: SHEETS.refusal,
    blocks: [
      { kind: 'text', text: outcome.why },
      { kind: 'text', text: SHEETS.call(outcome.call) },
    ],
    cautions: outcome.cautions,
    data: { kind: 'refusal' },
  });
}

/** One sheet per kind of floor that comes out. */
async function tearoutSheets(here: Here): Promise<readonly JobSheet[]> {
  const asks = asksOf(here, 'prep tearout');
  const sheets: JobSheet[] = [];
  for (const { name, line, rooms } of asks) {
    const reply = replyOr((await here.ask(line)).outcome, name, here.missing);
    const title =
      asks.length > 1 && rooms.length > 0 ? SHEETS.of(SHEETS.titles.tearout, rooms.join(', ')) : SHEETS.titles.tearout;
    if (reply) sheets.push({ key: 'tearout', title, reply });
  }
  return sheets;
}

/** One sheet per answer. For a single room, only the answers about that room alone. */
async function repairSheets(here: Here): Promise<readonly JobSheet[]> {
  const sheets: JobSheet[] = [];
  for (const [name, called] of Object.entries(REPAIR_TITLES)) {
    for (const { line, rooms } of asksOf(here, name)) {
      const [room, ...more] = rooms;
      const only = more.length > 0 ? undefined : room;
      if (here.wanted.room !== undefined && (only === undefined || !sameName(only, here.wanted.room))) continue;
      const reply = replyOr((await here.ask(line)).outcome, name, here.missing);
      const title = only === undefined ? called : SHEETS.of(called, only);
      if (reply) sheets.push({ key: 'repairs', ...(only !== undefined && { room: only }), title, reply });
    }
  }
  return sheets;
}

// Trim as it lies on the saw: every piece by stick, with its ends and its mark.

type TrimPiece = TrimResult['pieces'][number];

/** In cutting order. Pieces for doorways have no room. */
export function sticksPieces(trim: TrimResult, decimal: Saying['decimal']): readonly SawPiece[] {
  const saying = { units: trim.units, decimal };
  const byId = new Map(trim.pieces.map((piece) => [piece.id, piece]));
  const marked = new Map(
    trim.pieces.map(({ id, length, left, right }) => {
      const kerf = kerfAlong(trim.kerf, Math.max(left.setting, right.setting));
      return [id, { id, length, kerf }] as const;
    }),
  );
  const glued = new Set(trim.glueUp);
  const counts = new Map<string, number>();
  return trim.sticks
    .flatMap((stick) => {
      // Each profile has sticks of its own, numbered from 1.
      const profile = byId.get(stick.pieces[0] ?? '')?.profile ?? '';
      const no = (counts.get(profile) ?? 0) + 1;
      counts.set(profile, no);
      const from = SAW.stick(no, sayLength(ticks(trim.stock[stick.stock]?.length ?? 0), saying));
      return sawMarks(stick, marked, trim.endTrim).flatMap(({ id, to }): Omit<SawPiece, 'no'>[] => {
        const piece = byId.get(id);
        if (!piece) return [];
        const notes = [SAW.mark(sayCut(to, saying)), ...(glued.has(id) ? [SAW.glue] : [])];
        return [{ ...pieceOf(piece, trim, saying), from, note: notes.join('; ') }];
      });
    })
    .map((piece, i) => ({ no: i + 1, ...piece }));
}

function pieceOf(piece: TrimPiece, trim: TrimResult, saying: Saying): Omit<SawPiece, 'no' | 'from'> {
  const { id, wall, length, profile } = piece;
  const corners = trim.walls.find(({ name }) => name === wall)?.corners ?? [90, 90];
  const space = profile === undefined ? wall.lastIndexOf(' ') : -1;
  return {
    of: 'trim',
    ...(space > 0 && { room: wall.slice(0, space) }),
    place: space > 0 ? SAW.wall(wall.slice(space + 1)) : wall,
    what: profile ?? `${SAW.baseboard} ${id}`,
    length: sayCut(ticks(length), saying),
    ticks: length,
    left: endOf(piece.left, 'left', corners[0], saying),
    right: endOf(piece.right, 'right', corners[1], saying),
  };
}

/** At an inside corner the back is longer, at an outside corner the face. */
function endOf({ cut, setting }: Cut, side: 'left' | 'right', interior: number, saying: Saying): SawEnd {
  const outside = isOutside(interior);
  const said = sayTrimCut(cut, `${sayNumber(setting, saying)}°`, outside);
  if (cut === 'square') return { cut, degrees: 0, said };
  // At a scarf, the left board is longer at its back and the right one at its face, which laps over it: common practice.
  if (cut === 'scarf') return { cut, degrees: setting, long: side === 'right' ? 'back' : 'face', said };
  const corner = outside ? 'outside' : 'inside';
  return { cut: cut === 'miter' ? 'mitre' : cut, degrees: setting, corner, long: outside ? 'face' : 'back', said };
}

/** Without a room, the cuts for doorways and stairs. Pieces are renumbered. */
export function cutsSheet(room: string | undefined, given: readonly SawPiece[]): JobSheet {
  const pieces = given.map((piece, i) => ({ ...piece, no: i + 1 }));
  const title = room === undefined ? SAW.edgesTitle : SAW.title(room);
  return { key: 'cuts', ...(room !== undefined && { room }), title, reply: cutsReply(title, room, pieces), pieces };
}

function cutsReply(title: string, room: string | undefined, pieces: readonly SawPiece[]): Reply {
  const planks = pieces.filter(({ of }) => of === 'plank');
  const trim = pieces.filter(({ of }) => of === 'trim');
  const several = (list: readonly SawPiece[]): number => list.reduce((sum, { count = 1 }) => sum + count, 0);
  return reply({
    headline: SAW.headline(room ?? title, several(planks), several(trim)),
    blocks: [
      { kind: 'steps', title: SAW.steps.title, steps: SAW.steps.items },
      ...(planks.length > 0 ? [plankTable(planks)] : []),
      ...(trim.length > 0 ? [trimTable(trim)] : []),
    ],
    cautions: worded(cautionsFor('cutting')),
    data: { kind: 'cuts', pieces } as Reply['data'],
  });
}

function plankTable(pieces: readonly SawPiece[]): Block {
  return {
    kind: 'table',
    title: SAW.planks,
    columns: SAW.plankColumns,
    rows: pieces.map(({ no, place, what, count = 1, length, width = '', from, note = '' }) => [
      String(no),
      place,
      count > 1 ? SAW.times(count, what) : what,
      length,
      width,
      from,
      note,
    ]),
  };
}

function trimTable(pieces: readonly SawPiece[]): Block {
  return {
    kind: 'table',
    title: SAW.trim,
    columns: SAW.trimColumns,
    rows: pieces.map(({ no, place, what, length, left, right, from, note = '' }) => [
      String(no),
      place,
      what,
      length,
      left.said,
      right.said,
      from,
      note,
    ]),
  };
}

/** An area added to a room is laid separately; `rooms` has the project's own name for its room. */
async function guidesOf(here: Here): Promise<readonly Guide[]> {
  const guides: Guide[] = [];
  for (const { name, line } of asksOf(here, 'floor planks')) {
    const { outcome, line: whole } = await here.ask(guidesOfFloor(line));
    const reply = replyOr(outcome, name, here.missing);
    if (!reply) continue;
    const roomOf = areasOf(whole, here.context);
    for (const guide of (reply.data as GuidesResult).guides) {
      guides.push({ ...guide, rooms: [...new Set(guide.rooms.map((name) => roomOf.get(name) ?? name))] });
    }
  }
  const { room } = here.wanted;
  return room === undefined ? guides : guides.filter(({ rooms }) => rooms.some((name) => sameName(name, room)));
}

/** Leaves out notes on how other rooms were read; their own guides have those. */
function guideSheet({ room, rooms, reply }: Guide, names: readonly string[]): JobSheet {
  const others = names.filter((name) => !rooms.some((own) => sameName(own, name)));
  const assumed = reply.assumed.filter((line) => !others.some((name) => line.startsWith(`${name}:`)));
  return { key: 'guide', room, title: SHEETS.of(SHEETS.titles.guide, room), reply: { ...reply, assumed } };
}

/** With the project's room for each piece; pieces for doorways have none. */
async function trimPieces(here: Here): Promise<readonly SawPiece[]> {
  const pieces: SawPiece[] = [];
  for (const { name, line } of [...asksOf(here, 'trim list'), ...asksOf(here, 'trim edges')]) {
    const { outcome, line: whole } = await here.ask(line);
    const reply = replyOr(outcome, name, here.missing);
    if (!reply) continue;
    const roomOf = areasOf(whole, here.context);
    for (const { room, ...piece } of sticksPieces(reply.data as TrimResult, here.context.preferences.decimal)) {
      pieces.push(room === undefined ? piece : { ...piece, room: roomOf.get(room) ?? room });
    }
  }
  return pieces;
}

/** Maps the areas in a request to the project's rooms. */
function areasOf(line: string, { parse, preferences }: Context): ReadonlyMap<string, string> {
  const given = parse(line)?.optionTexts.get('room') ?? '';
  return roomOfArea(given, { option: 'room', preferences, note: () => undefined });
}

/** One sheet per guide with the trim of its rooms, one per other room with trim, one for the doorways. */
function cutsSheets(
  guides: readonly Guide[],
  trim: readonly SawPiece[],
  only: string | undefined,
): readonly JobSheet[] {
  const left = new Set(trim);
  // When several guides belong to one room, its trim goes with the first.
  const take = (rooms: readonly string[]): readonly SawPiece[] => {
    const own = [...left].filter(({ room }) => room !== undefined && rooms.some((name) => sameName(name, room)));
    for (const piece of own) left.delete(piece);
    return own;
  };
  const laid = guides.map(({ room, rooms, pieces }) => cutsSheet(room, [...pieces, ...take(rooms)]));
  const rooms = [...new Set([...left].flatMap(({ room }) => room ?? []))];
  const others = rooms.filter((room) => only === undefined || sameName(only, room));
  const trimmed = others.map((room) => cutsSheet(room, take([room])));
  const doorways = trim.filter(({ room }) => room === undefined);
  const sheets = [...laid, ...trimmed, ...(only === undefined ? [cutsSheet(undefined, doorways)] : [])];
  return sheets.filter(({ pieces = [] }) => pieces.length > 0);
}

/** What's left to buy and what's been bought. */
function shoppingTicks(tallies: readonly Tally[], shopping: Shopping, preferences: Preferences): readonly Tick[] {
  return tallies
    .filter(({ left, bought }) => left > 0 || bought > 0)
    .map((one) => {
      const ticked = one.left === 0;
      const last = shopping.bought.filter(({ item }) => item === one.item).at(-1);
      const name = typeable(one.label);
      return {
        key: one.item,
        label: ticked ? `${one.label}: ${sayAmount(one, boughtPackages(one), preferences)}` : sayLeft(one, preferences),
        group: STAGE_NAMES[one.stage],
        ticked,
        ...(ticked && last && { at: last.at, ...byOf(last.by) }),
        ask: `project shopping bought all ${name}`,
        undo: `project shopping untick ${name}`,
      };
    });
}

function boughtPackages({ bought, package: sold }: Tally): number {
  return sold ? Math.round(bought / sold.size) : bought;
}

/** By name or number; empty if the owner ticked it. */
function byOf(by: Signed | undefined): Pick<Tick, 'by'> {
  return by ? { by: by.name ?? SHEETS.helper(by.helper) } : {};
}

function stageTicks(rooms: readonly RoomProgress[]): readonly Tick[] {
  return rooms.flatMap(({ room, stages }) =>
    stages.map((one) => {
      const ticked = isPast(one);
      return {
        key: `${room}/${one.stage}`,
        label: STAGE_IN[one.stage],
        group: room,
        ticked,
        ...(ticked && one.mark && { at: one.mark.at, ...byOf(one.mark.by) }),
        ask: `project progress done ${one.stage} ${room}`,
        undo: `project progress undo ${one.stage} ${room}`,
      };
    }),
  );
}

/** Limited to what the user's share covers. */
export async function gatherSheets(project: Project, requested: Wanted, context: Context): Promise<Sheets> {
  const wanted = wantedWithin(requested, await context.access?.share());
  const missing: string[] = [];
  const here = { project, context, missing, ask: await asksOnce(project, context) };
  const sheets = wanted ? await sheetsOf({ ...here, wanted }) : [];
  const data: Sheets = {
    kind: 'sheets',
    project: project.name,
    made: context.now(),
    units: context.preferences.units,
    zone: hostZone(),
    sheets: sheets.map(handedOn),
    // Notes could be about other rooms than the shared one.
    ...(missing.length > 0 && wanted?.room === undefined && { missing: [...new Set(missing)] }),
  };
  return data;
}

/** Undefined if the share covers none of it. */
function wantedWithin({ key, room }: Wanted, share: Share | undefined): Wanted | undefined {
  if (!share) return { ...(key && { key }), ...(room !== undefined && { room }) };
  const given = share.what === 'project' ? key : share.what;
  const where = share.room ?? room;
  if (key !== undefined && key !== given) return undefined;
  if (room !== undefined && where !== undefined && !sameName(room, where)) return undefined;
  return { ...(given && { key: given }), ...(where !== undefined && { room: where }) };
}

async function sheetsOf(here: Here): Promise<readonly JobSheet[]> {
  const { key, room } = here.wanted;
  const wants = (one: SheetKey): boolean => key === undefined || key === one;
  const whole = room === undefined;
  const guides = wants('guide') || wants('cuts') ? await guidesOf(here) : [];
  const names = here.project.rooms.map(({ name }) => name);
  return [
    ...(wants('shopping') && whole ? await shoppingSheet(here) : []),
    ...(wants('tearout') && whole ? await tearoutSheets(here) : []),
    ...(wants('repairs') ? await repairSheets(here) : []),
    ...(wants('checklist') ? checklistSheet(here) : []),
    ...(wants('guide') ? guides.map((guide) => guideSheet(guide, names)) : []),
    ...(wants('cuts') ? cutsSheets(guides, await trimPieces(here), room) : []),
  ];
}

async function shoppingSheet({ project, context, missing }: Here): Promise<readonly JobSheet[]> {
  const outcome = await answerShopping({ do: 'list', by: 'stage' }, context, { handedOn: true });
  const reply = replyOr(outcome, 'project shopping', missing);
  if (!reply) return [];
  const tallies = talliesOf(await listOf(project, context), project);
  const ticks = shoppingTicks(tallies, project.shopping, context.preferences);
  return [{ key: 'shopping', title: SHEETS.titles.shopping, reply, ticks }];
}

function checklistSheet({ project, wanted, context }: Here): readonly JobSheet[] {
  const { room } = wanted;
  const rooms = roomsProgress(project, context.now()).filter((one) => room === undefined || sameName(one.room, room));
  if (rooms.length === 0) return [];
  const names = rooms.map((one) => one.room);
  const reply = progressReply(project, names, undefined, context);
  const title = room === undefined ? SHEETS.titles.checklist : SHEETS.of(SHEETS.titles.checklist, room);
  return [{ key: 'checklist', ...(room !== undefined && { room }), title, reply, ticks: stageTicks(rooms) }];
}

/** For other readers: without what's offered to the user, and without notes on how options were filled in. */
function handedOn(sheet: JobSheet): JobSheet {
  const { needs: _needs, ...reply } = sheet.reply;
  const assumed = reply.assumed.filter((line) => !isFillNote(line));
  return { ...sheet, reply: { ...reply, assumed, actions: [] } };
}
