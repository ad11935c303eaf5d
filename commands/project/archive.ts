/** `project archive`: puts away a finished project with everything in it. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'archive',
  summary: 'Put a finished project away; nothing in it is lost',
  phrases: [
    'archive the cabin project',
    "put this project away, we're finished",
    "that job's done so move it out of my list but don't erase it",
    'archive it',
    "close out the rental, i don't need it showing anymore",
    "i finished my mom's floors last month, tuck that project away somewhere",
    'hide the old basement project',
    'mark the whole project as closed and archive it please',
    "shelve the nursery job until the spring when we've got money again",
    'archive project',
    'stop showing me the condo project, keep it though in case of a claim',
    'can you pack away the finished jobs',
    'file the downstairs one away',
    'the tenant backed out so put that project on the shelf for now',
    "we're all done here, archive this",
    'move maple street to the archive',
    'i want it off my active list but i may need the numbers later, so archive',
    'store the old project away',
    'retire the workshop project',
    'put phase one in the archive and leave phase two where it is',
    "how do i archive a project that's finished",
    'archive everything from last year',
    'this house sold, so please archive the project and keep the papers',
    'tidy up, put the finished ones away',
    'set the lake house aside for now',
    "floor's finished, trim's finished, bills are paid, you can archive the project now",
    'archive bungalow please',
    "clear the church basement from my list but don't delete it",
    'can i archive the old one and still look at it when i need the plank numbers',
    'make the office job inactive',
    'close project',
    "i won't touch the garage project again, archive that one",
    'take the old flat off the list and store it, i might rent it out again',
    'archive all completed projects',
    'move this job to done and out of sight please',
    'put it in storage',
    "finished with the in laws' place, close it up and keep it on file",
    'archive den',
    'the upstairs is complete so archive',
    'mothball the cabin until summer',
  ],
  options: z.object({ project: projectOption('Which project; leave it out for the one in use') }),
  examples: [
    {
      ask: 'project archive Upstairs flat',
      headline: '“Upstairs flat” is archived. It stays as it is; “project use Upstairs flat” brings it back.',
    },
  ],
  run: ({ project }, context) =>
    stated(project, context, {
      command: 'archive',
      from: ['active'],
      to: () => ({ kind: 'archived' }),
      said: CHANGED.archived,
      headline: PROJECT.archived,
      actions: (name) => [{ label: NEXT.use(name), ask: `project use ${name}` }],
      use: false,
    }),
});
