/** `project new`: starts a project, with its rooms and its plank at once if they are told. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { emptyContent, freeName } from '../../src/project/create-project.ts';
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
  summary: 'Starts a project: your asks are filled from it, and it remembers',
  options: z.object({
    name: newNameOption('What you call it', UNNAMED),
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
    { ask: 'project new Downstairs', headline: '“Downstairs” is started, and your asks are filled from it.' },
    {
      ask: `project new Garden flat, rooms: hall 3'6" x 14'; bedroom 11' x 12'6", plank: 6 x 48 in, 10 per carton`,
      headline: '“Garden flat” is started, and your asks are filled from it.',
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
