/** Fixtures in a room (islands, hearths, posts, vents), each a box placed from the room's sides. Lengths in ticks. */

import { boxOf, doubleArea, type Outline } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';
import { doubleShared } from './combine-areas.ts';
import { faceOf } from './doorways.ts';
import type { Region } from './floor.ts';

/** Distance of the near side of a fixture from an outermost side of its room, or from a wall (from 1), or centered. */
export type StandingPlace =
  | { readonly from: 'left' | 'right' | 'bottom' | 'top' | number; readonly distance: Length }
  | { readonly from: 'middle' };

/**
 * A fixture as given: `across` along the first side of its room, `up` along the second. Without a room it stands in the
 * only one.
 */
export interface ParsedStanding {
  readonly name: string;
  readonly room: string | undefined;
  readonly across: Length;
  readonly up: Length;
  readonly places: readonly StandingPlace[];
}

export interface StandingTrouble {
  readonly about: 'standing';
  readonly standing: number;
  readonly why: 'no room' | 'which room' | 'no wall' | 'placed twice' | 'unplaced' | 'outside' | 'overlap' | 'parts';
  readonly other?: number;
}

/** A fixture in the coordinates of its room as given; the room by index. */
export interface ObstacleBox {
  readonly index: number;
  readonly room: number;
  readonly name: string;
  readonly outline: Outline;
}

/** The boxes of all fixtures; those that can't be placed are added to `troubles`. */
export function boxesOf(
  rooms: readonly Region[],
  standing: readonly ParsedStanding[],
  troubles: { push(trouble: StandingTrouble): unknown },
): readonly ObstacleBox[] {
  const boxes: ObstacleBox[] = [];
  for (const [index, given] of standing.entries()) {
    const room =
      given.room === undefined ? 0 : rooms.findIndex(({ name }) => name.toLowerCase() === given.room?.toLowerCase());
    const outline = rooms[room]?.outline;
    const box = outline && boxIn(outline, given);
    const why = whyNot(rooms, given, outline, box);
    if (why || !box || typeof box === 'string') {
      troubles.push({ about: 'standing', standing: index, why: why ?? 'no room' });
      continue;
    }
    const other = boxes.find((one) => one.room === room && doubleShared(one.outline, box) > 0n);
    if (other) troubles.push({ about: 'standing', standing: index, why: 'overlap', other: other.index });
    else boxes.push({ index, room, name: given.name, outline: box });
  }
  return boxes;
}

function whyNot(
  rooms: readonly Region[],
  given: ParsedStanding,
  outline: Outline | undefined,
  box: Outline | StandingTrouble['why'] | undefined,
): StandingTrouble['why'] | undefined {
  if (given.room === undefined && rooms.length > 1) return 'which room';
  if (!outline || !box) return 'no room';
  if (typeof box === 'string') return box;
  return doubleShared(box, outline) === doubleArea(box) ? undefined : 'outside';
}

/** The box of a fixture in the coordinates of its room as given, or why it has none. */
function boxIn(outline: Outline, { across, up, places }: ParsedStanding): Outline | StandingTrouble['why'] {
  const { minX, maxX, minY, maxY } = boxOf(outline);
  const lows: number[][] = [[], []];
  for (const place of places) {
    if (place.from === 'middle') continue;
    const { from, distance } = place;
    if (typeof from === 'number') {
      const face = from >= 1 && from <= outline.length ? faceOf(outline, from - 1) : undefined;
      if (!face) return 'no wall';
      const [ox, oy] = face.out;
      if (ox !== 0) lows[0]?.push(ox > 0 ? face.from[0] - distance - across : face.from[0] + distance);
      else lows[1]?.push(oy > 0 ? face.from[1] - distance - up : face.from[1] + distance);
    } else if (from === 'left' || from === 'right')
      lows[0]?.push(from === 'left' ? minX + distance : maxX - distance - across);
    else lows[1]?.push(from === 'bottom' ? minY + distance : maxY - distance - up);
  }
  if (lows.some(({ length }) => length > 1)) return 'placed twice';
  const middle = places.some(({ from }) => from === 'middle');
  const x = lows[0]?.[0] ?? (middle ? Math.floor((minX + maxX - across) / 2) : undefined);
  const y = lows[1]?.[0] ?? (middle ? Math.floor((minY + maxY - up) / 2) : undefined);
  if (x === undefined || y === undefined) return 'unplaced';
  return [
    [x, y],
    [x + across, y],
    [x + across, y + up],
    [x, y + up],
  ];
}
