/** `prep plan`: the whole job as an ordered checklist, from tear-out to paint. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerPlan } from './parts/plan.ts';
import { planOptions } from './parts/plan-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'plan',
  summary: 'The whole job in order: what must be true first, waiting times, tools, trades',
  options: z.object(planOptions),
  examples: [
    {
      ask: 'plan room: 12x14, built: 1995',
      headline: '7 stages for 168 sq ft: tear-out takes one person 1–4 hours.',
    },
    {
      ask: "plan room: hall 3'6\" x 14'; bedroom 11' x 12'6\", built: 2004, level: yes, acclimate: 48, insurer: yes",
      headline:
        '8 stages for 186.5 sq ft: tear-out takes one person 1 1/2–5 hours, then 72 hours of waiting before the floor.',
    },
  ],
  run: (options, context) => answerPlan(options, context),
});
