/** `floor planks`: how many cartons of a plank the rooms need, and how to lay them. */

import { z } from 'zod';
import { defineCommand } from '../../src/bot/command.ts';
import { inches, millimetres, ticks } from '../../src/core/length.ts';
import { count, direction, length, pattern, percent, plank, room } from '../../src/measure/options.ts';
import { answerSurely } from './parts/answer.ts';

const nothing = ticks(0);

export default defineCommand({
  group: 'floor',
  name: 'planks',
  summary: 'Cartons of plank for your rooms, and a laying guide row by row',
  options: z.object({
    room: room({ summary: 'Rooms by their sides, or a walk round the walls; several with ;' }),
    plank: plank({ summary: 'Plank size, how many or what area a carton holds, price if you like' }),
    pattern: pattern({ summary: 'stair-step (step x rows), half, thirds or offcut-first', standard: 'stair-step' }),
    direction: direction({ summary: 'Rows run long, short, or along a wall', standard: 'long' }),
    stagger: length({
      summary: 'Least distance between joints of touching rows',
      standard: '6 in',
      example: '8 in',
      least: nothing,
      most: millimetres(2000),
    }),
    'shortest-end': length({
      summary: 'Shortest start or end piece',
      standard: '8 in',
      example: '10 in',
      least: nothing,
      most: millimetres(2000),
    }),
    'narrowest-strip': length({
      summary: 'Narrowest strip along a wall that runs with the rows',
      standard: '2 in',
      example: '3 in',
      least: nothing,
      most: millimetres(500),
    }),
    gap: length({
      summary: 'Gap at every wall',
      standard: '1/4 in',
      example: '3/8 in',
      least: nothing,
      most: inches(4),
    }),
    kerf: length({
      summary: 'What a cut takes: 0 for score and snap, 1/8 in for a saw',
      standard: '0',
      example: '1/8 in',
      least: nothing,
      most: inches(0.5),
    }),
    mistakes: percent({ summary: 'Planks on top for mistakes', standard: '3 %' }),
    spares: count({ summary: 'Planks on top to keep for repairs', standard: '0', least: 0, most: 1000 }),
    doubt: length({
      summary: 'How far off a wall may be, for “how sure?”',
      standard: '1/2 in',
      example: '1 in',
      least: inches(0.125),
      most: inches(12),
    }),
    tax: percent({ summary: 'Sales tax on the cartons', standard: '0 %', example: '8.25 %' }),
  }),
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
  ],
  run: (options, context) => answerSurely(options, context),
});
