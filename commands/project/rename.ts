/** `project rename`: renames the project in use or one of its rooms. */

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
  summary: 'Rename the project in use; “hall to entry” renames a room',
  phrases: [
    'rename this project to upstairs',
    'call the project moms house instead',
    'change the name of the project from test to living room floors',
    'rename basement to rec room job',
    'i typed the project name wrong, it should say maple street not mable street',
    'new name for the project please',
    'could you rename the rental project to 4th street unit b',
    'name it something better, like main floor',
    "this project's called project 1 and that's dumb, call it den and hall",
    'change project title',
    'fix the spelling of the project, cabbin should be cabin',
    "let's call it phase one now that there's a second one coming up",
    'rename my project',
    'i want the house project to be named after the street, oak lane',
    'give this job a different name',
    'switch the name to downstairs 2026 so i can tell them apart next year',
    'rename it lounge and landing',
    'the project title needs to be the claim number, 44817, for the adjuster',
    "set the project's name to nursery",
    'rename office to study, i mean the whole project not the room',
    "can i change what the project's called",
    "the name has my ex's name in it, please change it to just house",
    'make the title shorter, say flat',
    'project should be called in laws',
    "i'd like to retitle the job, water damage hall instead of hall floors",
    'rename to bungalow',
    'please edit the name of the cabin one to lake cabin, we own two now',
    'update the project name',
    'call this one kids rooms from here on',
    'the first project i made has no real name, name it whole house',
    'change name: workshop to shed',
    'relabel the project so it says done in front of the name',
    'would you rename the current project to carpet tear out spring',
    'name should be condo 12b not 21b',
    'rename project condo to beach condo',
    "i don't like what i called it, make it our new floors",
    "can you retitle the tenant's one as unit three, she moved upstairs",
    'name this job the big one',
    'rename please',
    "project name is wrong, it's sister's place, not system place",
  ],
  options: z.object({ name: newNameOption('The new name') }),
  examples: [{ ask: 'project rename Top floor', headline: 'It’s now called “Top floor”.' }],
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
