/** `project measure`: asks for a length, takes what the tape says, and puts it into the room. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerMeasure } from './parts/measure.ts';

const NONE = 'none';

export default defineCommand({
  group: 'project',
  name: 'measure',
  summary: 'Asks whoever measures for a wall’s length, and puts what they tell into the room',
  options: z.object({
    do: text(
      {
        summary: '“wall 3 of bedroom” asks, “wall 3 of bedroom is 11\' 8"” tells; “withdraw wall 3”',
        example: 'wall 3 of bedroom',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
    question: text(
      { summary: 'The open question that this answers, by its number', example: '1', standard: NONE },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: 'project measure wall 3 of bedroom',
      headline: `Asked: wall 3 of bedroom, kept as 11'. Whoever measures sees it with their next answer.`,
    },
    {
      ask: `project measure wall 3 of bedroom is 11' 2"`,
      headline: `Wall 3 of bedroom: 11' is now 11' 2": 206 → 210 planks, Underlay (pad) 449.5 sq ft → 451.6 sq ft.`,
    },
    { ask: 'project measure', headline: 'Nothing is asked to be measured.' },
  ],
  run: (options, context) =>
    answerMeasure({ do: options.do, ...(options.question !== NONE && { question: options.question }) }, context),
});
