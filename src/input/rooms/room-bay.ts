/** Bays told with a room: `with a bay 8' x 2'` stands out in the middle of the far wall, its sides at 45°. */

import { bayRead, bayTooWide, oneBay } from '../../text/room-problems-text.ts';
import { at, type Outline, type Point } from '../../units/geometry.ts';
import { TICKS_PER_INCH, ticks } from '../../units/length.ts';
import { unitsOf } from '../length.ts';
import type { LengthUnit } from '../length-units.ts';
import type { Reading } from '../reading.ts';
import { sayLength } from '../say-length.ts';
import { degreesOf } from './corners-angle.ts';
import type { Flaw } from './room-flaw.ts';
import type { Sides } from './room-notch.ts';
import { readSides } from './room-pair.ts';
import type { NamedPiece } from './room-region.ts';
import { anglesIn } from './room-slant.ts';
import { settled } from './walk-outline.ts';

const USUAL_ANGLE = 45;
const LEAST_ANGLE = 15;
const MOST_ANGLE = 90;
const WALLS = ['far', 'near', 'left', 'right'] as const;
type Wall = (typeof WALLS)[number];

type WithBays =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** The outline of a rectangle `room` with its bays; its box at (0,0) again. */
export function withBays(
  outline: Outline,
  room: Sides,
  { name, bays }: { readonly name: string; readonly bays: readonly NamedPiece[] },
  plain: string,
  unit: LengthUnit,
  reading: Reading,
): WithBays {
  const flaws: Flaw[] = [];
  const taken = new Set<Wall>();
  let made = outline;
  for (const bay of bays) {
    const bad = (expected: string): void => void flaws.push({ from: bay.joint, to: bay.to, expected, mends: () => [] });
    const words = plain.slice(bay.from, bay.to);
    const wall = WALLS.find((one) => new RegExp(`(?<![a-z])${one}(?![a-z])`).test(words)) ?? 'far';
    const degrees = degreesOf(anglesIn(bay, plain)[0]?.replace(/^(?:at|of) /, '') ?? '') ?? USUAL_ANGLE;
    if (bay.shape.kind !== 'sides' || taken.has(wall)) {
      bad(oneBay());
      continue;
    }
    taken.add(wall);
    const size = readSides(bay.shape, unit, reading);
    if (!size.ok) {
      flaws.push(...size.flaws);
      continue;
    }
    const { x: width, y: depth } = size.sides;
    const back = degrees < LEAST_ANGLE || degrees > MOST_ANGLE ? width : backOf(depth, degrees);
    const front = width - 2 * back;
    const index = made.findIndex((corner, i) => liesOn(corner, at(made, i + 1), wall, room));
    const [from, to] = [at(made, index), at(made, index + 1)];
    const long = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
    if (index < 0 || front < TICKS_PER_INCH || width > long) {
      bad(bayTooWide());
      continue;
    }
    made = [
      ...made.slice(0, index + 1),
      ...bayPoints(from, to, { width, depth, back, long }),
      ...made.slice(index + 1),
    ];
    const say = (length: number): string =>
      sayLength(ticks(length), { units: unitsOf(unit), decimal: reading.habits.decimal });
    reading.note(bayRead(name, say(width), say(depth), degrees, wall, say(front)));
  }
  return flaws.length > 0 ? { ok: false, flaws } : { ok: true, outline: bays.length > 0 ? settled(made) : made };
}

/** How far a side of the bay runs back along the wall; rounded once to a tick. */
function backOf(depth: number, degrees: number): number {
  if (degrees === 90) return 0;
  return degrees === 45 ? depth : Math.round(depth / Math.tan((degrees * Math.PI) / 180));
}

function liesOn([ax, ay]: Point, [bx, by]: Point, wall: Wall, { x, y }: Sides): boolean {
  if (wall === 'far') return ay === y && by === y;
  if (wall === 'near') return ay === 0 && by === 0;
  return wall === 'left' ? ax === 0 && bx === 0 : ax === x && bx === x;
}

/** The four corners of a bay in the middle of the wall that runs from one point to another, counter-clockwise round the room. */
function bayPoints(
  from: Point,
  to: Point,
  { width, depth, back, long }: { width: number; depth: number; back: number; long: number },
): readonly Point[] {
  const [ux, uy] = [Math.sign(to[0] - from[0]), Math.sign(to[1] - from[1])];
  const first = Math.floor((long - width) / 2);
  const point = (along: number, out: number): Point => [
    from[0] + ux * along + uy * out,
    from[1] + uy * along - ux * out,
  ];
  return [point(first, 0), point(first + back, depth), point(first + width - back, depth), point(first + width, 0)];
}
