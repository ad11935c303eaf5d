/** `project room`: adds, changes and removes the rooms of a project, and what is known of each. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerRoom } from './parts/room-answer.ts';
import { roomOptions } from './parts/room-options.ts';

export default defineCommand({
  group: 'project',
  name: 'room',
  summary: 'Adds or changes a room: its shape, floor, doors, notes, or leaves it as it is',
  options: z.object(roomOptions),
  examples: [
    { ask: `project room study 9'6" x 10'`, headline: `Study added: 9'6" x 10'.` },
    { ask: 'project room bath out of scope', headline: 'Nothing is changed: it was so already.' },
    {
      ask: 'project room bedroom, floor: laminate, doors: 30 in on wall 1',
      headline: 'Bedroom: floor now laminate; bedroom: doors 30 in on wall 1.',
    },
    { ask: 'project room remove closet', headline: 'Closet removed.' },
  ],
  run: (told, context) => answerRoom(told, context),
});
