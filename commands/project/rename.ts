/** `project rename`: another name for the project in use, or for one of its rooms. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { roomNamed, sameName } from '../../src/project/project-room.ts';
import { CHANGED, PROJECT } from '../../src/text/project-text.ts';
import { readInTime } from '../../src/workers/time-limits.ts';
import {
  doneOr,
  inProject,
  nameProblem,
  newNameOption,
  projectProblem,
  projectReply,
  TAKE_BACK,
} from './project-command.ts';
import { renameRoom } from './room.ts';

export default defineCommand({
  group: 'project',
  name: 'rename',
  summary: 'Gives the project in use another name; “hall to entry” renames a room',
  options: z.object({ name: newNameOption('The new name') }),
  examples: [{ ask: 'project rename Top floor', headline: 'It is called “Top floor” now.' }],
  run: ({ name }, context) =>
    inProject(context, async (project, access) => {
      const [, from = '', to = ''] =
        readInTime(() => /^(?:the )?(\S.*?) (?:to|into|as) (?:the )?(\S[\s\S]*)/i.exec(name)) ?? [];
      const room = from === '' ? undefined : roomNamed(project.rooms, from);
      if (room) return renameRoom(room.name, to, context);
      const others = (await access.own()).filter(({ id }) => id !== project.id);
      const same = others.some((other) => sameName(other.name, name)) ? nameProblem(name, others) : undefined;
      if (same) return projectProblem(same);
      const done = await access.change('own', ({ name: before }) => ({
        parts: { name },
        said: CHANGED.renamed(before, name),
        result: undefined,
      }));
      return doneOr(context, done, (_result, renamed) =>
        projectReply(context, {
          headline: PROJECT.renamed(name),
          actions: [TAKE_BACK],
          project: renamed,
        }),
      );
    }),
});
