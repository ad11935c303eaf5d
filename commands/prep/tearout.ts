/** `prep tearout`: strips to cut and roll, what comes up, what it weighs, and how it leaves. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerTearout } from './parts/tearout.ts';
import { tearoutOptions } from './parts/tearout-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'tearout',
  summary: 'The old floor out: strips to cut and roll, weight, trips, order of work',
  options: z.object(tearoutOptions),
  examples: [
    {
      ask: 'tearout room: 12x14, built: 1995',
      headline: `Cut 4 strips of 3' x 14', 21 lb a roll: 187 lb in all with its pad, 1 pickup load.`,
    },
    {
      ask: "tearout room: living 14' x 16' + 3x8 bay; bedroom 11' x 12'6\"; closet 3x5; hall 3'6\" x 14', built: 1962, doors: 5 x 30 in, trim: 40 ft x 3 in, insurer: yes, vehicle: container",
      headline: 'Cut 13 strips, no roll over 22 lb: 499 lb in all with its pad, a 10 cu yd container.',
    },
    {
      ask: 'tearout room: 3.8 x 4.2 m, floor: click vinyl plank, built: 2011',
      headline: 'Carry the vinyl plank out in 11 loads of at most 16 kg: 171 kg in all, 1 pickup load.',
    },
    {
      ask: 'tearout room: 5x8, floor: ceramic tile, built: 1990',
      headline: 'Carry the ceramic tile out in 12 loads of at most 35 lb: 400 lb in all, 1 pickup load.',
    },
  ],
  run: (options, context) => answerTearout(options, context),
});
