/** The tables of a trim answer: each piece with its cuts, each wall with its corners. */

import { sayDegrees, sayEnd, type TrimShown } from '../../../src/drawing/elevation.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { TRIM } from '../../../src/text/trim-text.ts';
import type { StickPlan } from '../../../src/trim/sticks.ts';
import { sawSetting, type TrimWall, wallName } from '../../../src/trim/walls.ts';
import { ticks } from '../../../src/units/length.ts';

/** Pieces in the order of the walls, with the stick that each comes from. */
export function pieceTable({ walls, pieces }: TrimShown, { sticks }: StickPlan, saying: Saying): Block {
  const stickOf = new Map(sticks.flatMap((stick, i) => stick.pieces.map((id) => [id, String(i + 1)] as const)));
  const rows = walls.flatMap((wall) =>
    pieces
      .filter((piece) => piece.wall === wallName(wall))
      .map(({ id, length, left, right }) => [
        id,
        sayCut(ticks(length), saying),
        sayEnd(wall, 'left', left, saying),
        sayEnd(wall, 'right', right, saying),
        stickOf.get(id) ?? '',
      ]),
  );
  return { kind: 'table', title: TRIM.pieceTitle, columns: TRIM.pieceColumns, rows };
}

/** Walls with the angle at either corner and the saw's setting for it. */
export function cornerTable(walls: readonly TrimWall[], saying: Saying): Block {
  const say = (interior: number): string =>
    interior === 180
      ? TRIM.straight
      : TRIM.corner(sayDegrees(interior, saying), sayDegrees(sawSetting(interior), saying));
  return {
    kind: 'table',
    title: TRIM.cornerTitle,
    columns: TRIM.cornerColumns,
    rows: walls.map((wall) => [
      wallName(wall),
      sayLength(wall.length, saying),
      say(wall.left.interior),
      say(wall.right.interior),
    ]),
  };
}
