/** `project use`: the project that asks are filled from. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { CHANGED, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { atDesk, projectNamed, projectProblem, projectReply } from './project-command.ts';
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
    atDesk(context, async (desk) => {
      const mine = (await desk.mine()).filter(({ state }) => state.kind !== 'deleted');
      const found = projectNamed(name, mine, 'use');
      if ('problem' in found) {
        if (!/^(?:none|no project|nothing)$/i.test(name)) return projectProblem(found.problem);
        await desk.use(undefined);
        return projectReply(context, { headline: PROJECT.notInUse });
      }
      await desk.use(found.id);
      if (found.state.kind === 'archived') {
        const parts = { state: { kind: 'active' as const } };
        await desk.change('own', () => ({ parts, said: CHANGED.unarchived, result: undefined }), found.id);
      }
      const [share] = found.shares;
      if (found.owner !== (await desk.person())?.id && share) return ownShareReply(found, share, context);
      const actions = [{ label: NEXT.show, ask: 'project show' }, ...nextProjectRequests(found)];
      return projectReply(context, { headline: PROJECT.inUse(found.name), actions, project: found });
    }),
});
