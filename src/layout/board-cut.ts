/** A board cut by the walls, seen along its own length: which stretch is left, its shape and its ends. */

import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import type { Part, Slant } from './floor.ts';
import { within } from './ground.ts';
import { describe } from './piece-shape.ts';

/** Turns between a frame and the board's own coordinates: x along it, y across it to the left. */
export interface BoardWay {
  readonly corner: Point;
  /** Degrees against the clock from u. */
  readonly along: number;
}

/** What is left of a board: `shape` in the frame. */
export interface BoardCut {
  readonly from: number;
  readonly length: number;
  readonly part: Part;
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

/** A point of the frame along and across a board; rounded to a tick for boards at other angles than 0° and 90°. */
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

/** A point along and across a board in the frame. */
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
 * What rings (in the board's coordinates) leave of its box from x = `low` to `high`; undefined when nothing. `length` is a whole
 * board's. A piece that keeps both ends takes a whole board.
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
