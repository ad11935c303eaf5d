/** The walls of a room as trim sees them, with bays, measured corners, studs and doors. Lengths in ticks, angles in degrees. */

import type { Region } from '../layout/floor.ts';
import { at, type Outline, wallLength } from '../units/geometry.ts';
import { type Length, ticks } from '../units/length.ts';

/** How a piece of trim ends; `setting` is the saw's angle in degrees off square. */
export interface Cut {
  readonly cut: 'miter' | 'square' | 'cope' | 'scarf';
  readonly setting: number;
}

export const SQUARE: Cut = { cut: 'square', setting: 0 };

/** Angles are rounded to a hundredth of a degree, finer than any saw can be set. */
const HUNDREDTHS = 100;

function toHundredth(angle: number): number {
  return Math.round(angle * HUNDREDTHS) / HUNDREDTHS;
}

/**
 * The interior angle at corner `index` of a counterclockwise outline: 90 for a square inside corner, 270 for an outside
 * one.
 */
export function interiorAngle(outline: Outline, index: number): number {
  const [px, py] = at(outline, index - 1);
  const [cx, cy] = at(outline, index);
  const [nx, ny] = at(outline, index + 1);
  const [ax, ay, bx, by] = [cx - px, cy - py, nx - cx, ny - cy];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return toHundredth(180 - (turn * 180) / Math.PI);
}

/**
 * The saw's setting for a miter, |180° − interior| ÷ 2: 45° at 90° and at 270°, 22.5° at 135°. Reported by the trade;
 * follows from bisecting the corner.
 */
export function sawSetting(interior: number): number {
  return toHundredth(Math.abs(180 - interior) / 2);
}

export function isOutside(interior: number): boolean {
  return interior > 180;
}

/** What a slanted end adds to a piece: thickness × tan(setting), rounded once to a tick. Setting below 90°. */
export function slant(thickness: number, setting: number): Length {
  return ticks(Math.round(thickness * Math.tan(radians(setting))));
}

/** What a cut takes along the stick: kerf ÷ cos(setting), rounded once to a tick. Setting below 90°. */
export function kerfAlong(kerf: number, setting: number): Length {
  return ticks(Math.round(kerf / Math.cos(radians(setting))));
}

/** Total turning of the corners in degrees, Σ(180 − interior): 360 for every closed room. */
export function turning(interiors: readonly number[]): number {
  return toHundredth(interiors.reduce((sum, interior) => sum + 180 - interior, 0));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** The end of a wall: its interior angle, and whether that was measured rather than taken from the room's shape. */
export interface WallEnd {
  readonly interior: number;
  readonly measured: boolean;
}

/** A wall as seen facing it from inside. `label` is its number; a wall with a bay has parts 2.1, 2.2 … */
export interface TrimWall {
  readonly room: string;
  readonly label: string;
  readonly length: Length;
  readonly left: WallEnd;
  readonly right: WallEnd;
}

/**
 * A bay of two equal sides and a front. `angle`: interior, between side and front; `at`: its near edge from that end of
 * the wall, centered if absent.
 */
export interface Bay {
  readonly room: string | undefined;
  readonly wall: string;
  readonly front: Length;
  readonly side: Length;
  readonly angle: number;
  readonly at?: { readonly from: 'left' | 'right'; readonly distance: Length };
}

/** A measured corner between `wall` and the wall with the next number. */
export interface MeasuredCorner {
  readonly room: string | undefined;
  readonly wall: string;
  readonly interior: number;
}

/** A bay or corner on a wall that doesn't exist, a bay wider than its wall, or a corner turned inside out. */
export interface WallTrouble {
  readonly why: 'no wall' | 'bay too wide' | 'inside out';
  readonly about: 'bay' | 'corner';
  readonly index: number;
}

interface Walls {
  readonly walls: readonly TrimWall[];
  readonly troubles: readonly WallTrouble[];
}

interface Side {
  readonly room: string;
  readonly label: string;
  readonly length: Length;
  readonly end: WallEnd;
}

export function wallName({ room, label }: Pick<TrimWall, 'room' | 'label'>): string {
  return `${room} ${label}`;
}

/** How much of its wall a bay takes, in ticks: front + 2 · side · cos(180° − angle), rounded once. */
function bayMouth({ front, side, angle }: Pick<Bay, 'front' | 'side' | 'angle'>): Length {
  return ticks(front + Math.round(2 * side * Math.cos(((180 - angle) * Math.PI) / 180)));
}

/**
 * Walls of all rooms, each room's in order going around to the right from wall 1: the right end of one is the left end
 * of the next. A bay or corner without a room belongs to the first room that has such a wall.
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

/**
 * Splits a wall at its bay. Counterclockwise, the wall's right stub comes first, then the bay from right to left.
 * Undefined if it doesn't fit.
 */
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

/**
 * Walls are numbered counterclockwise, so someone facing one has the next wall on the left; this reverses the order.
 */
function toTheRight(sides: readonly Side[]): readonly TrimWall[] {
  const walls = sides.map(({ room, label, length, end }, i): TrimWall => {
    const before = sides[(i + sides.length - 1) % sides.length] ?? sides[i];
    return { room, label, length, left: end, right: before?.end ?? end };
  });
  const [first, ...others] = walls;
  return first ? [first, ...others.reverse()] : [];
}

// Studs. Ticks from the wall's left end.

export interface Studs {
  readonly first: Length;
  readonly spacing: Length;
}

/** Studs strictly between two positions on a wall, ascending. Throws a RangeError when the spacing is not positive. */
export function studsBetween({ first, spacing }: Studs, from: number, to: number): readonly Length[] {
  if (spacing <= 0) throw new RangeError(`studs ${spacing} ticks apart`);
  const studs: Length[] = [];
  const begin = first > from ? first : first + (Math.floor((from - first) / spacing) + 1) * spacing;
  for (let stud = begin; stud < to; stud += spacing) studs.push(ticks(stud));
  return studs;
}

// Doors and other openings, casing included, and the stretches of wall between them.

/** A door as given: the width between its jambs and, if known, where it is. */
export interface Door {
  readonly width: Length;
  readonly room?: string;
  readonly wall?: string;
  /** Distance from an end of the wall to the near jamb; centered if absent. */
  readonly at?: { readonly from: 'left' | 'right'; readonly distance: Length };
}

/** An opening along its wall as seen facing it, casing included. `door` is the door's index from 0. */
export interface WallOpening {
  readonly wall: string;
  readonly from: Length;
  readonly to: Length;
  readonly door: number;
  /** False when the wall was chosen because none was given. */
  readonly placed: boolean;
}

interface DoorTrouble {
  readonly why: 'no wall' | 'too wide' | 'meets another' | 'no room left';
  readonly door: number;
}

interface Openings {
  readonly openings: readonly WallOpening[];
  readonly troubles: readonly DoorTrouble[];
}

export interface Stretch {
  readonly wall: TrimWall;
  readonly from: Length;
  readonly to: Length;
  readonly left: 'corner' | 'door';
  readonly right: 'corner' | 'door';
}

/**
 * Places each door with its casing on both sides; a casing that meets the corner is cut there. Doors with a wall come
 * first, centered on it if they have no position. A door without a wall goes in the middle of the longest stretch left,
 * with `placed` false. A door without a room belongs to the first room that has such a wall.
 */
export function placeDoors(walls: readonly TrimWall[], doors: readonly Door[], casing: Length): Openings {
  const openings: WallOpening[] = [];
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

type Spot = Pick<WallOpening, 'wall' | 'from' | 'to'> | Pick<DoorTrouble, 'why'>;

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

function anywhere(walls: readonly TrimWall[], openings: readonly WallOpening[], width: number): Spot {
  const [longest] = stretchesOf(walls, openings).sort((a, b) => b.to - b.from - (a.to - a.from));
  if (!longest || longest.to - longest.from < width) return { why: 'no room left' };
  const from = longest.from + Math.floor((longest.to - longest.from - width) / 2);
  return { wall: wallName(longest.wall), from: ticks(from), to: ticks(from + width) };
}

/** What is left of the walls between openings, wall by wall, left to right. */
export function stretchesOf(walls: readonly TrimWall[], openings: readonly WallOpening[]): Stretch[] {
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
