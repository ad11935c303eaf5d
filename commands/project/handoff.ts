/** `project handoff`: the job for whoever does it next, in one message, or as files to print and to reckon with. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { SHEET_KEYS } from '../../src/reply/job-sheet.ts';
import { answerHandoff } from './parts/handoff.ts';

export default defineCommand({
  group: 'project',
  name: 'handoff',
  summary: 'The job in one message for whoever does it next; or as PDF, CSV, JSON',
  options: z.object({
    as: choice(['text', 'pdf', 'csv', 'json'], { summary: 'One message, or files', standard: 'text' }),
    of: choice(['all', ...SHEET_KEYS], { summary: 'Which sheets', standard: 'all' }),
    room: text({ summary: 'Of which room', example: 'bedroom', standard: 'all' }, (typed) => read(typed.trim())),
    paper: choice(['usual', 'letter', 'a4'], {
      summary: 'Paper of the PDF; usual is what your units go with',
      standard: 'usual',
    }),
  }),
  examples: [
    { ask: 'project handoff', headline: 'Upstairs flat, 21 Nov 2026' },
    { ask: 'project handoff pdf, of: guide, room: bedroom', headline: 'Upstairs flat: 1 file to hand on.' },
  ],
  run: ({ as, of, room, paper }, context) => {
    const wanted = { ...(of !== 'all' && { key: of }), ...(room.toLowerCase() !== 'all' && { room }) };
    return answerHandoff({ as, wanted, ...(paper !== 'usual' && { paper }) }, context);
  },
});
