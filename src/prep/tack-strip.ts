/** Tack strip along the walls: its length less the doorways, the pieces it was nailed down in, and how far out it reaches. */

import { type Outline, wallLength } from '../units/geometry.ts';
import { type Length, roundUpRatio, ticks } from '../units/length.ts';

/** Ticks round a room: every wall of the outline and its holes. */
export function perimeterOf(outline: Outline, holes: readonly Outline[]): Length {
  const walls = [outline, ...holes].flatMap((loop) => loop.map((_, i) => wallLength(loop, i)));
  return ticks(walls.reduce<number>((sum, wall) => sum + wall, 0));
}

/** Perimeter − doorways, in ticks; undefined when the doorways are wider than the walls. */
export function tackStripLength(perimeter: Length, doorways: readonly Length[]): Length | undefined {
  const left = doorways.reduce<number>((rest, doorway) => rest - doorway, perimeter);
  return left < 0 ? undefined : ticks(left);
}

/** Pieces of tack strip: ⌈length ÷ piece⌉. */
export function tackStripPieces(length: Length, piece: Length): number {
  return roundUpRatio(BigInt(length), BigInt(piece));
}

/** How far from the wall tack strip may reach: the gully beside it and its own width (CRI 104/105 §11.1). */
export function tackStripReach(gully: Length, width: Length): Length {
  return ticks(gully + width);
}
