/** The texts about walks with slanted walls and corners cut off at a slant. */

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
