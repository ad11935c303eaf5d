/** The walls of a room as trim runs along them: lengths in ticks, interior angles at both ends, bays and measured corners worked in. */

import type { Region } from '../layout/floor.ts';
import { wallLength } from '../units/geometry.ts';
import { type Length, ticks } from '../units/length.ts';
import { interiorAngle, toHundredth } from './corner.ts';

/** The end of a wall: its interior angle, and whether that was measured off the angle that the room was told with. */
export interface WallEnd {
  readonly interior: number;
  readonly measured: boolean;
}

/** A wall as one sees it who stands in the room and faces it. `label` is its number; a wall with a bay has parts 2.1, 2.2 … */
export interface TrimWall {
  readonly room: string;
  readonly label: string;
  readonly length: Length;
  readonly left: WallEnd;
  readonly right: WallEnd;
}

/** A bay of two equal sides and a front. `angle`: interior, between side and front; `at`: its near edge from that end of the wall, else centred. */
export interface Bay {
  readonly room: string | undefined;
  readonly wall: string;
  readonly front: Length;
  readonly side: Length;
  readonly angle: number;
  readonly at?: { readonly from: 'left' | 'right'; readonly distance: Length };
}

/** A corner as measured: between `wall` and the wall with the next number. */
export interface MeasuredCorner {
  readonly room: string | undefined;
  readonly wall: string;
  readonly interior: number;
}

/** A bay or a corner that names no wall of the rooms, a bay wider than its wall, or a corner turned inside out. */
export interface WallTrouble {
  readonly why: 'no wall' | 'bay too wide' | 'inside out';
  readonly about: 'bay' | 'corner';
  readonly index: number;
}

export interface Walls {
  readonly walls: readonly TrimWall[];
  readonly troubles: readonly WallTrouble[];
}

interface Side {
  readonly room: string;
  readonly label: string;
  readonly length: Length;
  /** Angle between this wall and the next. */
  readonly end: WallEnd;
}

/** The name by which a wall is known: its room and its number. */
export function wallName({ room, label }: Pick<TrimWall, 'room' | 'label'>): string {
  return `${room} ${label}`;
}

/** How far a bay reaches along its wall in ticks: front + 2 · side · cos(180° − angle), rounded once. */
export function bayMouth({ front, side, angle }: Pick<Bay, 'front' | 'side' | 'angle'>): Length {
  return ticks(front + Math.round(2 * side * Math.cos(((180 - angle) * Math.PI) / 180)));
}

/**
 * Walls of all rooms, each room's in the order met when one goes round it to the right, from wall 1: the right end of
 * one is the left end of the next. A bay or a corner without a room is in the first room that has such a wall.
 */
export function trimWalls(regions: readonly Region[], bays: readonly Bay[], corners: readonly MeasuredCorner[]): Walls {
  const troubles: WallTrouble[] = [];
  let rooms = regions.map(sidesOf);
  const indexOf = (room: string | undefined, label: string): readonly [number, number] | undefined => {
    for (const [r, sides] of rooms.entries()) {
      const s = sides.findIndex((side) => side.label === label);
      if (s >= 0 && (room === undefined || sides[s]?.room.toLowerCase() === room.toLowerCase())) return [r, s];
    }
    return undefined;
  };
  const replaced = (place: readonly [number, number], by: readonly Side[]): Side[][] =>
    rooms.map((sides, r) => (r === place[0] ? sides.flatMap((side, s) => (s === place[1] ? by : [side])) : sides));
  bays.forEach((bay, index) => {
    const place = indexOf(bay.room, bay.wall);
    const side = place && rooms[place[0]]?.[place[1]];
    const parts = side && withBay(side, bay);
    if (!place || !side) troubles.push({ why: 'no wall', about: 'bay', index });
    else if (!parts) troubles.push({ why: 'bay too wide', about: 'bay', index });
    else rooms = replaced(place, parts);
  });
  corners.forEach(({ room, wall, interior }, index) => {
    const place = indexOf(room, wall);
    const side = place && rooms[place[0]]?.[place[1]];
    if (!place || !side) troubles.push({ why: 'no wall', about: 'corner', index });
    else if (interior > 180 !== side.end.interior > 180) troubles.push({ why: 'inside out', about: 'corner', index });
    else rooms = replaced(place, [{ ...side, end: { interior, measured: interior !== side.end.interior } }]);
  });
  return { walls: rooms.flatMap(toTheRight), troubles };
}

function sidesOf({ name, outline }: Region): Side[] {
  return outline.map((_, i) => ({
    room: name,
    label: String(i + 1),
    length: wallLength(outline, i),
    end: { interior: interiorAngle(outline, i + 1), measured: false },
  }));
}

/** Against the clock the wall's right stub comes first, then the bay from right to left. Undefined where it does not fit. */
function withBay(wall: Side, bay: Bay): readonly Side[] | undefined {
  const mouth = bayMouth(bay);
  const rest = wall.length - mouth;
  const near = bay.at?.distance ?? Math.floor(rest / 2);
  const right = bay.at?.from === 'right' ? near : rest - near;
  if (mouth <= 0 || right <= 0 || rest - right <= 0) return undefined;
  const [mouthAngle, inner] = [toHundredth(360 - bay.angle), bay.angle];
  const parts: readonly (readonly [number, number])[] = [
    [right, mouthAngle],
    [bay.side, inner],
    [bay.front, inner],
    [bay.side, mouthAngle],
    [rest - right, wall.end.interior],
  ];
  return parts.map(([length, interior], i) => ({
    room: wall.room,
    label: `${wall.label}.${i + 1}`,
    length: ticks(length),
    end: { interior, measured: false },
  }));
}

/** Who faces a wall numbered against the clock has the next wall at the left. */
function toTheRight(sides: readonly Side[]): readonly TrimWall[] {
  const walls = sides.map(({ room, label, length, end }, i): TrimWall => {
    const before = sides[(i + sides.length - 1) % sides.length] ?? sides[i];
    return { room, label, length, left: end, right: before?.end ?? end };
  });
  const [first, ...others] = walls;
  return first ? [first, ...others.reverse()] : [];
}
