/** Messages that invite a wrong answer: a word turns the meaning, a figure means something else, a fact is told twice. */

import { about, back, chatter, floor, type Message, sum } from './message.ts';

const BOX = { plank: '6 in x 48 in', count: 10 };
const ROOM = { rooms: 'room 12 ft x 14 ft' };

export const TRAPS: readonly Message[] = [
  back('room 12x14, another one the same size, 6x48 planks, 10 per box', 'room', BOX),
  back('12x14 room, 6x48 planks, 8-10 per box', 'plank', ROOM),
  back('12x14 room, 6x48 planks, 10 per box, double it', 'room', BOX),
  back('bedroom 12x14 x2, 6x48 planks 10 a box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('12x14 room, 6x48 planks, 10 per box, already have 3 boxes', 'ask', { ...ROOM, ...BOX }),
  back('all the rooms except bedroom 10x12: living 14x16, 6x48 planks 10 per box', 'room', BOX),
  back('12x14 room, 6x48 planks, 10 per box, 12 per box', 'plank', ROOM),
  back('12x14 room, 6x48 planks, 10 per box, $50 a box or $2.50 a sq ft', 'plank', ROOM),
  back('5 rooms, 10x12, 6x48 planks, 10 per box', 'room', BOX),
  back('12x14 room, 6x48 planks, 10 per box, what gap?', 'gap', { ...ROOM, ...BOX }),
  back('12x14 tiles, 10 per box, room 10x10', 'plank', { rooms: 'room 10 ft x 10 ft' }),
  back('24x48 planks, room 12x14, 4 per box', 'plank', ROOM),
  back('how many boxes for 3 rooms?', 'room'),
  back('12x14 room, 6x48 planks, 10 per box, kitchen not included', 'room', BOX),
  back('12x14 room, 6x48 planks, 10 per box, 10% off', 'ask', { ...ROOM, ...BOX }),
  back('bedroom 12x14 and bath, 6x48 planks 10 per box', 'room', BOX),
  floor('12x14 room, not sure how many boxes, 6x48 planks, 10 per box', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
  }),
  floor('cant figure this out: 12x14 room, 6x48 planks, 10 per box', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
  }),
  floor('12x14 room, 6x48 planks, 10 per box, $2 a sq ft, no waste', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    price: '4000 USD',
    options: { mistakes: '0 %' },
  }),
  floor(
    'planks 6x48 (10/box). room one 10x12, room two 9x9',
    'room 1 10 ft x 12 ft; room 2 9 ft x 9 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('need 10% extra. bedroom 10x12. 6x48 boards, 10 a box', 'bedroom 10 ft x 12 ft', '6 in x 48 in', {
    count: 10,
    options: { mistakes: '10 %' },
  }),
  floor('bedroom 10 x 12 1/2 ft, 6 x 48 in planks, 10 a box', 'bedroom 10 ft x 12.5 ft', '6 in x 48 in', { count: 10 }),
  floor('bedroom 3m50 x 4m20, Dielen 180 x 1220 mm, 8 pro Paket', 'bedroom 3.5 m x 4.2 m', '180 mm x 1220 mm', {
    count: 8,
    metric: true,
  }),
  floor(
    '1st bedroom 10x12, 2nd bedroom 11x12, 6x48 planks, 10 per box',
    'bedroom 10 ft x 12 ft; bedroom 2 11 ft x 12 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  sum('what is 12 + 14', '26 in'),
  sum('1/2 of 9 ft', '54 in'),
  about('trim', 'how much trim for 12x14 w/ 2 doors', { ...ROOM, options: { doors: '2 doors 32 in' } }),
  chatter('12 boxes later and im done'),
  chatter('who moved my planks lol'),
  chatter('bought 10 boxes at 2 for 1'),
];
