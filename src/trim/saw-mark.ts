/** A stick as a tape: where the saw cuts, one number after another from the stick's squared end. Ticks. */

import { type Length, ticks } from '../units/length.ts';
import type { Stick, StickPiece } from './stick-task.ts';

/** A piece on its stick: it begins at `from` and its far long point is at `to`, where the saw's near side cuts. */
export interface SawMark {
  readonly id: string;
  readonly from: Length;
  readonly to: Length;
}

/** Marks of a stick in cutting order: each piece begins where the last ended and its kerf was taken. Throws a RangeError for an unknown piece. */
export function sawMarks(stick: Stick, pieces: ReadonlyMap<string, StickPiece>, endTrim: number): readonly SawMark[] {
  let from = endTrim;
  return stick.pieces.map((id) => {
    const piece = pieces.get(id);
    if (!piece) throw new RangeError(`no piece ${id}`);
    const mark = { id, from: ticks(from), to: ticks(from + piece.length) };
    from = mark.to + piece.kerf;
    return mark;
  });
}
