/** `floor guides`: the laying guides of all rooms, to be handed on sheet by sheet. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerGuides } from './floor-guides.ts';
import { floorOptions } from './floor-options.ts';
import { answerHerringGuides } from './herringbone-guides.ts';

export default defineCommand({
  group: 'floor',
  name: 'guides',
  summary: 'The laying guides of all rooms, each by itself',
  hidden: true,
  options: z.object(floorOptions),
  examples: [
    {
      ask: `guides room: bedroom 11' x 12'6"; closet 3 x 5, plank: 7 x 48 in, 10 per carton, pattern: thirds`,
      headline: 'Laying guides: bedroom, closet.',
    },
    {
      ask: "guides room: den 12' x 10', plank: 3 x 18 in, 24 per carton, no lock, pattern: herringbone, kerf: 1/8 in",
      headline: 'Laying guides: den.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? answerHerringGuides({ ...options, pattern }, context)
      : answerGuides({ ...options, pattern }, context),
});
