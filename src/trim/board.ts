/** Boards that are taken off to be set again: one for each stretch of wall, numbered round each room from its door. */

import { roundUp } from '../units/length.ts';
import type { Opening, Stretch } from './opening.ts';
import { wallName } from './wall.ts';

/** A board in place. `letter` is its room's, `order` counts round the room to the right of its door, from 1. */
export interface Board {
  readonly letter: string;
  readonly order: number;
  readonly label: string;
  readonly stretch: Stretch;
}

const LETTERS = 26;

/** Labels such as `B 2-5`: room B, wall 2, fifth board from the door. Stretches come room by room, as one goes round to the right. */
export function labelledBoards(stretches: readonly Stretch[], openings: readonly Opening[]): readonly Board[] {
  const rooms = [...new Set(stretches.map(({ wall }) => wall.room))];
  return rooms.flatMap((room, index) => {
    const letter = roomLetter(index);
    const own = stretches.filter(({ wall }) => wall.room === room);
    const first = Math.max(
      0,
      own.findIndex((stretch) => isBesideDoor(stretch, openings)),
    );
    return [...own.slice(first), ...own.slice(0, first)].map((stretch, i) => ({
      letter,
      order: i + 1,
      label: `${letter} ${stretch.wall.label}-${i + 1}`,
      stretch,
    }));
  });
}

/** How many of `boards` break at a share in hundredths of a percent, rounded up. */
export function brokenBoards(boards: number, share: number): number {
  return Math.min(boards, roundUp((boards * share) / 10_000));
}

function isBesideDoor({ wall, from, left }: Stretch, openings: readonly Opening[]): boolean {
  return left === 'door' && openings.some((one) => one.wall === wallName(wall) && one.to === from);
}

function roomLetter(index: number): string {
  const last = String.fromCodePoint(65 + (index % LETTERS));
  return index < LETTERS ? last : `${roomLetter(Math.floor(index / LETTERS) - 1)}${last}`;
}
