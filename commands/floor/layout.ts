/** `floor layout`: the laying guide for one room alone, with its picture. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerHerringbone } from './parts/herringbone.ts';
import { layoutOf } from './parts/one-room.ts';
import { floorOptions } from './parts/options.ts';

export default defineCommand({
  group: 'floor',
  name: 'layout',
  summary: 'The laying guide of one room alone, bigger, with its picture',
  options: z.object({
    ...floorOptions,
    only: text(
      { summary: 'Which room, when several are told: they share offcuts', example: 'bedroom', standard: 'largest' },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: `layout room: bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton, pattern: thirds`,
      headline: 'bedroom: 19 rows, from 64 planks, 38 pieces to cut.',
    },
    {
      ask: "layout room: hall 3'6\" x 14'; bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, only: hall",
      headline: 'hall: 6 rows, from 23 planks, 10 pieces to cut.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? answerHerringbone({ ...options, pattern }, context)
      : layoutOf({ ...options, pattern }, context),
});
