/** Doorways opened in rooms that have their place: the boxes by which floor runs on, and the half boxes where it stops. */

import type { Outline } from '../units/geometry.ts';
import { inches } from '../units/length.ts';
import type { DoorwayTrouble, Taken } from './doorway.ts';
import type { Region } from './floor.ts';
import { faceOf, type Mouth, mouthOn, passage } from './mouth.ts';
import { facing, type Link, type Placing } from './place-rooms.ts';
import { AS_TOLD, posed } from './pose.ts';

/** A box of floor in a wall, in the coordinates of its region: `depth` ticks out from a mouth. */
export interface Opened {
  readonly index: number;
  readonly group: number;
  readonly side: 0 | 1;
  readonly name: string;
  readonly runsOn: boolean;
  readonly mouth: Mouth;
  readonly depth: number;
  readonly outline: Outline;
}

/** Two told sides of a doorway may miss each other by as much: tapes do. */
const SLACK = inches(1);
/** No wall is thicker than this where rooms meet through several doorways. */
const THICKEST = inches(36);

/** Every doorway opened; what does not fit is added to `troubles`, what was taken because it was not told to `taken`. */
export function openDoorways(
  rooms: readonly Region[],
  links: readonly Link[],
  placing: Placing,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): readonly Opened[] {
  return links.flatMap((link) =>
    link.told.runsOn ? through(rooms, link, placing, troubles) : halves(rooms, link, placing, troubles, taken),
  );
}

/** The wall of a side, the mouth in it, and why there is none. */
function sideMouth(rooms: readonly Region[], { rooms: ends, told }: Link, { poses }: Placing, side: 0 | 1) {
  const { wall, at } = told.sides[side];
  const room = rooms[ends[side]];
  if (wall === undefined || !room) return undefined;
  const face = faceOf(posed(room.outline, poses[ends[side]] ?? AS_TOLD), wall - 1);
  if (!face) return { why: 'slanted' } as const;
  const mouth = mouthOn(face, told.width, at);
  return mouth ? { mouth } : ({ why: 'too wide' } as const);
}

/** The box that joins two rooms: as deep as they really lie apart, which a doorway that did not place them may show. */
function through(
  rooms: readonly Region[],
  link: Link,
  placing: Placing,
  troubles: DoorwayTrouble[],
): readonly Opened[] {
  const { index, rooms: ends, told } = link;
  const tell = (why: DoorwayTrouble['why'], side: 0 | 1, by?: number): readonly Opened[] => {
    troubles.push({ about: 'doorway', doorway: index, why, side, ...(by === undefined ? {} : { by }) });
    return [];
  };
  const placed = placing.placedBy.includes(index);
  // The side that was told best decides where the doorway is: the other one follows from how the rooms lie.
  const side: 0 | 1 = told.sides[0].wall === undefined || (!told.sides[0].at && told.sides[1].at) ? 1 : 0;
  const beyond = side === 0 ? 1 : 0;
  const found = sideMouth(rooms, link, placing, side);
  if (!found) return tell('untold', 0);
  if ('why' in found) return tell(found.why, side);
  const next = rooms[ends[beyond]];
  if (!next) return [];
  const other = posed(next.outline, placing.poses[ends[beyond]] ?? AS_TOLD);
  const wall = told.sides[beyond].wall;
  const met = facing(found.mouth, other, placed ? told.depth : THICKEST);
  const opposite = sideMouth(rooms, link, placing, beyond);
  if (opposite && 'why' in opposite) return tell(opposite.why, beyond);
  if (opposite && told.sides[beyond].at) {
    const missed = missing(found.mouth, opposite.mouth);
    if (missed > SLACK) return tell('apart', beyond, missed);
  }
  if (!met || (wall !== undefined && met.wall !== wall - 1)) return tell(met ? 'turned' : 'apart', beyond);
  return [
    {
      index,
      group: placing.groups[ends[side]] ?? 0,
      side,
      name: rooms[ends[side]]?.name ?? '',
      runsOn: true,
      mouth: found.mouth,
      depth: met.distance,
      outline: passage(found.mouth, met.distance),
    },
  ];
}

/** How far two mouths that face each other miss along their walls. */
function missing(one: Mouth, other: Mouth): number {
  const along = ([x, y]: readonly [number, number]): number => x * Math.abs(one.out[1]) + y * Math.abs(one.out[0]);
  return Math.abs(along(one.from) - along(other.to));
}

/** Half the doorway for each side whose wall is known. */
function halves(
  rooms: readonly Region[],
  link: Link,
  placing: Placing,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): readonly Opened[] {
  const { index, rooms: ends, told } = link;
  return ([0, 1] as const).flatMap((side): Opened[] => {
    const name = rooms[ends[side]]?.name ?? '';
    const found = sideMouth(rooms, link, placing, side);
    if (!found) {
      taken.push({ kind: 'unplaced', doorway: index, room: name });
      return [];
    }
    if ('why' in found) {
      troubles.push({ about: 'doorway', doorway: index, why: found.why, side });
      return [];
    }
    const { wall, at } = told.sides[side];
    if (!at && wall !== undefined) taken.push({ kind: 'middle', doorway: index, room: name, wall });
    // A tick less, so that two halves that meet in one region stay two.
    const depth = Math.max(1, Math.floor(told.depth / 2) - 1);
    const group = placing.groups[ends[side]] ?? 0;
    const outline = passage(found.mouth, depth);
    return [{ index, group, side, name, runsOn: false, mouth: found.mouth, depth, outline }];
  });
}
