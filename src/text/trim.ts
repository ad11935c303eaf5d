/** The words of a trim answer: headline, labels, cuts, steps. Figures come in already said. */

import { counted } from './floor.ts';

export function trimHeadline(
  bought: readonly (readonly [count: number, length: string])[],
  pieces: number,
  cost: string | undefined,
): string {
  const all = bought.reduce((sum, [count]) => sum + count, 0);
  const cut = counted(pieces, 'piece');
  if (all === 0) return `Nothing to buy: what you have gives all ${cut}.`;
  const each = bought.map(([count, length]) => `${count} × ${length}`).join(', ');
  return `Buy ${counted(all, 'stick')} (${each}) for ${cut}${cost === undefined ? '' : `: ${cost}`}.`;
}

export const TRIM = {
  title: 'What to buy',
  sticks: 'Sticks to buy',
  had: 'Sticks you have, used',
  length: 'Trim on the walls',
  openings: 'Openings with casing',
  cost: 'Cost',
  left: 'Left over',
  sure: 'How sure',
  proved: (priced: boolean) =>
    priced ? 'proved: no way to cut these pieces costs less' : 'proved: no way to cut these pieces takes less stick',
  widest: ', every saw cut counted as wide as the widest of them',
  atMost: (over: string) => `at most ${over} above the least possible`,
  each: (count: number, length: string, price: string | undefined) =>
    `${count} × ${length}${price === undefined ? '' : ` at ${price}`}`,
  cutTitle: 'Cut the sticks',
  cutColumns: ['Stick', 'Saw marks, one after another from the squared end', 'Left'],
  mark: (at: string, piece: string) => `${at} ${piece}`,
  pieceTitle: 'Pieces, each wall from left to right as you face it',
  pieceColumns: ['Piece', 'Long point to long point', 'Left end', 'Right end', 'Stick'],
  glueTitle: 'Glue up first',
  glue: (pieces: readonly string[]) =>
    `${pieces.join(', ')}: too short to nail without splitting. Cut, glue to the neighbouring piece on the bench, and let it set before it goes in.`,
  cornerTitle: 'Corners',
  cornerColumns: ['Wall', 'Length', 'Left corner', 'Right corner'],
  corner: (angle: string, setting: string) => `${angle}, saw ${setting}`,
  straight: 'straight on',
} as const;

/** A cut at the end of a piece; `outside` where it goes round a corner that stands out. */
export function sayTrimCut(cut: 'miter' | 'square' | 'cope' | 'scarf', setting: string, outside: boolean): string {
  switch (cut) {
    case 'miter':
      return `${outside ? 'outside' : 'inside'} miter ${setting}`;
    case 'cope':
      return `cope, inside bevel ${setting}`;
    case 'scarf':
      return `scarf ${setting}`;
    case 'square':
      return 'square';
  }
}

export const TRIM_NOTES = {
  taken: (values: readonly string[]) => `taken, as not told: ${values.join('; ')}. Tell yours where it differs`,
  takenValues: {
    stock: (lengths: string) => `sticks of ${lengths}`,
    casing: (width: string) => `casing ${width} wide at each side of a door`,
    thickness: (size: string) => `trim ${size} thick`,
    kerf: (size: string) => `a saw that takes ${size}`,
  },
  doorTaken: (door: string, wall: string) =>
    `${door} door taken in the middle of ${wall}: tell the wall if it is elsewhere, “on wall 2, 3' from the left”`,
  studs: (spacing: string, first: string) =>
    `studs taken every ${spacing}, the first ${first} from the left end of each wall: find them before you cut a joint`,
  turning: (room: string, turned: string) =>
    `corners of ${room} turn through ${turned} in all, and a closed room through 360°: measure them again`,
  coped: (corner: string) => `${corner} is out of square: coped, which hides it better than a miter`,
} as const;

const MEASURE =
  'Measure each wall at the floor before you cut: the lengths here are what the told walls give. Check every corner with an angle gauge, and ask again with “corners: corner 3: 88.5” where one is off. Corner 3 lies between walls 3 and 4.';

export const TRIM_STEPS = {
  title: 'How to cut and fit it',
  base: [
    MEASURE,
    'Left and right are as you face the wall. Lengths run long point to long point: at an inside corner the long point is at the back, at an outside corner at the face.',
    'Cut the longest pieces first. Cut outside corners a little long and test-fit both pieces together before either is nailed.',
    'Set the saw to the angle given, never more than it reaches, and never cut a corner freehand.',
  ],
  cope: 'A coped end: cut the inside bevel first, full wall length, then saw along the line that shows on the face, a little back of it, and file it to fit the square board beside it. Put up the square board first.',
  scarf:
    'A scarf joint: both ends at 30°, the same way, over the middle of a stud, with glue between and nails through both.',
  glue: 'Glue up the short pieces first.',
  full: 'A piece takes a whole stick to its very end: measure the stick first, and begin the miter with its long point right at the factory end.',
  nail: 'Nail into studs, two nails a stud; shoe goes onto the baseboard, never into the floor.',
} as const;

export const TRIM_ACTIONS = {
  cope: 'Cope the inside corners',
  finish: 'Nails, caulk and paint for it',
  reset: 'Set the old boards again instead',
} as const;
