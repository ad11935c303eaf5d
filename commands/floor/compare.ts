/** `floor compare`: up to five planks for the same rooms, side by side. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { readChoices } from '../../src/input/parse-choices.ts';
import { readPadPrice } from '../../src/input/parse-price.ts';
import { notCompared } from '../../src/text/floor-problems-text.ts';
import { answerCompare } from './parts/compare.ts';
import { layingOptions, roomOption } from './parts/options.ts';

const PAD = {
  summary: 'What a separate pad costs, for planks without one attached',
  example: '$0.45/sq ft',
  standard: 'none',
};

export default defineCommand({
  group: 'floor',
  name: 'compare',
  summary: 'Up to five planks for the same rooms: cartons, waste, cost, cuts',
  options: z.object({
    room: roomOption,
    planks: text(
      {
        summary: 'Two to five planks with ; between them, named if you like',
        example: 'oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton',
        colons: 'any',
      },
      readChoices,
    ),
    pad: text(PAD, readPadPrice),
    ...layingOptions,
  }),
  examples: [
    {
      ask: "compare room: bedroom 11' x 12'6\", planks: oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton, attached pad, pad: $0.45/sq ft",
      headline: 'ash costs least: 8 cartons, $416.00.',
    },
    {
      ask: 'compare room: 3,2 x 4,1 m, planks: 180 x 1220 mm, 8 per carton, LRV 45; 228 x 1524 mm, 6 per carton, LRV 30, premium range',
      headline: 'plank A wastes least: 10.4 %.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? { problems: [notCompared(context.told.get('pattern') ?? pattern.name)] }
      : answerCompare({ ...options, pattern }, context),
});
