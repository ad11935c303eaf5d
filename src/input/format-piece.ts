/** Formatting a cut piece: its length, both sides if an end is slanted, and its corners if it is cut to a shape. */

import { describe } from '../layout/covered-area.ts';
import type { Piece, Row } from '../layout/floor.ts';
import { inUnits } from '../text/answer-text.ts';
import { SHAPE } from '../text/floor-text.ts';
import { at, boxOf, doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { TICKS_PER_INCH, ticks } from '../units/length.ts';
import { type Saying, sayCut } from './format.ts';

/** Lengths along the edge facing the previous row (near) and the next one (far); undefined when no end is slanted. */
export function sidesOfPiece({ length, left, right }: Omit<Piece, 'plank'>): { near: number; far: number } | undefined {
  if (!left && !right) return undefined;
  return {
    near: length - (left?.near ?? 0) - (right?.near ?? 0),
    far: length - (left?.far ?? 0) - (right?.far ?? 0),
  };
}

/** Short form: 12 1/4", or 12 1/4" / 8 3/4" along its near and far edge. */
export function sayPieceShort(piece: Piece, saying: Saying): string {
  const sides = sidesOfPiece(piece);
  if (!sides) return sayCut(ticks(piece.length), saying);
  return SHAPE.sides(said(sides.near, saying), said(sides.far, saying));
}

/** For marking the cut: long and short side with the angle, the corner cut off, or all corners. */
export function sayPieceMarked(
  given: Omit<Piece, 'plank'>,
  row: Pick<Row, 'v' | 'height'>,
  saying: Saying,
  edges: { readonly near: string; readonly far: string } = SHAPE.inRow,
): string {
  const piece = plainly(given, row);
  const length = sayCut(ticks(piece.length), saying);
  if (!piece.shape) return given.shape ? inUnits(SHAPE.nicked(length), saying.units) : length;
  const sides = sidesOfPiece(piece);
  if (sides && isStraight(piece)) {
    const [long, short] = [Math.max(sides.near, sides.far), Math.min(sides.near, sides.far)];
    const angles = [
      ...new Set([piece.left, piece.right].flatMap((cut) => (cut ? [SHAPE.degrees(wholeIfNear(cut.degrees))] : []))),
    ];
    if (long === short) return SHAPE.leaning(said(long, saying), angles.join(' and '));
    return SHAPE.slanted(
      said(long, saying),
      said(short, saying),
      angles.join(' and '),
      sides.far > sides.near ? edges.far : edges.near,
    );
  }
  const rip = ripped(piece, row);
  if (rip) return SHAPE.ripped(length, said(rip.width, saying), rip.far ? edges.far : edges.near);
  const off = cornerOff(piece, row);
  if (off) {
    const edge = off.far ? edges.far : edges.near;
    return SHAPE.cornerOff(length, SHAPE.ends[off.end], edge, said(off.along, saying), said(off.across, saying));
  }
  return SHAPE.corners(
    length,
    cornersOf(piece, row).map(([along, across]) => SHAPE.corner(said(along, saying), said(across, saying))),
  );
}

/** True when the end cuts are all there is: four corners, or three if one cut takes a whole end. */
function isStraight({ shape = [] }: Omit<Piece, 'plank'>): boolean {
  const [ring, ...more] = shape;
  return ring !== undefined && more.length === 0 && ring.length <= 4;
}

/** A corner closer to an edge of the board than this, half of the printed precision, counts as on it. */
const NICK = TICKS_PER_INCH / 32;

/** The piece without nicks too small to measure: its shape, and its ends if they are straight cuts. */
function plainly(piece: Omit<Piece, 'plank'>, { v, height }: Pick<Row, 'v' | 'height'>): Omit<Piece, 'plank'> {
  const { shape, left, right, ...board } = piece;
  if (!shape) return board;
  const box = { u: piece.u, length: piece.length, v, height };
  const rings = shape
    .map((ring): Outline => {
      const placed = ring.map(
        ([x, y]): Point => [onEdge(x, piece.u, piece.u + piece.length), onEdge(y, v, v + height)],
      );
      return placed.filter(([x, y], i) => {
        const [beforeX, beforeY] = at(placed, i + placed.length - 1);
        return x !== beforeX || y !== beforeY;
      });
    })
    .filter((ring) => doubleArea(ring) !== 0n);
  return { ...board, ...describe(box, rings) };
}

/** Rounds an angle that a nick has changed by less than a saw's scale shows. */
function wholeIfNear(degrees: number): number {
  return Math.abs(degrees - Math.round(degrees)) <= 0.2 ? Math.round(degrees) : degrees;
}

function onEdge(place: number, low: number, high: number): number {
  return Math.abs(place - low) <= NICK ? low : Math.abs(place - high) <= NICK ? high : place;
}

/** What is left of a board ripped from end to end, and whether it keeps its far edge. */
function ripped(
  { u, length, shape = [] }: Omit<Piece, 'plank'>,
  { v, height }: Pick<Row, 'v' | 'height'>,
): { width: number; far: boolean } | undefined {
  const [ring, ...more] = shape;
  if (!ring || more.length > 0 || ring.length !== 4 || ring.some(([x]) => x !== u && x !== u + length))
    return undefined;
  const { minY, maxY } = boxOf(ring);
  if (ring.some(([, y]) => y !== minY && y !== maxY) || (minY !== v && maxY !== v + height)) return undefined;
  return { width: maxY - minY, far: maxY === v + height };
}

/** The one corner a straight cut takes off, measured along and across the board. */
function cornerOff(
  { u, length, shape = [] }: Omit<Piece, 'plank'>,
  { v, height }: Pick<Row, 'v' | 'height'>,
): { end: 'left' | 'right'; far: boolean; along: number; across: number } | undefined {
  const [ring, ...more] = shape;
  if (!ring || more.length > 0 || ring.length !== 5) return undefined;
  const cut = ring.filter(([x, y]) => !((x === u || x === u + length) && (y === v || y === v + height)));
  const onEnd = cut.find(([x]) => x === u || x === u + length);
  const onSide = cut.find(([, y]) => y === v || y === v + height);
  if (cut.length !== 2 || !onEnd || !onSide) return undefined;
  const [right, far] = [onEnd[0] !== u, onSide[1] !== v];
  return {
    end: right ? 'right' : 'left',
    far,
    along: right ? u + length - onSide[0] : onSide[0] - u,
    across: far ? v + height - onEnd[1] : onEnd[1] - v,
  };
}

/**
 * Corners, measured from the board's left end and the edge facing the previous row: only the added ones, or all of them
 * if the board loses some of its own.
 */
function cornersOf(
  { u, length, shape = [] }: Omit<Piece, 'plank'>,
  { v, height }: Pick<Row, 'v' | 'height'>,
): readonly (readonly [along: number, across: number])[] {
  const all = shape.flat().map(([x, y]) => [x - u, y - v] as const);
  const others = all.filter(
    ([along, across]) => !((along === 0 || along === length) && (across === 0 || across === height)),
  );
  return all.length - others.length >= 4 ? others : all;
}

function said(length: number, saying: Saying): string {
  return length <= 0 ? SHAPE.nothing : sayCut(ticks(length), saying);
}
