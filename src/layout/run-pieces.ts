/** A laid row taken apart into its runs. */

import type { Piece, Row } from './floor.ts';

/** A row's pieces by run: a run ends where the next piece does not follow on. */
export function runsIn(row: Row): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  let end: number | undefined;
  for (const piece of row.pieces) {
    if (piece.u === end) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    end = piece.u + piece.length;
  }
  return runs;
}
