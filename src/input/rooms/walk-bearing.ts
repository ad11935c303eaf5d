/** Walks with walls at any angle, as legs with a bearing: where they end, how they close, and the outline they make. */

import { at, boxOf, type Outline, type Point } from '../../units/geometry.ts';
import { TICKS_PER_INCH } from '../../units/length.ts';
import { settled } from './walk-outline.ts';

/** One wall: its length in ticks and its bearing, degrees to the right of the way ahead; `told` walls may be remeasured, offsets are not. */
export interface Leg {
  readonly length: number;
  readonly bearing: number;
  readonly told: boolean;
}

/** Ends this near are one corner: diagonals measured to a sixteenth never quite close. */
export const EASE = TICKS_PER_INCH / 4;
/** A wall left out may run at whole steps of this much. */
const STEP = 15;
const SURE = 0.3;

/** What legs make: an outline with the wall left out, if one was, and by how much the end was moved; or why they make none. */
export type ClosedLegs =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly closing?: number; readonly eased: number }
  | { readonly kind: 'open'; readonly ahead: number; readonly right: number }
  | { readonly kind: 'last turn' }
  | { readonly kind: 'crossing'; readonly walls: readonly [one: number, other: number] };

/** East and north of a bearing; exact for quarter turns, and alike for the diagonals between them. */
export function unitOf(bearing: number): readonly [x: number, y: number] {
  const turn = ((bearing % 360) + 360) % 360;
  if (turn % 90 === 0)
    return (
      (
        [
          [0, 1],
          [1, 0],
          [0, -1],
          [-1, 0],
        ] as const
      )[turn / 90] ?? [0, 1]
    );
  if (turn % 90 === 45)
    return [turn < 180 ? Math.SQRT1_2 : -Math.SQRT1_2, turn < 90 || turn > 270 ? Math.SQRT1_2 : -Math.SQRT1_2];
  return [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
}

/** Closes legs into an outline; `after` is the bearing that a turn after the last wall leads to. Corners are rounded once to a tick. */
export function closeLegs(legs: readonly Leg[], after: number | undefined): ClosedLegs {
  const [x, y] = endOf(legs);
  const away = Math.hypot(x, y);
  const open = { kind: 'open', ahead: y, right: x } as const;
  const first = legs[0]?.bearing ?? 0;
  if (away <= EASE) {
    if (after !== undefined && differ(after, first) > 0.01) return { kind: 'last turn' };
    return outlineOf(legs, away, undefined);
  }
  const back = (Math.atan2(-x, -y) * 180) / Math.PI;
  const bearing = after ?? Math.round(back / STEP) * STEP;
  const slack = (Math.atan(EASE / away) * 180) / Math.PI + SURE;
  if (away < TICKS_PER_INCH || differ(back, bearing) > slack) return open;
  if (differ(bearing, legs.at(-1)?.bearing ?? 0) % 180 === 0 || differ(bearing, first) === 180) return open;
  const length = away * Math.cos((differ(back, bearing) * Math.PI) / 180);
  const closed = [...legs, { length, bearing, told: true }];
  return outlineOf(closed, Math.hypot(...endOf(closed)), closed.length - 1);
}

function outlineOf(legs: readonly Leg[], eased: number, closing: number | undefined): ClosedLegs {
  const whole = eased < 1 ? legs : remeasured(legs, ...longestPair(legs));
  if (!whole) return { kind: 'open', ahead: endOf(legs)[1], right: endOf(legs)[0] };
  const corners = cornersOf(whole).slice(0, -1);
  const crossing = crossingOf(corners);
  if (crossing) return { kind: 'crossing', walls: crossing };
  const left = closing === undefined ? undefined : whole[closing]?.length;
  return {
    kind: 'outline',
    outline: settled(corners),
    eased: Math.round(eased),
    ...(left !== undefined && { closing: Math.round(left) }),
  };
}

/** The corners walked through, rounded to a tick, the start first and the end last. */
function cornersOf(legs: readonly Leg[]): Point[] {
  let [x, y] = [0, 0];
  return [
    [0, 0] as Point,
    ...legs.map(({ length, bearing }): Point => {
      const [ux, uy] = unitOf(bearing);
      x += ux * length;
      y += uy * length;
      return [Math.round(x) + 0, Math.round(y) + 0];
    }),
  ];
}

function endOf(legs: readonly Leg[]): readonly [x: number, y: number] {
  return legs.reduce<readonly [number, number]>(
    ([x, y], { length, bearing }) => {
      const [ux, uy] = unitOf(bearing);
      return [x + ux * length, y + uy * length];
    },
    [0, 0],
  );
}

/** The longest told wall and the longest that does not run along it. */
function longestPair(legs: readonly Leg[]): readonly [number, number] {
  const order = legs
    .map((_, i) => i)
    .filter((i) => legs[i]?.told)
    .sort((i, j) => (legs[j]?.length ?? 0) - (legs[i]?.length ?? 0));
  const [first = -1] = order;
  const across = order.find((i) => Math.abs(cross(legs[first], legs[i])) > 0.5) ?? -1;
  return [first, across];
}

/** The legs with two of them made longer or shorter so that they close; undefined where that cannot be. */
function remeasured(legs: readonly Leg[], one: number, other: number): readonly Leg[] | undefined {
  const [a, b] = [legs[one], legs[other]];
  const area = cross(a, b);
  if (!a || !b || Math.abs(area) < 0.1) return undefined;
  const [x, y] = endOf(legs);
  const [ax, ay] = unitOf(a.bearing);
  const [bx, by] = unitOf(b.bearing);
  const more = (-x * by + y * bx) / area;
  const further = (-y * ax + x * ay) / area;
  const changed = legs.map((leg, i) => ({
    ...leg,
    length: leg.length + (i === one ? more : i === other ? further : 0),
  }));
  return changed.every(({ length }) => length >= TICKS_PER_INCH / 2) ? changed : undefined;
}

function cross(a: Leg | undefined, b: Leg | undefined): number {
  if (!a || !b) return 0;
  const [ax, ay] = unitOf(a.bearing);
  const [bx, by] = unitOf(b.bearing);
  return ax * by - ay * bx;
}

/** How far two bearings lie apart, 0 to 180. */
function differ(a: number, b: number): number {
  const rest = (((a - b) % 360) + 360) % 360;
  return Math.min(rest, 360 - rest);
}

/** Two walls that cross or touch elsewhere than at the corner they share. */
function crossingOf(corners: Outline): readonly [number, number] | undefined {
  const n = corners.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const next = j === i + 1 || (i === 0 && j === n - 1);
      const [a, b, c, d] = [at(corners, i), at(corners, i + 1), at(corners, j), at(corners, j + 1)];
      if (next ? doublesBack(a, b, c, d) : meet(a, b, c, d)) return [i, j];
    }
  }
  return undefined;
}

function doublesBack(a: Point, b: Point, c: Point, d: Point): boolean {
  const shared = b[0] === c[0] && b[1] === c[1] ? b : a;
  const [from, to] = shared === b ? [a, d] : [b, c];
  return (
    side(from, shared, to) === 0 &&
    (from[0] - shared[0]) * (to[0] - shared[0]) + (from[1] - shared[1]) * (to[1] - shared[1]) > 0
  );
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [one, other] = [boxOf([a, b]), boxOf([c, d])];
  if (one.maxX < other.minX || other.maxX < one.minX || one.maxY < other.minY || other.maxY < one.minY) return false;
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}

/** 1 when c lies to the left of the way from a to b, −1 to the right, 0 on it. */
function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}
