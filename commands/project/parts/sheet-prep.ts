/** What sheets tell of the work before and after the floor: tear-out, and answers on repairs and finishing. */

import { sameName } from '../../../src/project/project-room.ts';
import type { JobSheet } from '../../../src/reply/job-sheet.ts';
import { REPAIR_TITLES, SHEETS } from '../../../src/text/sheets-text.ts';
import { asksOf, type Here, replyOr } from './sheet-asks.ts';

/** A sheet for each floor that comes out. */
export async function tearoutSheets(here: Here): Promise<readonly JobSheet[]> {
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

/** A sheet for each answer on what is mended, measured or finished: of one room those that are about it alone. */
export async function repairSheets(here: Here): Promise<readonly JobSheet[]> {
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
