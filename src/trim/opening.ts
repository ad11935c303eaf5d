/** Doors and other openings in the walls: where each stands, casing and all, and the stretches of wall left between them. */

import { type Length, ticks } from '../units/length.ts';
import { type TrimWall, wallName } from './wall.ts';

/** A door as told: its width between the jambs, and where it stands as far as that was told. */
export interface Door {
  readonly width: Length;
  readonly room?: string;
  readonly wall?: string;
  /** From an end of the wall to the near jamb; without it in the middle. */
  readonly at?: { readonly from: 'left' | 'right'; readonly distance: Length };
}

/** An opening from `from` to `to` along its wall as faced, casing included. `door` tells which, counted from 0. */
export interface Opening {
  readonly wall: string;
  readonly from: Length;
  readonly to: Length;
  readonly door: number;
  /** False where the wall was picked because none was told. */
  readonly placed: boolean;
}

export interface DoorTrouble {
  readonly why: 'no wall' | 'too wide' | 'meets another' | 'no room left';
  readonly door: number;
}

export interface Openings {
  readonly openings: readonly Opening[];
  readonly troubles: readonly DoorTrouble[];
}

/** A stretch of wall that takes trim; an end is a corner or a door. */
export interface Stretch {
  readonly wall: TrimWall;
  readonly from: Length;
  readonly to: Length;
  readonly left: 'corner' | 'door';
  readonly right: 'corner' | 'door';
}

/**
 * Places each door with its casing on both sides; a casing that meets the corner is cut at it. Doors with a wall come
 * first, one without a place in the middle of its wall; a door without a wall stands in the middle of what is then the
 * longest stretch, which `placed` tells. A door without a room is in the first room that has such a wall.
 */
export function placeDoors(walls: readonly TrimWall[], doors: readonly Door[], casing: Length): Openings {
  const openings: Opening[] = [];
  const troubles: DoorTrouble[] = [];
  const inOrder = doors
    .map((door, index) => ({ door, index }))
    .sort((a, b) => Number(a.door.wall === undefined) - Number(b.door.wall === undefined) || a.index - b.index);
  for (const { door, index } of inOrder) {
    const placed = door.wall !== undefined;
    const spot = placed ? onWall(walls, door, casing) : anywhere(walls, openings, door.width + 2 * casing);
    if ('why' in spot) troubles.push({ why: spot.why, door: index });
    else if (openings.some((other) => other.wall === spot.wall && spot.from < other.to && other.from < spot.to))
      troubles.push({ why: 'meets another', door: index });
    else openings.push({ ...spot, door: index, placed });
  }
  return { openings, troubles };
}

type Spot = Pick<Opening, 'wall' | 'from' | 'to'> | Pick<DoorTrouble, 'why'>;

function onWall(walls: readonly TrimWall[], { width, room, wall: label, at }: Door, casing: Length): Spot {
  const wall = walls.find(
    (one) => one.label === label && (room === undefined || one.room.toLowerCase() === room.toLowerCase()),
  );
  if (!wall) return { why: 'no wall' };
  const rest = wall.length - width;
  const near = at?.distance ?? Math.floor(rest / 2);
  const jamb = at?.from === 'right' ? rest - near : near;
  if (rest < 0 || jamb < 0 || jamb > rest) return { why: 'too wide' };
  return {
    wall: wallName(wall),
    from: ticks(Math.max(0, jamb - casing)),
    to: ticks(Math.min(wall.length, jamb + width + casing)),
  };
}

function anywhere(walls: readonly TrimWall[], openings: readonly Opening[], width: number): Spot {
  const [longest] = stretchesOf(walls, openings).sort((a, b) => b.to - b.from - (a.to - a.from));
  if (!longest || longest.to - longest.from < width) return { why: 'no room left' };
  const from = longest.from + Math.floor((longest.to - longest.from - width) / 2);
  return { wall: wallName(longest.wall), from: ticks(from), to: ticks(from + width) };
}

/** What is left of the walls between openings, wall by wall and from left to right. */
export function stretchesOf(walls: readonly TrimWall[], openings: readonly Opening[]): Stretch[] {
  return walls.flatMap((wall) => {
    const here = openings.filter((one) => one.wall === wallName(wall)).sort((a, b) => a.from - b.from);
    const edges = [0, ...here.flatMap(({ from, to }) => [from, to]), wall.length];
    const stretches: Stretch[] = [];
    for (let i = 0; i + 1 < edges.length; i += 2) {
      const [from, to] = [ticks(edges[i] ?? 0), ticks(edges[i + 1] ?? 0)];
      if (to <= from) continue;
      stretches.push({
        wall,
        from,
        to,
        left: i === 0 ? 'corner' : 'door',
        right: i + 2 === edges.length ? 'corner' : 'door',
      });
    }
    return stretches;
  });
}
