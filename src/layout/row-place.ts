/** Where a run of a row lies in its region: in which rooms, and round what. */

import { boxOf, type Outline } from '../units/geometry.ts';
import type { LaidRegion, Piece, Row } from './floor.ts';
import { toFrame } from './frame.ts';
import { doubleShared } from './home-ground.ts';

/** Names of the rooms a run lies in, from its left end on, and of the things it goes round; no rooms where there is only one. */
export interface RunPlace {
  readonly rooms: readonly string[];
  readonly round: readonly string[];
}

/** The rooms and things of a region in its laying frame, to ask of run after run. */
export function placesIn(region: LaidRegion, gap: number): (row: Row, run: readonly Piece[]) => RunPlace {
  const named = region.rooms && region.rooms.length > 1 ? region.rooms : [];
  const seen = ({ name, outline }: { name: string; outline: Outline }) => {
    const own = toFrame(outline, region.frame);
    return { name, own, ...boxOf(own) };
  };
  const rooms = named.map(seen).sort((a, b) => a.minX - b.minX);
  const things = (region.standing ?? []).map(seen);
  return ({ v, height }, run) => {
    const [left, right] = [run[0]?.u ?? 0, Math.max(0, ...run.map(({ u, length }) => u + length))];
    const box: Outline = [
      [left, v],
      [right, v],
      [right, v + height],
      [left, v + height],
    ];
    const near = (other: (typeof rooms)[number], by: number): boolean =>
      other.minX - by <= right && other.maxX + by >= left && other.minY - by < v + height && other.maxY + by > v;
    return {
      rooms: rooms.filter((room) => near(room, 0) && doubleShared(room.own, box) > 0n).map(({ name }) => name),
      round: things.filter((thing) => near(thing, gap)).map(({ name }) => name),
    };
  };
}
