/** What sheets tell of the work before and after the floor: tear-out, and answers on repairs and finishing. */

import { fullName } from '../../../src/bot/command.ts';
import { parseLine } from '../../../src/bot/grammar.ts';
import { roomIn } from '../../../src/measure/finding.ts';
import { sameName } from '../../../src/project/room.ts';
import type { JobSheet } from '../../../src/reply/job-sheet.ts';
import { REPAIR_TITLES, SHEETS } from '../../../src/words/job-sheet.ts';
import { asksOf, type Here, replyOr } from './sheet-asks.ts';
import { asked } from './shopping-asks.ts';

/** A sheet for each floor that comes out. */
export async function tearoutSheets(here: Here): Promise<readonly JobSheet[]> {
  const asks = asksOf(here, 'prep tearout');
  const sheets: JobSheet[] = [];
  for (const line of asks) {
    const reply = replyOr((await here.ask(line)).outcome, line, here.missing);
    const rooms = roomsTold(line, here);
    const title =
      asks.length > 1 && rooms.length > 0 ? SHEETS.of(SHEETS.titles.tearout, rooms.join(', ')) : SHEETS.titles.tearout;
    if (reply) sheets.push({ key: 'tearout', title, reply });
  }
  return sheets;
}

/** The project's rooms that a line of its list names. */
export function roomsTold(line: string, { project, context }: Here): readonly string[] {
  const told =
    toldIn(line, context)
      .get('room')
      ?.split(/\s*;\s*/) ?? [];
  return project.rooms.map(({ name }) => name).filter((name) => told.some((one) => sameName(one, name)));
}

/** A sheet for each answer on what is mended, measured or finished: of one room those that name it. */
export async function repairSheets(here: Here): Promise<readonly JobSheet[]> {
  const { project, context, wanted } = here;
  const names = project.rooms.map(({ name }) => name);
  const sheets: JobSheet[] = [];
  for (const [name, called] of Object.entries(REPAIR_TITLES)) {
    // A reading of moisture needs nothing from the shop.
    const kept = name === 'prep moisture' ? project.kept.flatMap(({ ask }) => lineOf(ask, name, context)) : [];
    for (const line of new Set([...asksOf(here, name), ...kept])) {
      const rooms = roomsTold(line, here);
      const named = roomIn([...toldIn(line, context).values()].join(' ; '), names);
      const room = rooms.length > 1 ? undefined : (rooms[0] ?? named);
      if (wanted.room !== undefined && (room === undefined || !sameName(room, wanted.room))) continue;
      const reply = replyOr((await here.ask(line)).outcome, line, here.missing);
      const title = room === undefined ? called : SHEETS.of(called, room);
      if (reply) sheets.push({ key: 'repairs', ...(room !== undefined && { room }), title, reply });
    }
  }
  return sheets;
}

/** A kept ask of this command as its line; nothing for one of another. */
function lineOf(ask: string, name: string, { commands, habits }: Here['context']): readonly string[] {
  const parsed = parseLine(ask, commands, habits);
  return parsed.ok && fullName(parsed.command) === name ? [asked(name, parsed.told)] : [];
}

function toldIn(line: string, { commands, habits }: Here['context']): ReadonlyMap<string, string> {
  const parsed = parseLine(line, commands, habits);
  return parsed.ok ? parsed.told : new Map();
}
