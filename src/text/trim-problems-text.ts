/** Problems with doors, corners, bays, stock and paint that could not be read, or that a room or a saw can't have. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
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
    expected: `A door is its width, and where it is if you like: “${byUnits("32 in on wall 2, 3' from the left”; or “2 doors 32 in", '80 cm on wall 2, 90 cm from the left”; or “2 doors 80 cm')}”, at most ${most}. Or “none”.`,
    fix,
  };
}

export function bayUnread(read: Got, least: number, most: number, fix: string): Problem {
  return {
    ...got(read),
    expected: `A bay is its wall, its front and its sides: “wall 2: ${byUnits("front 5', sides 3'", 'front 1.5 m, sides 90 cm')}, 135°”, the angle inside, between side and front, from ${least}° to ${most}°. Or “none”.`,
    fix,
  };
}

export function stockUnread(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected: `Sticks are lengths with a price if you like, “${byUnits('8 ft $7.98; 12 ft $12.48”, and what is at hand: “have 3 x 8 ft', '2.4 m €8; 3.6 m €12”, and what is at hand: “have 3 x 2.4 m')}”.`,
    fix,
  };
}

export function noStockToBuy(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected: 'Give at least one length you can buy, in case what you have isn’t enough.',
    fix,
  };
}

export function onSaleOnly(read: Got, fix: string): Problem {
  return {
    ...got(read),
    expected: 'Give only lengths you can buy: a stick you have would fit one profile and not another.',
    fix,
  };
}

export function tooMuchStock(read: Got, most: number, fix: string): Problem {
  return { ...got(read), expected: `At most ${most} lengths of stock are compared.`, fix };
}

export function twoCurrencies(read: Got, fix: string): Problem {
  return { ...got(read), expected: 'All prices in one currency.', fix };
}

export function stockPriceRead(length: string, price: string): string {
  return `${length} has no price: assuming ${price}, at the highest price per foot you gave`;
}

/** An area joined with + whose opening into the room isn't given. */
export function joinedOpen(name: string, front: string, side: string, fix: string): Problem {
  return {
    ...got({ option: 'room', got: name }),
    expected: `Where does “${name}” open into its room? Trim would run across the opening. Give all the walls as a walk, or a bay on its wall: “wall 1: front ${front}, sides ${side}, 90°”.`,
    fix,
  };
}

/** `walls` are those the rooms have. */
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
    expected: 'It runs into another door or its casing: say where each one is.',
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

/** An outside corner with an inside angle, or the other way round. */
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
    expected: `The corner ${corner} (${angle}) needs the saw at ${setting}, and it reaches ${reach}. Measure the corner again, or give your saw’s reach; never cut it freehand.`,
    fix,
  };
}

export function noStudInReach(wall: string, length: string, fix: string): Problem {
  return {
    option: 'stock',
    got: '',
    expected: `${wall} takes ${length} in one stretch; no stick is that long, and none reaches from stud to stud. Give longer sticks.`,
    fix,
  };
}

export function tooManyPieces(pieces: number, most: number, fix: string): Problem {
  return {
    option: 'room',
    got: `${pieces} pieces`,
    expected: `At most ${most} pieces of trim at once: ask room by room.`,
    fix,
  };
}

export function noTrimLeft(fix: string): Problem {
  return { option: 'doors', got: '', expected: 'The openings leave no wall for trim.', fix };
}

export function doorwayUnread({ option, got }: Got, most: number, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `A doorway is its width, what lies beyond and that floor’s height over the subfloor: “bath ${byUnits('30 in to tile 1/2 in; closet 24 in to carpet; balcony 6 ft', '75 cm to tile 12 mm; closet 60 cm to carpet; balcony 180 cm')} to track”, at most ${most}.`,
    fix,
  };
}

export function stairsUnread({ option, got }: Got, most: number, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `Stairs are how many steps, at most ${most}, and how wide: “${byUnits('12 x 36 in', '12 x 90 cm')}”. Or “none”.`,
    fix,
  };
}

/** A hard floor without a height. */
export function beyondTaken(name: string): string {
  return `${name}: assuming the floor beyond is as high as yours; if not, give its height, “to tile ${byUnits('1/2 in', '12 mm')}”`;
}

export function noEdges(fix: string): Problem {
  return {
    option: 'doorways',
    got: '',
    expected: 'Give a doorway where the floor ends, or stairs that get nosing.',
    fix,
  };
}

export function floorTaken(height: string): string {
  return `Assuming your floor and pad are ${height} high; if not, add “floor: ${height}”`;
}

/** Wider than any profile sold. */
export function edgeTooLong(name: string, width: string, fix: string): Problem {
  return {
    option: 'stock',
    got: '',
    expected: `${name} is ${width} wide, and no length of profile reaches across in one piece.`,
    fix,
  };
}

export function volumeUnread({ option, got }: Got, fix: string): Problem {
  return { option, got: quoted(got), expected: 'What a tube holds, from its label: 10.1 fl oz, or 300 ml.', fix };
}

export function coverageUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `What paint covers, from its label: ${byUnits('350 sq ft per gallon, or 10 m² per liter', '10 m² per liter')}.`,
    fix,
  };
}

export function nailUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: `The length of your nails: ${byUnits('2 in, 50 mm, or a penny size up to 20d', '50 mm, or a penny size up to 20d')}.`,
    fix,
  };
}

export function pennyRead(typed: string, length: string): string {
  return `${typed} nails read as ${length} long`;
}

/** A nail that ends before the stud. */
export function nailTooShort(got: string, least: string, fix: string): Problem {
  return {
    option: 'nail',
    got,
    expected: `It won’t hold in the stud: trim, wallboard and grip need at least ${least}.`,
    fix,
  };
}
