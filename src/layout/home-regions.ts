/** Turning a home into regions: rooms joined where the floor runs through, ended in doorways, cut out around fixtures. */

import { at, boxOf, doubleArea, type Outline, type Point, wallLength } from '../units/geometry.ts';
import type { Area, Length } from '../units/length.ts';
import {
  AS_DRAWN,
  covered,
  type Doorway,
  type DoorwayTrouble,
  doubleShared,
  faceOf,
  type HomeDoorway,
  type Link,
  type OpenedDoorway,
  openDoorways,
  type Placing,
  passage,
  placeRooms,
  posed,
  type Taken,
} from './doorways.ts';
import type { LaidRegion, Opening, Piece, Region, RoomPart, Row, Standing } from './floor.ts';
import { type Angle, startingWall, toFrame } from './frame.ts';

export interface Home {
  readonly regions: readonly Region[];
  readonly doorways: readonly HomeDoorway[];
  readonly taken: readonly Taken[];
}

export type HomeTrouble = DoorwayTrouble | StandingTrouble;

/** With more rooms than this, not all of their names go into the region's name. */
const MOST_NAMES = 3;

/**
 * The regions of a home, each in the coordinates of its first room as given. A room without doorways or fixtures stays
 * as it is. Where the floor runs through, the box between the jambs, as deep as the wall is thick, joins the two rooms;
 * where it stops, each room extends halfway into the wall, less a tick, and gets an opening there. Returns the troubles
 * instead if the parts don't fit together. Never throws on user input.
 */
export function homeOf(
  rooms: readonly Region[],
  doorways: readonly Doorway[],
  standing: readonly ParsedStanding[],
): Home | { readonly troubles: readonly HomeTrouble[] } {
  const troubles: HomeTrouble[] = [];
  const wrong: DoorwayTrouble[] = [];
  const taken: Taken[] = [];
  const links = linksOf(rooms, doorways, wrong);
  const placing = placeRooms(
    rooms,
    links.filter(({ given }) => given.runsOn),
    wrong,
    taken,
  );
  const opened = wrong.length > 0 ? [] : openDoorways(rooms, links, placing, wrong, taken);
  if (wrong.length === 0) wrong.push(...crowded(rooms, placing, opened));
  troubles.push(...wrong);
  const boxes = boxesOf(rooms, standing, troubles);
  if (troubles.length > 0) return { troubles };
  const regions: Region[] = [];
  for (const group of new Set(placing.groups)) {
    const members = rooms.map((_, i) => i).filter((i) => placing.groups[i] === group);
    const region = regionOf(rooms, members, placing, opened, boxes);
    if (region) regions.push(region);
    else {
      const parted = boxes.find(({ room }) => members.includes(room));
      troubles.push({ about: 'standing', standing: parted?.index ?? 0, why: 'parts' });
    }
  }
  if (troubles.length > 0) return { troubles };
  return {
    regions,
    taken,
    doorways: links.map(({ index, rooms: [a, b], given: { width, depth, runsOn } }): HomeDoorway => {
      const own = opened.find((one) => one.index === index && one.runsOn);
      const region = regions.find((one) => one.rooms?.some(({ name }) => name === rooms[a]?.name));
      const names = [rooms[a]?.name ?? '', rooms[b]?.name ?? ''] as const;
      return {
        rooms: names,
        width,
        depth,
        runsOn,
        ...(own && region ? { region: region.name, outline: own.outline } : {}),
      };
    }),
  };
}

function linksOf(rooms: readonly Region[], doorways: readonly Doorway[], troubles: DoorwayTrouble[]): readonly Link[] {
  return doorways.flatMap((given, index): Link[] => {
    const [a, b] = given.sides.map(({ room }) =>
      rooms.findIndex(({ name }) => name.toLowerCase() === room.toLowerCase()),
    );
    if (a === undefined || b === undefined) return [];
    const before = troubles.length;
    const tell = (why: DoorwayTrouble['why'], side: 0 | 1): void => {
      troubles.push({ about: 'doorway', doorway: index, why, side });
    };
    if (a < 0) tell('no room', 0);
    if (b < 0) tell('no room', 1);
    if (a === b && a >= 0) tell('one room', 1);
    given.sides.forEach(({ wall }, side) => {
      const outline = rooms[side === 0 ? a : b]?.outline;
      if (outline && wall !== undefined && (wall < 1 || wall > outline.length)) tell('no wall', side === 0 ? 0 : 1);
    });
    return troubles.length > before ? [] : [{ index, rooms: [a, b], given }];
  });
}

function crowded(
  rooms: readonly Region[],
  { groups, poses }: Placing,
  opened: readonly OpenedDoorway[],
): readonly DoorwayTrouble[] {
  return opened.flatMap((one): DoorwayTrouble[] => {
    const mates = [
      ...rooms.flatMap(({ outline, name }, i) =>
        groups[i] === one.group ? [{ outline: posed(outline, poses[i] ?? AS_DRAWN), name }] : [],
      ),
      ...opened.filter((other) => other.index < one.index && other.group === one.group),
    ];
    const hit = mates.find(({ outline }) => doubleShared(outline, one.outline) > 0n);
    if (!hit) return [];
    return [{ about: 'doorway', doorway: one.index, why: 'overlap', side: one.side, rooms: [one.name, hit.name] }];
  });
}

/** The region of a group of rooms; undefined when its fixtures split it apart. */
function regionOf(
  rooms: readonly Region[],
  members: readonly number[],
  { groups, poses }: Placing,
  opened: readonly OpenedDoorway[],
  boxes: readonly ObstacleBox[],
): Region | undefined {
  const own = opened.filter(({ group }) => group === groups[members[0] ?? 0]);
  const things = boxes
    .filter(({ room }) => members.includes(room))
    .map(({ name, room, outline }): Standing => ({ name, outline: posed(outline, poses[room] ?? AS_DRAWN) }));
  const [first] = members.flatMap((i) => rooms[i] ?? []);
  if (!first) return undefined;
  if (members.length === 1 && own.length === 0 && things.length === 0) return first;
  const parts = members.flatMap((i): RoomPart[] => {
    const room = rooms[i];
    return room ? [{ name: room.name, outline: posed(room.outline, poses[i] ?? AS_DRAWN) }] : [];
  });
  const solid = members.flatMap((i) => (rooms[i]?.holes ?? []).map((hole) => posed(hole, poses[i] ?? AS_DRAWN)));
  const found = covered(
    [...parts, ...own].map(({ outline }) => outline),
    [...things.map(({ outline }) => outline), ...solid.map((hole) => [...hole].reverse())],
  );
  const outers = found.filter((outline) => doubleArea(outline) > 0n);
  const [outline] = outers;
  if (!outline || outers.length > 1) return undefined;
  return {
    name: joinedName(parts.map(({ name }) => name)),
    outline,
    holes: found.filter((path) => path !== outline),
    openings: own.flatMap(({ runsOn, mouth, depth }): Opening[] => {
      if (runsOn) return [];
      const [, from, to] = passage(mouth, depth);
      return from && to ? [{ from, to }] : [];
    }),
    rooms: parts,
    ...(things.length > 0 ? { standing: things } : {}),
  };
}

function joinedName(names: readonly string[]): string {
  const [first = ''] = names;
  return names.length <= MOST_NAMES ? names.join(' + ') : `${first} + ${names.length - 1} more`;
}

/** Rooms by name with their square ticks, and the total of the doorways between them. */
interface RoomAreas {
  readonly rooms: readonly { readonly name: string; readonly area: Area }[];
  readonly doorways: Area;
}

/** Square ticks of each room of a region without its fixtures; with the doorways they add up to the region's area. */
export function roomAreas(region: Region): RoomAreas {
  const whole = [region.outline, ...region.holes].reduce((sum, path) => sum + doubleArea(path), 0n);
  if (!region.rooms) return { rooms: [{ name: region.name, area: whole / 2n }], doorways: 0n };
  const doubled = region.rooms.map(({ name, outline }) => {
    const things = (region.standing ?? []).reduce((sum, thing) => sum + doubleShared(thing.outline, outline), 0n);
    return { name, area: doubleArea(outline) - things };
  });
  return {
    rooms: doubled.map(({ name, area }) => ({ name, area: area / 2n })),
    doorways: (whole - doubled.reduce((sum, { area }) => sum + area, 0n)) / 2n,
  };
}

/**
 * Names of the rooms a run crosses, from its left end, and of the fixtures it goes around. Empty rooms if there is only
 * one.
 */
interface RunPlace {
  readonly rooms: readonly string[];
  readonly round: readonly string[];
}

/** Prepares the rooms and fixtures of a region in its laying frame, for repeated lookups run by run. */
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

// Walls by the numbers the user gave them, even after doorways and fixtures have changed the outline.

/** A wall from corner to corner in region coordinates; `number` counts from 1 within its room. */
interface ParsedWall {
  readonly room: string;
  readonly number: number;
  readonly length: Length;
  readonly from: Point;
  readonly to: Point;
}

function wallsAsGiven(region: Pick<Region, 'name' | 'outline' | 'rooms'>): readonly ParsedWall[] {
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

/**
 * The wall the first row lies against at `angle`: the longest of several equally far out if rooms were joined or
 * changed. Undefined if only a corner is outermost.
 */
export function startWall(region: Pick<Region, 'name' | 'outline' | 'rooms'>, angle: Angle): ParsedWall | undefined {
  const walls = wallsAsGiven(region);
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

// Fixtures in a room (islands, hearths, posts, vents), each a box placed from the room's sides. Lengths in ticks.

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
