/** Rooms placed to one another through the doorways where the floor runs on. */

import { at, type Point } from '../units/geometry.ts';
import type { Doorway, DoorwayTrouble, Taken } from './doorway.ts';
import type { Region } from './floor.ts';
import { turned } from './frame.ts';
import { touches } from './home-ground.ts';
import { faceOf, facesLooking, type Mouth, mouthOn } from './mouth.ts';
import { AS_TOLD, type Pose, posed, type QuarterTurn } from './pose.ts';

/** A doorway between two rooms by index, its told walls there and as they were told. */
export interface Link {
  readonly index: number;
  readonly rooms: readonly [number, number];
  readonly told: Doorway;
}

/** `poses` and `group` by room; rooms of one group lie in one region, in the coordinates of the group's first room. `placedBy`: the doorway that placed a room. */
export interface Placing {
  readonly poses: readonly Pose[];
  readonly groups: readonly number[];
  readonly placedBy: readonly (number | undefined)[];
}

const QUARTERS: readonly QuarterTurn[] = [0, 90, 180, 270];

/** Every room with its pose. What cannot be placed is added to `troubles`, what was taken because it was not told to `taken`. */
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
    poses[first] = AS_TOLD;
    for (;;) {
      const link = links.find(({ rooms: [a, b] }) => (poses[a] === undefined) !== (poses[b] === undefined) && a !== b);
      if (!link) return;
      const known: 0 | 1 = poses[link.rooms[0]] ? 0 : 1;
      const [from, to] = [link.rooms[known], link.rooms[known === 0 ? 1 : 0]];
      const pose = poseThrough(rooms, link, known, poses[from] ?? AS_TOLD, troubles, taken);
      poses[to] = pose ?? AS_TOLD;
      placedBy[to] = link.index;
      // A room that could not be placed is left by itself; its trouble is told.
      groups[to] = pose ? (groups[from] ?? from) : to;
      if (pose && pose.angle !== 0) taken.push({ kind: 'turned', room: rooms[to]?.name ?? '', angle: pose.angle });
    }
  });
  const placing = { poses: poses.map((pose) => pose ?? AS_TOLD), groups, placedBy };
  if (troubles.length === 0) troubles.push(...overlaps(rooms, placing));
  return placing;
}

/** The pose of the room beyond a doorway, whose room on the side `known` has the pose `pose`. */
function poseThrough(
  rooms: readonly Region[],
  { index, rooms: ends, told }: Link,
  known: 0 | 1,
  pose: Pose,
  troubles: DoorwayTrouble[],
  taken: Taken[],
): Pose | undefined {
  const beyond = known === 0 ? 1 : 0;
  const [here, there] = [told.sides[known], told.sides[beyond]];
  const [room, next] = [rooms[ends[known]], rooms[ends[beyond]]];
  if (!room || !next) return undefined;
  const fail = (why: DoorwayTrouble['why'], side: 0 | 1): undefined => {
    troubles.push({ about: 'doorway', doorway: index, why, side });
    return undefined;
  };
  const own = posed(room.outline, pose);
  const far = there.wall === undefined ? undefined : faceOf(next.outline, there.wall - 1);
  const wall = here.wall !== undefined ? here.wall - 1 : far && facesLooking(own, opposite(far.out))[0];
  if (wall === undefined) return fail('untold', known);
  const face = faceOf(own, wall);
  if (!face) return fail('slanted', known);
  if (here.wall === undefined) taken.push({ kind: 'wall', doorway: index, room: room.name, wall: wall + 1 });
  const mouth = mouthOn(face, told.width, here.at);
  if (!mouth) return fail('too wide', known);
  if (!here.at) taken.push({ kind: 'middle', doorway: index, room: room.name, wall: wall + 1 });
  const wallThere = there.wall !== undefined ? there.wall - 1 : facesLooking(next.outline, opposite(mouth.out))[0];
  const faceThere = wallThere === undefined ? undefined : faceOf(next.outline, wallThere);
  if (wallThere === undefined || !faceThere) return fail('slanted', beyond);
  if (there.wall === undefined) taken.push({ kind: 'wall', doorway: index, room: next.name, wall: wallThere + 1 });
  const mouthThere = mouthOn(faceThere, told.width, there.at);
  if (!mouthThere) return fail('too wide', beyond);
  if (!there.at) taken.push({ kind: 'middle', doorway: index, room: next.name, wall: wallThere + 1 });
  return meeting(mouth, mouthThere, told.depth);
}

/** The pose that brings a mouth of a room opposite another one, `depth` ticks away. */
function meeting(mouth: Mouth, own: Mouth, depth: number): Pose | undefined {
  const angle = QUARTERS.find((turn) => same(turned(own.out, turn), opposite(mouth.out)));
  if (angle === undefined) return undefined;
  const [x, y] = turned(own.from, angle);
  const [tx, ty] = [mouth.to[0] + mouth.out[0] * depth, mouth.to[1] + mouth.out[1] * depth];
  return { angle, move: [tx - x, ty - y] };
}

/** Rooms of one group that lie on one another or touch without a wall between. */
function overlaps(rooms: readonly Region[], { poses, groups, placedBy }: Placing): readonly DoorwayTrouble[] {
  const outlines = rooms.map(({ outline }, i) => posed(outline, poses[i] ?? AS_TOLD));
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

export function opposite([x, y]: Point): Point {
  return [0 - x, 0 - y];
}

function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** How far a mouth in one room lies in front of a wall of another that looks at it; undefined where none does within `most` ticks. */
export function facing(
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
