/** A room as it was told, its pieces lying at whatever angle they are laid. */

import { inset } from '../layout/covered-area.ts';
import type { Frame, Region } from '../layout/floor.ts';
import { toRoom } from '../layout/frame.ts';
import type { Place, Shape } from '../reply/drawing.ts';
import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import { sidesOf } from './clip.ts';
import { LEAST_GAP, ringsOf, type Seen } from './floor-shapes.ts';
import type { OnFloor } from './on-floor.ts';

/** A picture from (0, 0), walls included. */
export interface ToldPicture {
  readonly shapes: readonly Shape[];
  readonly seen: Seen;
  readonly width: number;
  readonly height: number;
}

/** Draws a room at a scale (sheet units a tick) with walls of a thickness and the gap (ticks) inside them. */
export function toldPicture(
  region: Region & { readonly frame: Frame },
  { pieces, lines }: OnFloor,
  scale: number,
  thickness: number,
  gap: number,
): ToldPicture {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const [wide, deep] = [(maxX - minX) * scale, (maxY - minY) * scale];
  const at = ([x, y]: Place): Place => [thickness + (x - minX) * scale, thickness + deep - (y - minY) * scale];
  const seen: Seen = { scale, at };
  const grown = (by: number): readonly Outline[] =>
    inset(region.outline, region.holes, -Math.max(1, Math.round(by / scale)));
  const widened = gap > 0 && gap * scale < LEAST_GAP;
  const faces = ringsOf(grown(widened ? LEAST_GAP - gap * scale : 0), seen);
  const inRoom = (point: Point): Place => at(toRoom(point, region.frame));
  const covered = ringsOf(inset(region.outline, region.holes, gap), seen);
  return {
    seen,
    width: wide + 2 * thickness,
    height: deep + 2 * thickness,
    shapes: [
      { kind: 'polygon', role: 'wall', rings: ringsOf(grown(thickness), seen) },
      { kind: 'polygon', role: 'gap', rings: faces },
      { kind: 'lines', role: 'wall-face', lines: sidesOf(faces) },
      ...pieces.map(
        ({ role, rings }): Shape => ({ kind: 'polygon', role, rings: rings.map((ring) => ring.map(inRoom)) }),
      ),
      { kind: 'lines', role: 'joint', lines: lines.map(([from, to]) => [inRoom(from), inRoom(to)] as const) },
      { kind: 'lines', role: 'floor-edge', lines: sidesOf(covered) },
    ],
  };
}
