/** Small floors laid by hand with lengths of a few ticks, so that every number can be checked in the head. */

import type { FloorData, PieceData, RegionData, RowData } from './floor-checker-data.ts';

type ReadLine = [u: number, length: number, plank: number, part: PieceData['part']];

/** Pieces that share one edge. */
export function pieces(edge: PieceData['edge'], ...given: ReadLine[]): PieceData[] {
  return given.map(([u, length, plank, part]) => ({ u, length, plank, part, edge }));
}

const upright = (name: string, outline: [number, number][]): Omit<RegionData, 'rows'> => ({
  name,
  outline,
  holes: [],
  openings: [],
  frame: { origin: [0, 0], angle: 0 },
});

const plank = { width: 6, length: 48, perCarton: 4, lock: 'click' as const };
const rules = { gap: 1, kerf: 1, stagger: 10, minEnd: 8, minRip: 2, pattern: { name: 'offcut-first' as const } };

/**
 * A living room of two runs of 100 (30 + 48 + 22, then 15 + 48 + 37; the 22 and the 15 from plank 3: 22 + 1 + 15 ≤ 48) and a
 * closet turned by 90° whose rips of 2 and 3 lie side by side in plank 6 (2 + 1 + 3 = 6), beside its row of full width
 * (20 + 1 + 20 ≤ 48). By area ⌈(1200 + 220) / 288⌉ = 5; by row ⌈(103 + 103 + 21 + 21) / 49⌉ = 6, the two rips as one.
 */
export function handLaidFloor(): FloorData {
  const living: RegionData = {
    ...upright('living', [
      [0, 0],
      [102, 0],
      [102, 14],
      [0, 14],
    ]),
    openings: [{ from: [0, 10], to: [0, 4] }],
    rows: [
      { v: 1, height: 6, pieces: pieces('full', [1, 30, 1, 'start'], [31, 48, 2, 'whole'], [79, 22, 3, 'end']) },
      { v: 7, height: 6, pieces: pieces('full', [1, 15, 3, 'start'], [16, 48, 4, 'whole'], [64, 37, 5, 'end']) },
    ],
  };
  const closet: RegionData = {
    ...upright('closet', [
      [188, -1],
      [201, -1],
      [201, 21],
      [188, 21],
    ]),
    frame: { origin: [200, 0], angle: 90 },
    rows: [
      { v: 0, height: 2, pieces: pieces('near', [0, 20, 6, 'any']) },
      { v: 2, height: 6, pieces: pieces('full', [0, 20, 6, 'any']) },
      { v: 8, height: 3, pieces: pieces('far', [0, 20, 6, 'any']) },
    ],
  };
  return {
    kind: 'floor',
    ticksPerInch: 8128,
    plank: { ...plank },
    rules: { ...rules },
    regions: [living, closet],
    count: { planks: 6, reused: 2, mistakes: 1, spares: 1, cartons: 2 },
    bound: { area: 5, row: 6, best: 6, proven: true },
    broken: [],
    cost: { cents: 5000, tax: 400 },
  };
}

/**
 * A U: 40 wide and 8 deep with two legs of 15 up to 18, so that the foot of the notch (v = 8) lies in row 1, which is one run of
 * 40, and row 2 is two runs of 15. By area ⌈(320 + 300) / 288⌉ = 3; by row ⌈(41 + 41 + 16 + 16) / 49⌉ = 3.
 */
export function handLaidNook(): FloorData {
  const nook: RegionData = {
    ...upright('nook', [
      [-1, -1],
      [41, -1],
      [41, 19],
      [24, 19],
      [24, 9],
      [16, 9],
      [16, 19],
      [-1, 19],
    ]),
    rows: [
      { v: 0, height: 6, pieces: pieces('full', [0, 40, 1, 'any']) },
      { v: 6, height: 6, pieces: pieces('full', [0, 40, 2, 'any']) },
      { v: 12, height: 6, pieces: pieces('full', [0, 15, 3, 'any'], [25, 15, 3, 'any']) },
    ],
  };
  return {
    ...handLaidFloor(),
    regions: [nook],
    count: { planks: 3, reused: 1, mistakes: 0, spares: 0, cartons: 1 },
    bound: { area: 3, row: 3, best: 3, proven: true },
  };
}

/** One row of 40 × 6 round a post: the hole of 6 × 2 keeps 8 × 4 clear, and leaves strips of 1, 8 long, above and below it. */
export function handLaidPost(): FloorData {
  const post: RegionData = {
    ...upright('post', [
      [-1, -1],
      [41, -1],
      [41, 7],
      [-1, 7],
    ]),
    holes: [
      [
        [17, 2],
        [17, 4],
        [23, 4],
        [23, 2],
      ],
    ],
    rows: [{ v: 0, height: 6, pieces: pieces('full', [0, 40, 1, 'any']) }],
  };
  return {
    ...handLaidFloor(),
    regions: [post],
    count: { planks: 1, reused: 0, mistakes: 0, spares: 0, cartons: 1 },
    bound: { area: 1, row: 1, best: 1, proven: true },
    broken: [
      { rule: 'minRip', region: 'post', row: 0, at: 1 },
      { rule: 'minRip', region: 'post', row: 0, at: 5 },
    ],
  };
}

/** A change to a floor, made in place. */
export type Change = (floor: FloorData) => unknown;

/** Sets some of a thing's values. */
export function set<T extends object>(thing: T, values: Partial<T>): T {
  return Object.assign(thing, values);
}

/** A region by its place in the list. Throws a RangeError when there is none. */
export function regionOf(floor: FloorData, index: number): RegionData {
  return found(floor.regions, index);
}

/** A row of a region. Throws a RangeError when there is none. */
export function rowOf(floor: FloorData, region: number, index: number): RowData {
  return found(regionOf(floor, region).rows, index);
}

/** A piece of a row. Throws a RangeError when there is none. */
export function pieceOf(floor: FloorData, region: number, row: number, index: number): PieceData {
  return found(rowOf(floor, region, row).pieces, index);
}

function found<T>(list: readonly T[], index: number): T {
  const one = list[index];
  if (one === undefined) throw new RangeError(`nothing at ${index}`);
  return one;
}
