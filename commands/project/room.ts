/** `project room`: adds, changes and removes the rooms of a project, and what is known of each. */

import { z } from 'zod';
import { defineCommand } from '../../src/bot/command.ts';
import { PROJECT } from '../../src/words/project.ts';
import { SAVED } from '../../src/words/saved.ts';
import { doneOr, inProject, problem } from './parts/at-desk.ts';
import { projectReply, TAKE_BACK } from './parts/reply.ts';
import { roomDeeds, roomSteps, type Steps } from './parts/room-deeds.ts';
import { roomOptions } from './parts/room-options.ts';
import { nextAsks, roomTable } from './parts/shown.ts';

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
  run: (told, context) =>
    inProject(context, async (project, desk) => {
      const deeds = roomDeeds(told, project.rooms);
      if ('problem' in deeds) return problem(deeds.problem);
      const done = await desk.change<Steps>('measure', (before) => {
        const after = roomSteps(before, deeds.deeds, context.habits);
        if ('problem' in after) return { result: after };
        return after.said.length === 0
          ? { result: after }
          : { parts: after.parts, said: after.said.join('; '), result: after };
      });
      return doneOr(context, done, (result, after) => {
        if ('problem' in result) return problem(result.problem);
        const changed = result.said.length > 0;
        const shapes = changed && deeds.deeds.some((deed) => deed.do !== 'fact');
        const [only, ...more] = deeds.deeds;
        const shown =
          only?.do === 'show' && more.length === 0 ? after.rooms.filter(({ name }) => name === only.name) : after.rooms;
        return projectReply(context, {
          headline: changed
            ? PROJECT.done(result.said)
            : deeds.asked
              ? PROJECT.shown(after.name, after.rooms.length, after.rooms.filter((room) => !room.inScope).length)
              : PROJECT.nothingChanged,
          blocks: roomTable(shown),
          assumed: [...result.notes, ...(shapes && after.kept.length > 0 ? [SAVED.stay(after.kept.length)] : [])],
          actions: [...(changed ? [TAKE_BACK] : []), ...nextAsks(after)],
          project: after,
        });
      });
    }),
});
