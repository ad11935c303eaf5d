/** A board of trim seen from above, the wall behind it: its ends slant as they are cut. */

import type { Place, Shape } from '../reply/drawing.ts';
import type { TrimPiece } from '../trim/pieces.ts';
import { type Cut, isOutside, type TrimWall } from '../trim/walls.ts';

/** Height of a board on the sheet: room for its letter and length. */
export const STRIP_HEIGHT = 14;
/** How far a slanted end leans: drawn alike for every setting, the words tell the angle. */
const LEAN = 5;

/** A board's surface and its edge from `top` down; short pieces are dotted. `at` maps ticks along the wall to the sheet. */
export function boardShapes(
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

/** Which way the face end leans: 1 out beyond the wall's end at an outside corner, -1 back from it at an inside one, 0 square. */
function leanOf({ cut }: Cut, outside: boolean): -1 | 0 | 1 {
  if (cut === 'square' || cut === 'scarf') return 0;
  return outside ? 1 : -1;
}
