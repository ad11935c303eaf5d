/** `project progress`: how far each room is, what blocks the next stage, and waits with their times. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerProgress } from './parts/progress.ts';

export default defineCommand({
  group: 'project',
  name: 'progress',
  summary: 'How far each room is, what the next stage waits for; tick stages off',
  options: z.object({
    do: text(
      {
        summary: '“done tear-out bedroom”, “not flat hall”, “acclimating since Friday 18:00 for 48 h”',
        example: 'done tear-out bedroom',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project progress', headline: '0 of 44 stages done. Next: clear the room in hall.' },
    {
      ask: 'project progress done tear-out bedroom',
      headline: 'bedroom: tear-out done. 1 of 44 stages done. Next: clear the room in hall.',
    },
  ],
  run: (options, context) => answerProgress(options, context),
});
