/** `project keep`: keeps an answer in the project, with its rooms and its plank. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { atDesk } from './parts/at-desk.ts';
import { aboutRoom, keep, unkeep } from './parts/keep.ts';

export default defineCommand({
  group: 'project',
  name: 'keep',
  summary: 'Keeps an answer, with its rooms and plank: the last one, or that of an ask told here',
  options: z.object({
    ask: text(
      {
        summary: 'A whole ask, the last one without it, “remove 2”, “2 in hall”',
        example: 'planks room: 12 x 14 ft',
        standard: 'last',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: 'project keep planks room: den 10 x 12 ft, plank: 6 x 48 in, 10 per carton',
      headline: 'Kept: Buy 7 cartons (70 planks): 60 to lay, 2 for mistakes, 8 left over.',
    },
  ],
  run: ({ ask }, context) =>
    atDesk(context, async (desk) => {
      const [, no, room] =
        /^(?:no\.? ?|number |answer )?(\d{1,3}) (?:is |was )?(?:in|about|of|for) (.{1,80})$/i.exec(ask) ?? [];
      if (no !== undefined && room !== undefined) return aboutRoom(Number(no), room, context);
      const number = /^(?:remove|drop|delete|forget|clear) (?:no\.? ?)?(\d{1,3})$/i.exec(ask)?.[1];
      return number === undefined ? keep(ask, desk, context) : unkeep(Number(number), context);
    }),
});
