/** `project copy`: the same home again, for another plank or another year. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { copyOf, freeName } from '../../src/project/create-project.ts';
import { PROJECT } from '../../src/text/project-text.ts';
import { inProject, nameProblem, newNameOption, projectProblem, projectReply } from './project-command.ts';
import { nextProjectRequests, pageOf } from './project-shown.ts';

export default defineCommand({
  group: 'project',
  name: 'copy',
  summary: 'A new project with the rooms and picks of the one in use: same home, other plank',
  options: z.object({ name: newNameOption('Its name; the same and a number without it', 'the same and a number') }),
  examples: [
    {
      ask: 'project copy Upstairs in oak',
      headline: '“Upstairs in oak” is started with the rooms and picks of “Upstairs flat”.',
    },
  ],
  run: ({ name: given }, context) =>
    inProject(context, async (project, access) => {
      const mine = await access.own();
      const name = context.optionTexts.has('name') ? given : freeName(project.name, mine);
      const wrong = nameProblem(name, mine);
      if (wrong) return projectProblem(wrong);
      const made = await access.create(copyOf(project, name), project.hazards);
      return projectReply(context, {
        headline: PROJECT.copied(made.name, project.name),
        blocks: pageOf(made),
        actions: nextProjectRequests(made),
        project: made,
      });
    }),
});
