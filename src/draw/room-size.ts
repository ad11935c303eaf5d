/** How large a room is, in words. */

import type { Region } from '../core/floor/floor.ts';
import { boxOf } from '../core/geometry.ts';
import { ticks } from '../core/length.ts';
import { type Saying, sayLength } from '../measure/say-length.ts';
import { DRAWING } from '../words/drawing.ts';

/** A region's bounding sides in words, as it was told. */
export function saySize(region: Region, saying: Saying): string {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  return DRAWING.size(sayLength(ticks(maxX - minX), saying), sayLength(ticks(maxY - minY), saying));
}
