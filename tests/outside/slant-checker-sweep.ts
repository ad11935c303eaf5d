/** Areas of shapes on one another, summed band by band between all their corners and crossings: no clipper that could lose its way. */

import type { Pair, Ring } from 'polygon-clipping';

/** What planks may cover: inside the first of the `loops` and in none of the others, nor in the `bands` along the walls. */
export interface Ground {
  readonly loops: readonly Ring[];
  readonly bands: readonly (readonly Ring[])[];
}

/** Areas: of the ground, of ground without a piece, of pieces off the ground, and of pieces on pieces. */
export interface Cover {
  readonly ground: number;
  readonly bare: number;
  readonly beyond: number;
  readonly twice: number;
}

/** A side that is not level, from its lower end to its upper one, and which shape it is of. */
interface Side {
  readonly low: Pair;
  readonly high: Pair;
  readonly shape: number;
}

/** The areas from v = `low` to `high`; each piece is what lies inside an odd number of its rings. */
export function coverBetween(
  ground: Ground,
  pieces: readonly (readonly Ring[])[],
  [low, high]: readonly [number, number],
): Cover {
  const walls = shapesOf(ground);
  const shapes = [...walls, ...pieces];
  const sides = shapes
    .flatMap((rings, shape) => sidesOf(rings, shape))
    .filter((s) => s.high[1] > low && s.low[1] < high);
  const sum = { ground: 0, bare: 0, beyond: 0, twice: 0 };
  const levels = levelsOf(sides, low, high);
  levels.forEach((from, i) => {
    const to = levels[i + 1] ?? from;
    for (const { width, inGround, laid } of cellsAt(sides, (from + to) / 2, walls.length)) {
      const area = width * (to - from);
      if (inGround) sum.ground += area;
      if (inGround && laid === 0) sum.bare += area;
      if (!inGround && laid > 0) sum.beyond += area;
      if (laid > 1) sum.twice += (laid - 1) * area;
    }
  });
  return sum;
}

/** The stretches of ground along one line. */
export function groundAlong(ground: Ground, v: number): [from: number, to: number][] {
  const walls = shapesOf(ground);
  const sides = walls.flatMap((rings, shape) => sidesOf(rings, shape));
  const stretches: [number, number][] = [];
  for (const { from, width, inGround } of cellsAt(sides, v, walls.length)) {
    if (!inGround || width <= 0) continue;
    const last = stretches.at(-1);
    if (last && last[1] === from) last[1] = from + width;
    else stretches.push([from, from + width]);
  }
  return stretches;
}

/** The outline, then all that is taken from it. */
function shapesOf({ loops, bands }: Ground): (readonly Ring[])[] {
  return [...loops.map((loop) => [loop]), ...bands];
}

function sidesOf(rings: readonly Ring[], shape: number): Side[] {
  return rings.flatMap((ring) =>
    ring.flatMap((a, i): Side[] => {
      const b = ring[(i + 1) % ring.length] ?? a;
      if (a[1] === b[1]) return [];
      return [a[1] < b[1] ? { low: a, high: b, shape } : { low: b, high: a, shape }];
    }),
  );
}

/** Every v between which no two sides cross and none ends. */
function levelsOf(sides: readonly Side[], low: number, high: number): number[] {
  const levels = [low, high, ...sides.flatMap((side) => [side.low[1], side.high[1]])];
  sides.forEach((one, i) => {
    for (const other of sides.slice(i + 1)) {
      const from = Math.max(one.low[1], other.low[1]);
      const to = Math.min(one.high[1], other.high[1]);
      if (from >= to) continue;
      const [before, after] = [placeAt(one, from) - placeAt(other, from), placeAt(one, to) - placeAt(other, to)];
      if (before * after < 0) levels.push(from + ((to - from) * before) / (before - after));
    }
  });
  return [...new Set(levels.filter((v) => v >= low && v <= high))].sort((a, b) => a - b);
}

/** The stretches between the sides that a line crosses, each with what lies there; the first `walls` shapes are the ground's. */
function cellsAt(sides: readonly Side[], v: number, walls: number) {
  const crossed = sides
    .filter((side) => side.low[1] < v && side.high[1] > v)
    .map((side) => ({ u: placeAt(side, v), shape: side.shape }))
    .sort((a, b) => a.u - b.u);
  const inside = new Set<number>();
  return crossed.map(({ u, shape }, i) => {
    if (!inside.delete(shape)) inside.add(shape);
    const taken = [...inside].some((one) => one > 0 && one < walls);
    return {
      from: u,
      width: (crossed[i + 1]?.u ?? u) - u,
      inGround: inside.has(0) && !taken,
      laid: [...inside].filter((one) => one >= walls).length,
    };
  });
}

function placeAt({ low, high }: Side, v: number): number {
  return low[0] + ((high[0] - low[0]) * (v - low[1])) / (high[1] - low[1]);
}
