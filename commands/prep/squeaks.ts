/** `prep squeaks`: screws against a squeaking subfloor, and when a screw is not the answer. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { JOIST_RUN, SCREW_PACK, SQUEAK_SPACING } from '../../src/figures/subfloor-figures.ts';
import { choice, count, length, text } from '../../src/input/options.ts';
import { readPart } from '../../src/input/parse-place.ts';
import { inches } from '../../src/units/length.ts';
import { foundOption, spacingOption, thicknessOption } from './parts/patch-options.ts';
import { answerSqueaks } from './parts/squeaks.ts';

export default defineCommand({
  group: 'prep',
  name: 'squeaks',
  summary: 'Screws that quiet a subfloor: how many, how long, how far apart',
  options: z.object({
    area: text(
      { summary: 'The noisy section: its two sides, or its length along one joist', example: '4 x 6 ft' },
      (typed, reading) => readPart(typed, reading, { line: true }),
    ),
    spacing: spacingOption,
    thickness: thicknessOption,
    joists: choice(['short', 'long'], {
      summary: 'Joists run along the short or the long side of it',
      standard: 'short',
      record: JOIST_RUN,
    }),
    apart: length({
      summary: 'Screws this far apart at most',
      standard: '6 in',
      record: SQUEAK_SPACING,
      metric: '150 mm',
      example: '8 in',
      least: inches(2),
      most: inches(12),
    }),
    pack: count({
      summary: 'Screws in a pack',
      standard: '100',
      record: SCREW_PACK,
      example: '75',
      least: 1,
      most: 5000,
    }),
    found: foundOption,
  }),
  examples: [
    { ask: 'squeaks area: 4 x 6 ft', headline: '45 screws, 1 3/4" or longer, 6" apart along 5 joists.' },
    {
      ask: 'squeaks area: 2,4 m, thickness: 18 mm, apart: 150 mm',
      headline: '17 screws, 45 mm or longer, 150 mm apart along 1 joist.',
    },
  ],
  run: (options, context) => answerSqueaks(options, context),
});
