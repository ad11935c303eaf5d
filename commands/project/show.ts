/** `project show`: the project in use, or another, on one page. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { isSharedPart } from '../../src/project/share-scope.ts';
import {
  noneInUse,
  ONE_IN_USE,
  projectNamed,
  projectOption,
  projectProblem,
  projectReply,
  withProject,
} from './project-command.ts';
import { nextProjectRequests, pageOf, projectHeadline } from './project-shown.ts';
import { savedActions, savedLines, savedToday } from './saved-today.ts';
import { ownShareReply } from './share-list.ts';

export default defineCommand({
  group: 'project',
  name: 'show',
  summary: 'A project on one page: rooms, picks and kept answers',
  options: z.object({ project: projectOption('Which project; the one in use without it') }),
  examples: [{ ask: 'project show', headline: 'Upstairs flat: 5 rooms, 1 left as it is.' }],
  run: ({ project: name }, context) =>
    withProject(context, async (access) => {
      const found = name === ONE_IN_USE ? await access.inUse() : projectNamed(name, await access.mine(), 'show');
      if (!found) return projectProblem(await noneInUse(context, access));
      if ('problem' in found) return projectProblem(found.problem);
      const [share] = found.shares;
      const others = found.owner !== (await access.person())?.id;
      if (others && share && isSharedPart(share)) return ownShareReply(found, share, context);
      const saved = await savedToday(found, context);
      const actions = [...savedActions(saved), ...nextProjectRequests(found)];
      const blocks = [...pageOf(found), ...savedLines(saved).map((text) => ({ kind: 'text', text }) as const)];
      return projectReply(context, { headline: projectHeadline(found), blocks, actions, project: found });
    }),
});
