/** What reading a walk comes to, whatever its angles. */

import type { Outline } from '../../units/geometry.ts';
import { type Length, ticks } from '../../units/length.ts';
import { type Saying, sayLength } from '../say-length.ts';
import type { Flaw } from './room-flaw.ts';

export const MOST_WALLS = 200;
export const FEWEST_WALLS = 3;

/** A closed walk: its outline, the wall left out if one was, and by how much it was closed: `true` for less than a tape shows. */
export type ReadWalk =
  | { readonly ok: true; readonly outline: Outline; readonly closing?: Length; readonly eased: boolean | Length }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** How far the end lies from the start one way, in words; undefined within `slack`. */
export function way(
  by: number | undefined,
  over: string,
  under: string,
  slack: number,
  saying: Saying,
): string | undefined {
  if (by === undefined || Math.abs(by) <= slack) return undefined;
  return `${sayLength(ticks(Math.round(Math.abs(by))), saying)} ${by > 0 ? over : under}`;
}
