/** The options of `prep tearout`. */

import { feet, inches } from '../../../src/core/length.ts';
import { KILOGRAMS_PER_POUND } from '../../../src/core/tearout/mass.ts';
import { readDoorways } from '../../../src/measure/doorways.ts';
import { readHaul } from '../../../src/measure/haul.ts';
import { length, room, text } from '../../../src/measure/options.ts';
import type { Reading } from '../../../src/measure/reading.ts';
import { readTrim } from '../../../src/measure/trim-parts.ts';
import { readLaidWeight, readWeight } from '../../../src/measure/weight.ts';
import { houseOptions } from './house.ts';

/** A weight in pounds from `least` to `most`. */
function weight(summary: string, standard: string, least: number, most: number) {
  return text({ summary, standard, example: standard }, (typed: string, reading: Reading) =>
    readWeight(typed, reading, least * KILOGRAMS_PER_POUND, most * KILOGRAMS_PER_POUND),
  );
}

export const doorsOption = text(
  { summary: 'Doorways: one a room, how many and how wide, or none', example: '2 x 30 in', standard: 'one a room' },
  readDoorways,
);

export const tearoutOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk round the walls; several with ;' }),
  ...houseOptions,
  doors: doorsOption,
  trim: text(
    { summary: 'Painted trim to take off, length x height', example: '40 ft x 3 in; 36 in x 1 in', standard: 'none' },
    readTrim,
  ),
  strip: length({
    summary: 'Width of a strip',
    standard: '3 ft',
    example: '30 in',
    least: inches(6),
    most: feet(6),
  }),
  carry: weight('What one person lifts', '35 lb', 5, 100),
  'bundle-length': length({
    summary: 'The hauler’s longest bundle',
    standard: '4 ft',
    example: '3 ft',
    least: inches(12),
    most: feet(12),
  }),
  'bundle-weight': weight('The hauler’s heaviest bundle', '50 lb', 5, 200),
  weight: text(
    { summary: 'What the floor weighs with its pad or glue, if you know', example: '8 lb/sq yd', standard: 'usual' },
    readLaidWeight,
  ),
  'carpet-weight': text(
    { summary: 'What the carpet alone weighs, without its pad', example: '4 lb/sq yd', standard: 'usual' },
    readLaidWeight,
  ),
  vehicle: text(
    { summary: 'pickup, container, or trailer with its size', example: 'trailer 3 cu yd', standard: 'pickup' },
    readHaul,
  ),
  payload: weight('What a pickup or trailer may carry', '1000 lb', 100, 10_000),
};
