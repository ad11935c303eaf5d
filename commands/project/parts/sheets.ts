/** A project's answers gathered as sheets: shopping, tear-out, repairs, checklist, and for each room its laying guide and its cuts. */

import type { Context } from '../../../src/chat/command.ts';
import { hostZone } from '../../../src/input/moment.ts';
import type { Project } from '../../../src/project/project.ts';
import { sameName } from '../../../src/project/project-room.ts';
import type { Share } from '../../../src/project/shares.ts';
import type { JobSheet, SheetKey, Sheets } from '../../../src/reply/job-sheet.ts';
import { isFillNote } from '../../../src/text/project-text.ts';
import { SHEETS } from '../../../src/text/sheets-text.ts';
import { asksOnce } from './asked-once.ts';
import { progressReply } from './progress.ts';
import { roomsProgress } from './progress-say.ts';
import { type Here, replyOr, type Wanted } from './sheet-asks.ts';
import { repairSheets, tearoutSheets } from './sheet-prep.ts';
import { cutsSheets, guideSheet, guidesOf, trimPieces } from './sheet-rooms.ts';
import { shoppingTicks, stageTicks } from './sheet-ticks.ts';
import { answerShopping } from './shopping.ts';
import { listOf, talliesOf } from './shopping-lines.ts';

/** Asks what is wanted, as the asker would; of what a helper was given, no more than that. */
export async function gatherSheets(project: Project, asked: Wanted, context: Context): Promise<Sheets> {
  const wanted = wantedWithin(asked, await context.desk?.share());
  const missing: string[] = [];
  const here = { project, context, missing, ask: await asksOnce(project, context) };
  const sheets = wanted ? await sheetsOf({ ...here, wanted }) : [];
  const data: Sheets = {
    kind: 'sheets',
    project: project.name,
    made: context.now(),
    units: context.habits.units,
    zone: hostZone(),
    sheets: sheets.map(handedOn),
    // What could not be worked out may be of other rooms than the one that was shared.
    ...(missing.length > 0 && wanted?.room === undefined && { missing: [...new Set(missing)] }),
  };
  return data;
}

/** What is wanted of what was shared; undefined where that is nothing. */
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
  const ticks = shoppingTicks(tallies, project.shopping, context.habits);
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

/** A sheet as others read it: without what is offered to the asker, and without where the ask was filled from. */
function handedOn(sheet: JobSheet): JobSheet {
  const { needs: _needs, ...reply } = sheet.reply;
  const assumed = reply.assumed.filter((line) => !isFillNote(line));
  return { ...sheet, reply: { ...reply, assumed, actions: [] } };
}
