/** `project sheets`: everything a project has to hand out, sheet by sheet, as the source of pages and files. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { SHEET_KEYS, type Sheets } from '../../src/reply/job-sheet.ts';
import { type Block, type Reply, reply } from '../../src/reply/reply.ts';
import { SHEETS } from '../../src/text/sheets-text.ts';
import { gatherSheets, type Wanted } from './job-sheets.ts';
import { projectHere } from './project-command.ts';

async function answerSheets(wanted: Wanted, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  return sheetsReply(await gatherSheets(project, wanted, context), context);
}

/** Each caution appears once, even if several sheets have it. */
export function sheetsReply(data: Sheets, context: Context): Reply {
  const { project, sheets, missing = [] } = data;
  const cautions = new Map(sheets.flatMap(({ reply }) => reply.cautions.map((one) => [one.topic, one] as const)));
  const rows = sheets.map(({ title, reply }) => [title, reply.headline]);
  const blocks: readonly Block[] = [
    ...(rows.length > 0 ? [{ kind: 'table', title: SHEETS.title, columns: SHEETS.columns, rows } as const] : []),
    ...(missing.length > 0 ? [{ kind: 'checklist', title: SHEETS.missing, items: missing } as const] : []),
  ];
  return reply({
    headline: sheets.length > 0 ? SHEETS.headline(project, sheets.length) : SHEETS.none(project),
    blocks,
    assumed: context.assumed,
    cautions: [...cautions.values()],
    data,
  });
}

export default defineCommand({
  group: 'project',
  name: 'sheets',
  summary: 'Everything the project has to hand out, sheet by sheet',
  hidden: true,
  options: z.object({
    of: choice(['all', ...SHEET_KEYS], { summary: 'Which sheets', standard: 'all' }),
    room: text({ summary: 'For which room', example: 'bedroom', standard: 'all' }, (typed) => read(typed.trim())),
  }),
  examples: [
    { ask: 'project sheets', headline: 'Upstairs flat: 13 sheets.' },
    { ask: 'project sheets of: guide, room: bedroom', headline: 'Upstairs flat: 1 sheet.' },
  ],
  run: ({ of, room }, context) =>
    answerSheets({ ...(of !== 'all' && { key: of }), ...(room.toLowerCase() !== 'all' && { room }) }, context),
});
