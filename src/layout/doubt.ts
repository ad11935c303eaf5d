/** Variants of the rooms in case a wall was measured wrong: each wall, and all of them at once, out or in. */

import { at, doubleArea, isRectilinear, type Outline, type Point } from '../units/geometry.ts';
import type { Region } from './floor.ts';

/** One way the walls may differ from the given measurements, and the regions that result. */
export interface Variant {
  /** Region and wall that moved; undefined when all walls of all regions moved. */
  readonly moved: { readonly region: number; readonly wall: number } | undefined;
  /** Ticks by which the room gets longer across that wall; negative for shorter. */
  readonly by: number;
  readonly regions: readonly Region[];
}

/**
 * The regions with one wall `by` ticks further out (in if negative), for every wall that can move, and with every room
 * `by` longer both ways. Walls that give the same shape (opposite walls of a rectangle) appear once.
 */
export function variants(regions: readonly Region[], by: number): readonly Variant[] {
  const found: Variant[] = [];
  const all = regions.map((region) => ({ ...region, outline: grown(region.outline, by) }));
  if (all.every((region, i) => isSound(region.outline, regions[i]?.outline ?? [])))
    found.push({ moved: undefined, by, regions: all });
  regions.forEach((region, index) => {
    const shapes = new Set<string>();
    region.outline.forEach((_, wall) => {
      const outline = pushed(region.outline, wall, by);
      const shape = shapeOf(outline);
      if (shapes.has(shape) || !isSound(outline, region.outline)) return;
      shapes.add(shape);
      const moved = regions.map((other, i) => (i === index ? { ...region, outline } : other));
      found.push({ moved: { region: index, wall }, by, regions: moved });
    });
  });
  return found;
}

/** The outward unit normal of a wall of a counterclockwise rectilinear outline. */
function outward(outline: Outline, wall: number): Point {
  const [ax, ay] = at(outline, wall);
  const [bx, by] = at(outline, wall + 1);
  return [Math.sign(by - ay), Math.sign(ax - bx)];
}

function pushed(outline: Outline, wall: number, by: number): Outline {
  if (!isRectilinear(outline)) return shifted(outline, (i) => (i === wall ? by : 0));
  const [nx, ny] = outward(outline, wall);
  const next = (wall + 1) % outline.length;
  return outline.map(([x, y], i): Point => (i === wall || i === next ? [x + nx * by, y + ny * by] : [x, y]));
}

/** Moves every wall out by half of `by`; an odd tick goes to the wall that ends at each corner. */
function grown(outline: Outline, by: number): Outline {
  if (!isRectilinear(outline)) return shifted(outline, () => by / 2);
  const half = Math.trunc(by / 2);
  return outline.map(([x, y], i): Point => {
    const [px, py] = outward(outline, i + outline.length - 1);
    const [nx, ny] = outward(outline, i);
    return [x + (px + nx) * half, y + (py + ny) * half];
  });
}

/**
 * Moves each wall out by `by(i)` ticks. Corners go where the moved walls meet, rounded to a tick; walls may be at any
 * angle.
 */
function shifted(outline: Outline, by: (wall: number) => number): Outline {
  return outline.map((corner, i): Point => {
    const [a, b] = [wallAt(outline, i - 1), wallAt(outline, i)];
    const area = a.x * b.y - a.y * b.x;
    const [moreA, moreB] = [by((i + outline.length - 1) % outline.length), by(i)];
    // The outward normal of a wall along (x, y) is (y, −x); two collinear walls never meet, so they keep their corner.
    if (Math.abs(area) < 1e-9) return corner;
    const along = (one: typeof a, more: number): number => one.y * corner[0] - one.x * corner[1] + more;
    const [c, d] = [along(a, moreA), along(b, moreB)];
    return [Math.round((d * a.x - c * b.x) / area) + 0, Math.round((d * a.y - c * b.y) / area) + 0];
  });
}

function wallAt(outline: Outline, index: number): { x: number; y: number } {
  const [ax, ay] = at(outline, index);
  const [bx, by] = at(outline, index + 1);
  const long = Math.hypot(bx - ax, by - ay);
  return { x: (bx - ax) / long, y: (by - ay) / long };
}

/**
 * True if every corner turns the same way as before and some area is left; moving a wall past another flips a corner.
 */
function isSound(outline: Outline, before: Outline): boolean {
  return (
    doubleArea(outline) > 0n &&
    outline.every((point, i) => {
      const [x, y] = at(outline, i + 1);
      const [bx, by] = at(before, i);
      const [cx, cy] = at(before, i + 1);
      return Math.sign(x - point[0]) === Math.sign(cx - bx) && Math.sign(y - point[1]) === Math.sign(cy - by);
    })
  );
}

function shapeOf(outline: Outline): string {
  const minX = Math.min(...outline.map(([x]) => x));
  const minY = Math.min(...outline.map(([, y]) => y));
  return outline
    .map(([x, y]) => `${x - minX},${y - minY}`)
    .sort()
    .join(' ');
}
