/** How a cut piece is said: its length, both its sides where an end is slanted, and its corners where it is cut to a shape. */

import type { Piece, Row } from '../core/floor/floor.ts';
import { ticks } from '../core/length.ts';
import { SHAPE } from '../words/piece.ts';
import { type Saying, sayCut } from './say-length.ts';

/** Lengths along the edge that faces the row before (near) and the next one (far); undefined when no end is slanted. */
export function sidesOfPiece({ length, left, right }: Omit<Piece, 'plank'>): { near: number; far: number } | undefined {
  if (!left && !right) return undefined;
  return {
    near: length - (left?.near ?? 0) - (right?.near ?? 0),
    far: length - (left?.far ?? 0) - (right?.far ?? 0),
  };
}

/** A cut piece in short: 12 1/4", or 12 1/4" / 8 3/4" along its near and its far edge. */
export function sayPieceShort(piece: Piece, saying: Saying): string {
  const sides = sidesOfPiece(piece);
  if (!sides) return sayCut(ticks(piece.length), saying);
  return SHAPE.sides(said(sides.near, saying), said(sides.far, saying));
}

/** A cut piece as it is marked: its long and its short side with the angle, or its corners. */
export function sayPieceMarked(
  piece: Omit<Piece, 'plank'>,
  row: Pick<Row, 'v' | 'height'>,
  saying: Saying,
  edges: { readonly near: string; readonly far: string } = SHAPE.inRow,
): string {
  const sides = sidesOfPiece(piece);
  const straight = sides && cornersOf(piece, row).length <= 2 * [piece.left, piece.right].filter((cut) => cut).length;
  if (sides && straight) {
    const [long, short] = [Math.max(sides.near, sides.far), Math.min(sides.near, sides.far)];
    const angles = [...new Set([piece.left, piece.right].flatMap((cut) => (cut ? [`${cut.degrees}°`] : [])))];
    if (long === short) return SHAPE.leaning(said(long, saying), angles.join(' and '));
    return SHAPE.slanted(
      said(long, saying),
      said(short, saying),
      angles.join(' and '),
      sides.far > sides.near ? edges.far : edges.near,
    );
  }
  const length = sayCut(ticks(piece.length), saying);
  if (!piece.shape) return length;
  return SHAPE.corners(
    length,
    cornersOf(piece, row).map(([along, across]) => SHAPE.corner(said(along, saying), said(across, saying))),
  );
}

/** Corners that are none of the board's own, from its left end and from the edge that faces the row before. */
function cornersOf(
  { u, length, shape = [] }: Omit<Piece, 'plank'>,
  { v, height }: Pick<Row, 'v' | 'height'>,
): readonly (readonly [along: number, across: number])[] {
  return shape
    .flat()
    .map(([x, y]) => [x - u, y - v] as const)
    .filter(([along, across]) => !((along === 0 || along === length) && (across === 0 || across === height)));
}

function said(length: number, saying: Saying): string {
  return length <= 0 ? SHAPE.nothing : sayCut(ticks(length), saying);
}
