/** `floor planks`: how many cartons of a plank the rooms need, and how to lay them. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerSurely } from './parts/answer.ts';
import { answerHerringbone } from './parts/herringbone.ts';
import { floorOptions } from './parts/options.ts';

export default defineCommand({
  group: 'floor',
  name: 'planks',
  summary: 'Cartons of plank for your rooms, and a laying guide row by row',
  options: z.object(floorOptions),
  examples: [
    {
      ask: `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`,
      headline: 'Buy 10 cartons (100 planks): 92 to lay, 3 for mistakes, 5 left over.',
    },
    {
      ask: 'planks room: living 12x14 + 3x6 closet; hall 3 x 11, plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft, tax: 8 %',
      headline: 'Buy 12 cartons (120 planks): 107 to lay, 4 for mistakes, 9 left over. $873.76 with $64.72 tax.',
    },
    {
      ask: 'planks room: 3,8 x 4,2 m, plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton, pattern: thirds',
      headline: 'Buy 11 cartons (88 planks): 81 to lay, 3 for mistakes, 4 left over. €350.90.',
    },
    {
      ask: `planks room: bay walk 12' right 10' right 5' left 4' right 7' right, plank: 6 x 36 in, 12 per carton, kerf: 1/8 in, pattern: offcut-first`,
      headline: 'Buy 9 cartons (108 planks): 99 to lay, 3 for mistakes, 6 left over.',
    },
    {
      ask: "planks room: living 14' x 12' with a bay 8' x 2', plank: 7 x 48 in, 10 per carton, pattern: half",
      headline: 'Buy 9 cartons (90 planks): 79 to lay, 3 for mistakes, 8 left over.',
    },
    {
      ask: "planks room: den walk 10' right 10' right diagonal 2' x 2' 8' right 12' right, plank: 7 x 48 in, 10 per carton, direction: diagonal, pattern: thirds",
      headline: 'Buy 6 cartons (60 planks): 53 to lay, 2 for mistakes, 5 left over.',
    },
    {
      ask: "planks room: hall 3'6\" x 14'; bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, doorways: hall to bedroom 32 in, 18 in from the left corner of wall 4, 12 in from the right of wall 2 of bedroom, runs on",
      headline: 'Buy 10 cartons (100 planks): 90 to lay, 3 for mistakes, 7 left over.',
    },
    {
      ask: "planks room: living 13' x 15', plank: 7 x 48 in, 10 per carton, holes: hearth 5 x 1.5 ft at wall 3, 4' from left; post 4x4 in, 6' from left, 5' from bottom",
      headline: 'Buy 10 cartons (100 planks): 88 to lay, 3 for mistakes, 9 left over.',
    },
    {
      ask: "planks room: den 12' x 10', plank: 3 x 18 in, 24 per carton, no lock, pattern: herringbone with a border of 1, kerf: 1/8 in",
      headline: 'Buy 15 cartons (360 boards): 330 to lay, 10 for mistakes, 20 left over.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? answerHerringbone({ ...options, pattern }, context)
      : answerSurely({ ...options, pattern }, context),
});
