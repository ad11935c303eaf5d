/** Doorways between rooms: where they break through a wall, and where that puts the rooms. Lengths in ticks. */

import { difference, EndType, FillRule, inflatePaths, intersect, JoinType, type Paths64, union } from 'clipper2-ts';
import { at, doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { inches, type Length } from '../units/length.ts';
import type { Region } from './floor.ts';
import { turned } from './frame.ts';

// Union, difference and overlap of outlines, exact for walls along x and y, and the pose of a room in its region.

/** Outlines in ticks of the union of `parts` minus `without`: outer ones counterclockwise, holes clockwise. */
export function covered(parts: readonly Outline[], without: readonly Outline[] = []): readonly Outline[] {
  const whole = union(paths(parts), FillRule.NonZero);
  return outlines(without.length === 0 ? whole : difference(whole, paths(without), FillRule.NonZero));
}

/** Twice the overlap of two outlines, in square ticks. */
export function doubleShared(one: Outline, other: Outline): bigint {
  const shared = outlines(intersect(paths([one]), paths([other]), FillRule.NonZero));
  return shared.reduce((sum, outline) => sum + doubleArea(outline), 0n);
}

/** True when two outlines overlap or touch; touching outlines would become one floor along the shared edge. */
export function touches(one: Outline, other: Outline): boolean {
  const [grown] = outlines(inflatePaths(paths([one]), 1, JoinType.Miter, EndType.Polygon));
  return grown !== undefined && doubleShared(grown, other) > 0n;
}

function paths(parts: readonly Outline[]): Paths64 {
  return parts.map((outline) => outline.map(([x, y]) => ({ x, y })));
}

function outlines(found: Paths64): readonly Outline[] {
  return found.map((path) => path.map(({ x, y }) => [x, y] as const));
}

/** Limited to quarter turns so that every corner stays on a tick. */
export type QuarterTurn = 0 | 90 | 180 | 270;

/** A room point is turned counterclockwise by `angle`° about (0,0), then moved by `move` ticks into its region. */
export interface Pose {
  readonly angle: QuarterTurn;
  readonly move: Point;
}

export const AS_DRAWN: Pose = { angle: 0, move: [0, 0] };

function posedPoint(point: Point, { angle, move }: Pose): Point {
  const [x, y] = turned(point, angle);
  return [x + move[0], y + move[1]];
}

/** A room outline in its region; the order of the corners stays. */
export function posed(outline: Outline, pose: Pose): Outline {
  return outline.map((point) => posedPoint(point, pose));
}

/** Distance from one end of the wall, as seen facing it from inside the room, to the near jamb. */
export interface JambPlace {
  readonly from: 'left' | 'right';
  readonly distance: Length;
}

/** A wall along x or y from corner to corner, and the direction out of the room: (±1, 0) or (0, ±1). */
interface Face {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  readonly out: Point;
}

/** A stretch of a wall in outline order, and the direction out of the room. */
interface Mouth {
  readonly from: Point;
  readonly to: Point;
  readonly out: Point;
}

/** The wall starting at corner `wall` (from 0) of a counterclockwise outline; undefined for a slanted wall. */
export function faceOf(outline: Outline, wall: number): Face | undefined {
  const [from, to] = [at(outline, wall), at(outline, wall + 1)];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (dx !== 0 && dy !== 0) return undefined;
  return { from, to, length: Math.abs(dx + dy), out: [Math.sign(dy), 0 - Math.sign(dx)] };
}

/**
 * A stretch `width` ticks wide, with its near jamb where given, otherwise centered; undefined if it doesn't fit.
 * Outlines run counterclockwise, so someone facing a wall has its last corner on the left.
 */
function mouthOn({ from, to, length, out }: Face, width: number, place: JambPlace | undefined): Mouth | undefined {
  const rest = length - width;
  const near = place?.distance ?? Math.floor(rest / 2);
  const beyond = place?.from === 'right' ? near : rest - near;
  if (rest < 0 || near > rest) return undefined;
  const [ux, uy] = [Math.sign(to[0] - from[0]), Math.sign(to[1] - from[1])];
  const along = (distance: number): Point => [from[0] + ux * distance, from[1] + uy * distance];
  return { from: along(beyond), to: along(beyond + width), out };
}

function facesLooking(outline: Outline, way: Point): readonly number[] {
  return outline
    .map((_, wall) => ({ wall, face: faceOf(outline, wall) }))
    .filter(({ face }) => face?.out[0] === way[0] && face.out[1] === way[1])
    .sort((a, b) => (b.face?.length ?? 0) - (a.face?.length ?? 0))
    .map(({ wall }) => wall);
}

/**
 * The counterclockwise box from an opening outward, `depth` ticks deep; its far side runs from its third corner back to
 * its second.
 */
export function passage({ from, to, out }: Mouth, depth: number): Outline {
  const far = ([x, y]: Point): Point => [x + out[0] * depth, y + out[1] * depth];
  return [from, far(from), far(to), to];
}

/** A stud wall: 3 1/2 in stud plus 1/2 in board on each side (common practice). */
export const USUAL_WALL = inches(4.5);

/** One side of a doorway: its room and, where given, the wall (from 1) and the position along it. */
export interface DoorwaySide {
  readonly room: string;
  readonly wall?: number;
  readonly at?: JambPlace;
}

/** `depth` is the wall thickness. The floor either runs through or stops in the middle at a transition. */
export interface Doorway {
  readonly sides: readonly [DoorwaySide, DoorwaySide];
  readonly width: Length;
  readonly depth: Length;
  readonly runsOn: boolean;
}

/** A doorway in place. If the floor runs through, it has the box between the jambs and the region that box lies in. */
export interface HomeDoorway {
  readonly rooms: readonly [string, string];
  readonly width: Length;
  readonly depth: Length;
  readonly runsOn: boolean;
  readonly region?: string;
  readonly outline?: Outline;
}

/**
 * What was assumed because it wasn't given. `wall` counts from 1; `from` is where the room's sides point under that
 * assumption.
 */
export type Taken =
  | { readonly kind: 'wall'; readonly doorway: number; readonly room: string; readonly wall: number }
  | { readonly kind: 'middle'; readonly doorway: number; readonly room: string; readonly wall: number }
  | { readonly kind: 'turned'; readonly room: string; readonly angle: 90 | 180 | 270 }
  | { readonly kind: 'unplaced'; readonly doorway: number; readonly room: string };

export interface DoorwayTrouble {
  readonly about: 'doorway';
  readonly doorway: number;
  readonly why:
    | 'no room'
    | 'one room'
    | 'no wall'
    | 'notGiven'
    | 'slanted'
    | 'too wide'
    | 'turned'
    | 'apart'
    | 'overlap';
  /** The side with the problem, or the first one. */
  readonly side: 0 | 1;
  /** apart: ticks by which the two sides miss each other. overlap: the rooms that would overlap. */
  readonly by?: number;
  readonly rooms?: readonly [string, string];
}

// Placing rooms relative to each other through doorways where the floor runs through.

/** A doorway between two rooms by index: its walls in those rooms, and as the user gave them. */
export interface Link {
  readonly index: number;
  readonly rooms: readonly [number, number];
  readonly given: Doorway;
}

/**
 * `poses` and `groups` are by room. Rooms of one group form one region, in the coordinates of the group's first room.
 * `placedBy` is the doorway that placed a room.
 */
export interface Placing {
  readonly poses: readonly Pose[];
  readonly groups: readonly number[];
  readonly placedBy: readonly (number | undefined)[];
}

const QUARTERS: readonly QuarterTurn[] = [0, 90, 180, 270];

/** Poses every room. Adds to `troubles` what can't be placed, and to `taken` what had to be assumed. */
export function placeRooms(
  rooms: readonly Region[],
  links: readonly Link[],
  troubles: DoorwayTrouble[],
  taken: Taken[],
): Placing {
  const poses: (Pose | undefined)[] = rooms.map(() => undefined);
  const groups = rooms.map((_, i) => i);
  const placedBy: (number | undefined)[] = rooms.map(() => undefined);
  rooms.forEach((_, first) => {
    if (poses[first]) return;
    poses[first] = AS_DRAWN;
    for (;;) {
      const link = links.find(({ rooms: [a, b] }) => (poses[a] === undefined) !== (poses[b] === undefined) && a !== b);
      if (!link) return;
      const known: 0 | 1 = poses[link.rooms[0]] ? 0 : 1;
      const [from, to] = [link.rooms[known], link.rooms[known === 0 ? 1 : 0]];
      const pose = poseThrough(rooms, link, known, poses[from] ?? AS_DRAWN, troubles, taken);
      poses[to] = pose ?? AS_DRAWN;
      placedBy[to] = link.index;
      // A room that couldn't be placed stays in its own group; its trouble is reported.
      groups[to] = pose ? (groups[from] ?? from) : to;
      if (pose && pose.angle !== 0) taken.push({ kind: 'turned', room: rooms[to]?.name ?? '', angle: pose.angle });
    }
  });
  const placing = { poses: poses.map((pose) => pose ?? AS_DRAWN), groups, placedBy };
  if (troubles.length === 0) troubles.push(...overlaps(rooms, placing));
  return placing;
}

/** The pose of the room beyond a doorway, given that the room on side `known` has the pose `pose`. */
function poseThrough(
  rooms: readonly Region[],
  { index, rooms: ends, given }: Link,
  known: 0 | 1,
  pose: Pose,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): Pose | undefined {
  const beyond = known === 0 ? 1 : 0;
  const [here, there] = [given.sides[known], given.sides[beyond]];
  const [room, next] = [rooms[ends[known]], rooms[ends[beyond]]];
  if (!room || !next) return undefined;
  const fail = (why: DoorwayTrouble['why'], side: 0 | 1): undefined => {
    troubles.push({ about: 'doorway', doorway: index, why, side });
    return undefined;
  };
  const own = posed(room.outline, pose);
  const far = there.wall === undefined ? undefined : faceOf(next.outline, there.wall - 1);
  const wall = here.wall !== undefined ? here.wall - 1 : far && facesLooking(own, opposite(far.out))[0];
  if (wall === undefined) return fail('notGiven', known);
  const face = faceOf(own, wall);
  if (!face) return fail('slanted', known);
  if (here.wall === undefined) taken.push({ kind: 'wall', doorway: index, room: room.name, wall: wall + 1 });
  const mouth = mouthOn(face, given.width, here.at);
  if (!mouth) return fail('too wide', known);
  if (!here.at) taken.push({ kind: 'middle', doorway: index, room: room.name, wall: wall + 1 });
  const wallThere = there.wall !== undefined ? there.wall - 1 : facesLooking(next.outline, opposite(mouth.out))[0];
  const faceThere = wallThere === undefined ? undefined : faceOf(next.outline, wallThere);
  if (wallThere === undefined || !faceThere) return fail('slanted', beyond);
  if (there.wall === undefined) taken.push({ kind: 'wall', doorway: index, room: next.name, wall: wallThere + 1 });
  const mouthThere = mouthOn(faceThere, given.width, there.at);
  if (!mouthThere) return fail('too wide', beyond);
  if (!there.at) taken.push({ kind: 'middle', doorway: index, room: next.name, wall: wallThere + 1 });
  return meeting(mouth, mouthThere, given.depth);
}

/** The pose that puts one room's opening opposite another, `depth` ticks away. */
function meeting(mouth: Mouth, own: Mouth, depth: number): Pose | undefined {
  const angle = QUARTERS.find((turn) => same(turned(own.out, turn), opposite(mouth.out)));
  if (angle === undefined) return undefined;
  const [x, y] = turned(own.from, angle);
  const [tx, ty] = [mouth.to[0] + mouth.out[0] * depth, mouth.to[1] + mouth.out[1] * depth];
  return { angle, move: [tx - x, ty - y] };
}

function overlaps(rooms: readonly Region[], { poses, groups, placedBy }: Placing): readonly DoorwayTrouble[] {
  const outlines = rooms.map(({ outline }, i) => posed(outline, poses[i] ?? AS_DRAWN));
  const found: DoorwayTrouble[] = [];
  outlines.forEach((outline, i) => {
    outlines.slice(0, i).forEach((other, j) => {
      if (groups[i] !== groups[j] || !touches(outline, other)) return;
      const doorway = placedBy[i] ?? placedBy[j];
      if (doorway === undefined) return;
      const names = [rooms[j]?.name ?? '', rooms[i]?.name ?? ''] as const;
      found.push({ about: 'doorway', doorway, why: 'overlap', side: 0, rooms: names });
    });
  });
  return found;
}

function opposite([x, y]: Point): Point {
  return [0 - x, 0 - y];
}

function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** How far in front of another room's wall an opening lies; undefined if no facing wall is within `most` ticks. */
function facing(
  mouth: Mouth,
  outline: Region['outline'],
  most: number,
): { readonly wall: number; readonly distance: number } | undefined {
  const [ox, oy] = mouth.out;
  let best: { wall: number; distance: number } | undefined;
  for (const wall of facesLooking(outline, opposite(mouth.out))) {
    const [from, to] = [at(outline, wall), at(outline, wall + 1)];
    const distance = (from[0] - mouth.from[0]) * ox + (from[1] - mouth.from[1]) * oy;
    const along = ([x, y]: Point): number => x * Math.abs(oy) + y * Math.abs(ox);
    const [low, high] = [Math.min(along(from), along(to)), Math.max(along(from), along(to))];
    const holds = [mouth.from, mouth.to].every((point) => along(point) >= low && along(point) <= high);
    if (holds && distance > 0 && distance <= most && (!best || distance < best.distance)) best = { wall, distance };
  }
  return best;
}

/** A box of floor in a wall, in region coordinates: `depth` ticks out from an opening. */
export interface OpenedDoorway {
  readonly index: number;
  readonly group: number;
  readonly side: 0 | 1;
  readonly name: string;
  readonly runsOn: boolean;
  readonly mouth: Mouth;
  readonly depth: number;
  readonly outline: Outline;
}

/** Tolerance between the two measured sides of a doorway. */
const SLACK = inches(1);
/** The thickest wall allowed where rooms meet through several doorways. */
const THICKEST = inches(36);

/**
 * Opens every doorway: a full box where the floor runs through, half boxes where it stops. Adds to `troubles` what
 * doesn't fit, and to `taken` what had to be assumed.
 */
export function openDoorways(
  rooms: readonly Region[],
  links: readonly Link[],
  placing: Placing,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): readonly OpenedDoorway[] {
  return links.flatMap((link) =>
    link.given.runsOn ? through(rooms, link, placing, troubles) : halves(rooms, link, placing, troubles, taken),
  );
}

function sideMouth(rooms: readonly Region[], { rooms: ends, given }: Link, { poses }: Placing, side: 0 | 1) {
  const { wall, at } = given.sides[side];
  const room = rooms[ends[side]];
  if (wall === undefined || !room) return undefined;
  const face = faceOf(posed(room.outline, poses[ends[side]] ?? AS_DRAWN), wall - 1);
  if (!face) return { why: 'slanted' } as const;
  const mouth = mouthOn(face, given.width, at);
  return mouth ? { mouth } : ({ why: 'too wide' } as const);
}

/**
 * The box joining two rooms. It is as deep as the rooms actually lie apart, which can differ for a doorway that didn't
 * place them.
 */
function through(
  rooms: readonly Region[],
  link: Link,
  placing: Placing,
  troubles: DoorwayTrouble[],
): readonly OpenedDoorway[] {
  const { index, rooms: ends, given } = link;
  const tell = (why: DoorwayTrouble['why'], side: 0 | 1, by?: number): readonly OpenedDoorway[] => {
    troubles.push({ about: 'doorway', doorway: index, why, side, ...(by === undefined ? {} : { by }) });
    return [];
  };
  const placed = placing.placedBy.includes(index);
  // The better described side decides where the doorway is; the other follows from how the rooms lie.
  const side: 0 | 1 = given.sides[0].wall === undefined || (!given.sides[0].at && given.sides[1].at) ? 1 : 0;
  const beyond = side === 0 ? 1 : 0;
  const found = sideMouth(rooms, link, placing, side);
  if (!found) return tell('notGiven', 0);
  if ('why' in found) return tell(found.why, side);
  const next = rooms[ends[beyond]];
  if (!next) return [];
  const other = posed(next.outline, placing.poses[ends[beyond]] ?? AS_DRAWN);
  const wall = given.sides[beyond].wall;
  const met = facing(found.mouth, other, placed ? given.depth : THICKEST);
  const opposite = sideMouth(rooms, link, placing, beyond);
  if (opposite && 'why' in opposite) return tell(opposite.why, beyond);
  if (opposite && given.sides[beyond].at) {
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

/** How far two facing openings are misaligned along their walls. */
function missing(one: Mouth, other: Mouth): number {
  const along = ([x, y]: readonly [number, number]): number => x * Math.abs(one.out[1]) + y * Math.abs(one.out[0]);
  return Math.abs(along(one.from) - along(other.to));
}

/** Half of the doorway for each side whose wall is known. */
function halves(
  rooms: readonly Region[],
  link: Link,
  placing: Placing,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): readonly OpenedDoorway[] {
  const { index, rooms: ends, given } = link;
  return ([0, 1] as const).flatMap((side): OpenedDoorway[] => {
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
    const { wall, at } = given.sides[side];
    if (!at && wall !== undefined) taken.push({ kind: 'middle', doorway: index, room: name, wall });
    // One tick less, so that two halves meeting in one region stay separate.
    const depth = Math.max(1, Math.floor(given.depth / 2) - 1);
    const group = placing.groups[ends[side]] ?? 0;
    const outline = passage(found.mouth, depth);
    return [{ index, group, side, name, runsOn: false, mouth: found.mouth, depth, outline }];
  });
}
