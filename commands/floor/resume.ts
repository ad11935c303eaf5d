/** `floor resume`: the rest of a floor begun, from the planks and offcuts that are really there. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { readSoFar } from '../../src/language/old/so-far.ts';
import { notResumed } from '../../src/text/floor-problems-text.ts';
import { floorOptions, layingOptions } from './parts/options.ts';
import { resumed } from './parts/resume.ts';

const { room, plank } = floorOptions;

export default defineCommand({
  group: 'floor',
  name: 'resume',
  summary: 'Go on with a floor begun: do the planks and offcuts left suffice, and how',
  options: z.object({
    room,
    plank,
    'so-far': text(
      {
        summary: 'How far it is laid, what broke, planks and offcuts left',
        example: 'row 7 ended at 31 1/4 in, broke one, 22 planks left, offcuts: 18 in left, 31 in right',
        colons: 'any',
      },
      readSoFar,
    ),
    ...layingOptions,
  }),
  examples: [
    {
      ask: "resume room: bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, so-far: row 12 ended at 31 1/4 in, broke one, 33 planks left, offcuts: 18 in left, 31 in right",
      headline: 'Yes: 33 planks and 2 offcuts lay the rest, 10 planks to spare.',
    },
    {
      ask: "resume room: bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, so-far: 12 rows done, 20 planks left",
      headline: 'Not enough: 2 planks short. Buy 1 carton more.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? { problems: [notResumed(context.told.get('pattern') ?? pattern.name)] }
      : resumed({ ...options, pattern }, context),
});
