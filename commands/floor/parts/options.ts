/** The options that every floor command takes. */

import {
  KERF,
  LAYING_DIRECTION,
  MISTAKES_PERCENT,
  NARROWEST_STRIP,
  PERIMETER_GAP,
  SHORTEST_END,
  SPARES,
  STAGGER,
  STAIR_STEP,
  WALL_DOUBT,
} from '../../../src/figures/floor-figures.ts';
import { count, direction, length, pattern, percent, plank, room, text } from '../../../src/input/options.ts';
import { readHomeDoorways } from '../../../src/input/rooms/parse-doorways.ts';
import { readStanding } from '../../../src/input/rooms/parse-obstacles.ts';
import { inches, millimetres, ticks } from '../../../src/units/length.ts';

const nothing = ticks(0);

export const roomOption = room({
  summary: 'Rooms by their sides, a bay or clipped corner, or a walk round the walls; several with ;',
});

/** How to lay, and what to buy on top: everything but rooms and plank. */
export const layingOptions = {
  pattern: pattern({
    summary: 'stair-step (step x rows), half, thirds, offcut-first, scattered, or herringbone (border 1)',
    standard: 'stair-step',
    record: STAIR_STEP,
  }),
  direction: direction({
    summary: 'Rows run long, short, diagonal, at 30°, or along a wall; or each room its own way',
    standard: 'long',
    record: LAYING_DIRECTION,
  }),
  doorways: text(
    {
      summary: 'Doorways between the rooms: where, how wide, and whether the floor runs on or stops',
      example: 'hall to bedroom 32 in, 18 in from the left corner of wall 2',
      colons: 'any',
      standard: 'none',
    },
    readHomeDoorways,
  ),
  holes: text(
    {
      summary: 'What planks go round: islands, hearths, posts, vents, and where',
      example: "island 3 x 6 ft at 4' from left, 5' from bottom",
      colons: 'any',
      standard: 'none',
    },
    readStanding,
  ),
  stagger: length({
    summary: 'Least distance between joints of touching rows',
    standard: '6 in',
    record: STAGGER,
    metric: '150 mm',
    example: '8 in',
    least: nothing,
    most: millimetres(2000),
  }),
  'shortest-end': length({
    summary: 'Shortest start or end piece',
    standard: '8 in',
    record: SHORTEST_END,
    metric: '200 mm',
    example: '10 in',
    least: nothing,
    most: millimetres(2000),
  }),
  'narrowest-strip': length({
    summary: 'Narrowest strip along a wall that runs with the rows; round posts and jambs planks are notched',
    standard: '2 in',
    record: NARROWEST_STRIP,
    metric: '50 mm',
    example: '3 in',
    least: nothing,
    most: millimetres(500),
  }),
  gap: length({
    summary: 'Gap at every wall',
    standard: '1/4 in',
    record: PERIMETER_GAP,
    metric: '6 mm',
    example: '3/8 in',
    least: nothing,
    most: inches(4),
  }),
  kerf: length({
    summary: 'What a cut takes: 0 for score and snap, 1/8 in for a saw',
    standard: '0',
    record: KERF,
    example: '1/8 in',
    least: nothing,
    most: inches(0.5),
  }),
  mistakes: percent({ summary: 'Planks on top for mistakes', standard: '3 %', record: MISTAKES_PERCENT }),
  spares: count({ summary: 'Planks on top to keep for repairs', standard: '0', record: SPARES, least: 0, most: 1000 }),
  doubt: length({
    summary: 'How far off a wall may be, for “how sure?”',
    standard: '1/2 in',
    record: WALL_DOUBT,
    metric: '12 mm',
    example: '1 in',
    least: inches(0.125),
    most: inches(12),
  }),
  tax: percent({ summary: 'Sales tax on the cartons', standard: '0 %', example: '8.25 %' }),
};

/** Rooms, one plank, and how to lay it. */
export const floorOptions = {
  room: roomOption,
  plank: plank({ summary: 'Plank size, how many or what area a carton holds, price if you like' }),
  ...layingOptions,
};
