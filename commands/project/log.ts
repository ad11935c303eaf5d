/** `project log`: dated notes of the job. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerLog } from './parts/log.ts';

export default defineCommand({
  group: 'project',
  name: 'log',
  summary: 'Dated notes of the job: add, list, search by word, remove',
  options: z.object({
    do: text(
      {
        summary: '“note found water stain by the bay”, “search stain”, “remove 3”, or list',
        example: 'note found water stain by the bay',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project log note found water stain by the bay', headline: 'Noted, number 1.' },
    { ask: 'project log', headline: 'No notes yet.' },
    { ask: 'project log search stain', headline: '0 notes with stain.' },
  ],
  run: (options, context) => answerLog(options, context),
});
