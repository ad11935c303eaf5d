/** Messages that tell a whole floor, and how a person reads each: invented, the way people write in chats. */

import { floor, type Message } from './message.ts';

const BOX = { area: '23.33 sq ft', count: 10 };

export const FLOORS: readonly Message[] = [
  floor('how many boxes for 12x14, 7 inch by 4 foot planks, 23.33 a box?', 'room 12 ft x 14 ft', '7 in x 48 in', BOX),
  floor('planks 12x14 with 7 inch by 4 foot planks, 23.33 a box', 'room 12 ft x 14 ft', '7 in x 48 in', BOX),
  floor(
    'Hey! need boxes for a 12 x 14 bedroom. planks are 7x48, 10 in a box 😀',
    'bedroom 12 ft x 14 ft',
    '7 in x 48 in',
    {
      count: 10,
    },
  ),
  floor('12x14 room 6x48 planks 10 per box how many boxes', 'room 12 ft x 14 ft', '6 in x 48 in', { count: 10 }),
  floor(
    'living 12x14, bedroom 10x12 and a 3x6 closet. 6x36 boards, 12 to a box',
    'living 12 ft x 14 ft; bedroom 10 ft x 12 ft; closet 3 ft x 6 ft',
    '6 in x 36 in',
    { count: 12 },
  ),
  floor(
    'so my living room is 13\'6" x 15\' and the hall is 3\'6" x 14\', using 7" x 48" vinyl plank, 10 planks per carton',
    'living room 162 in x 15 ft; hall 42 in x 14 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor(
    'Wie viele Pakete für 3,8 x 4,2 m? Dielen 180 x 1220 mm, 8 pro Paket',
    'room 3.8 m x 4.2 m',
    '180 mm x 1220 mm',
    { count: 8, metric: true },
  ),
  floor(
    'Schlafzimmer 3,20 auf 4,10 m, Dielen 19 x 128 cm, 9 Stück pro Paket, 31,90 € pro Paket',
    'Schlafzimmer 3.2 m x 4.1 m',
    '19 cm x 128 cm',
    { count: 9, price: '3190 EUR', metric: true },
  ),
  floor(
    'how many packs of laminate for a lounge 3.6m by 4.8m? boards 192 x 1285mm, 8 in a pack',
    'lounge 3.6 m x 4.8 m',
    '192 mm x 1285 mm',
    { count: 8 },
  ),
  floor(
    'laminate packs needed: box room 2.1 x 2.6m, packs are £24 each, 8 boards a pack, boards 193mm x 1380mm',
    'box room 2.1 m x 2.6 m',
    '193 mm x 1380 mm',
    { count: 8, price: '2400 GBP' },
  ),
  floor(
    'bedroom 11x12 plus closet 2x5, planks 7 x 48 in at 23.33 sqft per box $2.89/sqft',
    'bedroom 11 ft x 12 ft; closet 2 ft x 5 ft',
    '7 in x 48 in',
    { ...BOX, price: '6742 USD' },
  ),
  floor(
    'Room: 12 by 14 ft\nPlanks: 6 in by 48 in\n10 per box\nhow many do I buy?',
    'room 12 ft x 14 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('need planks 4 a 10x10 office, 6"x36" planks, 15/box', 'office 10 ft x 10 ft', '6 in x 36 in', { count: 15 }),
  floor(
    'twelve by fourteen bedroom, seven inch by four foot planks, ten to a box',
    'bedroom 12 ft x 14 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor('bxoes for 12 x 14 ft? plnaks are 6 x 48 in, 10 per catron', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
  }),
  floor(
    'two bedrooms 10x12 each, hall 3x11, 7x48 planks 10 a box',
    'bedroom 10 ft x 12 ft; bedroom 2 10 ft x 12 ft; hall 3 ft x 11 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor(
    'two 10x12 bedrooms with 6x48 planks, box of 10',
    'bedroom 10 ft x 12 ft; bedroom 2 10 ft x 12 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('how many cartons for 12x14 with 10% waste? planks 6x48, 10 per carton', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { mistakes: '10 %' },
  }),
  floor('12x14, 6x48, 10 a box, herringbone please', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { pattern: 'herringbone' },
  }),
  floor('12x14, 6x48 planks, 10 a box, laid diagonally', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { direction: 'diagonal' },
  }),
  floor('12x14, 6x48 planks, 10 a box, at a 45 degree angle', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { direction: '45°' },
  }),
  floor('12x14, 6x48, 10 a box, thirds pattern, 3/8" gap', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { pattern: 'thirds', gap: '0.375 in' },
  }),
  floor(
    'bedroom 12x14 ft, 6x48 in planks, 10 per box, run them the short way, 8 inch stagger',
    'bedroom 12 ft x 14 ft',
    '6 in x 48 in',
    { count: 10, options: { direction: 'short', stagger: '8 in' } },
  ),
  floor(
    'Bedroom is 12 ft 6 in by 14 ft. Planks are 7.25 by 48 inches, 8 in each box at $48.99 a box, tax is 8.25%',
    'Bedroom 150 in x 14 ft',
    '7.25 in x 48 in',
    { count: 8, price: '4899 USD', options: { tax: '8.25 %' } },
  ),
  floor(
    'kitchen 9x11 and dining room 10x12. boxes cover 20 sq ft, planks 6x48',
    'kitchen 9 ft x 11 ft; dining room 10 ft x 12 ft',
    '6 in x 48 in',
    { count: 10, area: '20 sq ft' },
  ),
  floor('hall 3 x 14 ft, 6 x 36 in lvp, 18 sq ft boxes', 'hall 3 ft x 14 ft', '6 in x 36 in', {
    count: 12,
    area: '18 sq ft',
  }),
];
