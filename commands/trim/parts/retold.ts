/** Doors, bays and corners as one would type them: for fixes, which tell the sound ones again. */

import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { Bay, Door, MeasuredCorner } from '../../../src/trim/walls.ts';

/** A door, or the width alone where `place` is left out. */
export function retoldDoor({ width, room, wall, at }: Door, saying: Saying, place = true): string {
  const size = sayLength(width, saying);
  if (!place || wall === undefined) return size;
  const where = `${size} on wall ${wall}${room === undefined ? '' : ` of ${room}`}`;
  return at === undefined ? where : `${where}, ${sayLength(at.distance, saying)} from the ${at.from}`;
}

export function retoldBay({ room, wall, front, side, angle, at }: Bay, saying: Saying): string {
  const where = `wall ${wall}${room === undefined ? '' : ` of ${room}`}`;
  const place = at === undefined ? '' : `, ${sayLength(at.distance, saying)} from the ${at.from}`;
  return `${where}: front ${sayLength(front, saying)}, sides ${sayLength(side, saying)}, ${angle}°${place}`;
}

export function retoldCorner({ room, wall, interior }: MeasuredCorner): string {
  return `corner ${wall}${room === undefined ? '' : ` of ${room}`}: ${interior}`;
}

/** All told but those left out, some in other words; the word for none where nothing stays. */
export function retold<T>(
  told: readonly T[],
  say: (one: T, index: number) => string | undefined,
  none: string,
): string {
  const parts = told.flatMap((one, i) => say(one, i) ?? []);
  return parts.length === 0 ? none : parts.join('; ');
}
