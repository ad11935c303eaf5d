/** `safety`: the cautions of a task, each with its source. */

import { z } from 'zod';
import { defineCommand } from '../src/bot/command.ts';
import { choice } from '../src/measure/options.ts';
import { cautionsFor } from '../src/trade/safety.ts';
import { worded } from '../src/words/cautions.ts';
import { SAFETY } from '../src/words/safety.ts';

export default defineCommand({
  name: 'safety',
  summary: 'What can hurt you in a task, and what to do about it',
  options: z.object({
    task: choice(['laying', 'tear-out', 'nailing', 'sanding', 'subfloor'], {
      summary: 'laying, tear-out, nailing, sanding or subfloor',
      standard: 'laying',
    }),
  }),
  examples: [
    { ask: 'safety', headline: 'Before laying: 8 things that can hurt you.' },
    { ask: 'safety task: tear-out', headline: 'Before tear-out: 7 things that can hurt you.' },
  ],
  run: ({ task }, { assumed }) => {
    const cautions = worded(cautionsFor(task));
    return {
      headline: SAFETY.headline(task, cautions.length),
      blocks: [{ kind: 'text', text: SAFETY.first }],
      assumed,
      cautions,
      sources: cautions.flatMap(({ source }) => (source ? [source] : [])),
      actions: [],
      audience: 'asker',
      data: { kind: 'safety', task, topics: cautions.map(({ topic }) => topic) },
    };
  },
});
