/** `project restore`: brings a deleted project back. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectOption } from './project-command.ts';
import { stated } from './project-state.ts';

export default defineCommand({
  group: 'project',
  name: 'restore',
  summary: 'Brings back a project that you deleted in the last 30 days',
  options: z.object({ project: projectOption('Which project; the one deleted where there is only one') }),
  examples: [
    {
      ask: 'project restore Old house',
      headline: '“Old house” is back, and your asks are filled from it.',
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
