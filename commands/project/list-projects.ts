/** `project list`: all projects of the user. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { openQuestions } from '../../src/chat/notifications.ts';
import type { Preferences } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { isSharedPart } from '../../src/project/share-scope.ts';
import type { Block } from '../../src/reply/reply.ts';
import { START_ASK } from '../../src/text/project-problems-text.ts';
import { MEASURE, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { SHARE, sayShared } from '../../src/text/sharing-text.ts';
import { projectReply, withProject } from './project-command.ts';

/** Open questions for whoever may measure, project by project. */
function toMeasure(mine: readonly Project[], preferences: Preferences): readonly Block[] {
  const items = mine
    .filter(({ state }) => state.kind === 'active')
    .flatMap((project) =>
      openQuestions(project, preferences).map(({ label }) => MEASURE.inProject(project.name, label)),
    );
  return items.length === 0 ? [] : [{ kind: 'checklist', title: MEASURE.openTitle, items }];
}

export default defineCommand({
  group: 'project',
  name: 'list',
  summary: 'All your projects, including archived and recently deleted ones',
  phrases: [
    'list my projects',
    'what projects do i have',
    "show all the projects i've got going including the ones from last year",
    'which jobs am i tracking',
    'how many projects have i started so far in here',
    'names of my projects',
    'i know i made one for the cabin, can you show me all of them',
    'project list',
    'do i have more than one project open right now or just the house',
    'see all jobs',
    "i can't remember what i called the rental, give me a list of my projects",
    'every project please',
    'which houses have i set up with you',
    'show me old projects too',
    "is there a list somewhere of all the places i've done floors with you",
    'all projects',
    'my jobs',
    'what are my projects called, i need to pick the one for the condo',
    'tell me which projects are active and which ones are put away',
    'projects?',
    'let me see the other projects',
    "i've got three or four of these going, what are they and when did i last touch them",
    'show me everything i have under projects',
    'what else have i got saved besides this house',
    'list jobs with last change',
    "give me the names of every project so i can clean up the ones i don't need",
    'have i still got the basement project or did it go away when i finished',
    'display projects',
    'which project is mine and which ones did other people share with me',
    'list of properties',
    "bring up the list of projects, i want to look at the one for grandma's",
    'do you have my upstairs and downstairs as one project or two',
    'how many jobs have i got',
    'all my flooring jobs in one list please with the number of rooms each',
    'projects i can open',
    'show projects',
    'i want to see what projects exist before i make another',
    'what am i working on, list them',
    'could you run through the projects i have on here',
    'list the projects shared with me',
    'my projects',
    'show my projects',
    'see all my projects',
  ],
  options: z.object({}),
  examples: [{ ask: 'project list', headline: '2 projects.' }],
  run: (_options, context) =>
    withProject(context, async (access) => {
      const [mine, inUse] = [await access.mine(), await access.inUse()];
      if (mine.length === 0) {
        const actions = [{ label: NEXT.start, ask: START_ASK }];
        return projectReply(context, { headline: PROJECT.none, actions });
      }
      const me = (await access.person())?.id;
      const rows = mine.map(({ id, name, owner, rooms, kept, state, shares: [share] }) => {
        const now = id === inUse?.id ? PROJECT.use : PROJECT.states[state.kind];
        if (owner === me || !share) return [name, String(rooms.length), String(kept.length), now];
        const given = SHARE.inList(sayShared(share), SHARE.mays[share.role], share.label, now);
        return isSharedPart(share) ? [name, '', '', given] : [name, String(rooms.length), String(kept.length), given];
      });
      const others = mine.filter(({ id, state }) => id !== inUse?.id && state.kind !== 'deleted');
      return projectReply(context, {
        headline: PROJECT.several(mine.length),
        blocks: [
          { kind: 'table', title: PROJECT.projects, columns: PROJECT.projectColumns, rows },
          ...toMeasure(mine, context.preferences),
        ],
        actions: [
          ...others.map(({ name }) => ({ label: NEXT.use(name), ask: `project use ${name}` })),
          ...mine
            .filter(({ state, owner }) => state.kind === 'deleted' && owner === me)
            .map(({ name }) => ({ label: NEXT.restore(name), ask: `project restore ${name}` })),
        ].slice(0, 5),
      });
    }),
});
