/** A covering cut into strips that one person can carry as rolls. */

import { type Span, slabsOf, sliceRows } from '../layout/slab.ts';
import { boxOf, isRectilinear, type Outline } from '../units/geometry.ts';
import { areaOf, type Length, roundUpRatio, ticks } from '../units/length.ts';
import { kilogramsOf } from './mass.ts';

/** One strip where it lies: its lower left corner and its sides along x and y, in ticks. */
export interface PlacedStrip {
  readonly x: number;
  readonly y: number;
  readonly alongX: Length;
  readonly alongY: Length;
}

/** Strips of one size; `kilograms` is what one of them weighs. */
export interface Strips {
  readonly width: Length;
  readonly length: Length;
  readonly count: number;
  readonly kilograms: number;
}

/** How to cut: the widest strip, the heaviest roll in kilograms, and the covering's kilograms per square metre. */
export interface StripRule {
  readonly width: Length;
  readonly limit: number;
  readonly perSquareMetre: number;
}

/**
 * Strips along the room's longer side, all of one width not above the rule's, each run cut into equal lengths so that no
 * roll weighs more than the limit. Together they cover the room; where a wall steps inside a strip it is weighed as a full
 * rectangle, so a roll is never heavier than told. Walls not along x or y: the box around the room is covered.
 * Throws a RangeError when not even one tick of a strip keeps to the limit.
 */
export function placeStrips(outline: Outline, holes: readonly Outline[], rule: StripRule): readonly PlacedStrip[] {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const turned = maxY - minY > maxX - minX;
  const across = turned ? maxX - minX : maxY - minY;
  const bands = roundUpRatio(BigInt(across), BigInt(rule.width));
  const width = ticks(roundUpRatio(BigInt(across), BigInt(bands)));
  const longest = Math.floor(rule.limit / kilogramsOf(areaOf(width, ticks(1)), rule.perSquareMetre));
  if (!(longest >= 1)) throw new RangeError(`no strip weighs less than ${rule.limit} kg`);
  return rowsOf(turned, outline, holes, width).flatMap(({ v, runs }) =>
    runs.flatMap((run) => cutRun(run, longest).map((piece) => placed(turned, piece, v, width))),
  );
}

/** Strips of a placed covering gathered by size, the longest first. */
export function gatherStrips(
  strips: readonly PlacedStrip[],
  perSquareMetre: number,
  turned: boolean,
): readonly Strips[] {
  const counts = new Map<string, Strips>();
  for (const { alongX, alongY } of strips) {
    const [length, width] = turned ? [alongY, alongX] : [alongX, alongY];
    const before = counts.get(`${width} ${length}`);
    const kilograms = kilogramsOf(areaOf(width, length), perSquareMetre);
    counts.set(`${width} ${length}`, { width, length, kilograms, count: (before?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.length - a.length || b.width - a.width);
}

/** True when strips run along y, the longer side. */
export function runsAlongY(outline: Outline): boolean {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  return maxY - minY > maxX - minX;
}

function rowsOf(turned: boolean, outline: Outline, holes: readonly Outline[], width: Length) {
  const loops = [outline, ...holes].map((loop) => (turned ? loop.map(([x, y]) => [y, x] as const) : loop));
  const [first] = loops;
  if (!first) return [];
  const box = boxOf(first);
  if (loops.every(isRectilinear)) return sliceRows(slabsOf(loops), box.minY, width);
  const runs: readonly Span[] = [{ from: box.minX, to: box.maxX }];
  const count = roundUpRatio(BigInt(box.maxY - box.minY), BigInt(width));
  return Array.from({ length: count }, (_, i) => ({ v: box.minY + i * width, height: width, runs }));
}

function cutRun({ from, to }: Span, longest: number): readonly Span[] {
  const pieces = roundUpRatio(BigInt(to - from), BigInt(longest));
  const length = roundUpRatio(BigInt(to - from), BigInt(pieces));
  return Array.from({ length: pieces }, (_, i) => ({ from: from + i * length, to: from + (i + 1) * length }));
}

function placed(turned: boolean, { from, to }: Span, v: number, width: Length): PlacedStrip {
  const length = ticks(to - from);
  return turned ? { x: v, y: from, alongX: width, alongY: length } : { x: from, y: v, alongX: length, alongY: width };
}
