/** The options of `prep tearout`. */

import type { Cited } from '../../../src/figures/cited.ts';
import {
  BUNDLE,
  CARPET_ALONE,
  DOORWAY,
  LAID_WEIGHT,
  ONE_PERSON,
  PICKUP_BED,
  PICKUP_PAYLOAD,
  STRIP_WIDTH,
} from '../../../src/figures/tearout-figures.ts';
import { length, room, text } from '../../../src/input/options.ts';
import { readHaul, readTrim } from '../../../src/input/parse-house.ts';
import { readLaidWeight, readWeight } from '../../../src/input/parse-weight.ts';
import type { Reading } from '../../../src/input/reading.ts';
import { readDoorways } from '../../../src/input/rooms/parse-doorways.ts';
import { KILOGRAMS_PER_POUND } from '../../../src/prep/tearout-amounts.ts';
import { feet, inches } from '../../../src/units/length.ts';
import { houseOptions } from './house.ts';

/** A weight in pounds from `least` to `most`. */
function weight(
  summary: string,
  { standard, metric, record }: { standard: string; metric: string; record: Cited<unknown> },
  least: number,
  most: number,
) {
  return text({ summary, standard, metric, record, example: standard }, (typed: string, reading: Reading) =>
    readWeight(typed, reading, least * KILOGRAMS_PER_POUND, most * KILOGRAMS_PER_POUND),
  );
}

export const doorsOption = text(
  {
    summary: 'Doorways: one a room, how many and how wide, or none',
    example: '2 x 30 in',
    standard: 'one a room',
    record: DOORWAY,
  },
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
    record: STRIP_WIDTH,
    metric: '0.9 m',
    example: '30 in',
    least: inches(6),
    most: feet(6),
  }),
  carry: weight('What one person lifts', { standard: '35 lb', metric: '16 kg', record: ONE_PERSON }, 5, 100),
  'bundle-length': length({
    summary: 'The hauler’s longest bundle',
    standard: '4 ft',
    record: BUNDLE,
    metric: '1.2 m',
    example: '3 ft',
    least: inches(12),
    most: feet(12),
  }),
  'bundle-weight': weight(
    'The hauler’s heaviest bundle',
    { standard: '50 lb', metric: '23 kg', record: BUNDLE },
    5,
    200,
  ),
  weight: text(
    {
      summary: 'What the floor weighs with its pad or glue, if you know',
      example: '8 lb/sq yd',
      standard: 'usual',
      record: LAID_WEIGHT.carpet,
    },
    readLaidWeight,
  ),
  'carpet-weight': text(
    {
      summary: 'What the carpet alone weighs, without its pad',
      example: '4 lb/sq yd',
      standard: 'usual',
      record: CARPET_ALONE,
    },
    readLaidWeight,
  ),
  vehicle: text(
    {
      summary: 'pickup, container, or trailer with its size',
      example: 'trailer 3 cu yd',
      standard: 'pickup',
      record: PICKUP_BED,
    },
    readHaul,
  ),
  payload: weight(
    'What a pickup or trailer may carry',
    { standard: '1000 lb', metric: '450 kg', record: PICKUP_PAYLOAD },
    100,
    10_000,
  ),
};
