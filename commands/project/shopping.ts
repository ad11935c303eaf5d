/** `project shopping`: everything to buy for the whole job, what of it is bought, and what can go back. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerShopping } from './parts/shopping.ts';

export default defineCommand({
  group: 'project',
  name: 'shopping',
  summary: 'Everything to buy for the job; tick off what is bought, opened, returned',
  options: z.object({
    do: text(
      {
        summary: 'list, or what you bought: “10 cartons at $32.50 lot B7”; opened, returned',
        example: 'bought 10 cartons at $32.50 lot B7',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
    by: choice(['stage', 'aisle'], { summary: 'Grouped as the job goes or as the shop does', standard: 'stage' }),
  }),
  examples: [
    {
      ask: 'project shopping',
      headline: '5 things left to buy: $1,415.82 for those with a price, 4 without.',
    },
    {
      ask: 'project shopping bought 4 cartons at $62.50 lot B7',
      headline:
        'Bought: Planks 7" × 48", 4 cartons of 10. 5 things left to buy: $1,146.14 for those with a price, 4 without.',
    },
  ],
  run: (options, context) => answerShopping(options, context),
});
