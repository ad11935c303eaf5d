/** The answer that holds a project's sheets: a table of them in words, the sheets themselves in its data. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import type { Sheets } from '../../../src/reply/job-sheet.ts';
import type { Block, Reply } from '../../../src/reply/reply.ts';
import { SHEETS } from '../../../src/text/sheets-text.ts';
import { projectHere } from './at-desk.ts';
import type { Wanted } from './sheet-asks.ts';
import { gatherSheets } from './sheets.ts';

export async function answerSheets(wanted: Wanted, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  return sheetsReply(await gatherSheets(project, wanted, context), context);
}

/** Sheets as a reply; each caution of them once. */
export function sheetsReply(data: Sheets, context: Context): Reply {
  const { project, sheets, missing = [] } = data;
  const cautions = new Map(sheets.flatMap(({ reply }) => reply.cautions.map((one) => [one.topic, one] as const)));
  const rows = sheets.map(({ title, reply }) => [title, reply.headline]);
  const blocks: readonly Block[] = [
    ...(rows.length > 0 ? [{ kind: 'table', title: SHEETS.title, columns: SHEETS.columns, rows } as const] : []),
    ...(missing.length > 0 ? [{ kind: 'checklist', title: SHEETS.missing, items: missing } as const] : []),
  ];
  return {
    headline: sheets.length > 0 ? SHEETS.headline(project, sheets.length) : SHEETS.none(project),
    blocks,
    assumed: context.assumed,
    cautions: [...cautions.values()],
    sources: [],
    actions: [],
    audience: 'asker',
    data,
  };
}
