/** `prep patch`: a piece of subfloor cut out and replaced, landing on joists. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { readDamage } from '../../src/input/parse-place.ts';
import { answerPatch } from './parts/patch.ts';
import { firstJoist, foundOption, patchOptions, spacingOption, thicknessOption } from './parts/patch-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'patch',
  summary: 'A patch of subfloor: the cut on joists, panels, blocks, screws, adhesive',
  options: z.object({
    damage: text(
      {
        summary: 'Size across x up, and how far from the left and the bottom wall',
        example: `20 x 30 in at 3' from left, 5' from bottom`,
      },
      readDamage,
    ),
    'first-joist': firstJoist,
    spacing: spacingOption,
    thickness: thicknessOption,
    ...patchOptions,
    found: foundOption,
  }),
  examples: [
    {
      ask: `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`,
      headline: 'Cut out 32" × 34": 1 sheet, 4 blocks, 26 screws.',
    },
    {
      ask: 'patch damage: 300 x 500 mm at 1,2 m from left, 900 mm from bottom, first-joist: 400 mm, spacing: 400 mm, joists: across, thickness: 18 mm, sheet: 1220 x 2440 mm, found: water stain',
      headline: 'Cut out 616 mm × 800 mm: 1 sheet, 4 blocks, 21 screws.',
    },
  ],
  run: (options, context) => answerPatch(options, context),
});
