/** `trim edges`: the profile for each doorway where the floor ends, undercuts, and stair nosing. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { FLOOR_HEIGHT, LEVEL_FLOORS, PROFILE_STICKS, UNDERCUT_CLEARANCE } from '../../src/figures/trim-figures.ts';
import { length, text } from '../../src/input/options.ts';
import { readStockOnSale } from '../../src/input/parse-stock.ts';
import { readEdgeDoorways, readStairs } from '../../src/input/rooms/parse-doorways.ts';
import { inches, millimetres, ticks } from '../../src/units/length.ts';
import { answerEdges } from './parts/edges.ts';
import { stickOptions } from './parts/options.ts';

export default defineCommand({
  group: 'trim',
  name: 'edges',
  summary: 'The profile for each doorway where the floor ends, undercuts, and stair nosing',
  options: z.object({
    doorways: text(
      {
        summary: 'Width, what lies beyond, its height: “bath 30 in to tile 1/2 in; closet 24 in to carpet”',
        example: 'bath 30 in to tile 1/2 in',
        colons: 'any',
        standard: 'none',
      },
      readEdgeDoorways,
    ),
    floor: length({
      summary: 'Height of your floor with its pad',
      standard: '5/16 in',
      record: FLOOR_HEIGHT,
      metric: '8 mm',
      example: '1/4 in',
      least: millimetres(1),
      most: inches(2),
    }),
    stock: text(
      {
        summary: 'Lengths of profile on sale, with prices if you like',
        example: '36 in $14; 72 in $24',
        standard: '36 in; 72 in; 94 in',
        record: PROFILE_STICKS,
        metric: '0.9 m; 1.8 m; 2.4 m',
      },
      readStockOnSale,
    ),
    kerf: stickOptions.kerf,
    'end-trim': stickOptions['end-trim'],
    level: length({
      summary: 'Heights that count as level',
      standard: '1/8 in',
      record: LEVEL_FLOORS,
      metric: '3 mm',
      example: '1/16 in',
      least: ticks(0),
      most: inches(0.5),
    }),
    clearance: length({
      summary: 'Clearance under jambs',
      standard: '1/16 in',
      record: UNDERCUT_CLEARANCE,
      metric: '2 mm',
      example: '1/8 in',
      least: ticks(0),
      most: inches(0.5),
    }),
    stairs: text(
      { summary: 'Steps that get nosing: “12 x 36 in”', example: '12 x 36 in', standard: 'none' },
      readStairs,
    ),
  }),
  examples: [
    {
      ask: 'edges doorways: bath 30 in to tile 1/2 in; bedroom 32 in to carpet; hall 36 in to wood 5/16 in, stock: 36 in $14; 72 in $24',
      headline: '2 end caps, 1 T-moulding: buy 2 lengths, $38.00.',
    },
    {
      ask: 'edges doorways: balcony 6 ft to track, stairs: 12 x 36 in',
      headline: '1 end cap, 12 stair nosings: buy 13 lengths.',
    },
    {
      ask: 'edges doorways: 2 x 800 mm to tile 4 mm, floor: 8 mm, stock: 0.9 m 12 €; 1.8 m 20 €',
      headline: '2 reducers: buy 1 length, €20.00.',
    },
  ],
  run: (options, context) => answerEdges(options, context),
});
