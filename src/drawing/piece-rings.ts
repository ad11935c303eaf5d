/** Pieces whose shape walls cut, and their neighbours, as rings and lines in the laying frame. */

import type { LaidRegion, Piece, Row } from '../layout/floor.ts';
import type { ShapeRole } from '../reply/drawing.ts';
import type { Outline, Point } from '../units/geometry.ts';
import type { OnFloor } from './on-floor.ts';

/** True when some piece of a region is less than a rectangle: the region is drawn piece by piece then. */
export function isShaped(region: LaidRegion): boolean {
  return region.rows.some((row) => row.pieces.some(({ shape }) => shape !== undefined));
}

/** What a piece covers. */
export function ringsOfPiece({ u, length, shape }: Piece, { v, height }: Row): readonly Outline[] {
  if (shape) return shape;
  return [
    [
      [u, v],
      [u + length, v],
      [u + length, v + height],
      [u, v + height],
    ],
  ];
}

/** Where a piece meets the one before it in its row, and the row before: stretches of its sides. */
export function seamsOf(piece: Piece, row: Row, joined: boolean, first: boolean): readonly (readonly [Point, Point])[] {
  return ringsOfPiece(piece, row).flatMap((ring) =>
    ring.flatMap((from, i): (readonly [Point, Point])[] => {
      const to = ring[(i + 1) % ring.length] ?? from;
      const end = joined && from[0] === piece.u && to[0] === piece.u;
      const edge = !first && from[1] === row.v && to[1] === row.v;
      return end || edge ? [[from, to]] : [];
    }),
  );
}

/** All pieces of a region with their roles, and the lines between them. */
export function onFloor(region: LaidRegion, roleOf: (piece: Piece) => ShapeRole): OnFloor {
  const all = region.rows.flatMap((row, r) =>
    row.pieces.map((piece, i) => {
      const before = row.pieces[i - 1];
      return { piece, row, joined: before !== undefined && before.u + before.length === piece.u, first: r === 0 };
    }),
  );
  return {
    pieces: all.map(({ piece, row }) => ({ role: roleOf(piece), rings: ringsOfPiece(piece, row) })),
    lines: all.flatMap(({ piece, row, joined, first }) => seamsOf(piece, row, joined, first)),
  };
}
