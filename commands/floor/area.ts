/** `floor area`: the area of rooms from wall to wall. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { SQUARE_FOOT } from '../../src/figures/cited.ts';
import { sayArea, sayAreasOfSum } from '../../src/input/format.ts';
import { room } from '../../src/input/options.ts';
import { reply } from '../../src/reply/reply.ts';
import { AREA_TEXT } from '../../src/text/floor-text.ts';
import { doubleArea } from '../../src/units/geometry.ts';

export default defineCommand({
  group: 'floor',
  name: 'area',
  summary: 'How many square feet or meters your rooms are, wall to wall',
  phrases: [
    'what is the square footage of a 12x17 room',
    'how many square feet is 11\'6" by 14\'3"',
    'area of two rooms 10x12 and 9x14',
    'total sq ft for bedroom 13x15 closet 3x6 hall 4x20',
    'sq ft of an L shaped room 12x20 with a 5x8 cut out',
    'add up my rooms 10x10 12x14 and 16x18',
    "what's the area in square meters of 4.5 by 3.2",
    'how big is my floor if its 22 by 31',
    'square footage of a triangle nook 6 ft by 4 ft',
    'how do i get the square feet of a room with a bay window',
    'sqft for 132 inches by 168 inches',
    'total area of house 12x12, 11x10, 15x20 and a 3x16 hallway',
    'room is 9 1/2 by 13 3/4 whats that in square feet',
    'how many sq feet in a 20 by 30 basement',
    'how many square yards is a 12 by 15 room',
    'area minus the island 3x6 in a 14x18 kitchen',
    'calc sq footage 8.5 x 11',
    'room measures 14 feet 7 inches by 10 feet 11, square feet?',
    'combined square feet of 3 rooms',
    'my wall is 13 ft on one side and 12 on the other and 15 long, whats the area',
    'square feet of 11x14',
    "what's the area of a room 13'7\" by 16'2\"",
    'add up my rooms 10x12, 11x13, 9x10 and a hall 3x18',
    'how many square metres is 4.7 by 3.35',
    'l shaped den, 20x16 with a 6x9 corner out, square footage?',
    'sqft of 143 in by 118 in',
    'how big is the downstairs, living 15x20, dining 11x12, kitchen 10x14',
    'room gets narrower, 12 ft at one end and 10 at the other, 15 long, how many feet is that',
    'total square footage please for bed 1 13x15 bed 2 11x11 closets 2x6 and 2x5',
    "my bay is 7 wide at the back and 4 at the front, 2 deep, what's that add to the square feet",
    'i need area only, 9.5 x 12.25',
    'square yards in a 12 by 18',
    'take the island 3x7 out of a 15x17 kitchen and what floor area is left',
    'so the triangle under the stairs is 6 by 3, how many sq ft',
    'basement square footage 26\'4" x 31\'10"',
    'is 14 x 13 bigger or smaller than 16 x 11',
    'square feet in a closet 28 inches by 5 feet',
    'work out the floor area of our flat: 3.1x4, 2.6x3.3, 1.2x5.5',
    'whats the sq ft',
    'what does a round breakfast nook 8 ft across come to in square feet',
    "room's an octagon kinda thing, sides about 5 feet, area?",
    'hall 38 in wide by 24 feet 6 how many sq ft',
    'stairs landing 42x84 inches in square feet',
    'whole house measured, give me square footage per room and total: 12x12 10x14 16x20 5x8',
    '18x22 with a 4x4 chimney in the middle',
    'how many square feet am i doing if i skip the bathroom, 1,040 total and the bath is 5x9',
    'floor area of a room with a diagonal wall cutting off a 4x4 corner, 12x13 otherwise',
    "convert my room to sq meters, it's 11 by 15 feet",
    'figure square feet: 7x9, 7x9, 8x10',
    't shaped room, top part 18x8 and the leg 9x11, add em for me',
    "i measured the long walls at 17'3 and 17'6 and the width at 12'8, square footage roughly",
    'what size is my office in square feet, walls are 9 foot 11 each way',
    'sq footage of garage 22x24',
    'double check me, is 13.5 by 14.75 really 199 sq ft',
    'combine square feet for two identical rooms 12x11 and one 10x9',
    "how much floor's in a u shaped hallway, three legs 3x10, 3x7 and 3x10",
    'room 415 cm by 287 cm, area',
    'area of the living room and dining room without the fireplace hearth 5x1.5',
    'square foot of 8 by 8 plus the doorway',
    'tell me the square feet of my rooms for the realtor, 14x16 13x11 10x10 6x8',
  ],
  options: z.object({ room: room({ summary: 'Rooms by their sides, with ; between rooms' }) }),
  examples: [
    { ask: `area room: bedroom 12' x 11'6"`, headline: '138 sq ft, wall to wall.' },
    {
      ask: `area room: 10 1/2 x 9 3/4 ft; 19 1/4 x 18 1/2 ft`,
      headline: '458.5 sq ft in all (102.4 sq ft + 356.1 sq ft).',
    },
  ],
  run: ({ room: { rooms, units } }, { preferences, assumed }) => {
    const saying = { units, decimal: preferences.decimal };
    const areas = rooms.map(({ outline }) => doubleArea(outline) / 2n);
    const area = areas.reduce((sum, one) => sum + one, 0n);
    return reply({
      headline: AREA_TEXT.headline(sayArea(area, saying), sayAreasOfSum(areas, saying)),
      lines: [AREA_TEXT.next],
      blocks: [],
      assumed,
      sources: [SQUARE_FOOT.source],
      data: { kind: 'area', area: Number(area) },
    });
  },
});
