/** Nails as their boxes tell them: 2 in, 50 mm, or a penny size such as 8d. */

import { nailUnread, pennyRead } from '../text/trim-problems-text.ts';
import { inches, type Length } from '../units/length.ts';
import { readLength } from './length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { sayLength } from './say-length.ts';

/** Lengths in inches by penny size: 2d is 1 in, each penny up to 10d adds 1/4 in. From memory: ASTM F1667. */
const PENNY = { least: 2, steady: 10 } as const;
const LONGER: Readonly<Record<string, number>> = { '12': 3.25, '16': 3.5, '20': 4 };

/** The length of the nails at hand; undefined where it is to be worked out. A bare number is in inches or millimetres. */
export function readNail(text: string, reading: Reading): Read<Length | undefined> {
  if (/^\s*(?:computed|any|auto)\s*$/i.test(text)) return read(undefined);
  const metric = reading.habits.units === 'metric';
  const size = /^\s*(\d{1,2})\s*(?:d|penny)\b(?:\s*(?:finish(?:ing)?\s+)?nails?)?\s*$/i.exec(text)?.[1];
  if (size !== undefined) {
    const penny = pennyInches(Number(size));
    if (penny !== undefined) {
      reading.note(pennyRead(text.trim(), sayLength(inches(penny), reading.habits)));
      return read(inches(penny));
    }
  }
  const length = size === undefined ? readLength(text, reading, metric ? 'mm' : 'in') : undefined;
  if (length?.ok) return length;
  return unread(nailUnread({ option: reading.option, got: text }, metric ? '50 mm' : '2 in'));
}

function pennyInches(size: number): number | undefined {
  if (size >= PENNY.least && size <= PENNY.steady) return 0.5 + size / 4;
  return LONGER[String(size)];
}
