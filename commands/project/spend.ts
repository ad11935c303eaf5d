/** `project spend`: what the job has cost and will cost, stage by stage, against its budget, and who pays. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerSpend } from './parts/spend.ts';

export default defineCommand({
  group: 'project',
  name: 'spend',
  summary: 'What the job has cost and will cost, its budget, and who pays',
  options: z.object({
    do: text(
      {
        summary: '“spent $84.20 on adhesive”, “refund $32.50 carton”, “budget $2500”, “insurer pays 25 %”',
        example: 'spent $84.20 on adhesive, insurer',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project spend', headline: 'Spent $0.00, $1,415.82 expected in all.' },
    {
      ask: 'project spend $84.20 on adhesive, insurer',
      headline: 'Spent: $84.20, adhesive (insurer). Spent $84.20, $1,500.02 expected in all.',
    },
    {
      ask: 'project spend budget $2500',
      headline: 'Budget: $2,500.00. Spent $0.00, $1,415.82 expected in all, of a budget of $2,500.00.',
    },
  ],
  run: (options, context) => answerSpend(options, context),
});
