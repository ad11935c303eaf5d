/** More whole floors: several rooms, other languages, chatter round the measures. */

import { floor, type Message } from './message.ts';

const BOX = { area: '23.33 sq ft', count: 10 };

export const HURRIED: readonly Message[] = [
  floor(
    'quick q: 14x16 den, 5mm thick planks 7x48 with attached pad, 23.33 sq ft/box. how many boxes?',
    'den 14 ft x 16 ft',
    '7 in x 48 in',
    BOX,
  ),
  floor('12 x 14 x 8 ft ceilings bedroom, 7 x 48 in planks, 10 a box', 'bedroom 12 ft x 14 ft', '7 in x 48 in', {
    count: 10,
  }),
  floor(
    'My bedroom is 12 feet wide and 14 feet long, planks are 6 inches wide and 48 inches long with 10 in a box',
    'bedroom 12 ft x 14 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor(
    'tore out the carpet this weekend!! now: bedroom 11 x 13, plank 7x48, box of 10. How many boxes?',
    'bedroom 11 ft x 13 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor(
    'does anyone know how many boxes i need? room is 10 x 11.5 ft, planks 6x36 in, 20 per box',
    'room 10 ft x 11.5 ft',
    '6 in x 36 in',
    { count: 20 },
  ),
  floor(
    'Flur 1,05 mal 4,2 m; Dielen 180x1220 mm; 8 pro Paket; 24,90 € pro m²',
    'Flur 1.05 m x 4.2 m',
    '180 mm x 1220 mm',
    // 8 x 0.18 x 1.22 m = 1.7568 m² at 24.90 = 43.74432.
    { count: 8, price: '4374 EUR', metric: true },
  ),
  floor(
    'zwei Zimmer 3 x 4 m, Dielen 200 x 1200 mm, 8 pro Paket',
    'Zimmer 3 m x 4 m; Zimmer 2 3 m x 4 m',
    '200 mm x 1200 mm',
    { count: 8, metric: true },
  ),
  floor(
    '3800 x 4200 mm room, 180 x 1220 mm planks, 2.196 m2 per carton',
    'room 3800 mm x 4200 mm',
    '180 mm x 1220 mm',
    { count: 10, area: '2.196 m2' },
  ),
  floor('350cm x 420cm bedroom; boards 18cm x 122cm; 10 boards per pack', 'bedroom 3.5 m x 4.2 m', '18 cm x 122 cm', {
    count: 10,
  }),
  floor(
    'can u tell me how many boxes 4 my 11x12 bedroom + 2x5 closet?? planks r 7x48 n come 10 to a box 🙏🙏',
    'bedroom 11 ft x 12 ft; closet 2 ft x 5 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor('Box says 23.33 sq ft, planks 7" x 48". Room 12\' x 14\'. Boxes?', 'room 12 ft x 14 ft', '7 in x 48 in', BOX),
  floor('planks needed for a 9x10 nursery, 6x48s, ten per box, half pattern', 'nursery 9 ft x 10 ft', '6 in x 48 in', {
    count: 10,
    options: { pattern: 'half' },
  }),
  floor(
    'i have 3 rooms: 10x12, 9x10, 12x14. planks 6x48, 10 to a carton',
    'room 1 10 ft x 12 ft; room 2 9 ft x 10 ft; room 3 12 ft x 14 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
  floor('bedroom 12x14 with 2 spare planks to keep, 6 x 48 in, 10 per box', 'bedroom 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { spares: '2' },
  }),
  floor('12x14 minus a 3x4 corner, 6x48 planks, 10 a box', '=12x14 - 3x4', '6 in x 48 in', { count: 10 }),
  floor(
    "living walk 12' right 10' right 5' left 4' right 7' right; planks 6 x 36 in, 12 per box",
    "=living walk 12' right 10' right 5' left 4' right 7' right",
    '6 in x 36 in',
    { count: 12 },
  ),
  floor('12x14 room, 6x48 planks 10 per box, 42 bucks a box', 'room 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    price: '4200 USD',
  }),
  floor(
    'guest room 10x11 & master bedroom 13x15, 9x60 planks, 6 per carton, boxes are $71.50',
    'guest room 10 ft x 11 ft; master bedroom 13 ft x 15 ft',
    '9 in x 60 in',
    { count: 6, price: '7150 USD' },
  ),
  floor('house built in 1962, bedroom 12x13, 6x48 planks, 10/box, boxes?', 'bedroom 12 ft x 13 ft', '6 in x 48 in', {
    count: 10,
  }),
  floor(
    'How much vinyl do I need for the bedroom (12 x 14 ft)? It comes as 7 x 48 in planks, 10 per box.',
    'bedroom 12 ft x 14 ft',
    '7 in x 48 in',
    { count: 10 },
  ),
  floor('bedroom is about 12x14, 6x48 planks 10 a box, saw kerf 1/8', 'bedroom 12 ft x 14 ft', '6 in x 48 in', {
    count: 10,
    options: { kerf: '0.125 in' },
  }),
  floor(
    '12ft x 14ft bedroom with 8 ft ceilings and a 32in door, 6x48 planks, 10 a box',
    'bedroom 12 ft x 14 ft',
    '6 in x 48 in',
    { count: 10 },
  ),
];
