/** `trim finish`: nails, caulk, filler, primer and paint for the trim of the rooms. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import {
  CAULK_BEAD,
  CAULK_TUBE,
  NAIL_GRIP,
  NAILS_PER_STUD,
  PAINT_COATS,
  PAINT_COVERAGE,
  TRIM_HEIGHT,
  WALLBOARD,
} from '../../src/figures/trim-figures.ts';
import { count, length, text } from '../../src/input/options.ts';
import { readCoverage, readNail, readVolume } from '../../src/input/parse-supplies.ts';
import { inches, millimetres, ticks } from '../../src/units/length.ts';
import { answerFinish } from './parts/finish.ts';
import { studOptions, thicknessOption, wallOptions } from './parts/options.ts';

export default defineCommand({
  group: 'trim',
  name: 'finish',
  summary: 'Nails, caulk, filler, primer and paint for your baseboard',
  options: z.object({
    ...wallOptions,
    thickness: thicknessOption,
    height: length({
      summary: 'Height of the trim',
      standard: '3 1/4 in',
      record: TRIM_HEIGHT,
      metric: '80 mm',
      example: '5 1/4 in',
      least: millimetres(5),
      most: inches(24),
    }),
    wallboard: length({
      summary: 'Thickness of the wallboard',
      standard: '1/2 in',
      record: WALLBOARD,
      metric: '12.5 mm',
      example: '5/8 in',
      least: ticks(0),
      most: inches(3),
    }),
    grip: length({
      summary: 'How far nails go into the stud',
      standard: '3/4 in',
      record: NAIL_GRIP,
      metric: '20 mm',
      example: '1 in',
      least: inches(0.5),
      most: inches(2),
    }),
    nail: text(
      { summary: 'Nails you have; else their length is worked out', example: '2 in', standard: 'computed' },
      readNail,
    ),
    'nails-per-stud': count({
      summary: 'Nails at every stud',
      standard: '2',
      record: NAILS_PER_STUD,
      least: 1,
      most: 4,
    }),
    ...studOptions,
    bead: length({
      summary: 'Bead of caulk',
      standard: '1/8 in',
      record: CAULK_BEAD,
      metric: '3 mm',
      example: '1/4 in',
      least: inches(0.03125),
      most: inches(1),
    }),
    tube: text(
      {
        summary: 'What a tube of caulk holds',
        example: '10.1 fl oz',
        standard: '10.1 fl oz',
        record: CAULK_TUBE,
        metric: '300 ml',
      },
      readVolume,
    ),
    primer: count({ summary: 'Coats of primer', standard: '1', record: PAINT_COATS, least: 0, most: 5 }),
    coats: count({ summary: 'Coats of paint', standard: '2', record: PAINT_COATS, least: 0, most: 5 }),
    coverage: text(
      {
        summary: 'What the paint covers',
        example: '350 sq ft per gallon',
        standard: '350 sq ft per gallon',
        record: PAINT_COVERAGE,
        metric: '9 m² per litre',
      },
      readCoverage,
    ),
  }),
  examples: [
    {
      ask: `finish room: 12' x 14', doors: 32 in on wall 2`,
      headline: '88 nails of 2", 1 tube of caulk, 0.4 qt of paint.',
    },
    {
      ask: 'finish room: 3,6 x 4,2 m, doors: 800 mm on wall 1, thickness: 15 mm, coverage: 10 m² per litre',
      headline: '88 nails of 50 mm, 1 tube of caulk, 0.3 L of paint.',
    },
  ],
  run: (options, context) => answerFinish(options, context),
});
