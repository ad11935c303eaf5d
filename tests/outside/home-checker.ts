/** An outsider's check of joined rooms: outlines that come out, floor through every doorway that runs on, none at a transition. */

import type { MultiPolygon, Pair, Polygon } from 'polygon-clipping';
import clipper from 'polygon-clipping';
import { z } from 'zod';
import type { PointData, RegionData } from './floor-checker-data.ts';
import { readFloor } from './floor-checker-data.ts';
import { toFrame } from './floor-checker-ground.ts';
import { areaByClipper } from './polygon-oracle.ts';

const point = z.tuple([z.int(), z.int()]);
const named = z.object({ name: z.string().min(1), outline: z.array(point).min(4) });
const home = z.object({
  regions: z.array(
    z.object({ name: z.string(), rooms: z.array(named).optional(), standing: z.array(named).optional() }),
  ),
  doorways: z.array(
    z.object({
      rooms: z.tuple([z.string(), z.string()]),
      width: z.int().positive(),
      depth: z.int().positive(),
      runsOn: z.boolean(),
      region: z.string().optional(),
      outline: z.array(point).length(4).optional(),
    }),
  ),
});

type Loop = readonly PointData[];

/** Every fault of the home in result data of kind "floor". The floor itself is judged by `checkFloor`. */
export function checkHome(data: unknown): string[] {
  const floor = readFloor(data);
  const read = home.safeParse(data);
  if ('faults' in floor) return floor.faults;
  if (!read.success) return read.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  const { regions, doorways } = read.data;
  const { gap } = floor.floor.rules;
  const faults: string[] = [];
  floor.floor.regions.forEach((region, i) => {
    const given = regions[i];
    const rooms = given?.rooms ?? [{ name: region.name, outline: region.outline }];
    const through = doorways.flatMap(({ outline, region: owner }) =>
      owner === region.name && outline ? [outline] : [],
    );
    const halves = region.openings.map((opening) => halfBox(opening, region, rooms));
    const things = given?.standing?.map(({ outline }) => outline) ?? [];
    const parts = [...rooms.map(({ outline }) => outline), ...through, ...halves];
    const whole = clipper.union(polygon(parts[0] ?? []), ...parts.slice(1).map(polygon));
    const wanted = things.length === 0 ? whole : clipper.difference(whole, ...things.map(polygon));
    const got: Polygon = [region.outline, ...region.holes].map((loop) => loop.map(([x, y]): Pair => [x, y]));
    if (areaByClipper(clipper.xor(wanted, [got])) !== 0n)
      faults.push(`${region.name}: its outline is not its rooms, doorways and things`);
    const sum = parts.reduce((area, loop) => area + areaByClipper([polygon(loop)]), 0n);
    if (areaByClipper(whole) !== sum) faults.push(`${region.name}: rooms or doorways lie on one another`);
    for (const box of through) {
      if (!isCovered(box, region, gap)) faults.push(`${region.name}: the floor does not run through a doorway`);
    }
    region.openings.forEach((opening) => {
      if (reaches(opening, region, gap)) faults.push(`${region.name}: the gap is not kept at a transition`);
    });
  });
  for (const { rooms, runsOn, region, width, depth, outline } of doorways) {
    if (runsOn !== (region !== undefined))
      faults.push(`${rooms.join(' to ')}: runs on and has no region, or the other way round`);
    if (!outline) continue;
    const area = areaByClipper([polygon(outline)]);
    if (area % BigInt(width) !== 0n)
      faults.push(`${rooms.join(' to ')}: the doorway is not as wide as told (${width} x ${depth})`);
    const joined = regions.find((one) => one.name === region)?.rooms?.map(({ name }) => name) ?? [];
    if (!rooms.every((room) => joined.includes(room))) faults.push(`${rooms.join(' to ')}: not both in ${region}`);
  }
  return faults;
}

function polygon(loop: Loop): Polygon {
  return [loop.map(([x, y]): Pair => [x, y])];
}

/** The half of a doorway between an opening and the nearest room wall behind it. */
function halfBox(
  { from, to }: RegionData['openings'][number],
  region: RegionData,
  rooms: readonly { outline: Loop }[],
): Loop {
  // The opening runs as the outline does, the floor to its left.
  const [ix, iy] = [-Math.sign(to[1] - from[1]), Math.sign(to[0] - from[0])];
  const depths = rooms.flatMap(({ outline }) =>
    outline.flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] ?? a;
      const across = (p: PointData): number => (p[0] - from[0]) * ix + (p[1] - from[1]) * iy;
      const along = (p: PointData): number => p[0] * Math.abs(iy) + p[1] * Math.abs(ix);
      const [low, high] = [Math.min(along(a), along(b)), Math.max(along(a), along(b))];
      const holds = [from, to].every((p) => along(p) >= low && along(p) <= high);
      return across(a) === across(b) && across(a) > 0 && holds ? [across(a)] : [];
    }),
  );
  const depth = Math.min(...depths);
  if (!Number.isFinite(depth)) throw new Error(`${region.name}: an opening with no wall behind it`);
  return [from, to, [to[0] + ix * depth, to[1] + iy * depth], [from[0] + ix * depth, from[1] + iy * depth]];
}

/** Every piece as a box in the room's coordinates is costly to turn back: the doorway is turned into the frame instead. */
function pieceBoxes(region: RegionData): MultiPolygon {
  return region.rows.flatMap(({ v, height, pieces }) =>
    pieces.map(
      ({ u, length }): Polygon => [
        [
          [u, v],
          [u + length, v],
          [u + length, v + height],
          [u, v + height],
        ],
      ],
    ),
  );
}

function boxOf(loop: Loop): [number, number, number, number] {
  const [xs, ys] = [loop.map(([x]) => x), loop.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The doorway less the gap at its two jambs is covered by pieces from side to side. */
function isCovered(box: Loop, region: RegionData, gap: number): boolean {
  const seen = box.map((corner) => toFrame(corner, region.frame));
  const [left, low, right, top] = boxOf(seen);
  // First and last corner lie on one wall: the jambs are the other two sides.
  const [a, b] = [seen[0] ?? [0, 0], seen[3] ?? [0, 0]];
  const jambsAcross = a[0] !== b[0];
  const inner: Polygon = jambsAcross
    ? [
        [
          [left + gap, low],
          [right - gap, low],
          [right - gap, top],
          [left + gap, top],
        ],
      ]
    : [
        [
          [left, low + gap],
          [right, low + gap],
          [right, top - gap],
          [left, top - gap],
        ],
      ];
  const wanted = areaByClipper([inner]);
  const near = pieceBoxes(region).filter(([ring]) => ring && meets(ring, [left, low, right, top]));
  const [first, ...others] = near;
  if (!first) return false;
  return areaByClipper(clipper.intersection([inner], clipper.union(first, ...others))) === wanted;
}

function meets(ring: readonly Pair[], [left, low, right, top]: readonly number[]): boolean {
  const [l, b, r, t] = boxOf(ring.map(([x, y]): PointData => [x, y]));
  return l < (right ?? 0) && r > (left ?? 0) && b < (top ?? 0) && t > (low ?? 0);
}

/** Whether pieces reach into the last gap before an opening, where nothing else of the floor lies. */
function reaches({ from, to }: RegionData['openings'][number], region: RegionData, gap: number): boolean {
  if (gap === 0) return false;
  const [ix, iy] = [-Math.sign(to[1] - from[1]), Math.sign(to[0] - from[0])];
  const strip: Loop = [from, to, [to[0] + ix * gap, to[1] + iy * gap], [from[0] + ix * gap, from[1] + iy * gap]];
  const seen = strip.map((corner) => toFrame(corner, region.frame));
  const [left, low, right, top] = boxOf(seen);
  const alongRows = Math.abs((toFrame(to, region.frame)[0] ?? 0) - (toFrame(from, region.frame)[0] ?? 0)) > 0;
  // Rows that run into the doorway end before the gap; one that lies along its end is notched there, unless it lies wholly in the gap.
  return pieceBoxes(region).some(([ring]) => {
    if (!ring || !meets(ring, [left, low, right, top])) return false;
    const [, b, , t] = boxOf(ring.map(([x, y]): PointData => [x, y]));
    return !alongRows || (b >= low && t <= top);
  });
}
