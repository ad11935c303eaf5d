/** The demo's conversation: a small upstairs flat with a hall, a living room with a bay, a bedroom and its closet. Invented figures. */

const FLAT =
  "hall 3'6\" x 14'; living walk 13' right 4' left 2' right 7' right 2' left 4' right 13' right; bedroom 11' x 12'6\" + 2' x 5' closet";
const PLANK = '7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft, attached pad';

/** The example that greets whoever starts the terminal. */
export const WORKED_ASK = 'how many boxes for 12x14, planks 7x48, 23 sq ft a box?';

/** The conversation, ask by ask. */
export const DEMO_ASKS: readonly string[] = [
  "tape 15' - 2 x 4'",
  `planks room: ${FLAT}, plank: ${PLANK}, tax: 8%`,
  `planks room: ${FLAT}, plank: ${PLANK}, tax: 8%, pattern: offcut-first, kerf: 1/8 in`,
  'planks room: hall 1,05 x 4,2 m, plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton, pattern: thirds',
  'planks room: bedroom 11 x 12.6, plnk: 7x48 in, 10 per carton',
  'safety tear-out',
  'sources gap',
  "tearout room: bedroom 11' x 12'6\", floor: carpet, built: 1988, doors: 30 in",
  "squeaks area: 4' x 6'",
  "trim list room: bedroom 11' x 12'6\", doors: 30 in on wall 1, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $16.97",
  'how many boxes for a 2x5 closet with 7 inch by 4 foot planks, 10 a box?',
];
