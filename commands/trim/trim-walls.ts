/** From rooms, doors, bays and corners to walls with their stretches of trim; Problems if they don't go together. */

import type { Context, Problems } from '../../src/chat/command.ts';
import { type Saying, sayLength } from '../../src/input/format.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { laidByItself } from '../../src/text/room-problems-text.ts';
import {
  cornerInsideOut,
  doorsMeet,
  doorTooWide,
  joinedOpen,
  noRoomForDoor,
  noTrimLeft,
  noWallFor,
  trimBayTooWide,
} from '../../src/text/trim-problems-text.ts';
import { TRIM_NOTES } from '../../src/text/trim-text.ts';
import {
  type Bay,
  type Door,
  type MeasuredCorner,
  placeDoors,
  type Stretch,
  stretchesOf,
  type TrimWall,
  trimWalls,
  type WallOpening,
  type WallTrouble,
  wallName,
} from '../../src/trim/walls.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';
import { readInTime } from '../../src/workers/time-limits.ts';
import type { WallsAsk } from './trim-options.ts';

// Doors, bays and corners written the way a user would type them, because a fix repeats those that were fine.

/** Without `place`, only the width. */
function doorAsTyped({ width, room, wall, at }: Door, saying: Saying, place = true): string {
  const size = sayLength(width, saying);
  if (!place || wall === undefined) return size;
  const where = `${size} on wall ${wall}${room === undefined ? '' : ` of ${room}`}`;
  return at === undefined ? where : `${where}, ${sayLength(at.distance, saying)} from the ${at.from}`;
}

function bayAsTyped({ room, wall, front, side, angle, at }: Bay, saying: Saying): string {
  const where = `wall ${wall}${room === undefined ? '' : ` of ${room}`}`;
  const place = at === undefined ? '' : `, ${sayLength(at.distance, saying)} from the ${at.from}`;
  return `${where}: front ${sayLength(front, saying)}, sides ${sayLength(side, saying)}, ${angle}°${place}`;
}

function cornerAsTyped({ room, wall, interior }: MeasuredCorner): string {
  return `corner ${wall}${room === undefined ? '' : ` of ${room}`}: ${interior}`;
}

/** Items for which `say` returns undefined are left out; `none` is the word to type if nothing remains. */
function asTyped<T>(given: readonly T[], say: (one: T, index: number) => string | undefined, none: string): string {
  const parts = given.flatMap((one, i) => say(one, i) ?? []);
  return parts.length === 0 ? none : parts.join('; ');
}

// For an area added with `+`, nobody knows where it opens into the room, so trim can't tell wall from opening.

/** Matches from the sign up to the next area, a cut-out corner, or the next room. */
const JOINED =
  /[\s,]{0,40}(?:\+|\bplus\b)[^;\n+]*?(?<!\s)(?=\s+(?:-|–|minus|less|without)\s*\d|\s*(?:[;\n+]|\bplus\b|$))/gi;

/** The fix for each turns all of them into bays with square sides, each on a wall that is long enough. */
function joinedProblems({ room: { rooms }, bay }: WallsAsk, context: Context, saying: Saying): Problem[] {
  const joined = rooms.filter(({ name }) => context.assumed.includes(laidByItself(name)));
  const bays = joined.flatMap((area) => {
    const before = rooms.slice(0, rooms.indexOf(area)).filter((one) => !joined.includes(one));
    const host = before.at(-1);
    const [front, side] = [wallLength(area.outline, 0), wallLength(area.outline, 1)];
    const wall = host?.outline.findIndex((_, i) => wallLength(host.outline, i) > front) ?? -1;
    return host && wall >= 0 ? [{ room: host.name, wall: String(wall + 1), front, side, angle: 90 }] : [];
  });
  const given = [...bay, ...bays].map((one) => bayAsTyped(one, saying)).join('; ');
  const alone = readInTime(() => (context.optionTexts.get('room') ?? '').replace(JOINED, '').trim());
  const fix = given === '' ? alone : `${alone}, bay: ${given}`;
  return joined.map(({ name, outline }) =>
    joinedOpen(name, sayLength(wallLength(outline, 0), saying), sayLength(wallLength(outline, 1), saying), fix),
  );
}

export interface RequestedWalls {
  readonly walls: readonly TrimWall[];
  readonly openings: readonly WallOpening[];
  readonly stretches: readonly Stretch[];
  readonly assumed: readonly string[];
}

/** Uses the units in which the rooms were typed. */
export function trimFormat(ask: Pick<WallsAsk, 'room'>, context: Context): Saying {
  return { units: ask.room.units, decimal: context.preferences.decimal };
}

export function requestedWalls(ask: WallsAsk, context: Context): RequestedWalls | Problems {
  const saying = trimFormat(ask, context);
  const [open, ...others] = joinedProblems(ask, context, saying);
  if (open) return { problems: [open, ...others] };
  const { walls, troubles } = trimWalls(ask.room.rooms, ask.bay, ask.corners);
  const names = walls.map(wallName);
  const doors = placeDoors(walls, ask.doors, ask.casing);
  const [first, ...more] = [
    ...troubles.map((trouble) => wallProblem(trouble, ask, names, saying)),
    ...doors.troubles.map(({ why, door }): Problem => {
      const given = ask.doors[door];
      const typed = given ? doorAsTyped(given, saying) : '';
      const fix = (place: boolean): string =>
        asTyped(
          ask.doors,
          (one, i) => (i !== door ? doorAsTyped(one, saying) : place ? doorAsTyped(one, saying, false) : undefined),
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
  const others = <T>(given: readonly T[], say: (one: T) => string, none: string): string =>
    asTyped(given, (one, i) => (i === index ? undefined : say(one)), none);
  if (about === 'bay') {
    const bay = ask.bay[index];
    const typed = bay ? bayAsTyped(bay, saying) : '';
    const fix = others(ask.bay, (one) => bayAsTyped(one, saying), 'none');
    return why === 'bay too wide' ? trimBayTooWide(typed, fix) : noWallFor('bay', typed, names, fix);
  }
  const corner = ask.corners[index];
  const typed = corner ? cornerAsTyped(corner) : '';
  if (why === 'no wall') return noWallFor('corners', typed, names, others(ask.corners, cornerAsTyped, 'square'));
  const turned = asTyped(
    ask.corners,
    (one, i) => cornerAsTyped(i === index ? { ...one, interior: Math.round((360 - one.interior) * 100) / 100 } : one),
    'square',
  );
  return cornerInsideOut(typed, (corner?.interior ?? 0) < 180, turned);
}
