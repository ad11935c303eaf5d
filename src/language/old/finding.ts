/** A finding as told: the room it is in, how large it is, and what is unsafe about it. */

import { type Found, foundAside } from '../../input/parse-found.ts';
import { readPart } from '../../input/parse-place.ts';
import type { Reading } from '../../input/reading.ts';
import { pairPattern, plainSigns } from '../../input/rooms/room-text.ts';
import type { Area } from '../../units/length.ts';
import { readInTime } from '../../workers/time-limits.ts';

interface ToldFinding {
  /** One of the names, where one is told. */
  readonly room: string | undefined;
  /** Square ticks, where a size is told. */
  readonly area: Area | undefined;
  readonly found: Found;
}

const PAIR = new RegExp(pairPattern().source);
const SQUARE = /(?<![\d.,])\d[\d.,]{0,12} ?(?:sq(?:uare|\.)? ?(?:ft|feet|foot|m)\.?|sqft|ft²|m²)/i;

const UNIT = /(?:ft|feet|foot|in|inch|inches|mm|cm|m|['"²])\s*\.?$/;

/** What a finding tells. Never throws. */
export function readFinding(text: string, names: readonly string[], reading: Reading): ToldFinding {
  return readInTime(() => findingIn(text, names, reading));
}

function findingIn(text: string, names: readonly string[], reading: Reading): ToldFinding {
  const plain = plainSigns(text);
  const size = SQUARE.exec(plain)?.[0] ?? PAIR.exec(plain)?.[0];
  const part =
    size === undefined ? undefined : readPart(size.trim(), { ...reading, note: () => undefined }, { line: false });
  return {
    room: roomIn(plain, names),
    area: part?.ok && part.value.area > 0n ? part.value.area : undefined,
    // A size in feet is no lumber: 2 x 3 ft stands beside no joist.
    found: foundAside(size !== undefined && UNIT.test(size) ? plain.replace(size, ' ') : text),
  };
}

/** Places where one finding may end and another begin, the surest last. */
const BETWEEN = [
  /(?:(?:(?<!\s)\s+)?(?:;|,(?:\s+and)?\s)|(?<!\s)\s+and\s)\s*/i,
  /(?:(?<!\s)\s+)?(?:;|,\s+and\s)\s*/i,
  /(?:(?<!\s)\s+)?;\s*/,
];

/** Findings of several rooms told together, taken apart where each part tells something of a room of its own. */
export function findingsApart(text: string, names: readonly string[]): readonly string[] {
  return readInTime(() => findingsIn(text, names));
}

function findingsIn(text: string, names: readonly string[]): readonly string[] {
  for (const between of BETWEEN) {
    const parts = text.split(between).filter((part) => part.trim() !== '');
    const rooms = parts.map((part) => roomIn(part, names));
    const whole = parts.every((part, i) => rooms[i] !== undefined && tellsMore(part, rooms[i] ?? ''));
    if (whole && new Set(rooms).size === parts.length && parts.length > 1) return parts;
  }
  return [text];
}

/** Whether a text tells anything besides the name of a room. */
function tellsMore(text: string, room: string): boolean {
  const rest = plainSigns(text).replace(plainSigns(room), ' ');
  return /\p{L}/u.test(rest.replace(/(?<!\p{L})(?:in|at|on|by|the|my|our|a|also|too|room)(?!\p{L})/gu, ' '));
}

/** The name that stands in a text as a word of its own; the longest of several. */
export function roomIn(text: string, names: readonly string[]): string | undefined {
  const plain = ` ${plainSigns(text).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  const named = names.filter((name) =>
    plain.includes(
      ` ${plainSigns(name)
        .replace(/[^\p{L}\p{N}]+/gu, ' ')
        .trim()} `,
    ),
  );
  return [...named].sort((a, b) => b.length - a.length)[0];
}
