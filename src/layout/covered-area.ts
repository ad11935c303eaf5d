/** The part of a region that planks may cover, cut into rows, the row lines worth trying, and each piece's shape there. */

import { EndType, FillRule, inflatePaths, intersect, JoinType } from 'clipper2-ts';
import { at, doubleArea, isRectilinear, type Outline, type Point } from '../units/geometry.ts';
import type { Frame, Plank, Region, Rules, Slant } from './floor.ts';
import { type Angle, frameOf, toFrame } from './frame.ts';
import { type Run, runsOf } from './runs.ts';
import {
  chooseRowLine,
  leastWall,
  lineClasses,
  type Slab,
  type SlicedRow,
  slabsOf,
  sliceRows,
  type WallLevel,
  wallLevels,
} from './slab.ts';

/** The miter of a square corner is √2 gaps long, so a limit of 2 keeps it square. */
const MITER_LIMIT = 2;

/**
 * Outlines (ticks) of a rectilinear region inset by `gap` ticks: none if nothing is left, several if a neck closes.
 * Outer outlines counterclockwise, holes clockwise.
 */
export function inset(outline: Outline, holes: readonly Outline[], gap: number): readonly Outline[] {
  const paths = [outline, ...holes].map((path) => path.map(([x, y]) => ({ x, y })));
  if (gap === 0) return [outline, ...holes];
  const moved = inflatePaths(paths, -gap, JoinType.Miter, EndType.Polygon, MITER_LIMIT);
  return moved.map((path) => path.map(({ x, y }) => [x, y] as const));
}

/**
 * Outlines of a region minus the gap along every wall, in the laying frame (ticks): outer ones counterclockwise, holes
 * clockwise; none if the gap leaves nothing.
 */
export function groundOf(region: Region, frame: Frame, gap: number): readonly Outline[] {
  const holes = region.holes.map((hole) => toFrame(hole, frame));
  return inset(toFrame(region.outline, frame), holes, gap).filter((path) => path.length > 2 && doubleArea(path) !== 0n);
}

/** True when some wall is neither parallel nor perpendicular to rows at `angle`. */
export function isSlanted(region: Region, angle: number): boolean {
  const frame = frameOf(region, angle);
  return [region.outline, ...region.holes].some((path) => !isRectilinear(toFrame(path, frame)));
}

/** Area in square ticks with holes subtracted; half a tick is dropped. */
export function groundArea(ground: readonly Outline[]): bigint {
  return ground.reduce((sum, path) => sum + doubleArea(path), 0n) / 2n;
}

interface GroundBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The part of the outlines within a box. Intersections are rounded to a tick, and slivers with no area are dropped. */
export function within(ground: readonly Outline[], { left, right, bottom, top }: GroundBox): readonly Outline[] {
  const box = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  const paths = ground.map((path) => path.map(([x, y]) => ({ x, y })));
  return (
    intersect(paths, [box], FillRule.EvenOdd)
      // The clipper sometimes rounds an intersection out of the box, or returns −0, which JSON doesn't preserve.
      .map((path) => path.map(({ x, y }): Point => [clamped(x, left, right), clamped(y, bottom, top)]))
      .filter((path) => doubleArea(path) !== 0n)
  );
}

function clamped(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high) + 0;
}

export interface CoveredArea {
  readonly region: Region;
  readonly angle: Angle;
}

/** `slabs` is what planks may cover; `line` is where a row line lies (laying frame, ticks). */
export interface Sliced {
  readonly region: Region;
  readonly frame: Frame;
  readonly slabs: readonly Slab[];
  readonly levels: readonly WallLevel[];
  readonly line: number;
  readonly rows: readonly SlicedRow[];
  readonly runs: readonly Run[];
}

/** Slabs (laying frame, ticks) that planks may cover in a region: none if the gap leaves nothing. */
export function coverable(region: Region, frame: Frame, gap: number): readonly Slab[] {
  return slabsOf(
    inset(
      toFrame(region.outline, frame),
      region.holes.map((hole) => toFrame(hole, frame)),
      gap,
    ),
  );
}

/** Slices a region with a whole row at the starting wall, unless that leaves a sliver. */
export function sliceArea(
  { region, angle }: CoveredArea,
  plank: Plank,
  rules: Pick<Rules, 'gap' | 'minEnd' | 'minRip'>,
): Sliced {
  const frame = frameOf(region, angle);
  const slabs = coverable(region, frame, rules.gap);
  const levels = wallLevels(slabs);
  const line = chooseRowLine(levels, plank.width, rules.minRip, leastWall(plank, rules));
  return slicedAt({ region, frame, slabs, levels }, line, plank);
}

function slicedAt(
  { region, frame, slabs, levels }: Pick<Sliced, 'region' | 'frame' | 'slabs' | 'levels'>,
  line: number,
  plank: Plank,
): Sliced {
  const rows = sliceRows(slabs, line, plank.width);
  return { region, frame, slabs, levels, line, rows, runs: runsOf(rows) };
}

/** At most this many combinations over all regions are tried. */
const MOST_CHOICES = 8;

/** Every region sliced, one combination after another. `all` is true when no useful combination was left out. */
interface RowChoices {
  readonly choices: readonly (readonly Sliced[])[];
  readonly all: boolean;
}

/** The combinations, starting with the current one. */
export function rowChoices(
  sliced: readonly Sliced[],
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'minRip'>,
): RowChoices {
  const ways = sliced.map((region) => waysOf(region, plank, rules));
  const count = ways.reduce((product, list) => product * list.length, 1);
  if (count > MOST_CHOICES) return { choices: [sliced], all: false };
  return {
    choices: ways.reduce<readonly (readonly Sliced[])[]>(
      (found, list) => found.flatMap((before) => list.map((way) => [...before, way])),
      [[]],
    ),
    all: true,
  };
}

/**
 * Ways to slice a region. A way is dropped when its runs include all runs of another way, because that one never needs
 * more planks.
 */
function waysOf(region: Sliced, plank: Plank, rules: Pick<Rules, 'minEnd' | 'minRip'>): readonly Sliced[] {
  const kept: Sliced[] = [region];
  for (const { line } of lineClasses(region.levels, plank.width, rules.minRip, leastWall(plank, rules))) {
    const way = slicedAt(region, line, plank);
    if (!kept.some((other) => isWithin(other, way))) {
      for (let i = kept.length - 1; i > 0; i--) if (isWithin(way, kept[i] ?? way)) kept.splice(i, 1);
      kept.push(way);
    }
  }
  return kept;
}

/** True when every run of `one` has its own counterpart of the same length in `other`. */
function isWithin(one: Sliced, other: Sliced): boolean {
  const left = new Map<number, number>();
  for (const { length } of other.runs) left.set(length, (left.get(length) ?? 0) + 1);
  return one.runs.every(({ length }) => {
    const count = left.get(length) ?? 0;
    left.set(length, count - 1);
    return count > 0;
  });
}

// What walls leave of a piece's rectangle: its shape, if less than the whole, and its cut at each end.

interface PieceBox {
  readonly u: number;
  readonly length: number;
  readonly v: number;
  readonly height: number;
}

interface PieceShape {
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

/** The shape of a piece in a row with these outlines; empty when the whole rectangle is covered. */
export function shapeOf(box: PieceBox, rings: readonly Outline[]): PieceShape {
  const [from, to] = [box.u, box.u + box.length];
  // Most pieces are in the middle of a row where no wall reaches, so there is nothing to clip.
  const touched = rings.some((ring) =>
    ring.some(([u, v], i) => {
      const [nextU, nextV] = at(ring, i + 1);
      const edge = v === nextV && (v === box.v || v === box.v + box.height);
      return !edge && Math.max(u, nextU) > from && Math.min(u, nextU) < to;
    }),
  );
  if (!touched) return {};
  const shape = within(rings, { left: from, right: to, bottom: box.v, top: box.v + box.height });
  return describe(box, shape);
}

/**
 * Describes a shape already clipped to its box: empty if it fills the box, otherwise its rings and straight end cuts.
 */
export function describe(box: PieceBox, shape: readonly Outline[]): PieceShape {
  if (shape.length === 0 || isBox(shape, box)) return {};
  const [left, right] = [endCut(shape, box, 'left'), endCut(shape, box, 'right')];
  return { shape, ...(left && { left }), ...(right && { right }) };
}

function isBox(shape: readonly Outline[], { u, length, v, height }: PieceBox): boolean {
  const [only] = shape;
  return (
    shape.length === 1 &&
    only?.length === 4 &&
    only.every(([x, y]) => (x === u || x === u + length) && (y === v || y === v + height))
  );
}

/** The single straight cut from edge to edge at one end; undefined for a square end or one made of several cuts. */
function endCut(shape: readonly Outline[], box: PieceBox, side: 'left' | 'right'): Slant | undefined {
  const [only] = shape;
  if (!only || shape.length > 1) return undefined;
  const outer = side === 'left' ? box.u : box.u + box.length;
  const on = (level: number): number | undefined => {
    const places = only.filter(([, v]) => v === level).map(([u]) => u);
    if (places.length === 0) return undefined;
    return side === 'left' ? Math.min(...places) : Math.max(...places);
  };
  const [near, far] = [on(box.v), on(box.v + box.height)];
  if (near === undefined || far === undefined || near === far) return undefined;
  if (near !== outer && far !== outer) return undefined;
  const straight = only.some(([u, v], i) => {
    const [nextU, nextV] = at(only, i + 1);
    const ends = [v, nextV].sort((a, b) => a - b);
    if (ends[0] !== box.v || ends[1] !== box.v + box.height) return false;
    return v === box.v ? u === near && nextU === far : u === far && nextU === near;
  });
  if (!straight) return undefined;
  const degrees = (Math.atan2(Math.abs(near - far), box.height) * 180) / Math.PI;
  return { near: Math.abs(near - outer), far: Math.abs(far - outer), degrees: Math.round(degrees * 10) / 10 };
}
