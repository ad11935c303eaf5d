/** `project delete`: deletes a project; it can be brought back for a while. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'delete',
  summary: 'Deletes a project; for 30 days it can be brought back',
  options: z.object({ project: projectOption('Which project; the one in use without it') }),
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
