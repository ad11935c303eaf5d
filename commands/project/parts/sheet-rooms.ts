/** What sheets tell of rooms: laying guides, and cuts with the trim of each room. */

import type { Context } from '../../../src/chat/command.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { roomOfArea } from '../../../src/input/rooms/rooms-apart.ts';
import { sameName } from '../../../src/project/project-room.ts';
import type { JobSheet, SawPiece } from '../../../src/reply/job-sheet.ts';
import { SHEETS } from '../../../src/text/sheets-text.ts';
import type { Guide, GuidesResult } from '../../floor/floor-guides.ts';
import type { TrimResult } from '../../trim/trim-results.ts';
import { sticksPieces } from './saw-trim.ts';
import { asksOf, type Here, replyOr } from './sheet-asks.ts';
import { cutsSheet } from './sheet-cuts.ts';
import { guidesOfFloor } from './shopping-lines.ts';

/** Guides with the project's rooms that they are of: an area joined to a room is laid by itself, and of that room. */
export async function guidesOf(here: Here): Promise<readonly Guide[]> {
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

/** How other rooms were read is for their own guides. */
export function guideSheet({ room, rooms, reply }: Guide, names: readonly string[]): JobSheet {
  const others = names.filter((name) => !rooms.some((own) => sameName(own, name)));
  const assumed = reply.assumed.filter((line) => !others.some((name) => line.startsWith(`${name}:`)));
  return { key: 'guide', room, title: SHEETS.of(SHEETS.titles.guide, room), reply: { ...reply, assumed } };
}

/** Every piece of trim, each with the project's room that it is for; those of doorways have none. */
export async function trimPieces(here: Here): Promise<readonly SawPiece[]> {
  const pieces: SawPiece[] = [];
  for (const { name, line } of [...asksOf(here, 'trim list'), ...asksOf(here, 'trim edges')]) {
    const { outcome, line: whole } = await here.ask(line);
    const reply = replyOr(outcome, name, here.missing);
    if (!reply) continue;
    const roomOf = areasOf(whole, here.context);
    for (const { room, ...piece } of sticksPieces(reply.data as TrimResult, here.context.habits.decimal)) {
      pieces.push(room === undefined ? piece : { ...piece, room: roomOf.get(room) ?? room });
    }
  }
  return pieces;
}

/** The rooms that the areas of an ask are of. */
function areasOf(line: string, { commands, habits }: Context): ReadonlyMap<string, string> {
  const parsed = parseLine(line, commands, habits);
  const told = parsed.ok ? (parsed.told.get('room') ?? '') : '';
  return roomOfArea(told, { option: 'room', habits, note: () => undefined });
}

/** A sheet for each guide with the trim of its rooms, for each other room with trim, and one for the doorways. */
export function cutsSheets(
  guides: readonly Guide[],
  trim: readonly SawPiece[],
  only: string | undefined,
): readonly JobSheet[] {
  const left = new Set(trim);
  // Of several areas of one room the first has its trim.
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
