/** `trim reset`: labels for old baseboards to be set again, and what that costs beside replacing them or adding shoe. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { BREAKS, SHOE, STICKS } from '../../src/figures/trim-figures.ts';
import { length, percent, text } from '../../src/input/options.ts';
import { readStock } from '../../src/input/parse-stock.ts';
import { inches, millimetres } from '../../src/units/length.ts';
import { listOptions } from './parts/options.ts';
import { answerReset } from './parts/reset.ts';

export default defineCommand({
  group: 'trim',
  name: 'reset',
  summary: 'Labels to set old baseboards again, and the cost beside new ones or a shoe',
  options: z.object({
    ...listOptions,
    shoe: text(
      {
        summary: 'Sticks of shoe moulding, as stock',
        example: '8 ft $3.98',
        standard: '8 ft; 12 ft; 16 ft',
        metric: '2.4 m; 3 m; 4.2 m',
        record: STICKS,
      },
      readStock,
    ),
    'shoe-thickness': length({
      summary: 'Thickness of the shoe',
      standard: '1/2 in',
      metric: '12 mm',
      record: SHOE,
      example: '3/4 in',
      least: millimetres(2),
      most: inches(2),
    }),
    breaks: percent({ summary: 'Share of boards that break', standard: '10 %', record: BREAKS, example: '15 %' }),
  }),
  examples: [
    {
      ask: `reset room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 16 ft $15.48, shoe: 8 ft $3.98; 16 ft $6.98`,
      headline: '5 boards to label and set again; reckon with 1 that breaks (1 to 2).',
    },
    {
      ask: `reset room: living 12' x 15'; hall 4' x 11', doors: 32 in on wall 2 of living; 30 in on wall 1 of hall, breaks: 25 %`,
      headline: '10 boards to label and set again; reckon with 3 that break (1 to 3).',
    },
  ],
  run: (options, context) => answerReset(options, context),
});
