/** Doors as people tell them: `2 doors 32 in`, `32 in on wall 2, 30 in on wall 4 of hall, 3' from the left`. */

import type { Problem } from '../../reply/reply.ts';
import { doorUnread } from '../../text/trim-problems-text.ts';
import type { Door } from '../../trim/walls.ts';
import { inches, millimetres } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { placeIn } from './opening-place.ts';

const LEAST_WIDTH = inches(6);
const MOST_WIDTH = millimetres(10_000);
export const MOST_DOORS = 60;
/** A door takes fewer characters. */
const LONGEST_PART = 400;

const COUNT = /^(\d{1,2})\s*(?:[x×*]\s*(?=\d)|(?:doors?|doorways?|openings?)\b(?:\s*(?:of|at|,))?\s*)/i;
const ONE = /^(?:an?|one)\s+/i;
const WORDS =
  /\b(?:sliding|double|patio|closet|bi-?fold|french|pocket|barn|front|back|entry|doors?|doorways?|openings?|wide|each|cased)\b/gi;

/** Doors apart by `;`, a new line, `and`, or a comma and a space; `none` for none. A bare number is in inches or millimetres. All problems at once. */
export function readDoors(text: string, reading: Reading): Read<readonly Door[]> {
  if (/^\s*(?:none|no|no doors?|0)\s*$/i.test(text)) return read([]);
  const parts = partsOf(text);
  const doors: Door[] = [];
  const wrong: string[] = [];
  const standard = reading.habits.units === 'metric' ? '800 mm' : '32 in';
  const mended = parts.map((part) => {
    const found = part.length > LONGEST_PART ? undefined : doorsOf(part, reading);
    if (!found) {
      wrong.push(part);
      return standard;
    }
    doors.push(...found);
    return part;
  });
  if (parts.length === 0) wrong.push(text);
  const [first, ...more] = wrong.map(
    (got): Problem => doorUnread({ option: reading.option, got }, MOST_DOORS, mended.join('; ') || standard),
  );
  if (first) return unread(first, ...more);
  if (doors.length > MOST_DOORS) return unread(doorUnread({ option: reading.option, got: text }, MOST_DOORS, standard));
  return read(doors);
}

/** Parts that tell a door each; what only places the door before it stays with that. */
function partsOf(text: string): readonly string[] {
  const parts: string[] = [];
  for (const section of text.split(/[;\n]/)) {
    const begins = parts.length;
    for (const part of section.split(/,\s+|(?<!\s)\s+(?:and|&)\s+/)) {
      const more = /^(?:on\s+wall|at\s+the|in\s+the|centred|centered)\b|\bfrom\s+(?:the\s+)?(?:left|right)/i.test(
        part.trim(),
      );
      const alone = !/\bwall\b/i.test(part) || /^on\s+wall/i.test(part.trim());
      const last = parts.at(-1);
      if (more && alone && last !== undefined && parts.length > begins)
        parts[parts.length - 1] = `${last}, ${part.trim()}`;
      else if (part.trim() !== '') parts.push(part.trim());
    }
  }
  return parts;
}

function doorsOf(part: string, reading: Reading): readonly Door[] | undefined {
  const taken = placeIn(part, reading);
  if (!taken) return undefined;
  const { place, rest } = taken;
  const counted = COUNT.exec(rest);
  const count = Number(counted?.[1] ?? 1);
  const size = (counted ? rest.slice(counted[0].length) : rest)
    .replace(ONE, '')
    .replace(WORDS, ' ')
    .replace(/\s+/g, ' ');
  const width = readLength(size, reading, reading.habits.units === 'metric' ? 'mm' : 'in');
  if (!width.ok || width.value < LEAST_WIDTH || width.value > MOST_WIDTH || count < 1) return undefined;
  return Array.from({ length: count }, () => ({ width: width.value, ...place }));
}
