/** Problems with doors, corners, bays, stock and paint that could not be read, or that a room or a saw can't have. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';
import type { Got } from './length-problems-text.ts';

function got({ option, got: text }: Got): Got {
  return { option, got: quoted(text) };
}

export function notAnAngle(read: Got, least: number, most: number): Problem {
  return { ...got(read), expected: `An angle from ${least}° to ${most}°, such as 50.`, fix: '50' };
}

export function notACorner(read: Got, least: number, most: number, fix: string): Problem {
  return {
    ...got(read),
    expected: `A corner is its number and its angle inside the room, from ${least}° to ${most}°: “corner 3: 88.5”. Corner 3 lies between walls 3 and 4. Or “square”.`,
    fix,
  };
}

export function doorUnread(read: Got, most: number, fix: string): Problem {
  return {
    ...got(read),
    expected: `A door is its width, and where it is if you like: “32 in on wall 2, 3' from the left”; or “2 doors 32 in”, at most ${most}. Or “none”.`,
    fix,
  };
}

export function bayUnread(read: Got, least: number, most: number, fix: string): Problem {
  return {
    ...got(read),
    expected: `A bay is its wall, its front and its sides: “wall 2: front 5', sides 3', 135°”, the angle inside, between side and front, from ${least}° to ${most}°. Or “none”.`,
    fix,
  };
}

export function stockUnread(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected:
      'Sticks are lengths with a price if you like, “8 ft $7.98; 12 ft $12.48”, and what is at hand: “have 3 x 8 ft”.',
    fix,
  };
}

export function noStockToBuy(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected: 'Tell at least one length that can be bought, in case what is at hand does not do.',
    fix,
  };
}

export function onSaleOnly(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected: 'Only lengths on sale here: what is at hand would fit one profile and not another.',
    fix,
  };
}

export function tooMuchStock(read: Got, most: number, fix: string): Problem {
  return { ...got(read), expected: `At most ${most} lengths of stock are compared.`, fix };
}

export function twoCurrencies(read: Got, fix: string): Problem {
  return { ...got(read), expected: 'All prices in one currency.', fix };
}

/** How a stock length without a price was read. */
export function stockPriceRead(length: string, price: string): string {
  return `${length} told without a price: taken at ${price}, by the foot of the dearest told`;
}

/** An area joined with +, whose opening into the room is not told. */
export function joinedOpen(name: string, front: string, side: string, fix: string): Problem {
  return {
    ...got({ option: 'room', got: name }),
    expected: `Where “${name}” opens into its room is not told, and trim would run across the opening. Tell the walls all round as a walk, or a bay on its wall: “wall 1: front ${front}, sides ${side}, 90°”.`,
    fix,
  };
}

/** A door, a bay or a corner on a wall that the rooms do not have; `walls` are those they have. */
export function noWallFor(option: string, given: string, walls: readonly string[], fix: string): Problem {
  const shown = walls.slice(0, 12).join(', ');
  return {
    ...got({ option, got: given }),
    expected: `It is on no wall of the rooms; they have ${shown}${walls.length > 12 ? ' …' : ''}.`,
    fix,
  };
}

export function doorTooWide(given: string, fix: string): Problem {
  return {
    ...got({ option: 'doors', got: given }),
    expected: 'It does not fit on its wall: check the width, the wall and the place.',
    fix,
  };
}

export function doorsMeet(given: string, fix: string): Problem {
  return {
    ...got({ option: 'doors', got: given }),
    expected: 'It runs into another door or its casing: tell where each one is.',
    fix,
  };
}

export function noRoomForDoor(given: string, fix: string): Problem {
  return { ...got({ option: 'doors', got: given }), expected: 'No wall is long enough for it.', fix };
}

export function trimBayTooWide(given: string, fix: string): Problem {
  return {
    ...got({ option: 'bay', got: given }),
    expected: 'It is wider than its wall, which must go on at both sides of it.',
    fix,
  };
}

/** An outside corner told with an inside angle, or the other way round. */
export function cornerInsideOut(given: string, outside: boolean, fix: string): Problem {
  const kind = outside
    ? 'stands out into the room, so its angle inside is over 180°'
    : 'is an inside corner, below 180°';
  return {
    ...got({ option: 'corners', got: given }),
    expected: `This corner ${kind}; outside angles are 360° less what a gauge shows.`,
    fix,
  };
}

export function pastReach(corner: string, angle: string, setting: string, reach: string, fix: string): Problem {
  return {
    option: 'saw-reach',
    got: reach,
    expected: `The corner ${corner} (${angle}) needs the saw at ${setting}, and it reaches ${reach}. Measure the corner again, or tell your saw’s reach; never cut it freehand.`,
    fix,
  };
}

export function noStudInReach(wall: string, length: string, fix: string): Problem {
  return {
    option: 'stock',
    got: '',
    expected: `${wall} takes ${length} in one stretch; no stick is as long, and none reaches from stud to stud. Tell longer sticks.`,
    fix,
  };
}

export function tooManyPieces(pieces: number, most: number, fix: string): Problem {
  return {
    option: 'room',
    got: `${pieces} pieces`,
    expected: `At most ${most} pieces of trim are cut in one ask: ask room by room.`,
    fix,
  };
}

/** Why nothing is to be cut. */
export function noTrimLeft(fix: string): Problem {
  return { option: 'doors', got: '', expected: 'The openings leave no wall for trim.', fix };
}

// The texts about doorways and stairs that cannot be read.

export function doorwayUnread({ option, got }: Got, most: number, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `A doorway is its width, what lies beyond and that floor’s height over the subfloor: “bath 30 in to tile 1/2 in; closet 24 in to carpet; balcony 6 ft to track”, at most ${most}.`,
    fix,
  };
}

export function stairsUnread({ option, got }: Got, most: number, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `Stairs are how many steps, at most ${most}, and how wide: “12 x 36 in”. Or “none”.`,
    fix,
  };
}

/** How a hard floor without a height was taken. */
export function beyondTaken(name: string): string {
  return `${name}: the floor beyond taken as high as yours; tell its height, “to tile 1/2 in”`;
}

/** Neither a doorway nor a step. */
export function noEdges(fix: string): Problem {
  return {
    option: 'doorways',
    got: '',
    expected: 'Tell a doorway where the floor ends, or stairs that get nosing.',
    fix,
  };
}

/** How high the floor was taken, where it was not told. */
export function floorTaken(height: string): string {
  return `Assuming your floor and pad are ${height} high; if not, add “floor: ${height}”`;
}

/** An edge longer than any profile on sale. */
export function edgeTooLong(name: string, width: string, fix: string): Problem {
  return {
    option: 'stock',
    got: '',
    expected: `${name} is ${width} wide, and no length of profile reaches across in one piece.`,
    fix,
  };
}

// The texts about tubes, paint and nails that cannot be read.

export function volumeUnread({ option, got }: Got, fix: string): Problem {
  return { option, got: quoted(got), expected: 'What a tube holds, from its label: 10.1 fl oz, or 300 ml.', fix };
}

export function coverageUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'What paint covers, from its label: 350 sq ft per gallon, or 10 m² per litre.',
    fix,
  };
}

export function nailUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'The length of your nails: 2 in, 50 mm, or a penny size up to 20d.',
    fix,
  };
}

/** How a penny size was read. */
export function pennyRead(typed: string, length: string): string {
  return `${typed} nails read as ${length} long`;
}

/** A nail that ends before the stud. */
export function nailTooShort(got: string, least: string, fix: string): Problem {
  return {
    option: 'nail',
    got,
    expected: `It does not hold in the stud: trim, wallboard and grip take at least ${least}.`,
    fix,
  };
}
