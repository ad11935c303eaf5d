/** Outlines of rooms: sides or walks, with corners left out and bays such as `with a bay 8' x 2'`, centered in the far wall. */

import {
  bayOfWalk,
  bayRead,
  bayTooWide,
  cornerCutOff,
  cornerLeftOut,
  laidByItself,
  notchesMeet,
  notchesTooMany,
  notchOfWalk,
  notchTooLarge,
  oneBay,
  roomReadIn,
  sideTooShort,
  slantedWalkEased,
  walkEased,
  wallLeftOut,
} from '../../text/room-problems-text.ts';
import { at, type Outline, type Point } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../units/length.ts';
import { sayLength } from '../format.ts';
import { unitIn, unitsOf } from '../parse-length.ts';
import { type LengthUnit, UNITS } from '../parse-number.ts';
import type { Reading } from '../reading.ts';
import { degreesOf } from './parse-corners.ts';
import { readWalk } from './parse-walk.ts';
import type { Flaw } from './room-flaw.ts';
import type { GatheredRooms, NamedPiece, RoomPiece, RoomShape } from './room-pieces.ts';
import { readSide } from './room-text.ts';
import { ANGLE, settledWalk } from './walk-steps.ts';

// Rectangles with corners left out, in the order far right, far left, near left, near right.

/** A rectangle: `x` along the first side typed, `y` along the second. */
interface Sides {
  readonly x: Length;
  readonly y: Length;
}

/** A corner to leave out: square, or cut off straight from wall to wall. */
interface Notch extends Sides {
  readonly slanted: boolean;
}

const CORNERS = ['far right', 'far left', 'near left', 'near right'] as const;
interface BadNotch {
  readonly notch: number;
  readonly why: 'too many' | 'too large' | 'meets another';
}

/** The counterclockwise outline in ticks with its least corner at (0,0), or the first notch that can't be left out. */
function withoutCorners(room: Sides, notches: readonly Notch[]): Outline | BadNotch {
  for (const [i, notch] of notches.entries()) {
    if (i >= CORNERS.length) return { notch: i, why: 'too many' };
    if (notch.x >= room.x || notch.y >= room.y) return { notch: i, why: 'too large' };
    if (notches.slice(0, i).some((other, j) => meet(room, notch, other, i, j)))
      return { notch: i, why: 'meets another' };
  }
  const [farRight, farLeft, nearLeft, nearRight] = notches;
  const { x, y } = room;
  return [
    ...corner(nearLeft, [0, 0], ({ x: w, y: h }) => [
      [0, h],
      [w, h],
      [w, 0],
    ]),
    ...corner(nearRight, [x, 0], ({ x: w, y: h }) => [
      [x - w, 0],
      [x - w, h],
      [x, h],
    ]),
    ...corner(farRight, [x, y], ({ x: w, y: h }) => [
      [x, y - h],
      [x - w, y - h],
      [x - w, y],
    ]),
    ...corner(farLeft, [0, y], ({ x: w, y: h }) => [
      [w, y],
      [w, y - h],
      [0, y - h],
    ]),
  ];
}

function corner(notch: Notch | undefined, whole: Point, cut: (notch: Sides) => readonly Point[]): readonly Point[] {
  if (!notch) return [whole];
  const points = cut(notch);
  return notch.slanted ? points.filter((_, i) => i !== 1) : points;
}

/** Whether two corners meet along their shared wall, or across the room; indices go around the room. */
function meet(room: Sides, notch: Sides, other: Sides, i: number, j: number): boolean {
  const wide = notch.x + other.x >= room.x;
  const deep = notch.y + other.y >= room.y;
  if (i - j === 2) return wide && deep;
  return i - j === 1 && j % 2 === 0 ? wide : deep;
}

/** Two sides in one unit: that of the side that has one, or else `unit`. */
function readSides(
  shape: Extract<RoomShape, { kind: 'sides' }>,
  unit: LengthUnit,
  reading: Reading,
): { ok: true; sides: Sides } | { ok: false; flaws: readonly Flaw[] } {
  const { from, to, a, b } = shape;
  const x = readSide(a, unitIn(b) ?? unit, reading);
  const y = a === b && x.ok ? x : readSide(b, unitIn(a) ?? unit, reading);
  const flaw = (expected: string, ...mends: string[]): Flaw => ({
    from,
    to,
    expected,
    mends: () => mends,
  });
  if (!x.ok) return { ok: false, flaws: [flaw(x.expected, ...x.mends.map((mend) => `${mend} x ${b}`))] };
  if (!y.ok) return { ok: false, flaws: [flaw(y.expected, ...y.mends.map((mend) => `${a} x ${mend}`))] };
  if (x.length < TICKS_PER_INCH || y.length < TICKS_PER_INCH) return { ok: false, flaws: [flaw(sideTooShort())] };
  return { ok: true, sides: { x: x.length, y: y.length } };
}

// Words and angles that make a corner or a bay slanted.

const SLANTED =
  /(?<![a-z])(?:diagon[a-z]*|clipped|slant(?:ed|ing)?|angled?|chamfer(?:ed)?|bevel(?:led|ed)?|straight across)(?![a-z])/;
const DEGREES = new RegExp(`(?:(?:at|of) )?${ANGLE}`, 'gi');

/** The text with every angle blanked out; positions stay the same. */
export function withoutAngles(text: string): string {
  return text.replace(DEGREES, (angle) => ' '.repeat(angle.length));
}

function anglesIn({ from, to, shape }: RoomPiece, plain: string): readonly string[] {
  return `${plain.slice(from, shape.from)} ${plain.slice(shape.to, to)}`.match(DEGREES) ?? [];
}

/** True if the words around a corner say that it is cut off straight. */
function isSlantedCorner(piece: RoomPiece | undefined, plain: string): boolean {
  if (!piece) return false;
  const { from, to, shape } = piece;
  const words = `${plain.slice(from, shape.from)} ${plain.slice(shape.to, to)}`;
  return SLANTED.test(words) || anglesIn(piece, plain).length > 0;
}

const CLIPPED = '(?:clipped|angled|slanted|diagonal)';
const WITH_CORNER = new RegExp(
  `(?<![a-z])with(?= (?:an? |one |the )?(?:${CLIPPED} corner|[^;+a-z]{0,24}(?:(?:ft|in|m|cm|x|by|and)[^;+a-z]{0,12}){0,6}(?:${CLIPPED} corner|corner (?:cut |taken )?(?:off )?(?:${CLIPPED}|diagonally))(?![a-z])))`,
  'g',
);

/**
 * Plain text with cut-off corners (“with a clipped corner”) reworded like other omitted ones (“less”), at the same
 * length.
 */
export function cornersLess(plain: string): string {
  return plain.replace(WITH_CORNER, 'less');
}

const USUAL_ANGLE = 45;
const LEAST_ANGLE = 15;
const MOST_ANGLE = 90;
const WALLS = ['far', 'near', 'left', 'right'] as const;
type Wall = (typeof WALLS)[number];

type WithBays =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** The outline of the rectangle `room` with its bays, with its box at (0,0) again. */
function withBays(
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
      sayLength(ticks(length), { units: unitsOf(unit), decimal: reading.preferences.decimal });
    reading.note(bayRead(name, say(width), say(depth), degrees, wall, say(front)));
  }
  return flaws.length > 0 ? { ok: false, flaws } : { ok: true, outline: bays.length > 0 ? settledWalk(made) : made };
}

/** How far a side of the bay runs back along the wall, rounded once to a tick. */
function backOf(depth: number, degrees: number): number {
  if (degrees === 90) return 0;
  return degrees === 45 ? depth : Math.round(depth / Math.tan((degrees * Math.PI) / 180));
}

function liesOn([ax, ay]: Point, [bx, by]: Point, wall: Wall, { x, y }: Sides): boolean {
  if (wall === 'far') return ay === y && by === y;
  if (wall === 'near') return ay === 0 && by === 0;
  return wall === 'left' ? ax === 0 && bx === 0 : ax === x && bx === x;
}

/** The four corners of a bay in the middle of the wall from one point to another, counterclockwise. */
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

// One region's outline from its sides or walk, without its omitted corners, and notes on how it was read.

type ReadOutline =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/**
 * Parses the outline of a region. `stated` is the unit of its own numbers; without one they are in `unit`, with a note.
 */
export function readOutline(
  text: string,
  plain: string,
  region: GatheredRooms,
  stated: LengthUnit | undefined,
  unit: LengthUnit,
  reading: Reading,
): ReadOutline {
  const { name, piece, notches, bays } = region;
  const { shape } = piece;
  const own = stated ?? unit;
  const saying = { units: unitsOf(own), decimal: reading.preferences.decimal };
  if (piece.sign === 'plus' || piece.sign === 'and') reading.note(laidByItself(name));
  if (!stated) {
    const typed = shape.kind === 'walk' ? 'walk' : text.slice(shape.from, shape.to).trim();
    reading.note(roomReadIn(name, typed, UNITS[own].word));
  }
  if (shape.kind === 'walk') {
    const walk = readWalk(plain, shape, own, reading);
    const flaws = [
      ...notches.map((notch) => whole(notch, notchOfWalk())),
      ...bays.map((bay) => whole(bay, bayOfWalk())),
    ];
    if (!walk.ok) return { ok: false, flaws: [...walk.flaws, ...flaws] };
    if (walk.closing !== undefined) reading.note(wallLeftOut(name, sayLength(walk.closing, saying)));
    if (walk.eased === true) reading.note(walkEased(name));
    else if (walk.eased) reading.note(slantedWalkEased(name, sayLength(walk.eased, saying)));
    return flaws.length > 0 ? { ok: false, flaws } : { ok: true, outline: walk.outline };
  }
  const sides = readSides(shape, own, reading);
  const corners = notches.map((notch) =>
    notch.shape.kind === 'sides' ? readSides(notch.shape, own, reading) : undefined,
  );
  const flaws = [sides, ...corners].flatMap((read) => (read && !read.ok ? read.flaws : []));
  const cut = corners.flatMap((read, i) =>
    read?.ok ? [{ ...read.sides, slanted: isSlantedCorner(notches[i], plain) }] : [],
  );
  const walks = notches.filter((notch) => notch.shape.kind === 'walk').map((notch) => whole(notch, notchOfWalk()));
  if (!sides.ok || flaws.length + walks.length > 0) return { ok: false, flaws: [...flaws, ...walks] };
  const outline = withoutCorners(sides.sides, cut);
  if ('why' in outline) {
    const bad = notches[outline.notch];
    const why = {
      'too many': notchesTooMany(CORNERS.length),
      'too large': notchTooLarge(),
      'meets another': notchesMeet(),
    };
    return { ok: false, flaws: bad ? [whole(bad, why[outline.why])] : [] };
  }
  cut.forEach(({ x, y, slanted }, i) => {
    const size = `${sayLength(x, saying)} x ${sayLength(y, saying)}`;
    reading.note((slanted ? cornerCutOff : cornerLeftOut)(name, size, CORNERS[i] ?? ''));
  });
  return withBays(outline, sides.sides, region, plain, own, reading);
}

function whole({ joint, from, to }: RoomPiece, expected: string): Flaw {
  return { from: joint, to, shown: { from, to }, expected, mends: () => [] };
}
