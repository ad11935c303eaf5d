/** `tape`: arithmetic and conversion of lengths, exact. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { INCH, SQUARE_FOOT } from '../src/figures/cited.ts';
import { text } from '../src/input/options.ts';
import { readTape, sayTape } from '../src/input/parse-tape.ts';
import { reply } from '../src/reply/reply.ts';
import { NOT_A_TICK } from '../src/text/help-text.ts';

export default defineCommand({
  name: 'tape',
  summary: 'Adds, subtracts, multiplies, divides and converts lengths, exactly',
  options: z.object({
    sum: text(
      {
        summary: 'Lengths with + - x / and brackets; “in mm” to convert',
        colons: 'rooms',
        example: `12'6" + 2 x 3'4 1/2" - 5/8"`,
      },
      (typed, reading) => readTape(typed, reading, reading.preferences.units === 'metric' ? 'mm' : 'in'),
    ),
  }),
  examples: [
    { ask: `tape 12'6" + 2 x 3'4 1/2" - 5/8"`, headline: `12'6" + 2 x 3'4 1/2" - 5/8" = 19' 2 3/8"` },
    { ask: `tape 12' 6" in mm`, headline: `12' 6" in mm = 3810 mm` },
    { ask: 'tape (3,80 m - 2 x 15 mm) / 3', headline: '(3,80 m - 2 x 15 mm) / 3 = 1.257 m' },
    { ask: `tape 12' x 14'6"`, headline: `12' x 14'6" = 174 sq ft` },
  ],
  run: ({ sum }, { preferences, assumed, optionTexts }) => {
    const said = sayTape(sum, optionTexts.get('sum') ?? '', preferences);
    return reply({
      headline: said.headline,
      blocks: said.facts.length > 0 ? [{ kind: 'facts', facts: said.facts }] : [],
      assumed: sum.kind !== 'number' && !sum.exact ? [...assumed, NOT_A_TICK] : assumed,
      sources: [INCH.source, ...(sum.kind === 'area' ? [SQUARE_FOOT.source] : [])],
      data: said.data,
    });
  },
});
