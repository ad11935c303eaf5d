/** `prep level`: flat enough or not, what to take down, and what fills the rest. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { FLOATING_FLATNESS, LEVEL_TAKEN, LEVELLER_YIELD, POUR_DEPTH } from '../../src/figures/subfloor-figures.ts';
import { choice, length, text } from '../../src/input/options.ts';
import { readRamp, readReadings, readRule, readYield } from '../../src/input/parse-flatness.ts';
import { readPart } from '../../src/input/parse-place.ts';
import { inches } from '../../src/units/length.ts';
import { answerLevel } from './parts/level.ts';
import { foundOption } from './parts/patch-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'level',
  summary: 'Flat enough? From straightedge readings: high spots, filler, bags, weight',
  options: z.object({
    readings: text(
      {
        summary: 'Gaps over a length with ; between, or a grid of depths',
        example: '3/16 in over 10 ft',
        colons: 'grid',
      },
      readReadings,
    ),
    rule: text(
      {
        summary: 'floating, nail-down, or the maker’s own gap in a length',
        example: '1/8 in in 6 ft',
        standard: 'floating',
        record: FLOATING_FLATNESS,
      },
      readRule,
    ),
    area: text(
      { summary: 'The low area the gaps were read in', example: '4 x 6 ft', standard: 'none' },
      (typed, reading) => readPart(typed, reading, { line: false }),
    ),
    ramp: text(
      { summary: 'A step to feather out: sides and height', example: '3 x 4 ft, 1/2 in', standard: 'none' },
      readRamp,
    ),
    bag: text(
      {
        summary: 'What a bag fills and weighs',
        example: '13 L per 25 kg',
        standard: '0.45 cu ft per 50 lb',
        record: LEVELLER_YIELD,
      },
      readYield,
    ),
    pour: length({
      summary: 'Deepest pour at once, from the bag',
      standard: '1 in',
      record: POUR_DEPTH,
      metric: '25 mm',
      example: '1/2 in',
      least: inches(0.0625),
      most: inches(6),
    }),
    line: choice(['straightedge', 'level'], {
      summary: 'A grid is read below a straightedge, or below a level line or laser',
      standard: 'straightedge',
      record: LEVEL_TAKEN,
    }),
    shape: choice(['untold', 'dish', 'trough', 'even'], {
      summary: 'Shape of the low place: dish (round), trough (long), even (as deep all over); else a range',
      standard: 'untold',
      example: 'trough',
    }),
    floor: choice(['wood', 'concrete', 'old'], {
      summary: 'What it is: wood, concrete, or old flooring',
      standard: 'wood',
      record: LEVEL_TAKEN,
    }),
    found: foundOption,
  }),
  examples: [
    {
      ask: 'level readings: 3/16 in over 10 ft; low 1/4 in over 6 ft, area: 4 x 6 ft',
      headline: `Not flat enough: 1/4" over 6' against 3/16" in 10' or 1/8" in 6'. To fill: 1 bag (6.2 to 12.4 L).`,
    },
    {
      ask: 'level readings: grid 2 ft: 0 1/8 1/4; 0 1/4 3/8',
      headline: `Not flat enough: 3/8" against 3/16" in 10' or 1/8" in 6'. To fill: 1 bag (3.2 L).`,
    },
    {
      ask: 'level readings: low 25 mm over 4 m, area: 20 m², bag: 2.2 kg/m²/mm, 50 kg, floor: concrete',
      headline:
        'Not flat enough: 25 mm over 4 m against 5 mm in 3 m or 3 mm in 2 m. To fill: 11 to 22 bags (250 to 500 L).',
    },
  ],
  run: (options, context) => answerLevel(options, context),
});
