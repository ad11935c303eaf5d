/** `project use`: chooses the project that fills in requests. */

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
  summary: 'Switch to a project, and your questions use its rooms and choices; “none” for none',
  phrases: [
    'switch to the basement project',
    'open the rental',
    "i want to work on my mom's house now instead of mine",
    'use cabin',
    'change over to the other project, the one with the stairs',
    'go to upstairs',
    "from now on i'm talking about the condo job so switch me to that one",
    'load the lake house project',
    'can we go back to the kitchen project i was on last week',
    'make grandma house the current one',
    "you're on the wrong project, i meant the downstairs one, please change it",
    'switch projects',
    'put me in the townhouse',
    'select project maple street',
    "let's work in the nursery one tonight, my house can wait till the weekend",
    'use the project named phase two',
    "i'm at the rental today so use that project for everything i type",
    'open my other house',
    'jump over to the office job',
    'bring me back to the main house project, i was only checking on the flat',
    'which project am i on, it should be the church basement',
    'set current project to bungalow',
    'move to the project my brother shared with me so i can see his rooms',
    'work on the workshop one next',
    'please open the one called downstairs floors, not the old downstairs one',
    "swap to the tenant's unit",
    'get me into the insurance job, i need to add receipts there',
    'go to project 2',
    'change project',
    "we finished here, so let's pick up the project for the in laws' house",
    'activate cabin please',
    'now the flat',
    "i've been adding rooms to the wrong place, switch to the maple street project",
    'next i want the den project',
    'back to my own house',
    'take me to the project with the three bedrooms in it',
    'use downstairs instead of upstairs for this next bit',
    'continue with the bungalow project where i left it in october',
    'open up the basement one',
    'project condo, go',
  ],
  options: z.object({
    project: text(
      { summary: 'Which project, or none', example: 'Upstairs flat', names: 'project', colons: 'any' },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [{ ask: 'project use Upstairs flat', headline: 'Your questions now use “Upstairs flat”.' }],
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
