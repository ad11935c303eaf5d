/** `project mydata`: everything kept of you, to take with you, to bring back, or to have forgotten. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { atDesk } from './parts/at-desk.ts';
import { broughtIn, everything, forgotten } from './parts/mydata.ts';

const NOTHING = 'nothing';

export default defineCommand({
  group: 'project',
  name: 'mydata',
  summary: 'Everything kept of you: to take with you, to bring back, or to have forgotten',
  options: z.object({
    do: choice(['export', 'forget'], { summary: 'export it all, or forget it all', standard: 'export' }),
    import: text(
      { summary: 'What export gave, to bring it back', example: '{}', standard: NOTHING, colons: 'any' },
      (typed) => read(typed),
    ),
    confirm: text(
      { summary: 'The words that “forget” asks for', example: 'forget everything', standard: NOTHING },
      (typed) =>
        read(
          typed
            .trim()
            .toLowerCase()
            .replace(/[.!"“”']/g, ''),
        ),
    ),
  }),
  examples: [
    { ask: 'project mydata', headline: 'Everything kept of you: 2 projects.' },
    {
      ask: 'project mydata forget',
      headline: 'This would delete 2 projects and everything else kept of you, for good. Nothing is deleted yet.',
    },
  ],
  run: (told, context) =>
    atDesk(context, (desk) => {
      if (told.import !== NOTHING) return broughtIn(told.import, desk, context);
      return told.do === 'forget' ? forgotten(told.confirm, desk, context) : everything(desk, context);
    }),
});
