/** Messages of one evening in a home-improvement chat, written last. */

import { about, back, chatter, floor, type Message, sum } from './message.ts';

export const LAST: readonly Message[] = [
  floor('2,5 auf 3,2 m mit Dielen 180 x 1220 mm, 8 im Karton', 'room 2.5 m x 3.2 m', '180 mm x 1220 mm', {
    metric: true,
    count: 8,
  }),
  floor(
    '12 feet by 14 feet; 6 inches wide planks 4 feet long, box covers 20 square feet',
    'room 12 ft x 14 ft',
    '6 in x 4 ft',
    { count: 10, area: '20 sq ft' },
  ),
  back('boards are 6x48 in, 10 in a box at $45, for a 10x12 den', 'plank', { count: 10 }),
  sum('how many sq ft is 12x14', '168 sq ft'),
  floor(
    'evening all. laying click vinyl in the spare room this weekend, 9\'6" x 11\', planks 7"x48", 10 in a box. how many boxes should i grab',
    'spare room 114 in x 11 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor('how many boxes if room = 13 x 16 and planks = 9 x 60 in, 6 per box', 'room 13 ft x 16 ft', '9 in x 60 in', {
    count: 6,
  }),
  floor(
    'Need qty for living 15x20 + hall 4x12 + closet 3x5. Plank 6"x48" 20sf/box',
    'living 15 ft x 20 ft; hall 4 ft x 12 ft; closet 3 ft x 5 ft',
    '6 in x 48 in',
    { count: 10, area: '20 sq ft' },
  ),
  floor(
    'My planks come 8 per pack and measure 20cm by 120cm, the lounge is 4.1m by 3.3m, how many packs?',
    'lounge 4.1 m x 3.3 m',
    '20 cm x 120 cm',
    { count: 8 },
  ),
  floor(
    'wanna do 10x12 bedroom w 6x36 planks (15 a box), 2 extra planks for later',
    'bedroom 10 ft x 12 ft',
    '6 in x 36 in',
    { count: 15, options: { spares: '2' } },
  ),
  floor('whats the box count 4 a 11x14 den? 7x48 planks 10 per box $58/box', 'den 11 ft x 14 ft', '7 in x 48 in', {
    count: 10,
    price: '5800 USD',
  }),
  floor(
    'Das Büro hat 3,1 x 2,9 m. Dielen 180 x 1220 mm, 8 pro Paket. Wie viele Pakete brauche ich?',
    'Büro 3.1 m x 2.9 m',
    '180 mm x 1220 mm',
    { count: 8, metric: true },
  ),
  floor(
    'bedroom 12 ft by 11 ft with a 2 ft by 6 ft closet, planks 6 in by 48 in, 10 per carton',
    'bedroom 12 ft x 11 ft; closet 2 ft x 6 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor(
    'if my hall is 3.5 x 15 and i use 6x48 planks with 10 per box how many boxes',
    'hall 3.5 ft x 15 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('estimate pls: basement 20x24, lvp 7x48, 23.33 sqft cartons', 'basement 20 ft x 24 ft', '7 in x 48 in', {
    count: 10,
    area: '23.33 sq ft',
  }),
  back('hey, 11x13 bedroom, what do i need?', 'plank', { rooms: 'bedroom 11 ft x 13 ft' }),
  back('how many boxes of 7x48', 'room'),
  back('the boxes have 10 planks each, room is 12x12', 'plank', { rooms: 'room 12 ft x 12 ft' }),
  back('how many packs for the whole upstairs?', 'room'),
  back('so if the stagger is 8 inches?', 'room', { options: { stagger: '8 in' } }),
  back('kitchen 10x12 less the island, planks 6x48, 10/box', 'room', { plank: '6 in x 48 in', count: 10 }),
  sum('how many feet is 150 inches', '150 in'),
  sum('whats 11\'4" - 7 5/8"', '128.375 in'),
  sum('what is 3,2 m divided by 4', '800 mm'),
  about('moisture', 'how do i test moisture in a slab?'),
  about('patch', 'there is a rotten spot in the subfloor, how do I patch it'),
  chatter('haha my wife said the same'),
  chatter('the 2nd coat is drying'),
  chatter('nice work on that hallway!!'),
  chatter('back in 10 min'),
];
