/** Messages written after the reader, by somebody trying to catch it out. */

import { about, back, chatter, floor, type Message, sum } from './message.ts';

export const LATE: readonly Message[] = [
  floor(
    'Ok so the bedroom measures 10\'8" x 12\'2" and im using 7x48 lvp, box of 10 is $54.99. how many boxes total',
    'bedroom 128 in x 146 in',
    '7 in x 48 in',
    { count: 10, price: '5499 USD' },
  ),
  floor('3.4 x 2.9m box room, boards are 1285 x 192mm, 8 per pack', 'box room 3.4 m x 2.9 m', '192 mm x 1285 mm', {
    count: 8,
  }),
  floor(
    'kids room 9 ft x 10 ft, closet 2 ft x 4 ft, vinyl planks 6 inches by 3 feet, 18 sq ft a carton',
    'kids room 9 ft x 10 ft; closet 2 ft x 4 ft',
    '6 in x 36 in',
    { area: '18 sq ft', count: 12 },
  ),
  floor(
    'hallway (3.5 x 12 ft) + landing (4 x 5 ft); planks 5"x48"; 12 per box',
    'hallway 3.5 ft x 12 ft; landing 4 ft x 5 ft',
    '5 in x 48 in',
    { count: 12 },
  ),
  floor(
    'I need to floor a 15x18 family room with 8"x48" planks that come 9 to a box, what do i order?',
    'family room 15 ft x 18 ft',
    '8 in x 48 in',
    { count: 9 },
  ),
  floor(
    'Wohnzimmer 4,5 x 5,2 m und Flur 1,2 x 3,8 m, Dielen 180 x 1220 mm, 10 pro Paket, 10 % Verschnitt',
    'Wohnzimmer 4.5 m x 5.2 m; Flur 1.2 m x 3.8 m',
    '180 mm x 1220 mm',
    { count: 10, metric: true, options: { mistakes: '10 %' } },
  ),
  floor('how many boxes 4 12 x 14? planks 7 x 48, box covers 23.33 sqft', 'room 12 ft x 14 ft', '7 in x 48 in', {
    area: '23.33 sq ft',
    count: 10,
  }),
  floor(
    '18 boards a box, each board is 5" x 36". Room is 11 by 12. how many boxes',
    'room 11 ft x 12 ft',
    '5 in x 36 in',
    { count: 18 },
  ),
  floor('boards 6" wide 36" long, 15 a box, my office is 10ft by 11ft', 'office 10 ft x 11 ft', '6 in x 36 in', {
    count: 15,
  }),
  floor('dining room 11x13; planks 7x48; 10/box; $2.49 sq ft; tax 7%', 'dining room 11 ft x 13 ft', '7 in x 48 in', {
    count: 10,
    price: '5810 USD',
    options: { tax: '7 %' },
  }),
  floor('bedrom 10x10 with 6x48 planks 10 in a bx', 'bedroom 10 ft x 10 ft', '6 in x 48 in', { count: 10 }),
  floor('12X14 ROOM!! 6X48 PLANKS!! 10 PER BOX!! HOW MANY???', 'room 12 ft x 14 ft', '6 in x 48 in', { count: 10 }),
  floor(
    '2 bedrooms: 10x11 and 12x12, planks 6x48, 10 per carton',
    'bedroom 10 ft x 11 ft; bedroom 2 12 ft x 12 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor(
    'plank count please. nursery 2.4m x 3m. 20cm x 120cm boards. 8 in each pack',
    'nursery 2.4 m x 3 m',
    '20 cm x 120 cm',
    { count: 8 },
  ),
  floor(
    'my friend said 12 boxes but i get more? room 13x15, planks 7x48, 10 per box',
    'room 13 ft x 15 ft',
    '7 in x 48 in',
    { count: 10, back: 'ask' },
  ),
  floor(
    'for a 10\' by 12\' bedroom w/ a 32" door, 6"x48" planks, 10 per box, half inch gap',
    'bedroom 10 ft x 12 ft',
    '6 in x 48 in',
    { count: 10, options: { gap: '0.5 in' } },
  ),
  floor('5mm lvp planks 7x48 23.33 sqft box $62 a box, den 12x16', 'den 12 ft x 16 ft', '7 in x 48 in', {
    area: '23.33 sq ft',
    count: 10,
    price: '6200 USD',
  }),
  floor(
    'Upstairs: hall 3x14, bedroom 11x12, closet 2x5. Planks 7 in x 48 in, 10 a carton, thirds',
    'hall 3 ft x 14 ft; bedroom 11 ft x 12 ft; closet 2 ft x 5 ft',
    '7 in x 48 in',
    { count: 10, options: { pattern: 'thirds' } },
  ),
  floor('room 144 in by 168 in, planks 6 in by 48 in, 10 per box', 'room 144 in x 168 in', '6 in x 48 in', {
    count: 10,
  }),
  floor(
    'Hi! I have a room that is 12 feet by 13 and a half feet. The planks are 6 by 48 inches and there are 10 in a box.',
    'room 12 ft x 13.5 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('20 sq ft boxes, 6x48 planks, bedroom 10x14', 'bedroom 10 ft x 14 ft', '6 in x 48 in', {
    area: '20 sq ft',
    count: 10,
  }),
  back(
    'how many packs for 4m x 3.5m lounge, laminate packs are 2.22 m2, boards 1383 x 193 mm. £19.99 a pack',
    'plank',
    {
      rooms: 'lounge 4 m x 3.5 m',
    },
  ),

  back('12 x 14 minus the closet, planks 6x48, 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('living is 14x16ish or so, how many boxes', 'plank', { rooms: 'living 14 ft x 16 ft' }),
  back('do half the room first, its 12x14, 6x48 planks 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back("12x14 but don't include the bay, 6x48, 10 per box", 'room', { plank: '6 in x 48 in', count: 10 }),
  back('10 or 12 per box, 6x48 planks, room 12x14', 'plank', { rooms: 'room 12 ft x 14 ft' }),
  back('room is 12-6 x 14-3, planks 6x48, 10 a box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('12x14 planks', 'room'),
  back('how many planks to a box usually?', 'room'),
  back('6x48 planks, room 12x14, 10 in a box, need 3 more rooms too', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('how many boxes for 20x120', 'room'),
  back('bedroom 10x12 and living room, 6x48 planks 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('i have 7 boxes of 6x48 planks, 10 per box, room is 12x14, enough?', 'ask', {
    rooms: 'room 12 ft x 14 ft',
    plank: '6 in x 48 in',
    count: 10,
  }),
  back('room 12x14 planks 6x48', 'plank', { rooms: 'room 12 ft x 14 ft' }),
  back('12x14 6x48 10', 'plank', { rooms: 'room 12 ft x 14 ft' }),
  back('kitchen is L shaped, 6x48 planks, 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('bedroom 12x14, 19x128 planks, 9 per pack', 'plank', { rooms: 'bedroom 12 ft x 14 ft' }),
  back('is 8 boxes enough for a 12x14 room?', 'plank', { rooms: 'room 12 ft x 14 ft' }),
  back('room: living 12x14, 6x48 planks', 'plank', { rooms: 'living 12 ft x 14 ft' }),

  sum("what's 3/4 plus 5/8 inch", '1.375 in'),
  sum('144 inches in feet?', '144 in'),
  sum('hello, how much is 12 ft times 14 ft', '168 sq ft'),
  sum('2,5 m in mm', '2500 mm'),
  sum('14\'3" minus 2 times 1/4"', '170.5 in'),
  sum('convert 7/8 inch to mm', '0.875 in'),
  sum('how long is 3 x 48 in', '144 in'),

  about('trim', 'quarter round for hall 3x14 and bedroom 11x12', { rooms: 'hall 3 ft x 14 ft; bedroom 11 ft x 12 ft' }),
  about('level', 'floor is uneven by half an inch, what do I do?'),
  about('finish', 'how many tubes of caulk for a 12x14 room', { rooms: 'room 12 ft x 14 ft' }),

  chatter('lol 12 years ago we did the same'),
  chatter('got it, thank you so much!!'),
  chatter('I hate carpet'),
  chatter('the planks arrived today, 14 boxes, my back...'),
  chatter('anyone selling a 6x4 trailer'),
  chatter('is it friday yet?'),
  chatter('room 237 is haunted'),
  chatter('the tv is 55 in'),
];
