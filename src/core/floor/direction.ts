/** Which way the rows run: the same way in every region of an ask, as the eye follows them through the doors. */

import { doubleArea } from '../geometry.ts';
import type { Region } from './floor.ts';
import { angleAlong, angleBySide } from './frame.ts';
import type { Area } from './sliced.ts';

/** Along the longer or shorter side of the largest region, or along wall `wall` (from 1, in outline order) of a region. */
export type Direction =
  | { readonly kind: 'side'; readonly side: 'long' | 'short' }
  | { readonly kind: 'wall'; readonly wall: number; readonly region?: string };

/** Every region with its angle; undefined when the wall does not exist. Throws a RangeError without regions. */
export function directed(regions: readonly Region[], direction: Direction): readonly Area[] | undefined {
  const largest = largestOf(regions);
  if (direction.kind === 'side') {
    const angle = angleBySide(largest.outline, direction.side);
    return regions.map((region) => ({ region, angle }));
  }
  const named = direction.region?.toLowerCase();
  const owner = named === undefined ? largest : regions.find((region) => region.name.toLowerCase() === named);
  if (!owner || direction.wall < 1 || direction.wall > owner.outline.length) return undefined;
  const angle = angleAlong(owner.outline, direction.wall - 1);
  return regions.map((region) => ({ region, angle }));
}

/** The region with the largest outline. */
export function largestOf(regions: readonly Region[]): Region {
  const [first, ...rest] = regions;
  if (!first) throw new RangeError('a floor without regions');
  return rest.reduce((best, region) => (doubleArea(region.outline) > doubleArea(best.outline) ? region : best), first);
}
