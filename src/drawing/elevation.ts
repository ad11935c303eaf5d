/** Walls stacked on a sheet with their trim: pieces, joints, doors and studs, as seen facing each wall. */

import { type Saying, sayCut, sayLength, sayNumber } from '../input/format.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { ELEVATION } from '../text/drawing-text.ts';
import { sayTrimCut } from '../text/trim-text.ts';
import type { TrimPiece } from '../trim/pieces.ts';
import {
  type Cut,
  isOutside,
  type Studs,
  stretchesOf,
  studsBetween,
  type TrimWall,
  type WallOpening,
  wallName,
} from '../trim/walls.ts';
import { type Length, ticks } from '../units/length.ts';
import { MARGIN } from './fit.ts';
import { textWidth } from './font.ts';
import { type StickBlock, stacked, stickLines } from './stick-drawing.ts';
import { baseline, SMALL, write } from './text.ts';

// A board seen from above, with the wall behind it; its ends slant the way they are cut.

/** Leaves room for the board's letter and length. */
const STRIP_HEIGHT = 14;
/** How far a slanted end leans: the same for every setting, since the text gives the angle. */
const LEAN = 5;

/** A board's surface and edge from `top` down; short pieces are dotted. `at` maps ticks along the wall to the sheet. */
function boardShapes(
  piece: TrimPiece,
  wall: TrimWall,
  short: boolean,
  at: (length: number) => number,
  top: number,
): readonly Shape[] {
  const { from, to, left, right } = piece;
  const [a, b] = [at(from), at(to)];
  const half = (b - a) / 2;
  const [back, face] = [leanOf(left, isOutside(wall.left.interior)), leanOf(right, isOutside(wall.right.interior))];
  const lean = (share: number): number => Math.min(Math.abs(share) * LEAN, Math.max(half - 0.5, 0)) * Math.sign(share);
  const bottom = top + STRIP_HEIGHT;
  const scarfRight = right.cut === 'scarf' ? LEAN / 2 : 0;
  const scarfLeft = left.cut === 'scarf' ? LEAN / 2 : 0;
  const ring: readonly Place[] = [
    [a + scarfLeft, top],
    [b + scarfRight, top],
    [b + (right.cut === 'scarf' ? -scarfRight : lean(face)), bottom],
    [a - (left.cut === 'scarf' ? scarfLeft : lean(back)), bottom],
  ];
  return [
    { kind: 'polygon', role: short ? 'offcut-kept' : 'plank-whole', rings: [ring] },
    { kind: 'line', role: 'wall-face', points: [...ring, ...ring.slice(0, 1)] },
  ];
}

/**
 * Which way the face end leans: 1 beyond the wall's end at an outside corner, -1 back from it at an inside one, 0
 * square.
 */
function leanOf({ cut }: Cut, outside: boolean): -1 | 0 | 1 {
  if (cut === 'square' || cut === 'scarf') return 0;
  return outside ? 1 : -1;
}

/** Everything a picture of trim needs. Lengths in ticks, along each wall from its left end. */
export interface TrimShown {
  readonly walls: readonly TrimWall[];
  readonly openings: readonly WallOpening[];
  readonly pieces: readonly TrimPiece[];
  readonly glueUp: ReadonlySet<string>;
  readonly studs: Studs;
}

/** Space at both ends for a protruding miter. */
const FLARE = 6;
const ACROSS = SHEET_WIDTH - 2 * MARGIN - 2 * FLARE;
const STUD = 4;

export function drawElevations(room: string, shown: TrimShown, saying: Saying): readonly Drawing[] {
  const walls = shown.walls.filter((wall) => wall.room === room);
  const scale = ACROSS / Math.max(...walls.map(({ length }) => length));
  const pieces = shown.pieces.filter((piece) => walls.some((wall) => wallName(wall) === piece.wall));
  const length = stretchesOf(walls, shown.openings).reduce((sum, { from, to }) => sum + to - from, 0);
  return stacked(
    walls.map((wall) => wallBlock(wall, shown, scale, saying)),
    {
      title: (page) => ELEVATION.title(room, page),
      facts: [ELEVATION.facts(pieces.length, sayLength(ticks(length), saying))],
      notes: ELEVATION.notes,
      alt: (blocks) => ELEVATION.alt(room, blocks),
    },
  );
}

export function sayEnd(wall: TrimWall, side: 'left' | 'right', cut: Cut, saying: Saying): string {
  return sayTrimCut(cut.cut, sayDegrees(cut.setting, saying), isOutside(wall[side].interior));
}

export function sayDegrees(degrees: number, saying: Saying): string {
  return `${sayNumber(degrees, saying)}°`;
}

function wallBlock(wall: TrimWall, shown: TrimShown, scale: number, saying: Saying): StickBlock {
  const name = wallName(wall);
  const pieces = shown.pieces.filter((piece) => piece.wall === name);
  const left = MARGIN + FLARE;
  const top = 12 + STUD + 3;
  const at = (length: number): number => left + length * scale;
  const title = ELEVATION.wall(wall.label, sayLength(wall.length, saying));
  const corners = ELEVATION.corners(sayDegrees(wall.left.interior, saying), sayDegrees(wall.right.interior, saying));
  const below = stickLines(pieceLines(wall, pieces, saying), top + STRIP_HEIGHT + 3);
  const shapes: Shape[] = [
    write('dimension', title, MARGIN, baseline(6), { bold: true }),
    write('note', corners, SHEET_WIDTH - MARGIN, baseline(6), { anchor: 'end' }),
    { kind: 'rect', role: 'wall', x: left, y: top - 3, width: wall.length * scale, height: 3 },
    studStrokes(wall, shown.studs, at, top - 3),
    ...pieces.flatMap((piece) => boardShapes(piece, wall, shown.glueUp.has(piece.id), at, top)),
    ...pieces.filter(({ id }) => !shown.glueUp.has(id)).flatMap((piece) => pieceName(piece, name, at, top, saying)),
    ...shown.openings
      .filter((opening) => opening.wall === name)
      .flatMap((opening) => doorName(opening, at, top, saying)),
    ...below.shapes,
  ];
  const said = pieces.map((piece) => sayPieceLine(wall, piece, saying));
  const alt = ELEVATION.altWall(wall.label, sayLength(wall.length, saying), said);
  return { shapes, height: top + STRIP_HEIGHT + 3 + below.height + 9, alt };
}

function studStrokes(wall: TrimWall, studs: Studs, at: (length: number) => number, y: number): Shape {
  const places = studsBetween(studs, 0, wall.length);
  return {
    kind: 'lines',
    role: 'leader',
    lines: places.map((stud) => [
      [at(stud), y - STUD],
      [at(stud), y],
    ]),
  };
}

/** A piece's letter, and its length if the board is long enough; the lines below list everything in the same order. */
function pieceName(
  { id, wall, length, from, to }: TrimPiece,
  name: string,
  at: (length: number) => number,
  top: number,
  saying: Saying,
): Shape[] {
  const letter = id.slice(wall.length);
  const room = at(to) - at(from) - 16;
  const text = [`${letter}  ${sayCut(length, saying)}`, letter].find((one) => textWidth(one, SMALL, false) <= room);
  if (text === undefined || wall !== name) return [];
  return [write('cut', text, (at(from) + at(to)) / 2, baseline(top + STRIP_HEIGHT / 2), { anchor: 'middle' })];
}

function doorName({ from, to }: WallOpening, at: (length: number) => number, top: number, saying: Saying): Shape[] {
  const text = ELEVATION.door(sayLength(ticks(to - from), saying));
  if (textWidth(text, SMALL, false) > at(to) - at(from) - 4) return [];
  return [write('note', text, (at(from) + at(to)) / 2, baseline(top + STRIP_HEIGHT / 2), { anchor: 'middle' })];
}

function pieceLines(wall: TrimWall, pieces: readonly TrimPiece[], saying: Saying): readonly string[] {
  return pieces.length === 0 ? [ELEVATION.bare] : pieces.map((piece) => sayPieceLine(wall, piece, saying));
}

function sayPieceLine(wall: TrimWall, piece: TrimPiece, saying: Saying): string {
  const { id, length, left, right } = piece;
  const said = (size: Length): string => sayCut(size, saying);
  return ELEVATION.piece(
    id.slice(piece.wall.length),
    said(length),
    sayEnd(wall, 'left', left, saying),
    sayEnd(wall, 'right', right, saying),
  );
}
