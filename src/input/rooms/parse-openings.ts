/** Doors and bays: `2 doors 32 in`, `32 in on wall 2, 30 in on wall 4 of hall, 3' from the left`. */

import type { Problem } from '../../reply/reply.ts';
import { bayUnread, doorUnread } from '../../text/trim-problems-text.ts';
import type { Bay, Door } from '../../trim/walls.ts';
import { inches, type Length, millimetres, ticks } from '../../units/length.ts';
import { plainText, readLength } from '../parse-length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { degreesOf } from './parse-corners.ts';

// A position along a wall, extracted from a typed line: `on wall 2 of living, 3' from the left`.

interface Placed {
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

/** The line without its position, and the position; undefined if a distance can't be parsed. */
function placeIn(line: string, reading: Reading): { readonly rest: string; readonly place: Placed } | undefined {
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
  const distance = readLength(
    plainText(from?.[1] ?? ''),
    reading,
    reading.preferences.units === 'metric' ? 'mm' : 'in',
  );
  return distance.ok
    ? { rest: tidy(rest), place: { ...place, at: { from: side, distance: distance.value } } }
    : undefined;
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/^[\s,:]+|(?<![\s,:])[\s,:]+$/g, '');
}

const LEAST_WIDTH = inches(6);
const MOST_WIDTH = millimetres(10_000);
const MOST_DOORS = 60;
/** Longer than any door. */
const LONGEST_PART = 400;

const COUNT = /^(\d{1,2})\s*(?:[x×*]\s*(?=\d)|(?:doors?|doorways?|openings?)\b(?:\s*(?:of|at|,))?\s*)/i;
const ONE = /^(?:an?|one)\s+/i;
const WORDS =
  /\b(?:sliding|double|patio|closet|bi-?fold|french|pocket|barn|front|back|entry|doors?|doorways?|openings?|wide|each|cased)\b/gi;

/**
 * Doors separated by `;`, a newline, `and`, or a comma and a space; `none` for none. A bare number is in inches or
 * millimeters. Reports all problems at once.
 */
export function readDoors(text: string, reading: Reading): Read<readonly Door[]> {
  if (/^\s*(?:none|no|no doors?|0)\s*$/i.test(text)) return read([]);
  const parts = partsOf(text);
  const doors: Door[] = [];
  const wrong: string[] = [];
  const standard = reading.preferences.units === 'metric' ? '800 mm' : '32 in';
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

/** Splits the text into doors; a part that only positions the previous door stays with it. */
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
  const width = readLength(size, reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  if (!width.ok || width.value < LEAST_WIDTH || width.value > MOST_WIDTH || count < 1) return undefined;
  return Array.from({ length: count }, () => ({ width: width.value, ...place }));
}

// Bays: `wall 2: front 5', sides 3', 135°`, centered or `2' from the left`.

/** The default interior angle between side and front: sides at 45° to the wall. Common practice. */
const USUAL_ANGLE = 135;
const LEAST_ANGLE = 90;
const MOST_ANGLE = 170;
/** Longer than any bay. */
const LONGEST_BAY_PART = 400;

const ANGLE = /(?:,\s*|(?<!\s)\s+)?\b(?:at\s+|angle\s+)?(\d{2,3}(?:[.,]\d{1,2})?)\s*(?:°|º|deg(?:rees?)?\b)/i;
const FRONT = /\bfront\s+(?:of\s+)?([^\s,;][^,;]*?)(?<!\s)(?=\s*(?:,|$|\band\b|\bsides?\b))/i;
const SIDES = /\bsides?\s+(?:of\s+)?([^\s,;][^,;]*?)(?<!\s)(?=\s*(?:,|$|\band\b|\bfront\b))/i;

/** Bays separated by `;` or a newline; `none` for none. Reports all problems at once. */
export function readBays(text: string, reading: Reading): Read<readonly Bay[]> {
  if (/^\s*(?:none|no|no bays?)\s*$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const bays: Bay[] = [];
  const wrong: string[] = [];
  const metric = reading.preferences.units === 'metric';
  const mended = parts.map((part) => {
    const bay = part.length > LONGEST_BAY_PART ? undefined : bayOf(part, reading);
    if (bay) bays.push(bay);
    else wrong.push(part);
    const wall = /wall\s+(\d{1,3})/i.exec(part)?.[1] ?? '1';
    return bay ? part : `wall ${wall}: ${metric ? 'front 1.5 m, sides 0.9 m' : `front 5', sides 3'`}, 135°`;
  });
  const example = metric ? 'wall 1: front 1.5 m, sides 0.9 m, 135°' : `wall 1: front 5', sides 3', 135°`;
  if (parts.length === 0) wrong.push(text);
  const [first, ...more] = wrong.map(
    (got): Problem => bayUnread({ option: reading.option, got }, LEAST_ANGLE, MOST_ANGLE, mended.join('; ') || example),
  );
  return first ? unread(first, ...more) : read(bays);
}

function bayOf(part: string, reading: Reading): Bay | undefined {
  const taken = placeIn(part, reading);
  if (!taken?.place.wall) return undefined;
  const given = ANGLE.exec(taken.rest);
  const angle = given ? degreesOf(given[1] ?? '') : USUAL_ANGLE;
  const rest = given ? taken.rest.replace(given[0], ',') : taken.rest;
  const [front, side] = [sizeIn(FRONT, rest, reading), sizeIn(SIDES, rest, reading)];
  if (front === undefined || side === undefined || angle === undefined) return undefined;
  if (angle < LEAST_ANGLE || angle > MOST_ANGLE) return undefined;
  const { room, wall, at } = taken.place;
  return { room, wall, front, side, angle, ...(at && { at }) };
}

function sizeIn(pattern: RegExp, text: string, reading: Reading): Length | undefined {
  const typed = pattern.exec(text)?.[1];
  if (typed === undefined) return undefined;
  const size = readLength(typed, reading, reading.preferences.units === 'metric' ? 'm' : 'ft');
  return size.ok && size.value >= inches(1) ? size.value : undefined;
}
