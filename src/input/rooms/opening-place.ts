/** Where something stands along a wall, taken out of a typed line: `on wall 2 of living, 3' from the left`. */

import type { Door } from '../../trim/walls.ts';
import { ticks } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { plainText } from '../length-text.ts';
import type { Reading } from '../reading.ts';

export interface Placed {
  readonly room?: string;
  readonly wall?: string;
  readonly at?: NonNullable<Door['at']>;
}

const WALL =
  /(?:,\s*|(?<!\s)\s+)?\b(?:(?:on|in|at)\s+)?wall\s+(\d{1,3}(?:\.\d)?)(?:\s+(?:of|in)\s+(?:the\s+)?(\p{L}[\p{L}\d -]*?)(?<!\s)(?=\s*(?:[:,]|$)|\s+\d))?\s*:?/iu;
const FROM =
  /(?:,\s*|(?<!\s)\s+)?(?:\b(?:at|starting)\s+)?((?:(?<!\d)\d|\.\d|[½¼¾])[^,;]{0,60}?)(?<!\s)\s+from\s+(?:the\s+)?(left|right)(?:\s+(?:end|corner|side))?/i;
const AT_END = /(?:,\s*|(?<!\s)\s+)?\b(?:at|in)\s+the\s+(left|right)(?:\s+(?:end|corner|side))?/i;
const MIDDLE = /(?:,\s*|(?<!\s)\s+)?\b(?:in the middle|centred|centered)\b/i;

/** The line without its place, and the place; undefined where a distance cannot be read. */
export function placeIn(line: string, reading: Reading): { readonly rest: string; readonly place: Placed } | undefined {
  const wall = WALL.exec(line);
  const without = wall ? line.replace(wall[0], ' ') : line;
  const from = FROM.exec(without);
  const end = from ? undefined : AT_END.exec(without);
  const rest = [from, end, MIDDLE.exec(without)].reduce(
    (text, found) => (found ? text.replace(found[0], ' ') : text),
    without,
  );
  const side = (from?.[2] ?? end?.[1])?.toLowerCase() === 'right' ? 'right' : 'left';
  const place = { ...(wall?.[2] && { room: wall[2].trim() }), ...(wall?.[1] && { wall: wall[1] }) };
  if (!from && !end) return { rest: tidy(rest), place };
  if (end || /^0+\D*$/.test(from?.[1] ?? ''))
    return { rest: tidy(rest), place: { ...place, at: { from: side, distance: ticks(0) } } };
  const distance = readLength(plainText(from?.[1] ?? ''), reading, reading.habits.units === 'metric' ? 'mm' : 'in');
  return distance.ok
    ? { rest: tidy(rest), place: { ...place, at: { from: side, distance: distance.value } } }
    : undefined;
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/^[\s,:]+|(?<![\s,:])[\s,:]+$/g, '');
}
