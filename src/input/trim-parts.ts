/** Trim to be taken off: lengths and heights of its parts. */

import type { TrimPart } from '../prep/old-materials.ts';
import { notTrim } from '../text/prep-problems-text.ts';
import { readLength } from './length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

const MOST = 100;

/** `none`, or parts with ; or , between them: `40 ft x 3 in`, `36 in x 1 in`, `2 x 7 ft x 2 1/4 in`. Bare lengths are feet or metres, bare heights inches or millimetres. */
export function readTrim(text: string, reading: Reading): Read<readonly TrimPart[]> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (/^(?:none|no|0)$/.test(plain)) return read([]);
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and /).map((part) => partOf(part, reading));
  const told = parts.flatMap((part) => (part ? [part] : []));
  if (told.length < parts.length || parts.length > MOST) return unread(notTrim({ option: reading.option, got: text }));
  return read(told);
}

function partOf(text: string, reading: Reading): TrimPart | undefined {
  const sides = text.split(/ ?(?:x|×|by) ?/);
  const counted = sides.length === 3 && /^\d{1,3}$/.test(sides[0] ?? '');
  const [long, high] = counted ? sides.slice(1) : sides;
  if (long === undefined || high === undefined || sides.length > (counted ? 3 : 2)) return undefined;
  const metric = reading.habits.units === 'metric';
  const length = readLength(long, reading, metric ? 'm' : 'ft');
  const height = readLength(high, reading, metric ? 'mm' : 'in');
  const count = counted ? Number(sides[0]) : 1;
  return length.ok && height.ok && count > 0 ? { length: length.value, height: height.value, count } : undefined;
}
