/** `project show`: the project in use, or another one, on one page. */

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
  summary: 'A project on one page: rooms, choices and saved answers',
  phrases: [
    'show my project',
    'what do you have on my house so far',
    'what rooms did i give you',
    'list my rooms',
    'show everything',
    'what have i told you',
    'show me the plank i picked',
    'what numbers are you using',
    'recap please',
    'overview',
    'show the bedroom',
    'where was i',
    'summary of my rooms and picks',
    'what is saved',
    'project status page',
    'display the project',
    'what do you know about my kitchen',
    'read back my measurements',
    'whats the size you have for the hall',
    'show all rooms',
    'what do you have saved for my house',
    'list my rooms and sizes',
    "which plank did i say i'm using",
    'overview please',
    'read my measurements back to me so i can check them',
    "what's in the basement project",
    "display everything you've got",
    'where are we at, give me the whole picture of the project',
    'show the den',
    'did you get the closet in bedroom 2 or do i need to add it',
    'what have i entered so far',
    'show all rooms with doors',
    'what sizes do you have for the hall and the landing',
    'recap of my job',
    'what did i pick for trim',
    'pull up the project',
    "i want to look over what's stored before i order",
    'summary of rooms',
    'show current project',
    'what number do you have for the kitchen width',
    'remind me what i gave you for the lounge',
    'bring up my floor project, the one for mom',
    'show picks',
    'let me see what you know about this house',
    'what gap and stagger am i set to',
    'print on screen all my rooms, planks, trim',
    'view project',
    'have i put the laundry in already?',
    'everything about bedroom 1',
    "what's my project look like right now",
    'could you show me the details i saved last weekend',
    'give me the state of things, rooms and choices',
    'which rooms do you have',
    "show the answers i've kept",
    'look up what the living room measured',
    'what floor type is saved for the basement room',
    "status of what's filled in and what isn't",
    'show me project notes rooms and plank all together',
    'open it up and let me see',
  ],
  options: z.object({ project: projectOption('Which project; leave it out for the one in use') }),
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
      const blocks = [
        ...pageOf(found),
        ...savedLines(saved).map((text) => ({ kind: 'text', section: 'list', text }) as const),
      ];
      return projectReply(context, {
        headline: projectHeadline(found),
        lines: [],
        opens: 'list',
        blocks,
        actions,
        project: found,
      });
    }),
});
