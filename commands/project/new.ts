/** `project new`: starts a project, with rooms and plank right away if they're given. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { emptyContent, freeName } from '../../src/project/project.ts';
import { PROJECT } from '../../src/text/project-text.ts';
import { picksSaid } from './pick-values.ts';
import { nameProblem, newNameOption, projectProblem, projectReply, withProject } from './project-command.ts';
import { nextProjectRequests, pageOf } from './project-shown.ts';
import { roomSteps } from './room-change.ts';

const UNNAMED = 'My floor';
const NONE = 'none yet';

export default defineCommand({
  group: 'project',
  name: 'new',
  summary: 'Start a project: it remembers your rooms and choices and fills them in for you',
  phrases: [
    'start a new project',
    'new project called downstairs',
    'begin a project for my moms house',
    'i want to set up my house',
    'create a project',
    'start over with a fresh project',
    'another project for the rental',
    'switch to the upstairs project',
    'open my other project',
    'list my projects',
    'make a project for the basement',
    'which project am i in',
    'use the cabin project',
    'start tracking my floors',
    'copy this project',
    'archive the old project',
    'lets start',
    'delete the project',
    'setup',
    'track my flooring job',
    'new project for the rental on 4th street',
    "i'm doing my mom's place next, set up a fresh project for it",
    'create project basement',
    'make me a project called upstairs floors',
    "let's begin tracking my floor job",
    'begin a new job please, three bedrooms and a hall in a 1992 house',
    'open up a new one for the cabin',
    'set up a project so i can keep everything in one place',
    'i want to start a project for redoing the living room',
    'new job',
    "can you make another project, this one's for my sister's condo",
    'start tracking: den and hallway',
    'name it grandma house and start it',
    'put together a new project for the flat, in metric',
    'add a project',
    'how about we start a project for the office remodel at work',
    'create a new project called lake house with a 3000 dollar budget',
    'i bought a fixer upper and need to set up a project for the floors',
    'kick off a project for the kitchen and mudroom',
    'new project, insurance job, water damage in the hall',
    'this is a different house, make a separate project',
    "second project: tenant's unit",
    "i'd like to track my flooring from the start, what do i name it",
    'set me up with a project',
    "project for the nursery please, baby's due in june",
    'start one for the church basement',
    'make new project "bungalow"',
    'we closed on the house today, get a project going for floors on the main level',
    'could you open a project for me called phase two',
    'let me start saving stuff under a project',
    'create one for downstairs, built 1971, carpet over plywood',
    'begin fresh job for the townhouse',
    'need a project for my workshop floor',
    'establish a new project, name is maple street',
    "i haven't got a project yet, make one",
    'start up a brand new project for bed 2 only',
    'track a new job for me',
    "new project at my inlaws' house, 4 rooms, they're paying",
    'fresh project please',
  ],
  options: z.object({
    name: newNameOption('What to call it', UNNAMED),
    rooms: text(
      {
        summary: 'Its rooms, several with ;',
        example: `hall 3'6" x 14'; bedroom 11' x 12'6"`,
        standard: NONE,
        colons: 'any',
      },
      (typed) => read(typed),
    ),
    plank: text(
      {
        summary: 'Its plank: size, carton, price',
        example: '6 x 48 in, 10 per carton',
        standard: NONE,
        colons: 'any',
      },
      (typed) => read(typed),
    ),
  }),
  examples: [
    {
      ask: 'project new Downstairs',
      headline: '“Downstairs” is started. Your questions now use its rooms and choices.',
    },
    {
      ask: `project new Garden flat, rooms: hall 3'6" x 14'; bedroom 11' x 12'6", plank: 6 x 48 in, 10 per carton`,
      headline: '“Garden flat” is started. Your questions now use its rooms and choices.',
    },
  ],
  run: ({ name: given, rooms, plank }, context) =>
    withProject(context, async (access) => {
      const mine = await access.own();
      const name = context.optionTexts.has('name') ? given : freeName(UNNAMED, mine);
      const wrong = nameProblem(name, mine);
      if (wrong) return projectProblem(wrong);
      let content = emptyContent(name);
      const notes: string[] = [];
      if (rooms !== NONE) {
        const steps = roomSteps(content, [{ do: 'shape', text: rooms }], context.preferences);
        if ('problem' in steps) return projectProblem({ ...steps.problem, fix: undefined });
        content = { ...content, ...steps.parts };
        notes.push(...steps.notes);
      }
      if (plank !== NONE) {
        const picks = picksSaid(`plank: ${plank}`, context);
        if ('problem' in picks) return projectProblem({ ...picks.problem, fix: undefined });
        content = { ...content, picks: Object.fromEntries(picks.set) };
        notes.push(...picks.notes);
      }
      const project = await access.create(content);
      return projectReply(context, {
        headline: PROJECT.started(name),
        blocks: pageOf(project),
        actions: nextProjectRequests(project),
        assumed: notes,
        project,
      });
    }),
});
