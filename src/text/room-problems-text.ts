/** Problems with rooms and walks: what is expected where one could not be read, and how a doubtful one was read. */

/** A room as this asker would type one. */
export function roomExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}6 x 4${decimal}2 m` : '12 x 14 ft';
}

export function noRoom(example: string): string {
  return `A room is its two sides, such as ${example}, or “walk” and its walls with a right or left turn between them.`;
}

export function roomOnlyAmongOthers(example: string): string {
  return `By itself this room would be read otherwise. Tell it alone, each side with its unit, such as ${example}.`;
}

export function partInWords(): string {
  return 'A half or a quarter is told in figures, such as 11 1/2.';
}

export function textTooLong(most: string): string {
  return `At most ${most} characters of rooms are read at once: ask about a part of them at a time.`;
}

export function hiddenSignTyped(): string {
  return 'There is a sign in it that cannot be seen: type it again by hand.';
}

export function tooManyRooms(most: number): string {
  return `At most ${most} rooms and joined areas are worked out at once: ask about a part of them at a time.`;
}

export function floorTooLarge(most: string): string {
  return `All rooms together come to more than ${most}: are the units the ones you meant?`;
}

export function sideTooShort(): string {
  return 'A side of a room is at least 1 in (25 mm) long: is the unit the one you meant?';
}

export function areaAlone(): string {
  return 'An area alone does not say where the walls are, and planks are cut to walls: tell the two sides.';
}

export function threeSides(): string {
  return 'A room has two sides; its height is not needed. Rooms are divided by a semicolon.';
}

export function oneSide(): string {
  return 'A room has two sides, with x or “by” between them.';
}

export function walkWordMissing(): string {
  return 'Walls told one after the other begin with the word “walk”.';
}

export function negativeSide(): string {
  return 'A side is above zero; a corner is left out by a minus between two pairs of sides.';
}

export function roomsRunTogether(): string {
  return 'Two rooms stand side by side: put a semicolon between them, or a plus to join an area, or a minus to leave out a corner.';
}

export function signsRunTogether(): string {
  return 'It is not plain what joins these two: put one semicolon, plus or minus between them.';
}

export function nameNeedsColon(name: string): string {
  return `“${name}” has a figure in it: a name with a figure is divided from the sides by a colon.`;
}

export function nameOddSign(sign: string): string {
  return `A name has letters, figures, spaces and simple marks; “${sign}” is not one of them.`;
}

export function nameTooLong(most: number): string {
  return `A name has at most ${most} characters.`;
}

export function notchTooLarge(): string {
  return 'The corner left out must be smaller than the room along both sides.';
}

export function notchesMeet(): string {
  return 'The corners left out meet: tell this shape as a walk round its walls.';
}

export function notchesTooMany(most: number): string {
  return `A rectangle has ${most} corners to leave out: tell this shape as a walk round its walls.`;
}

export function notchOfWalk(): string {
  return 'A corner is left out of two sides, not of a walk: walk round that corner too.';
}

export function notInWalk(word: string): string {
  return `A walk is lengths with right or left between them; “${word}” is neither. A room after it goes behind a semicolon.`;
}

export function turnMissing(): string {
  return 'Two walls follow each other with no turn between them: tell whether you turn right or left.';
}

export function turnTwice(): string {
  return 'Two turns follow each other with no wall between them.';
}

export function walkTooShort(fewest: number): string {
  return `A walk has at least ${fewest} walls; only the last wall may be left out.`;
}

export function walkTooLong(most: number): string {
  return `A walk has at most ${most} walls.`;
}

export function wallTooShort(): string {
  return 'A wall is at least 1 in (25 mm) long: is the unit the one you meant?';
}

export function lastTurnWrong(): string {
  return 'The walls close, but the last turn does not lead on to the wall that comes next: the walk turned the wrong way somewhere.';
}

/** `ahead` and `right`: how far the end lies from the start, each in words, facing as at the start. */
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
  return of.typed === undefined ? 'the wall left out' : `the wall told ${ordinal(of.number)} (${of.typed})`;
}

function ordinal(number: number): string {
  const ending = number % 100 > 10 && number % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th');
  return `${number}${ending}`;
}

/** How sides without a unit were read. */
export function roomReadIn(name: string, typed: string, unit: string): string {
  return `${name}: ${typed} read as ${unit}`;
}

/** A region joined to another. */
export function laidByItself(name: string): string {
  return `${name} is laid as an area of its own and shares offcuts with the rest`;
}

/** A corner left out of a rectangle. */
export function cornerLeftOut(name: string, size: string, corner: string): string {
  return `${name}: ${size} left out at the ${corner} corner; “walk” and the walls tell any other shape`;
}

/** The wall that an asker left out of a walk. */
export function wallLeftOut(name: string, length: string): string {
  return `${name}: the wall left out is ${length} and closes the walk`;
}

/** A walk that closed to less than a tape shows. */
export function walkEased(name: string): string {
  return `${name}: the walls close to within 1/32 in (0.8 mm); the longest wall took up the difference`;
}

/** A walk, or sides, that reach further than any home. */
export function sideTooLong(metres: number): string {
  return `A room is at most ${metres} m (328 feet) along each side: is the unit the one you meant?`;
}

// The texts about walks with slanted walls and corners cut off at a slant.

export function angleWithoutSide(degrees: string): string {
  return `An angle is how far you turn from the way ahead, and it needs a side: “right ${degrees}” or “left ${degrees}”. A corner of 135° between two walls is a turn of 45°.`;
}

export function angleOutOfRange(least: number, most: number): string {
  return `A turn is from ${least}° to ${most}°; right or left alone is 90°.`;
}

export function diagonalWithoutSide(): string {
  return "A diagonal wall is told with the side it leads to and its two offsets: “right diagonal 2' x 3'” goes 2' on ahead and 3' to the right, and you face right after it.";
}

/** A walk with slanted walls that closed within what a tape can tell; `by` in words. */
export function slantedWalkEased(name: string, by: string): string {
  return `${name}: the walls close to within ${by}; the two longest took up the difference`;
}

/** A corner of a rectangle cut off at a slant; `size` is how far along either wall. */
export function cornerCutOff(name: string, size: string, corner: string): string {
  return `${name}: the ${corner} corner is cut off straight, ${size} along its walls`;
}

/** A bay read as part of its room. */
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
  return 'The bay must be narrower than its wall, and wide enough that its slanted sides leave a front of 1 in (25 mm).';
}

export function bayOfWalk(): string {
  return "A bay stands out of a wall of two sides, not of a walk: walk round the bay too, such as “left 45° 3' right 45°”.";
}

export function oneBay(): string {
  return 'One bay a wall is read, and no corner may be cut off that wall: tell this shape as a walk round its walls.';
}
