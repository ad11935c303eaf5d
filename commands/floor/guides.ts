/** `floor guides`: the laying guides of all rooms, so that each sheet can be handed to somebody. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerGuides } from './floor-guides.ts';
import { floorOptions } from './floor-options.ts';
import { answerHerringGuides } from './herringbone-guides.ts';

export default defineCommand({
  group: 'floor',
  name: 'guides',
  summary: 'Laying guides for all your rooms, one per room',
  hidden: true,
  phrases: [
    'print laying guides for all my rooms',
    'can i get the row by row for every room in one go, to tape on the wall',
    'give me the laying sheets for bedroom, hall and office',
    'i want guides for the whole house, one page a room',
    'all the layouts together please',
    'make guides for each room so my brother can lay the hall while i do the den',
    'printable row guides upstairs',
    'guides',
    'need the set of laying guides, three rooms, same plank',
    'put out a guide per room with start lengths and cuts',
    "do the laying guide for every room i've entered",
    'could you print out how to lay each room, biggest first',
    'the laying guides again, i lost the paper in the mess',
    'one sheet for each room showing the rows and offcuts for my saw guy',
    'laying guides for rooms 10x12, 11x13 and 9x14, planks 7x48',
    "i'd like to take room guides out to the garage with me tomorrow",
    'full set of guides',
    'print row guides for bedrooms 1 to 3 but not the hall',
    'let me have guides for the lounge, landing and box room on a4',
    "every room's laying plan at once",
    'guides for the project',
    "my printer's on, send the row plans of all five rooms",
    'get me laying instructions for each room, all of them, in one document',
    'show guide pages for all rooms using the plank i picked',
    "where's the guide for each room",
    'make up the laying guides with planks 1220 by 180, rooms 3x4 and 2.7x3.6 metres',
    'row cheat sheets for the whole downstairs',
    "i need laying guides in order of the rooms we'll do, den then hall then kitchen",
    "batch of guides for 4 rooms so i don't have to do them one by one",
    'guide sheets, large print if you can, for each bedroom',
    'lay guides all rooms with thirds pattern',
    "pages with rows for each room, the helper can't read my scribbles",
    'hang-on-the-wall laying guide for each room',
    'do all my rooms have a guide yet? if not make them',
    'guides to print for the two kids rooms and our room',
    "produce laying guides for everything that isn't laid yet",
    'one laying guide per room, 12x14 living, 10x10 study, 4x13 hall',
    'i want the whole stack of row guides before saturday',
    'print me the guides',
    'give each room its own laying guide with the first row width on top',
  ],
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
