/** `project restore`: brings back a deleted project. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'restore',
  summary: 'Bring back a project you deleted in the last 30 days',
  phrases: [
    'bring back the project i deleted',
    'restore cabin',
    'i archived the rental last month and need it open again',
    'unarchive the basement',
    "we're starting the upstairs again after all, so pull it out of the archive",
    'undelete the project',
    'can i get the condo job back, i deleted it by mistake last night',
    'restore my old project',
    'bring the nursery one out of storage',
    'is the project i threw away on tuesday gone for good or can you restore it',
    'reopen maple street',
    'put the lake house project back on my list please',
    'get back the one i deleted',
    'i need something from the archived church basement project, restore it for me',
    'restore project',
    'take phase one out of the archive, the inspector wants to see the numbers',
    'recover the workshop',
    'my helper deleted the whole project by accident, please bring it back to life',
    "reactivate the in laws' house",
    "spring's here, so let's get the cabin job back from where you put it away",
    'make the old project active again',
    'restore the deleted rental and all of its notes',
    'how long do i have to get a deleted project back',
    'i want to un archive bungalow',
    'that project you put away for me, i want it again, the one with four bedrooms',
    'return the office project to the list',
    'restore it, i changed my mind about deleting',
    'can you recover a project that was deleted about a week ago',
    'open the archived flat',
    'bring downstairs back',
    'please restore the project from before christmas, the tenant came back with the money',
    'undo the archive on the garage one',
    'pull den out of the archive',
    'i wiped out the wrong project, it should have been test, restore the real one',
    'restore archived',
    "get my mom's house project back where i can work on it again",
    "retrieve the project we archived in june, the plank's on sale again",
    'put back the deleted job',
    'can the deleted one be saved',
    'revive the kitchen project, new contractor, same rooms as before',
  ],
  options: z.object({ project: projectOption('Which project; leave it out if you deleted only one') }),
  examples: [
    {
      ask: 'project restore Old house',
      headline: '“Old house” is back. Your questions now use its rooms and choices.',
    },
  ],
  run: ({ project }, context) =>
    stated(project, context, {
      command: 'restore',
      from: ['deleted'],
      to: () => ({ kind: 'active' }),
      said: CHANGED.restored,
      headline: PROJECT.restored,
      actions: () => [{ label: NEXT.show, ask: 'project show' }],
      use: true,
    }),
});
