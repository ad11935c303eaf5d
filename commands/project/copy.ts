/** `project copy`: a copy of a project, to try another plank or to redo the home another year. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { copyOf, freeName } from '../../src/project/project.ts';
import { PROJECT } from '../../src/text/project-text.ts';
import { inProject, nameProblem, newNameOption, projectProblem, projectReply } from './project-command.ts';
import { nextProjectRequests, pageOf } from './project-shown.ts';

export default defineCommand({
  group: 'project',
  name: 'copy',
  summary: 'Start a copy with the rooms and choices of the project in use, to try another plank',
  phrases: [
    'copy this project',
    'make a duplicate of the downstairs project for upstairs',
    "i've got the same apartment layout two floors up, copy the project for that one",
    'clone the rental',
    'duplicate it so i can try a different plank without messing up this one',
    'copy cabin to lake house',
    'can i use the same rooms in a new project without typing them all in again',
    'make a second version of my project with the wider plank',
    'save a copy before i change everything around',
    'copy my house project, call the copy what if',
    'do me a duplicate of this job for unit 4, the rooms are the same size exactly',
    'copy project',
    "same project again under a new name please, we're doing the twin bedroom side",
    'i want another one just like it',
    'take the condo project and copy it for the neighbor, her place is a mirror image',
    'clone this and call it plan b',
    "make a backup copy of the project, i'm about to redo all the room sizes",
    'duplicate maple street',
    "could you copy the basement so that i've got one with leveler and one without",
    'project copy please',
    "copy the tenant's unit project over to the next flat, number 7",
    'i need two of these',
    'copy over the rooms and trim to a new project but not the spending',
    'double this project so my wife can play with it and mine stays put',
    'make a copy named test',
    'start a new one from my old project, same rooms, same plank',
    'is there a way to clone the whole project with the notes and all',
    'replicate the project for building b',
    'another copy',
    "copy it all into a fresh project, then i'll change the floor to laminate in there",
    "duplicate this for my parents' house next door, same builder same plan",
    'reuse my last project as the starting point for the new one',
    'copy bungalow as bungalow 2',
    'give me a duplicate to experiment on',
    'copy the den job and name the copy den with herringbone',
    'clone please',
    "i'd like a spare copy of the whole upstairs job before the helper starts editing it",
    'make another project from this one',
    'same as the first project but for the flat downstairs, copy it across',
    'can this project be copied',
  ],
  options: z.object({
    name: newNameOption('Its name; leave it out for the same name with a number', 'the same with a number'),
  }),
  examples: [
    {
      ask: 'project copy Upstairs in oak',
      headline: '“Upstairs in oak” is started with the rooms and choices of “Upstairs flat”.',
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
