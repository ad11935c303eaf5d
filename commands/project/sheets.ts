/** `project sheets`: what a project has to hand on, sheet by sheet, for pages and files to be made of. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { SHEET_KEYS } from '../../src/reply/job-sheet.ts';
import { answerSheets } from './parts/sheets-reply.ts';

export default defineCommand({
  group: 'project',
  name: 'sheets',
  summary: 'What the project has to hand on, sheet by sheet',
  hidden: true,
  options: z.object({
    of: choice(['all', ...SHEET_KEYS], { summary: 'Which sheets', standard: 'all' }),
    room: text({ summary: 'Of which room', example: 'bedroom', standard: 'all' }, (typed) => read(typed.trim())),
  }),
  examples: [
    { ask: 'project sheets', headline: 'Upstairs flat: 13 sheets.' },
    { ask: 'project sheets of: guide, room: bedroom', headline: 'Upstairs flat: 1 sheet.' },
  ],
  run: ({ of, room }, context) =>
    answerSheets({ ...(of !== 'all' && { key: of }), ...(room.toLowerCase() !== 'all' && { room }) }, context),
});
