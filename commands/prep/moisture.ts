/** `prep moisture`: dry enough to lay, wait, or stop; after a leak too. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { METHOD_UNTOLD, MOISTURE_LIMITS, MOISTURE_SPREAD } from '../../src/figures/moisture-figures.ts';
import { choice, text } from '../../src/input/options.ts';
import { readAge, readBase, readFlooring, readLimit, readMoisture, readWater } from '../../src/input/parse-moisture.ts';
import { readPart } from '../../src/input/parse-place.ts';
import { answerMoisture } from './parts/moisture.ts';
import { foundOption } from './parts/patch-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'moisture',
  summary: 'Dry enough to lay? Wood or concrete readings against their limit',
  options: z.object({
    readings: text({ summary: 'Meter or test readings with spaces between', example: '10 11 12' }, readMoisture),
    method: choice(['wood', 'chloride', 'rh', 'cm'], {
      summary: 'Wood meter in %; on concrete: calcium chloride in lb, humidity in the slab in % RH, carbide in % CM',
      standard: 'wood',
      record: METHOD_UNTOLD,
    }),
    floor: text(
      {
        summary: 'What was measured: wood, concrete, cement or anhydrite screed, tile; concrete wants its test named',
        example: 'concrete',
        standard: 'untold',
      },
      readBase,
    ),
    limit: text(
      {
        summary: 'The maker’s own limit, in the readings’ unit',
        example: '10',
        standard: 'usual',
        record: MOISTURE_LIMITS.wood,
      },
      readLimit,
    ),
    area: text(
      { summary: 'The floor the readings are for', example: '10 x 12 ft', standard: 'none' },
      (typed, reading) => readPart(typed, reading, { line: false }),
    ),
    flooring: text(
      { summary: 'Moisture of wood flooring to be laid; none for vinyl', example: '8 %', standard: 'none' },
      readFlooring,
    ),
    boards: choice(['strip', 'wide'], {
      summary: 'Wood flooring in strips, or in boards of 3 in and wider',
      standard: 'strip',
      record: MOISTURE_SPREAD,
    }),
    leak: text({ summary: 'Since when it is wet, after a leak', example: '30 hours', standard: 'none' }, readAge),
    water: text(
      { summary: 'What water it was: clean, grey (washing machine), sewage', example: 'clean', standard: 'none' },
      readWater,
    ),
    mould: text({ summary: 'Mould seen: its sides or area', example: '1 x 2 ft', standard: 'none' }, (typed, reading) =>
      readPart(typed, reading, { line: true }),
    ),
    found: foundOption,
  }),
  examples: [
    {
      ask: 'moisture readings: 10 11 9 12, area: 10 x 12 ft',
      headline: 'Dry enough: 12 % at most, the limit is 12 %.',
    },
    {
      ask: 'moisture readings: 84 % RH 79 % RH 71 % RH, area: 30 m²',
      headline: 'Wait: 84 % RH is over the limit of 75 % RH; dry it and measure again.',
    },
    {
      ask: 'moisture readings: 17 22 14, leak: 3 days, water: clean',
      headline: 'Stop: 22 % is far over the limit of 12 %; find where the water comes from.',
    },
  ],
  run: (options, context) => answerMoisture(options, context),
});
