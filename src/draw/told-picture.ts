/** A room as it was told, its pieces lying at whatever angle they are laid: for floors whose rows run at a slant. */

import type { LaidRegion, Piece, Plan } from '../core/floor/floor.ts';
import { toRoom } from '../core/floor/frame.ts';
import { inset } from '../core/floor/inset.ts';
import { boxOf, type Outline, type Point } from '../core/geometry.ts';
import type { Place, Shape, ShapeRole } from '../reply/drawing.ts';
import { sidesOf } from './clip.ts';
import { gapWidened, ringsOf, type Seen } from './floor-shapes.ts';
import { ringsOfPiece, seamsOf } from './piece-rings.ts';

/** The gap is seen at least this wide on the sheet. */
const LEAST_GAP = 1.6;

/** A picture from (0, 0), walls included. */
export interface ToldPicture {
  readonly shapes: readonly Shape[];
  readonly seen: Seen;
  readonly width: number;
  readonly height: number;
}

/** Draws a room at a scale (sheet units a tick) with walls of a thickness; `roleOf` says what each piece is drawn as. */
export function toldPicture(
  region: LaidRegion,
  plan: Plan,
  scale: number,
  thickness: number,
  roleOf: (piece: Piece) => ShapeRole,
): ToldPicture {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const [wide, deep] = [(maxX - minX) * scale, (maxY - minY) * scale];
  const at = ([x, y]: Place): Place => [thickness + (x - minX) * scale, thickness + deep - (y - minY) * scale];
  const seen: Seen = { scale, at };
  const grown = (by: number): readonly Outline[] =>
    inset(region.outline, region.holes, -Math.max(1, Math.round(by / scale)));
  const faces = ringsOf(grown(gapWidened(plan, scale) ? LEAST_GAP - plan.rules.gap * scale : 0), seen);
  const inRoom = (point: Point): Place => at(toRoom(point, region.frame));
  const pieces: Shape[] = [];
  const lines: [Place, Place][] = [];
  region.rows.forEach((row, r) => {
    row.pieces.forEach((piece, i) => {
      pieces.push({
        kind: 'polygon',
        role: roleOf(piece),
        rings: ringsOfPiece(piece, row).map((ring) => ring.map(inRoom)),
      });
      const before = row.pieces[i - 1];
      const joined = before !== undefined && before.u + before.length === piece.u;
      for (const [from, to] of seamsOf(piece, row, joined, r === 0)) lines.push([inRoom(from), inRoom(to)]);
    });
  });
  const covered = ringsOf(inset(region.outline, region.holes, plan.rules.gap), seen);
  return {
    seen,
    width: wide + 2 * thickness,
    height: deep + 2 * thickness,
    shapes: [
      { kind: 'polygon', role: 'wall', rings: ringsOf(grown(thickness), seen) },
      { kind: 'polygon', role: 'gap', rings: faces },
      { kind: 'lines', role: 'wall-face', lines: sidesOf(faces) },
      ...pieces,
      { kind: 'lines', role: 'joint', lines },
      { kind: 'lines', role: 'floor-edge', lines: sidesOf(covered) },
    ],
  };
}
