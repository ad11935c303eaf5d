/** `trim list`: the sticks of baseboard to buy for the rooms, each piece with its cuts, and saw marks stick by stick. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerList } from './parts/answer.ts';
import { listOptions } from './parts/options.ts';

export default defineCommand({
  group: 'trim',
  name: 'list',
  summary: 'Sticks of baseboard to buy, every piece with its cuts, and saw marks stick by stick',
  options: z.object(listOptions),
  examples: [
    {
      ask: `list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`,
      headline: `Buy 4 sticks (1 × 16', 3 × 12') for 5 pieces: $55.42.`,
    },
    {
      ask: `list room: living walk 12' right 15' right 8' right 6' left 4' right 9' right; closet 3 x 5, doors: 2 doors 32 in, corners: corner 3: 88.5`,
      headline: `Buy 5 sticks (2 × 16', 3 × 12') for 12 pieces.`,
    },
    {
      ask: 'list room: 3,6 x 4,2 m, doors: 800 mm, bay: wall 3: front 1.5 m, sides 0.9 m, stock: 2.4 m 9,90 €; 3.6 m 13,90 €; have 2 x 1.5 m, inside-joint: cope',
      headline: 'Buy 4 sticks (3 × 3.6 m, 1 × 2.4 m) for 10 pieces: €51.60.',
    },
  ],
  run: (options, context) => answerList(options, context),
});
