/** Problems with rooms and walks that could not be read, and how ambiguous ones were interpreted. */

import { byUnits } from './answer-text.ts';

/** A room as this user would type it. */
export function roomExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}6 x 4${decimal}2 m` : '12 x 14 ft';
}

export function noRoom(example: string): string {
  return `A room is its two sides, such as ${example}, or “walk” and its walls with a right or left turn between them.`;
}

export function roomOnlyAmongOthers(example: string): string {
  return `On its own this room would be read another way. Give it alone, each side with its unit, such as ${example}.`;
}

export function partInWords(): string {
  return 'Write a half or a quarter in numbers, such as 11 1/2.';
}

export function textTooLong(most: string): string {
  return `At most ${most} characters of rooms at once: ask about some of them at a time.`;
}

export function hiddenSignTyped(): string {
  return 'There’s a hidden character in it: type it again by hand.';
}

export function tooManyRooms(most: number): string {
  return `At most ${most} rooms and joined areas at once: ask about some of them at a time.`;
}

export function floorTooLarge(most: string): string {
  return `All rooms together come to more than ${most}: are the units the ones you meant?`;
}

export function sideTooShort(): string {
  return `A side of a room is at least ${byUnits('1 in (25 mm)', '25 mm')} long: is the unit the one you meant?`;
}

export function areaAlone(): string {
  return 'Planks are cut to fit the walls, and an area doesn’t say where those are: give the room’s length and width.';
}

export function threeSides(): string {
  return 'A room has two sides; I don’t need its height. Put a semicolon between rooms.';
}

export function oneSide(): string {
  return 'A room has two sides, with x or “by” between them.';
}

export function walkWordMissing(): string {
  return 'A list of walls starts with the word “walk”.';
}

export function negativeSide(): string {
  return 'A side is more than zero; to leave out a corner, put a minus between two pairs of sides.';
}

export function roomsRunTogether(): string {
  return 'Are these two rooms? Put a semicolon between them, a plus to join them, or a minus to leave out a corner.';
}

export function signsRunTogether(): string {
  return 'I can’t tell whether these are one room or two: put one semicolon, plus or minus between them.';
}

export function nameNeedsColon(name: string): string {
  return `“${name}” has a number in it: put a colon between the name and the sides.`;
}

export function nameOddSign(sign: string): string {
  return `A name can have letters, numbers, spaces and simple marks, but not “${sign}”.`;
}

export function nameTooLong(most: number): string {
  return `A name has at most ${most} characters.`;
}

export function notchTooLarge(): string {
  return 'The corner left out must be smaller than the room along both sides.';
}

export function notchesMeet(): string {
  return 'The corners left out meet: give this shape as a walk around its walls.';
}

export function notchesTooMany(most: number): string {
  return `A rectangle has ${most} corners to leave out: give this shape as a walk around its walls.`;
}

export function notchOfWalk(): string {
  return 'You can leave a corner out of two sides, not out of a walk: walk around that corner too.';
}

export function notInWalk(word: string): string {
  return `A walk is lengths with right or left between them; “${word}” is neither. Put a semicolon before the next room.`;
}

export function turnMissing(): string {
  return 'Two walls have no turn between them: say whether you turn right or left.';
}

export function turnTwice(): string {
  return 'Two turns have no wall between them.';
}

export function walkTooShort(fewest: number): string {
  return `A walk has at least ${fewest} walls; only the last wall may be left out.`;
}

export function walkTooLong(most: number): string {
  return `A walk has at most ${most} walls.`;
}

export function wallTooShort(): string {
  return `A wall is at least ${byUnits('1 in (25 mm)', '25 mm')} long: is the unit the one you meant?`;
}

export function lastTurnWrong(): string {
  return 'The walls close, but the last turn does not lead on to the wall that comes next: the walk turned the wrong way somewhere.';
}

/** `ahead` and `right`: how far the end is from the start, in words, facing as at the start. */
export function walkEndsAway(ahead: string | undefined, right: string | undefined, walls: number): string {
  const away = [ahead, right].filter((part) => part !== undefined).join(' and ');
  return `The ${walls} walls do not close: facing as at the start, the walk ends ${away} the start. One wall may be left out, the last.`;
}

interface Wall {
  readonly number: number;
  readonly typed?: string | undefined;
}

export function walkCrosses(one: Wall | undefined, other: Wall | undefined): string {
  return `The walk meets itself: ${wall(one)} and ${wall(other)} cross or touch. Is one turn the wrong way round?`;
}

function wall(of: Wall | undefined): string {
  if (!of) return 'a wall';
  return of.typed === undefined ? 'the wall left out' : `the ${ordinal(of.number)} wall (${of.typed})`;
}

function ordinal(number: number): string {
  const ending = number % 100 > 10 && number % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th');
  return `${number}${ending}`;
}

export function roomReadIn(name: string, typed: string, unit: string): string {
  return `${name}: ${typed} read as ${unit}`;
}

export function laidByItself(name: string): string {
  return `${name} is laid separately and uses offcuts from the other rooms`;
}

export function cornerLeftOut(name: string, size: string, corner: string): string {
  return `${name}: ${size} left out at the ${corner} corner; for any other shape use “walk” and its walls`;
}

/** The last wall of a walk, left out by the user. */
export function wallLeftOut(name: string, length: string): string {
  return `${name}: the wall left out is ${length} and closes the walk`;
}

/** A walk that closed within the precision of a tape. */
export function walkEased(name: string): string {
  return `${name}: the walls close to within ${byUnits('1/32 in (0.8 mm)', '1 mm')}; the longest wall took up the difference`;
}

/** Larger than any home. */
export function sideTooLong(metres: number): string {
  return `A room is at most ${metres} m (328 feet) along each side: is the unit the one you meant?`;
}

export function angleWithoutSide(degrees: string): string {
  return `An angle is how far you turn from the way ahead, and it needs a side: “right ${degrees}” or “left ${degrees}”. A corner of 135° between two walls is a turn of 45°.`;
}

export function angleOutOfRange(least: number, most: number): string {
  return `A turn is from ${least}° to ${most}°; right or left alone is 90°.`;
}

export function diagonalWithoutSide(): string {
  return `For a diagonal wall, give the side it leads to and its two offsets: “right diagonal ${byUnits("2' x 3'” goes 2' on ahead and 3'", '60 x 90 cm” goes 60 cm on ahead and 90 cm')} to the right, and you face right after it.`;
}

/** Closed within the precision of a tape; `by` is already formatted. */
export function slantedWalkEased(name: string, by: string): string {
  return `${name}: the walls close to within ${by}; the two longest took up the difference`;
}

/** `size` is the distance along either wall. */
export function cornerCutOff(name: string, size: string, corner: string): string {
  return `${name}: the ${corner} corner is cut off straight, ${size} along its walls`;
}

export function bayRead(
  name: string,
  width: string,
  depth: string,
  degrees: number,
  wall: string,
  front: string,
): string {
  return `${name}: a bay in the middle of the ${wall} wall, ${width} wide there and ${depth} deep, its sides at ${degrees}° to the wall, its front ${front}`;
}

export function bayTooWide(): string {
  return `The bay must be narrower than its wall, and wide enough that its slanted sides leave a front of ${byUnits('1 in (25 mm)', '25 mm')}.`;
}

export function bayOfWalk(): string {
  return `A bay goes with two sides, not with a walk: walk around the bay too, such as “left 45° ${byUnits("3'", '1 m')} right 45°”.`;
}

export function oneBay(): string {
  return 'A wall can have one bay, and then no cut corner: give this shape as a walk around its walls.';
}
