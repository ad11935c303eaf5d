/** `project archive`: puts a finished project away, whole. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'archive',
  summary: 'Puts a finished project away; nothing of it is lost',
  options: z.object({ project: projectOption('Which project; the one in use without it') }),
  examples: [
    {
      ask: 'project archive Upstairs flat',
      headline: '“Upstairs flat” is archived. It stays as it is; “project use Upstairs flat” takes it out again.',
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
