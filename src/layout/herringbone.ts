/** Herringbone floors: the types, the positions of boards in two directions, and cutting a board at the walls. Lengths in ticks. */

import { at, boxOf, type Outline, type Point } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';
import { describe, within } from './covered-area.ts';
import type { Bound, Frame, Part, Plank, Region, Slant } from './floor.ts';

/** Boards made as mirror images: those along u are `A`, those along v `B`. */
type Hand = 'A' | 'B';

/**
 * One board in its frame. `at` is the corner from which the uncut board runs, `along` degrees counterclockwise from u,
 * with its width to the left; `length` and `from` say which stretch of it is laid. `shape` is set when walls leave less
 * than that stretch; `course` is set in a border, counted from the wall.
 */
export interface HerringBoard {
  readonly plank: number;
  readonly at: Point;
  readonly along: number;
  readonly from: number;
  readonly length: number;
  readonly part: Part;
  readonly hand?: Hand;
  readonly course?: number;
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

export interface HerringRules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly minEnd: Length;
  readonly border: number;
  readonly handed: boolean;
}

export interface HerringRegion extends Region {
  readonly frame: Frame;
  readonly boards: readonly HerringBoard[];
}

/** A laid floor, boards numbered from 1 across all regions. `whole` counts boards laid uncut. */
export interface HerringPlan {
  readonly plank: Plank;
  readonly rules: HerringRules;
  readonly regions: readonly HerringRegion[];
  readonly planks: number;
  readonly reused: number;
  readonly whole: number;
  readonly pieces: number;
  readonly hands?: { readonly A: number; readonly B: number };
  readonly bound: Bound;
  /**
   * True when board ends of one zigzag line up with board edges of the next, that is, when the length is a multiple of
   * the width.
   */
  readonly aligned: boolean;
}

export interface NoBorder {
  readonly region: string;
  readonly why: 'too wide' | 'meets a hole';
}

// Board coordinates: x along the board, y across it to the left.

/** Position and direction of a board in the frame, for converting between frame and board coordinates. */
export interface BoardWay {
  readonly corner: Point;
  /** Degrees counterclockwise from u. */
  readonly along: number;
}

/** What is left of a board; `shape` is in the frame. */
export interface BoardCut {
  readonly from: number;
  readonly length: number;
  readonly part: Part;
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

/** Rounded to a tick except at 0° and 90°. */
export function onBoard([u, v]: Point, { corner, along }: BoardWay): Point {
  const [du, dv] = [u - corner[0], v - corner[1]];
  if (along === 0) return [du, dv];
  if (along === 90) return [dv, 0 - du];
  const turn = (along * Math.PI) / 180;
  return [
    Math.round(du * Math.cos(turn) + dv * Math.sin(turn)) + 0,
    Math.round(dv * Math.cos(turn) - du * Math.sin(turn)) + 0,
  ];
}

export function inFrame([x, y]: Point, { corner, along }: BoardWay): Point {
  if (along === 0) return [corner[0] + x, corner[1] + y];
  if (along === 90) return [corner[0] - y, corner[1] + x];
  const turn = (along * Math.PI) / 180;
  return [
    Math.round(corner[0] + x * Math.cos(turn) - y * Math.sin(turn)) + 0,
    Math.round(corner[1] + x * Math.sin(turn) + y * Math.cos(turn)) + 0,
  ];
}

/**
 * What the rings (in board coordinates) leave of the board's box from x = `low` to `high`; undefined if nothing.
 * `length` is that of a whole board. A piece that keeps both ends takes a whole board.
 */
export function cutOf(
  rings: readonly Outline[],
  way: BoardWay,
  { low, high, length, width }: { low: number; high: number; length: number; width: number },
): BoardCut | undefined {
  const left = within(rings, { left: low, right: high, bottom: 0, top: width });
  if (left.length === 0) return undefined;
  const { minX, maxX } = boxOf(left.flat());
  const box = { u: minX, length: maxX - minX, v: 0, height: width };
  const { shape, ...ends } = describe(box, left);
  const whole = maxX - minX === length;
  const part = whole ? 'whole' : minX === low ? 'end' : maxX === high ? 'start' : 'any';
  return {
    from: minX,
    length: maxX - minX,
    part,
    ...(shape && { shape: shape.map((ring) => ring.map((point) => inFrame(point, way))) }),
    ...ends,
  };
}

// The pattern: a pair of boards repeated along (W, W) and (L, −L), which leaves no gaps for any length and width.

/** A board of the pattern: along u it covers L × W from its lower left corner, along v W × L. */
interface Spot {
  readonly corner: Point;
  readonly along: 0 | 90;
}

/**
 * Every spot that may touch the area, in laying order along the zigzags. One board along u at the anchor, its partner
 * along v at its right end. The pair covers 2LW, the area spanned by (W, W) and (L, −L), so boards fill the plane
 * without overlap.
 */
export function spotsOver(ground: readonly Outline[], anchor: Point, length: number, width: number): readonly Spot[] {
  const all = ground.flat();
  if (all.length === 0) return [];
  const { minX, minY, maxX, maxY } = boxOf(all);
  const [au, av] = anchor;
  const reach = 2 * (length + width);
  const steps = (low: number, high: number, pitch: number): readonly number[] => {
    const first = Math.floor((low - reach) / pitch);
    return Array.from({ length: Math.ceil((high + reach) / pitch) - first + 1 }, (_, i) => first + i);
  };
  return steps(minX + minY - au - av, maxX + maxY - au - av, 2 * width).flatMap((i) =>
    steps(minX - maxY - au + av, maxX - minY - au + av, 2 * length).flatMap((j): Spot[] => {
      const [u, v] = [au + i * width + j * length, av + i * width - j * length];
      const spots: Spot[] = [
        { corner: [u, v], along: 0 },
        { corner: [u + length, v + width - length], along: 90 },
      ];
      return spots.filter((spot) => {
        const [low, high] = boxAt(spot, length, width);
        return low[0] < maxX && high[0] > minX && low[1] < maxY && high[1] > minY;
      });
    }),
  );
}

export function boxAt({ corner: [u, v], along }: Spot, length: number, width: number): readonly [Point, Point] {
  return along === 0
    ? [
        [u, v],
        [u + length, v + width],
      ]
    : [
        [u, v],
        [u + width, v + length],
      ];
}

/** Anchors that put a point of the zigzags, a notch, or the midpoint between them in the middle of the area. */
export function anchorsFor(ground: readonly Outline[], length: number, width: number): readonly Point[] {
  const all = ground.flat();
  if (all.length === 0) return [];
  const { minX, minY, maxX, maxY } = boxOf(all);
  const [u, v] = [Math.floor((minX + maxX) / 2), Math.floor((minY + maxY) / 2)];
  const [half, wide] = [Math.floor(length / 2), Math.floor(width / 2)];
  return [
    [u - length - width, v - width],
    [u, v],
    [u - half, v - wide],
  ];
}

/** Whether a box lies inside the outlines (even–odd), outside, or crosses one of their sides. */
export function boxAgainst(ground: readonly Outline[], [low, high]: readonly [Point, Point]): 'in' | 'out' | 'met' {
  const [x, y] = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
  let inside = false;
  for (const path of ground) {
    for (const [i, a] of path.entries()) {
      const b = at(path, i + 1);
      if (meets(a, b, low, high)) return 'met';
      if (a[1] > y !== b[1] > y && x < a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1])) inside = !inside;
    }
  }
  return inside ? 'in' : 'out';
}

/** True when a side passes through the interior of a box. */
function meets(a: Point, b: Point, low: Point, high: Point): boolean {
  if (Math.max(a[0], b[0]) <= low[0] || Math.min(a[0], b[0]) >= high[0]) return false;
  if (Math.max(a[1], b[1]) <= low[1] || Math.min(a[1], b[1]) >= high[1]) return false;
  const side = (x: number, y: number): number => Math.sign((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]));
  const sides = [side(low[0], low[1]), side(high[0], low[1]), side(high[0], high[1]), side(low[0], high[1])];
  return sides.some((one) => one > 0) && sides.some((one) => one < 0);
}
