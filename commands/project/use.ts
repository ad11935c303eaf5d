/** `project use`: the project that asks are filled from. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { projectNamed, projectProblem, projectReply, withProject } from './project-command.ts';
import { nextProjectRequests } from './project-shown.ts';
import { ownShareReply } from './share-list.ts';

export default defineCommand({
  group: 'project',
  name: 'use',
  summary: 'Takes a project into use: your asks are filled from it; “none” for none',
  options: z.object({
    project: text(
      { summary: 'Which project, or none', example: 'Upstairs flat', names: 'project', colons: 'any' },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [{ ask: 'project use Upstairs flat', headline: 'Your asks are filled from “Upstairs flat” now.' }],
  run: ({ project: name }, context) =>
    withProject(context, async (access) => {
      const mine = (await access.mine()).filter(({ state }) => state.kind !== 'deleted');
      const found = projectNamed(name, mine, 'use');
      if ('problem' in found) {
        if (!/^(?:none|no project|nothing)$/i.test(name)) return projectProblem(found.problem);
        await access.use(undefined);
        return projectReply(context, { headline: PROJECT.notInUse });
      }
      await access.use(found.id);
      if (found.state.kind === 'archived') {
        const parts = { state: { kind: 'active' as const } };
        await access.change('own', () => ({ parts, said: CHANGED.unarchived, result: undefined }), found.id);
      }
      const [share] = found.shares;
      if (found.owner !== (await access.person())?.id && share) return ownShareReply(found, share, context);
      const actions = [{ label: NEXT.show, ask: 'project show' }, ...nextProjectRequests(found)];
      return projectReply(context, { headline: PROJECT.inUse(found.name), actions, project: found });
    }),
});
