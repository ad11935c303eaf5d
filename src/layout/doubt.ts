/** Rooms as they might be if a wall was measured wrong: every wall, and all at once, out or in. */

import { at, doubleArea, isRectilinear, type Outline, type Point } from '../units/geometry.ts';
import type { Region } from './floor.ts';

/** One way the walls may differ from what was told: which wall stands further out, and the regions then. */
export interface Variant {
  /** Index of the region and of the wall moved; undefined when all walls of all regions were moved. */
  readonly moved: { readonly region: number; readonly wall: number } | undefined;
  /** Ticks by which the room is longer across that wall; below zero shorter. */
  readonly by: number;
  readonly regions: readonly Region[];
}

/**
 * The regions with one wall `by` ticks further out (in when below zero), for every wall where that is possible, and with every
 * room `by` longer both ways. Walls whose moving gives a room of the same shape (opposite walls of a rectangle) come once.
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

/** The unit vector that points out of a counter-clockwise rectilinear outline at a wall. */
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

/** Every wall moved out by half of `by`, the odd tick on the side of the wall that ends at each corner. */
function grown(outline: Outline, by: number): Outline {
  if (!isRectilinear(outline)) return shifted(outline, () => by / 2);
  const half = Math.trunc(by / 2);
  return outline.map(([x, y], i): Point => {
    const [px, py] = outward(outline, i + outline.length - 1);
    const [nx, ny] = outward(outline, i);
    return [x + (px + nx) * half, y + (py + ny) * half];
  });
}

/** Each wall `by(i)` ticks further out, its corners where the moved walls meet, rounded to a tick; walls at any angle. */
function shifted(outline: Outline, by: (wall: number) => number): Outline {
  return outline.map((corner, i): Point => {
    const [a, b] = [wallAt(outline, i - 1), wallAt(outline, i)];
    const area = a.x * b.y - a.y * b.x;
    const [moreA, moreB] = [by((i + outline.length - 1) % outline.length), by(i)];
    // Out of the room is (y, −x) of a wall's way; two walls in one line have no meeting and keep their corner.
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

/** The same turn at every corner as before, and something inside: moving a wall past another would undo one. */
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

/** The outline moved to the origin, as text. */
function shapeOf(outline: Outline): string {
  const minX = Math.min(...outline.map(([x]) => x));
  const minY = Math.min(...outline.map(([, y]) => y));
  return outline
    .map(([x, y]) => `${x - minX},${y - minY}`)
    .sort()
    .join(' ');
}
