/** Stairs that get nosing: `12 x 36 in`, so many steps of such a width; `none`. */

import { stairsUnread } from '../../text/trim-problems-text.ts';
import { inches, type Length, millimetres } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';

/** Steps with a nosing each. */
export interface ToldStairs {
  readonly count: number;
  readonly width: Length;
}

const STEPS = /^(\d{1,2})\s*(?:x|×|\*|(?:steps?|stairs?|treads?|nosings?)(?:\s+of)?)\s*(.+)$/i;
const LEAST_STEP_WIDTH = inches(12);
const MOST_STEP_WIDTH = millimetres(5000);
const MOST_STEPS = 60;

/** Steps and their width; a bare number is in inches or millimetres. */
export function readStairs(text: string, reading: Reading): Read<ToldStairs> {
  if (/^\s*(?:none|no|0|no stairs)\s*$/i.test(text)) return read({ count: 0, width: inches(0) });
  const match = STEPS.exec(text.trim());
  const metric = reading.habits.units === 'metric';
  const width = match
    ? readLength((match[2] ?? '').replace(/\b(?:wide|each)\b/gi, ''), reading, metric ? 'mm' : 'in')
    : undefined;
  const count = Number(match?.[1] ?? 0);
  if (
    width?.ok &&
    width.value >= LEAST_STEP_WIDTH &&
    width.value <= MOST_STEP_WIDTH &&
    count >= 1 &&
    count <= MOST_STEPS
  )
    return read({ count, width: width.value });
  return unread(stairsUnread({ option: reading.option, got: text }, MOST_STEPS, metric ? '12 x 900 mm' : '12 x 36 in'));
}
