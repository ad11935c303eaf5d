/** How large a room is, in words. */

import { type Saying, sayLength } from '../input/format.ts';
import type { Region } from '../layout/floor.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { boxOf } from '../units/geometry.ts';
import { ticks } from '../units/length.ts';

/** A region's bounding sides in words, as it was told. */
export function saySize(region: Region, saying: Saying): string {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  return DRAWING.size(sayLength(ticks(maxX - minX), saying), sayLength(ticks(maxY - minY), saying));
}
