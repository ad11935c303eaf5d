/** Rooms of four shapes drawn from a seed, the same on every machine: for laws, comparisons and timings. */

import type { Point } from '../../src/units/geometry.ts';
import { TICKS_PER_INCH } from '../../src/units/length.ts';

/** Corners in ticks, counter-clockwise, the least x and y at 0. */
export interface RandomRoom {
  readonly name: string;
  readonly shape: 'rectangle' | 'L' | 'U' | 'T';
  readonly outline: readonly Point[];
}

/** Sides are drawn in half inches. */
const HALF_INCH = TICKS_PER_INCH / 2;
const FOOT = 24;
const SHORTEST_SIDE = 6 * FOOT;
const LONGEST_SIDE = 24 * FOOT;
const NARROWEST_LEG = 3 * FOOT;
const LEAST_JOG = FOOT / 2;

const SHAPES = ['rectangle', 'L', 'U', 'T'] as const;

/** A whole number from `low` to `high`, both included. */
type Draw = (low: number, high: number) => number;

/**
 * `count` rooms for a seed, shapes in rotation: over all sides 6–24 ft in ½ in steps, legs at least 3 ft wide, jogs at least
 * 6 in deep, each turned by 0–3 quarter turns and mirrored or not as the seed has it. The first rooms do not depend on `count`.
 */
export function randomRooms(seed: number, count: number): RandomRoom[] {
  const random = mulberry32(seed);
  const draw: Draw = (low, high) => low + Math.floor(random() * (high - low + 1));
  return Array.from({ length: count }, (_, i) => {
    const shape = SHAPES[i % SHAPES.length] ?? 'rectangle';
    const drawn = corners(shape, draw);
    const outline = turned(draw(0, 1) === 1 ? mirrored(drawn) : drawn, draw(0, 3));
    return { name: `${shape} ${i + 1}`, shape, outline: placed(outline) };
  });
}

/** The mulberry32 generator (public domain, from memory): numbers in [0, 1) from a 32-bit state. */
export function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function corners(shape: RandomRoom['shape'], draw: Draw): Point[] {
  const least = shape === 'U' ? 2 * NARROWEST_LEG + LEAST_JOG : SHORTEST_SIDE;
  const wide = draw(least, LONGEST_SIDE);
  const deep = draw(SHORTEST_SIDE, LONGEST_SIDE);
  const low = draw(NARROWEST_LEG, deep - LEAST_JOG);
  if (shape === 'rectangle') return loop([0, 0], [wide, 0], [wide, deep], [0, deep]);
  if (shape === 'L') {
    const leg = draw(NARROWEST_LEG, wide - LEAST_JOG);
    return loop([0, 0], [wide, 0], [wide, low], [leg, low], [leg, deep], [0, deep]);
  }
  if (shape === 'U') {
    const left = draw(NARROWEST_LEG, wide - LEAST_JOG - NARROWEST_LEG);
    const right = draw(left + LEAST_JOG, wide - NARROWEST_LEG);
    const other = draw(low + LEAST_JOG, deep);
    return loop([0, 0], [wide, 0], [wide, other], [right, other], [right, low], [left, low], [left, deep], [0, deep]);
  }
  const left = draw(LEAST_JOG, wide - LEAST_JOG - NARROWEST_LEG);
  const right = draw(left + NARROWEST_LEG, wide - LEAST_JOG);
  return loop([0, 0], [wide, 0], [wide, low], [right, low], [right, deep], [left, deep], [left, low], [0, low]);
}

function loop(...places: Point[]): Point[] {
  return places;
}

/** The order is turned round too, so that the outline stays counter-clockwise. */
function mirrored(outline: readonly Point[]): Point[] {
  return outline.map(([x, y]): Point => [-x, y]).reverse();
}

function turned(outline: readonly Point[], quarters: number): readonly Point[] {
  return quarters === 0
    ? outline
    : turned(
        outline.map(([x, y]): Point => [-y, x]),
        quarters - 1,
      );
}

function placed(outline: readonly Point[]): Point[] {
  const left = Math.min(...outline.map(([x]) => x));
  const low = Math.min(...outline.map(([, y]) => y));
  return outline.map(([x, y]): Point => [(x - left) * HALF_INCH, (y - low) * HALF_INCH]);
}
