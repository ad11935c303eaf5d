/** Problems with floors that can't be laid as requested, and with planks and prices that could not be read. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { type Got, problem } from './length-problems-text.ts';

/** Its size and what is in a carton, as this user would type them. */
export function plankSizeExample(metric: boolean): string {
  return metric ? '180 x 1220 mm' : '6 x 48 in';
}

export function plankCountExample(): string {
  return '10 per carton';
}

export function plankTooLong(most: number): string {
  return `At most ${most} characters are read as a plank: its size, what a carton holds, and its price.`;
}

export function sizeMissing(): string {
  return 'A plank begins with its size: its width and its length with x or “by” between them.';
}

export function sizeOutOfRange(): string {
  return `A plank is from ${byUnits('1 in (25 mm) to 1 m wide and at most 4 m (13 ft)', '25 mm to 1 m wide and at most 4 m')} long: is the unit the one you meant?`;
}

export function cartonMissing(): string {
  return 'How much is in a box? Give the number of planks, or the area it covers.';
}

export function countOutOfRange(most: number): string {
  return `A carton holds from 1 to ${most} planks.`;
}

export function planksNotWhole(area: string, planks: string): string {
  return `${area} a carton comes to ${planks} planks of this size, more than 2% from a whole number: check the size, or give the count.`;
}

export function areaAgainstCount(printed: string, count: number, product: string): string {
  return `${printed} a carton is printed, but ${count} planks of this size come to ${product}, more than 2% apart: one of the figures is wrong.`;
}

export function thickOutOfRange(): string {
  return `A plank is at most ${byUnits('1 in (25 mm)', '25 mm')} thick, and thicker than nothing.`;
}

export function notOfAPlank(): string {
  return 'This isn’t a plank’s size, carton, price, thickness, pad or lock.';
}

export function priceOfWhat(): string {
  return 'A price needs to say what it buys: a carton, a sq ft, a m² or a plank.';
}

export function priceMark(): string {
  return 'A price needs a sign or a code: $, €, £, USD, EUR, GBP, CAD, AUD or CHF.';
}

export function priceTooHigh(most: string): string {
  return `A price is at most ${most}.`;
}

export function priceTwice(): string {
  return 'One price is enough: this is a second one.';
}

export function notAPrice(): string {
  return 'A price is an amount of money, such as $58 or 31.90 EUR.';
}

export function priceExample(currency: string): string {
  return `58 ${currency}`;
}

export function sizeReadIn(typed: string, unit: string): string {
  return `${typed} read as ${unit}`;
}

export function sizeTurned(typed: string, width: string, length: string): string {
  return `${typed} read as ${width} wide, ${length} long`;
}

/** A number per carton that can't be a count of planks. */
export function cartonAreaRead(typed: string, area: string): string {
  return `${typed} read as ${area} a carton`;
}

export function countFromArea(area: string, count: number): string {
  return `${area} a carton read as ${count} planks`;
}

/** The printed area counts even though size × count gives another. */
export function areaStands(printed: string, count: number, product: string): string {
  return `a carton covers ${printed} as printed; ${count} planks of this size come to ${product}`;
}

export function footPriceRead(typed: string): string {
  return `${typed} read as a price per sq ft`;
}

/** A single length after the size. */
export function thicknessRead(typed: string): string {
  return `${typed} read as the thickness`;
}

/** An amount without a currency, or with fractions of a cent. */
export function priceRead(typed: string, price: string): string {
  return `${typed} read as ${price}`;
}

export function gapLeavesNothing(room: string, gap: string): Problem {
  return {
    option: 'gap',
    got: gap,
    expected: `A gap of ${gap} at every wall leaves nothing of ${room}: type a smaller gap, or larger sides.`,
  };
}

export function noSuchWall(got: string, room: string, walls: number): Problem {
  return {
    option: 'direction',
    got,
    expected: `${room} has walls 1 to ${walls}, numbered round from its lower left corner; other rooms are named: “wall 2 of ${room}”.`,
  };
}

export function tooManyPlanks(planks: number, most: number): Problem {
  return {
    option: 'plank',
    got: `${planks} planks`,
    expected: `That’s over ${most} planks at once: ask room by room, or check the plank’s size and unit.`,
  };
}

/** `near`: the likeliest name. */
export function noSuchRoom(got: string, names: readonly string[], near: string): Problem {
  return {
    option: 'only',
    got,
    expected: `There’s no room called that. You gave: ${names.join(', ')}.`,
    fix: near,
  };
}

/** A direction for a room that isn't there, or along a wall it doesn't have. */
export function noSuchDirection(got: string, names: readonly string[]): Problem {
  return {
    option: 'direction',
    got,
    expected: `To run one room its own way, name the room (${names.join(', ')}) and the way or one of its walls: “${names[0] ?? 'hall'} long”.`,
    fix: 'long',
  };
}

export function directionDivided(got: string, rooms: readonly string[]): Problem {
  return {
    option: 'direction',
    got,
    expected: `The floor runs on between ${rooms.join(' and ')}, so its rows run one way there: name just one of them, or let the floor stop in a doorway between.`,
    fix: 'long',
  };
}

/** `plank` as typed. */
export function clickInHerringbone(plank: string): Problem {
  return {
    option: 'plank',
    got: plank,
    expected:
      'Planks that click end to end lie in rows only: in a herringbone each end meets the long side of the next board, and their locks do not fit there. Boards made for it come as A and B (add “A/B boards”); boards to glue down have no locks (add “no lock”).',
    fix: `${plank}, A/B boards`,
  };
}

export function handedInRows(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: 'A and B boards lock to each other in a herringbone, not end to end in rows.',
    fix: 'herringbone',
  };
}

export function borderOfHanded(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected:
      'A border runs end to end and round corners, where the locks of A and B boards do not fit: it takes boards without locks.',
    fix: 'herringbone',
  };
}

export function noBorder(pattern: string, room: string, hole: boolean, courses: number): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: hole
      ? `In ${room} the border would run into what stands there: ask for fewer courses.`
      : `${room} has a wall too short for a border of ${courses}: ask for fewer courses, or for none.`,
    fix: courses > 1 ? `herringbone, border ${courses - 1}` : 'herringbone',
  };
}

export function notCompared(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: 'Planks are compared in rows; a herringbone is worked out plank by plank with “floor planks”.',
    fix: 'half',
  };
}

export function notResumed(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected:
      'A herringbone has no rows to continue. Give the part that is left as its own room to count the boards you still need.',
    fix: 'half',
  };
}

export function doorwayRunsOn(one: string, other: string): string {
  return `doorway ${one} to ${other}: the floor runs on through it; add “stops” for a transition strip`;
}

export function wallTaken(thickness: string): string {
  return `Assuming walls ${thickness} thick at doorways (a stud with board on both sides); add “${byUnits('5 in', '130 mm')} thick” where one differs`;
}

export function homeDoorwayUnread(read: Got, most: number, fix: string): Problem {
  return problem(
    read,
    `A doorway is its two rooms, its width, and where it is: “hall to bedroom ${byUnits('32 in, 18 in', '80 cm, 45 cm')} from the left corner of wall 2”; then “runs on” or “stops”, and the wall if you like: “5 in thick”. At most ${most}, with ; between. Or “none”.`,
    fix,
  );
}

export function standingUnread(read: Got, most: number, fix: string): Problem {
  return problem(
    read,
    `What planks go round is its name, its two sides and its place: “island ${byUnits("3 x 6 ft at 4' from left, 5' from bottom of living”, or “30 in", '90 x 180 cm at 1.2 m from left, 1.5 m from bottom of living”, or “75 cm')} from wall 2”, or “at wall 3”, or “centred”. At most ${most}, with ; between. Or “none”.`,
    fix,
  );
}

/** A doorway whose room, wall or position isn't in the rooms given. */
export const DOORWAY_WRONG = {
  'no room': (names: readonly string[]) => `A doorway lies between two of your rooms: ${names.join(', ')}.`,
  'one room': () => 'A doorway lies between two different rooms.',
  'no wall': (room: string, walls: number) =>
    `${room} has walls 1 to ${walls}, numbered counterclockwise from the first side you gave.`,
  notGiven: () =>
    `For the floor to run on, say which wall the doorway is in: “wall 2 of hall, ${byUnits('18 in', '45 cm')} from the left”. Or let it stop there.`,
  slanted: (room: string, wall: number | undefined) =>
    `Doorways are worked out in walls along the sides of a room; ${wall === undefined ? 'that wall' : `wall ${wall}`} of ${room} is slanted.`,
  'too wide': (width: string, room: string, wall: number | undefined, length: string) =>
    `${width} and its distance do not fit ${wall === undefined ? 'the wall' : `wall ${wall}`} of ${room}${length === '' ? '' : `, ${length} long`}.`,
  turned: (room: string) =>
    `As the other doorways place the rooms, this one would meet another wall of ${room}: check its wall, or let it stop there.`,
  apart: (by: string | undefined) =>
    `As the other doorways place the rooms, the two sides of this one ${by === undefined ? 'do not meet' : `miss each other by ${by}`}: check where it is, or let it stop there.`,
  overlap: (one: string, other: string) =>
    `Placed by this doorway, ${one} and ${other} would overlap: say where it is in both rooms (“${byUnits('12 in', '30 cm')} from the left of wall 4 of ${other}”), or let it stop there.`,
} as const;

/** A fixture that doesn't fit into the rooms given. */
export const STANDING_WRONG = {
  'no room': (names: readonly string[]) => `There’s no room called that. You gave: ${names.join(', ')}.`,
  'which room': (names: readonly string[]) =>
    `Say which room it is in, “of ${names[0] ?? 'hall'}”: ${names.join(', ')}.`,
  'no wall': (room: string, walls: number) =>
    `${room} has walls 1 to ${walls}; a thing is placed from a wall along a side of the room.`,
  'placed twice': () => 'One distance says how far right it is, the other how far up. Both of yours say the same one.',
  unplaced: () =>
    `Say how far it is from two sides: “${byUnits("4' from left, 5' from bottom", '1.2 m from left, 1.5 m from bottom')}”, or “centred” for the other one.`,
  outside: (room: string) => `It does not lie within ${room}: check its sides and its distances.`,
  overlap: (other: string) => `It lies on ${other}: check where both are.`,
  parts: () => 'It would split the room in two: give each part as its own room.',
} as const;

export function wrong(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return problem({ option, got }, expected, fix);
}

export const SO_FAR_NOTES = {
  unused: (words: string) => `not used from what you said: “${words}”`,
  noEnd: (length: string) =>
    `offcut ${length}: I don’t know which end of its plank it is, so it’s used only between two walls; add “left” or “right”`,
} as const;

export function soFarUnread(read: Got, metric: boolean): Problem {
  const example = metric
    ? 'row 7 ended at 800 mm, broke one, 22 planks left, offcuts: 450 mm left, 780 mm right'
    : 'row 7 ended at 31 1/4 in, broke one, 22 planks left, offcuts: 18 in left, 31 in right';
  return problem(
    read,
    `How far is it laid, and what is left? For example “${example}”. For each offcut, say which end of the plank it has, left or right as you look along the row.`,
    example,
  );
}

export function noSuchRow(got: string, room: string, rows: number, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `${room} has rows 1 to ${rows} in this plan, numbered from the starting wall.`,
    fix,
  );
}

export function noSuchRoomSoFar(got: string, names: readonly string[], fix: string): Problem {
  return problem({ option: 'so-far', got }, `Say the row and its room, one of these: ${names.join(', ')}.`, fix);
}

export function rowMisfits(got: string, run: string, planned: string, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `That row runs ${run} from wall to wall; your pieces don’t add up to that. The plan ends it with ${planned}. Measure its last piece again, or check the sides of the room.`,
    fix,
  );
}

export function allLaid(got: string, fix: string): Problem {
  return problem({ option: 'so-far', got }, 'Then every row is laid: nothing is left to plan.', fix);
}

export function slantedNotResumed(option: 'room' | 'direction', got: string, fix: string): Problem {
  return problem(
    { option, got },
    `The rest of a floor is worked out for rooms of right angles with rows along a wall; here the ${option === 'room' ? 'walls' : 'rows'} are slanted. Measure the part that is left and give it as its own room to “floor planks”.`,
    fix,
  );
}

export function oneFloor(got: string, floor: string, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `${got} lies in one floor with other rooms (${floor}), whose rows go on: say the last row that is laid, “${got} row 7 is laid”.`,
    fix,
  );
}
