/** Sheets of a project for tests, put through the whole pipeline. */

import { openAccess } from '../../src/accounts/project-access.ts';
import { emptyContent } from '../../src/project/project.ts';
import { isSheets, type Sheets } from '../../src/reply/job-sheet.ts';
import { ASKER, replyTo } from '../chat/asked.ts';
import { demoPorts, portsInMemory } from '../chat/demo-flat.ts';

const fault = (reference: string, cause: unknown): never => {
  throw new Error(`fault ${reference}`, { cause });
};

/** Those of the demo flat, with trim and doorways picked. */
export async function flatSheets(): Promise<Sheets> {
  const ports = await demoPorts(ASKER, fault);
  await replyTo('project pick list stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98', { ports });
  await replyTo('project pick edges doorways: bath 30 in to tile 1/2 in', { ports });
  return sheetsIn(await replyTo('project sheets', { ports }));
}

/** Those of a project of this name with one room of this name. */
export async function namedSheets(name: string, room: string): Promise<Sheets> {
  const ports = portsInMemory(fault);
  const access = openAccess(ASKER, ports);
  const picks = { plank: '7 x 48 in, 10 per carton' };
  const rooms = [{ name: room, text: `6' x 5'`, notes: [], inScope: true, floor: 'carpet' }];
  await access?.create({ ...emptyContent(name), rooms, picks });
  return sheetsIn(await replyTo('project sheets', { ports }));
}

function sheetsIn({ data }: Awaited<ReturnType<typeof replyTo>>): Sheets {
  if (!isSheets(data)) throw new Error(`no sheets but ${data.kind}`);
  return data;
}
