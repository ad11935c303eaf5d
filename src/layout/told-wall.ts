/** Walls of a region by the numbers they were told with, whatever doorways and things made of its outline. */

import { at, type Point, wallLength } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';
import type { Region } from './floor.ts';
import { type Angle, startingWall, toFrame } from './frame.ts';

/** A wall from corner to corner in the coordinates of its region; `number` counts from 1 within its room. */
export interface ToldWall {
  readonly room: string;
  readonly number: number;
  readonly length: Length;
  readonly from: Point;
  readonly to: Point;
}

/** All walls of the rooms of a region, room by room. */
export function toldWalls(region: Pick<Region, 'name' | 'outline' | 'rooms'>): readonly ToldWall[] {
  const rooms = region.rooms ?? [{ name: region.name, outline: region.outline }];
  return rooms.flatMap(({ name, outline }) =>
    outline.map((from, i) => ({
      room: name,
      number: i + 1,
      length: wallLength(outline, i),
      from,
      to: at(outline, i + 1),
    })),
  );
}

/** The wall that the first row lies against at `angle`: of several equally far out the longest, where rooms were joined or changed. Undefined where only a corner is outermost. */
export function startWall(region: Pick<Region, 'name' | 'outline' | 'rooms'>, angle: Angle): ToldWall | undefined {
  const walls = toldWalls(region);
  if (!region.rooms) {
    const index = startingWall(region.outline, angle);
    return index === undefined ? undefined : walls[index];
  }
  return walls
    .map((wall) => ({ wall, seen: toFrame([wall.from, wall.to], { origin: [0, 0], angle }) }))
    .flatMap(({ wall, seen: [from, to] }) =>
      from && to && from[1] === to[1] && to[0] > from[0] ? [{ wall, v: from[1] }] : [],
    )
    .sort((a, b) => a.v - b.v || b.wall.length - a.wall.length)[0]?.wall;
}
