/** Drawings of trim: walls in elevation, and sticks with their cuts. */

import { type Saying, sayCut, sayLength, sayNumber } from '../input/format.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { ELEVATION, TAPES } from '../text/drawing-text.ts';
import { sayTrimCut } from '../text/trim-text.ts';
import type { TrimPiece } from '../trim/pieces.ts';
import { type Stick, type StickPiece, type Stock, sawMarks } from '../trim/sticks.ts';
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
import { notes, type SheetPart, sheetOf } from './drawing-sheet.ts';
import { MARGIN } from './fit.ts';
import { placed } from './svg.ts';
import { baseline, SMALL, textWidth, wrapped, write } from './text.ts';

/** Longest stack on one sheet, in sheet units. */
const LONGEST = 1150;
const LINE = 12;

export interface StickBlock extends SheetPart {
  readonly alt: string;
}

/** What surrounds the blocks of each sheet; `page` is undefined if there is only one sheet. */
interface Frame {
  readonly title: (page: string | undefined) => string;
  readonly facts: readonly string[];
  readonly notes: readonly string[];
  readonly alt: (blocks: readonly string[]) => string;
}

export function stacked(blocks: readonly StickBlock[], frame: Frame): readonly Drawing[] {
  const pages: StickBlock[][] = [];
  let height = Number.POSITIVE_INFINITY;
  for (const block of blocks) {
    if (height + block.height > LONGEST) {
      pages.push([]);
      height = 0;
    }
    pages.at(-1)?.push(block);
    height += block.height;
  }
  return pages.map((page, i) => {
    let y = 0;
    const shapes = page.flatMap((block) => {
      const moved = placed(block.shapes, { dx: 0, dy: y });
      y += block.height;
      return moved;
    });
    return sheetOf({
      title: frame.title(pages.length > 1 ? TAPES.page(i + 1, pages.length) : undefined),
      alt: frame.alt(page.map(({ alt }) => alt)),
      facts: frame.facts,
      figure: { shapes, upright: false, width: SHEET_WIDTH, height: y, listed: [] },
      below: [notes(frame.notes)],
    });
  });
}

/** Lines of text from (MARGIN, y) down, wrapped at the edge of the sheet. */
export function stickLines(texts: readonly string[], y: number): SheetPart {
  const all = texts.flatMap((text) => wrapped(text, SMALL, false, SHEET_WIDTH - 2 * MARGIN));
  return {
    shapes: all.map((line, i) => write('cut', line, MARGIN, baseline(y + LINE * (i + 0.5)))),
    height: all.length * LINE,
  };
}

/** Where the second column starts: past the longest mark, 1234 5/16" or 12345 mm. */
const SECOND = 66;

/** Lines in two columns, the first in bold: a number, and what it is for. */
function rows(pairs: readonly (readonly [mark: string, text: string])[], y: number): SheetPart {
  let height = 0;
  const shapes = pairs.flatMap(([mark, text]) => {
    const level = y + height + LINE / 2;
    const broken = wrapped(text, SMALL, false, SHEET_WIDTH - 2 * MARGIN - SECOND);
    height += LINE * Math.max(1, broken.length);
    return [
      ...(mark === '' ? [] : [write('cut', mark, MARGIN, baseline(level), { bold: true })]),
      ...broken.map((line, i) => write('cut', line, MARGIN + SECOND, baseline(level + LINE * i))),
    ];
  });
  return { shapes, height };
}

/** A plan's sticks with what they are cut from. Lengths in ticks. */
interface SticksShown {
  readonly sticks: readonly Stick[];
  readonly stock: readonly Stock[];
  readonly pieces: readonly StickPiece[];
  readonly endTrim: Length;
}

const ACROSS = SHEET_WIDTH - 2 * MARGIN;
const HEIGHT = 15;
const TOP = 14;

export function drawSticks(shown: SticksShown, saying: Saying): readonly Drawing[] {
  const longest = Math.max(...shown.sticks.map(({ stock }) => shown.stock[stock]?.length ?? 0));
  return stacked(
    shown.sticks.map((stick, i) => stickBlock(stick, i + 1, shown, ACROSS / longest, saying)),
    { title: TAPES.title, facts: [TAPES.facts(shown.sticks.length)], notes: TAPES.notes, alt: TAPES.alt },
  );
}

function stickBlock(stick: Stick, number: number, shown: SticksShown, scale: number, saying: Saying): StickBlock {
  const stock = shown.stock[stick.stock];
  const length = ticks(stock?.length ?? 0);
  const byId = new Map(shown.pieces.map((piece) => [piece.id, piece]));
  const marks = sawMarks(stick, byId, shown.endTrim);
  const at = (place: number): number => MARGIN + place * scale;
  const used = length - stick.leftover;
  const title = TAPES.stick(number, sayLength(length, saying), stock?.have !== undefined);
  const said = marks.map(({ id, to }) => TAPES.mark(sayCut(to, saying), id));
  const below = rows(
    [
      ...(shown.endTrim > 0 ? [[sayCut(shown.endTrim, saying), TAPES.square] as const] : []),
      ...marks.map(
        ({ id, to, from }) => [sayCut(to, saying), TAPES.piece(id, sayCut(ticks(to - from), saying))] as const,
      ),
      ['', TAPES.left(sayCut(ticks(stick.leftover), saying))],
    ],
    TOP + HEIGHT + 3,
  );
  const shapes: Shape[] = [
    write('dimension', title, MARGIN, baseline(6), { bold: true }),
    ...tapeShape('offcut-kept', at(used), at(length)),
    ...(shown.endTrim > 0 ? tapeShape('gap', at(0), at(shown.endTrim)) : []),
    ...marks.flatMap(({ from, to }) => tapeShape('plank-whole', at(from), at(to))),
    ...marks.flatMap(({ id, from, to }, i) => label(id, i + 1, at(from), at(to))),
    ...below.shapes,
  ];
  const alt = TAPES.altStick(number, sayLength(length, saying), said);
  return { shapes, height: TOP + HEIGHT + 3 + below.height + 9, alt };
}

function tapeShape(role: 'plank-whole' | 'offcut-kept' | 'gap', from: number, to: number): readonly Shape[] {
  if (to <= from) return [];
  const edge = [
    [from, TOP],
    [to, TOP],
    [to, TOP + HEIGHT],
    [from, TOP + HEIGHT],
    [from, TOP],
  ] as const;
  return [
    { kind: 'rect', role, x: from, y: TOP, width: to - from, height: HEIGHT },
    { kind: 'line', role: 'wall-face', points: edge },
  ];
}

/** A piece's name on the tape if it fits; the lines below list them in the same order. */
function label(id: string, order: number, from: number, to: number): readonly Shape[] {
  const text = [id, String(order)].find((one) => textWidth(one, SMALL, false) <= to - from - 4);
  if (text === undefined) return [];
  return [write('cut', text, (from + to) / 2, baseline(TOP + HEIGHT / 2), { anchor: 'middle' })];
}

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
const WALL_ACROSS = SHEET_WIDTH - 2 * MARGIN - 2 * FLARE;
const STUD = 4;

export function drawElevations(room: string, shown: TrimShown, saying: Saying): readonly Drawing[] {
  const walls = shown.walls.filter((wall) => wall.room === room);
  const scale = WALL_ACROSS / Math.max(...walls.map(({ length }) => length));
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
