/** The texts about doorways and stairs that cannot be read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

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
  return `your floor with its pad taken ${height} high: tell yours, “floor: ${height}”`;
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
