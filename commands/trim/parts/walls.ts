/** From rooms, doors, bays and corners to walls with their stretches of trim; Problems where they do not go together. */

import type { Context, Problems } from '../../../src/chat/command.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import {
  bayTooWide,
  cornerInsideOut,
  doorsMeet,
  doorTooWide,
  noRoomForDoor,
  noTrimLeft,
  noWallFor,
} from '../../../src/text/trim-problems-text.ts';
import { TRIM_NOTES } from '../../../src/text/trim-text.ts';
import {
  type Opening,
  placeDoors,
  type Stretch,
  stretchesOf,
  type TrimWall,
  trimWalls,
  type WallTrouble,
  wallName,
} from '../../../src/trim/walls.ts';
import { ticks } from '../../../src/units/length.ts';
import type { WallsAsk } from './ask.ts';
import { joinedProblems } from './joined.ts';
import { retold, retoldBay, retoldCorner, retoldDoor } from './retold.ts';

/** Walls of an ask with what interrupts them, and how doubtful things were taken. */
export interface AskedWalls {
  readonly walls: readonly TrimWall[];
  readonly openings: readonly Opening[];
  readonly stretches: readonly Stretch[];
  readonly assumed: readonly string[];
}

/** How this ask's lengths are said: in the units its rooms were typed in. */
export function sayingOf(ask: Pick<WallsAsk, 'room'>, context: Context): Saying {
  return { units: ask.room.units, decimal: context.habits.decimal };
}

export function askedWalls(ask: WallsAsk, context: Context): AskedWalls | Problems {
  const saying = sayingOf(ask, context);
  const [open, ...others] = joinedProblems(ask, context, saying);
  if (open) return { problems: [open, ...others] };
  const { walls, troubles } = trimWalls(ask.room.rooms, ask.bay, ask.corners);
  const names = walls.map(wallName);
  const doors = placeDoors(walls, ask.doors, ask.casing);
  const [first, ...more] = [
    ...troubles.map((trouble) => wallProblem(trouble, ask, names, saying)),
    ...doors.troubles.map(({ why, door }): Problem => {
      const told = ask.doors[door];
      const typed = told ? retoldDoor(told, saying) : '';
      const fix = (place: boolean): string =>
        retold(
          ask.doors,
          (one, i) => (i !== door ? retoldDoor(one, saying) : place ? retoldDoor(one, saying, false) : undefined),
          'none',
        );
      if (why === 'no wall') return noWallFor('doors', typed, names, fix(true));
      if (why === 'too wide') return doorTooWide(typed, fix(true));
      if (why === 'meets another') return doorsMeet(typed, fix(true));
      return noRoomForDoor(typed, fix(false));
    }),
  ];
  if (first) return { problems: [first, ...more] };
  const stretches = stretchesOf(walls, doors.openings);
  if (stretches.length === 0) return { problems: [noTrimLeft('none')] };
  const assumed = doors.openings
    .filter(({ placed }) => !placed)
    .map(({ door, wall }) => TRIM_NOTES.doorTaken(sayLength(ask.doors[door]?.width ?? ticks(0), saying), wall));
  return { walls, openings: doors.openings, stretches, assumed };
}

function wallProblem(
  { why, about, index }: WallTrouble,
  ask: WallsAsk,
  names: readonly string[],
  saying: Saying,
): Problem {
  const others = <T>(told: readonly T[], say: (one: T) => string, none: string): string =>
    retold(told, (one, i) => (i === index ? undefined : say(one)), none);
  if (about === 'bay') {
    const bay = ask.bay[index];
    const typed = bay ? retoldBay(bay, saying) : '';
    const fix = others(ask.bay, (one) => retoldBay(one, saying), 'none');
    return why === 'bay too wide' ? bayTooWide(typed, fix) : noWallFor('bay', typed, names, fix);
  }
  const corner = ask.corners[index];
  const typed = corner ? retoldCorner(corner) : '';
  if (why === 'no wall') return noWallFor('corners', typed, names, others(ask.corners, retoldCorner, 'square'));
  const turned = retold(
    ask.corners,
    (one, i) => retoldCorner(i === index ? { ...one, interior: Math.round((360 - one.interior) * 100) / 100 } : one),
    'square',
  );
  return cornerInsideOut(typed, (corner?.interior ?? 0) < 180, turned);
}
