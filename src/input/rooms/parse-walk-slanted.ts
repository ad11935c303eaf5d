/** Walks with walls at any angle: `right 45°`, and `right diagonal 2' x 3'` for a slanted wall by its offsets. */

import {
  angleOutOfRange,
  angleWithoutSide,
  diagonalWithoutSide,
  lastTurnWrong,
  notInWalk,
  turnMissing,
  turnTwice,
  walkCrosses,
  walkEndsAway,
  walkTooLong,
  walkTooShort,
  wallTooShort,
} from '../../text/room-problems-text.ts';
import { at, boxOf, type Outline, type Point } from '../../units/geometry.ts';
import { TICKS_PER_INCH, ticks } from '../../units/length.ts';
import type { Saying } from '../format.ts';
import { unitsOf } from '../parse-length.ts';
import type { LengthUnit } from '../parse-number.ts';
import type { Reading } from '../reading.ts';
import { degreesOf } from './parse-corners.ts';
import type { Flaw } from './room-flaw.ts';
import { readSide } from './room-text.ts';
import { FEWEST_WALLS, MOST_WALLS, type ReadWalk, type Step, settledWalk, type Turn, way } from './walk-steps.ts';

// Walks as legs with bearings: where they end, how they close, and their outline.

/**
 * One wall: its length in ticks and its bearing in degrees to the right of straight ahead. `told` walls may be
 * remeasured; offsets may not.
 */
interface Leg {
  readonly length: number;
  readonly bearing: number;
  readonly given: boolean;
}

/** Ends this close are one corner, because diagonals measured to a sixteenth never close exactly. */
const EASE = TICKS_PER_INCH / 4;
/** The bearing of an omitted wall is a multiple of this. */
const STEP = 15;
const SURE = 0.3;

/** The outline the legs make, with any omitted wall and how far the end was moved; or why they make none. */
type ClosedLegs =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly closing?: number; readonly eased: number }
  | { readonly kind: 'open'; readonly ahead: number; readonly right: number }
  | { readonly kind: 'last turn' }
  | { readonly kind: 'crossing'; readonly walls: readonly [one: number, other: number] };

/** East and north of a bearing; exact for quarter turns, and equal in magnitude for the diagonals between them. */
function unitOf(bearing: number): readonly [x: number, y: number] {
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

/** Closes legs into an outline; `after` is the bearing after a final turn. Corners are rounded once to a tick. */
function closeLegs(legs: readonly Leg[], after: number | undefined): ClosedLegs {
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
  const closed = [...legs, { length, bearing, given: true }];
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
    outline: settledWalk(corners),
    eased: Math.round(eased),
    ...(left !== undefined && { closing: Math.round(left) }),
  };
}

/** The corners of the walk, rounded to a tick, from start to end. */
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

/** The longest given wall and the longest one not parallel to it. */
function longestPair(legs: readonly Leg[]): readonly [number, number] {
  const order = legs
    .map((_, i) => i)
    .filter((i) => legs[i]?.given)
    .sort((i, j) => (legs[j]?.length ?? 0) - (legs[i]?.length ?? 0));
  const [first = -1] = order;
  const across = order.find((i) => Math.abs(cross(legs[first], legs[i])) > 0.5) ?? -1;
  return [first, across];
}

/** The legs with two of them lengthened or shortened so that they close; undefined if impossible. */
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

/** The angle between two bearings, 0 to 180. */
function differ(a: number, b: number): number {
  const rest = (((a - b) % 360) + 360) % 360;
  return Math.min(rest, 360 - rest);
}

/** Two walls that cross or touch other than at their shared corner. */
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

/** 1 if c is to the left of the line from a to b, −1 to the right, 0 on it. */
function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}

/** A wall; a turn in degrees; or a wall that goes `ahead` and `aside`, after which you face the side. */
type Element =
  | { readonly kind: 'wall'; readonly typed: string; readonly length: number }
  | { readonly kind: 'turn'; readonly typed: string; readonly turn: Turn; readonly degrees: number }
  | {
      readonly kind: 'diagonal';
      readonly typed: string;
      readonly turn: Turn;
      readonly ahead: number;
      readonly aside: number;
    };

const MOST_TURNS = 40;

/** The legs of a walk, and the bearing after its last turn if it ends with one. */
function legsOf(elements: readonly Element[]): { legs: readonly Leg[]; after: number | undefined } {
  const legs: Leg[] = [];
  let bearing = 0;
  for (const element of elements) {
    if (element.kind === 'wall') legs.push({ length: element.length, bearing, given: true });
    else if (element.kind === 'turn') bearing += signOf(element.turn) * element.degrees;
    else {
      const { ahead, aside, turn } = element;
      const swing = (Math.atan2(aside, ahead) * 180) / Math.PI;
      legs.push({ length: Math.hypot(ahead, aside), bearing: bearing + signOf(turn) * swing, given: false });
      bearing += signOf(turn) * 90;
    }
  }
  return { legs, after: elements.at(-1)?.kind === 'wall' ? undefined : bearing };
}

/** Walks that close, made from one that doesn't by reversing one turn; walls stay as typed. */
function mendedTexts(elements: readonly Element[]): readonly string[] {
  if (elements.filter(({ kind }) => kind !== 'wall').length > MOST_TURNS) return [];
  return elements.flatMap((element, i) => {
    if (element.kind === 'wall') return [];
    const other = { ...element, turn: element.turn === 'right' ? 'left' : 'right' } as const;
    const walk = elements.map((kept, k) => (k === i ? other : kept));
    const { legs, after } = legsOf(walk);
    return closeLegs(legs, after).kind === 'outline' ? [written(walk)] : [];
  });
}

function written(elements: readonly Element[]): string {
  const parts = elements.map((element) => {
    if (element.kind === 'wall') return element.typed;
    const { turn } = element;
    if (element.kind === 'turn') return element.degrees === 90 ? turn : `${turn} ${element.degrees}°`;
    // As typed, apart from the side.
    return element.typed.replace(/right|left|(?<![a-z])[rl](?![a-z])/i, turn);
  });
  return `walk ${parts.join(' ')}`;
}

function signOf(turn: Turn): 1 | -1 {
  return turn === 'right' ? 1 : -1;
}

const LEAST_TURN = 1;
const MOST_TURN = 179;
/** Bare numbers taken as an angle between a turn and a wall. */
const USUAL = /^(?:15|22[.,]5|30|45|60|67[.,]5|75|120|135|150)$/;

export function isSlantedWalk(steps: readonly Step[]): boolean {
  return angled(steps).some(({ kind }) => kind === 'angle' || kind === 'diagonal');
}

/** Marks bare angles: “right 45 3'” is a turn of 45° and a wall of 3'. */
function angled(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, i) => {
    const before = steps[i - 1]?.kind;
    // After a turn it is the turn's angle; between two walls it is an angle without a side, which is reported as such.
    const bare =
      step.kind === 'wall' &&
      USUAL.test(step.typed) &&
      (before === 'turn' || before === 'wall') &&
      steps[i + 1]?.kind === 'wall';
    return bare ? { kind: 'angle', from: step.from, to: step.to, typed: `${step.typed}°` } : step;
  });
}

/** Parses the steps of a slanted walk; a wall without a unit is in `unit`. */
export function readSlantedWalk(
  given: readonly Step[],
  place: { readonly from: number; readonly to: number },
  unit: LengthUnit,
  reading: Reading,
): ReadWalk {
  const saying: Saying = { units: unitsOf(unit), decimal: reading.preferences.decimal };
  const failed = (expected: string, mends: () => readonly string[]): ReadWalk => ({
    ok: false,
    flaws: [{ ...place, expected, mends }],
  });
  const { elements, flaws } = elementsOf(angled(given), unit, reading);
  if (elements.length > 2 * MOST_WALLS) return failed(walkTooLong(MOST_WALLS), () => []);
  if (flaws.length > 0) return { ok: false, flaws };
  const walls = elements.filter(({ kind }) => kind !== 'turn');
  const { legs, after } = legsOf(elements);
  const closed = closeLegs(legs, after);
  if (closed.kind === 'outline' && closed.outline.length >= FEWEST_WALLS) {
    const { outline, closing, eased } = closed;
    return {
      ok: true,
      outline,
      eased: eased > 1 && ticks(eased),
      ...(closing !== undefined && { closing: ticks(closing) }),
    };
  }
  const expected = walls.length < FEWEST_WALLS ? walkTooShort(FEWEST_WALLS) : expectedOf(closed, walls, saying);
  return failed(expected, () => mendedTexts(elements));
}

function expectedOf(closed: ClosedLegs, walls: readonly Element[], saying: Saying): string {
  if (closed.kind === 'crossing') {
    const [one, other] = closed.walls.map((i) => ({ number: i + 1, typed: walls[i]?.typed }));
    return walkCrosses(one, other);
  }
  if (closed.kind !== 'open') return lastTurnWrong();
  return walkEndsAway(
    way(closed.ahead, 'ahead of', 'behind', EASE / 8, saying),
    way(closed.right, 'right of', 'left of', EASE / 8, saying),
    walls.length,
  );
}

/** Walls, turns with their degrees, and diagonals in order; and what is wrong with them. */
function elementsOf(
  steps: readonly Step[],
  unit: LengthUnit,
  reading: Reading,
): { elements: Element[]; flaws: Flaw[] } {
  const elements: Element[] = [];
  const flaws: Flaw[] = [];
  const flaw = ({ from, to }: Step, expected: string, ...mends: string[]): void =>
    void flaws.push({ from, to, expected, mends: () => mends });
  const length = (step: Step, typed: string, mend: (side: string) => string = (side) => side): number => {
    const side = readSide(typed, unit, reading);
    if (!side.ok) flaw(step, side.expected, ...side.mends.map(mend));
    else if (side.length < TICKS_PER_INCH) flaw(step, wallTooShort());
    return side.ok ? side.length : 0;
  };
  let angle: Step | undefined;
  steps.forEach((step, i) => {
    const last = elements.at(-1);
    const { typed } = step;
    if (step.kind === 'word') flaw(step, notInWalk(typed), '');
    else if (step.kind === 'wall') {
      if (last?.kind === 'wall' && !angle) flaw(step, turnMissing(), `right ${typed}`, `left ${typed}`);
      elements.push({ kind: 'wall', typed, length: length(step, typed) });
    } else if (step.kind === 'turn') {
      if (last?.kind === 'turn') flaw(step, turnTwice(), '');
      elements.push({ kind: 'turn', typed, turn: step.turn, degrees: angle ? degreesIn(angle, flaw) : 90 });
      angle = undefined;
    } else if (step.kind === 'diagonal') {
      if (last?.kind === 'turn') {
        const { ahead, aside } = step;
        const [one, other] = [
          length(step, ahead, (side) => typed.replace(ahead, side)),
          length(step, aside, (side) => typed.replace(aside, side)),
        ];
        elements.splice(-1, 1, { kind: 'diagonal', typed, turn: last.turn, ahead: one, aside: other });
      } else flaw(step, diagonalWithoutSide(), `right ${typed}`, `left ${typed}`);
    } else if (last?.kind === 'turn' && steps[i - 1]?.kind === 'turn')
      elements.splice(-1, 1, { ...last, degrees: degreesIn(step, flaw) });
    else if (steps[i + 1]?.kind === 'turn') angle = step;
    else {
      const swing = 180 - (degreesOf(typed) ?? 90);
      flaw(step, angleWithoutSide(typed), ...[`right ${swing}°`, `left ${swing}°`, `right ${typed}`, `left ${typed}`]);
    }
  });
  return { elements, flaws };
}

function degreesIn(step: Step, flaw: (step: Step, expected: string, ...mends: string[]) => void): number {
  const degrees = degreesOf(step.typed.replace('*', '°').replace('˚', '°')) ?? 0;
  if (degrees >= LEAST_TURN && degrees <= MOST_TURN) return degrees;
  flaw(step, angleOutOfRange(LEAST_TURN, MOST_TURN), '45°', '90°');
  return 90;
}
