/** `project found`: what was found, room by room, and what it takes, for an insurer or a hired trade. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerFound } from './parts/found.ts';

export default defineCommand({
  group: 'project',
  name: 'found',
  summary: 'What was found, room by room, and what it takes, to show an insurer or a trade',
  options: z.object({
    do: text(
      {
        summary: 'What you found, its size and room: “soft spot 2x3 ft bedroom by window”; list; remove 2',
        example: 'found soft spot 2 x 3 ft bedroom by window',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project found', headline: 'Nothing found is kept yet.' },
    {
      ask: 'project found soft spot 2 x 3 ft bedroom by window',
      headline: 'Kept: soft spot 2 x 3 ft bedroom by window. 1 finding in 1 place.',
    },
  ],
  run: (options, context) => answerFound(options, context),
});
