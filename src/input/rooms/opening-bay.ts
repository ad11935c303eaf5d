/** Bays that stand out of a wall: `wall 2: front 5', sides 3', 135°`, centred or `2' from the left`. */

import type { Problem } from '../../reply/reply.ts';
import { bayUnread } from '../../text/trim-problems-text.ts';
import type { Bay } from '../../trim/walls.ts';
import { inches, type Length } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { degreesOf } from './corners-angle.ts';
import { placeIn } from './opening-place.ts';

/** The interior angle between side and front where none is told: sides at 45° to the wall. Common practice. */
const USUAL_ANGLE = 135;
const LEAST_ANGLE = 90;
const MOST_ANGLE = 170;
/** A bay takes fewer characters. */
const LONGEST_BAY_PART = 400;

const ANGLE = /(?:,\s*|(?<!\s)\s+)?\b(?:at\s+|angle\s+)?(\d{2,3}(?:[.,]\d{1,2})?)\s*(?:°|º|deg(?:rees?)?\b)/i;
const FRONT = /\bfront\s+(?:of\s+)?([^\s,;][^,;]*?)(?<!\s)(?=\s*(?:,|$|\band\b|\bsides?\b))/i;
const SIDES = /\bsides?\s+(?:of\s+)?([^\s,;][^,;]*?)(?<!\s)(?=\s*(?:,|$|\band\b|\bfront\b))/i;

/** Bays apart by `;` or a new line; `none` for none. All problems at once. */
export function readBays(text: string, reading: Reading): Read<readonly Bay[]> {
  if (/^\s*(?:none|no|no bays?)\s*$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const bays: Bay[] = [];
  const wrong: string[] = [];
  const metric = reading.habits.units === 'metric';
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
  const told = ANGLE.exec(taken.rest);
  const angle = told ? degreesOf(told[1] ?? '') : USUAL_ANGLE;
  const rest = told ? taken.rest.replace(told[0], ',') : taken.rest;
  const [front, side] = [sizeIn(FRONT, rest, reading), sizeIn(SIDES, rest, reading)];
  if (front === undefined || side === undefined || angle === undefined) return undefined;
  if (angle < LEAST_ANGLE || angle > MOST_ANGLE) return undefined;
  const { room, wall, at } = taken.place;
  return { room, wall, front, side, angle, ...(at && { at }) };
}

function sizeIn(pattern: RegExp, text: string, reading: Reading): Length | undefined {
  const typed = pattern.exec(text)?.[1];
  if (typed === undefined) return undefined;
  const size = readLength(typed, reading, reading.habits.units === 'metric' ? 'm' : 'ft');
  return size.ok && size.value >= inches(1) ? size.value : undefined;
}
