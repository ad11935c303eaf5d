/** `project delete`: deletes a project, which can be restored for a while. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'delete',
  summary: 'Delete a project; you can bring it back for 30 days',
  phrases: [
    'delete the cabin project',
    'get rid of this project',
    'i made a test project to try it out and want it gone now',
    'delete project',
    "erase the condo job, we aren't doing it after all",
    "remove the basement project and everything that's in it",
    "trash the rental one, the tenant's paying a contractor instead",
    'delete that project for good',
    "i don't want the old house in here any longer, please delete it",
    'wipe the workshop project',
    'there are two projects called upstairs, delete the empty one',
    'can you delete phase two',
    'throw away the whole nursery job, rooms, notes and all, we moved',
    'delete this job',
    "take the maple street project off completely, don't just hide it",
    'i no longer need bungalow, delete',
    'kill the duplicate i made by accident',
    'how do i permanently get rid of a project that i started by mistake',
    'remove project',
    "please delete the one named test 2, it's only got one room in it",
    'dump the plan b project',
    'the deal on the house fell through so delete the project for it',
    'erase project lake house',
    "my ex's house is still in my list of projects, i'd like that deleted",
    'delete both of the copies',
    'scrap the church basement one',
    "i want the office project removed for good, yes i'm sure about it",
    'delete what i set up for the in laws',
    'we sold the place, drop the whole project and everything you saved under it',
    'clear out that old project',
    'delete it, the project, not just the room',
    'lose the flat project',
    'remove the project i started this morning, i had the wrong house',
    'delete downstairs',
    'get that empty project out of here, i never put anything in it',
    'destroy the old claim project please',
    'delete the archived rental too',
    'i decided to hire it all out, so go ahead and delete my whole project',
    'trash this project',
    'could you delete my first project, the one from january with wrong sizes',
  ],
  options: z.object({ project: projectOption('Which project; leave it out for the one in use') }),
  examples: [
    {
      ask: 'project delete Upstairs flat',
      headline: '“Upstairs flat” is deleted. For 30 days “project restore Upstairs flat” brings it back.',
    },
  ],
  run: ({ project }, context) =>
    stated(project, context, {
      command: 'delete',
      from: ['active', 'archived'],
      to: (now) => ({ kind: 'deleted', at: now }),
      said: CHANGED.deleted,
      headline: (name) => PROJECT.deleted(name, LIMITS.restore),
      actions: (name) => [{ label: NEXT.restore(name), ask: `project restore ${name}` }],
      use: false,
    }),
});
