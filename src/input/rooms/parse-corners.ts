/** Out-of-square corners: `corner 3: 88.5`, `corner 2 of hall 91°`; corner 3 is between walls 3 and 4. */

import type { Problem } from '../../reply/reply.ts';
import { notACorner, notAnAngle } from '../../text/trim-problems-text.ts';
import type { MeasuredCorner } from '../../trim/walls.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';

// Angles in degrees as typed: 88.5, 88,5°, 22 1/2 degrees.

/** The pattern of an angle, with one group for the whole part and one for the fraction. */
const ANGLE = '(\\d{1,3})(?:[.,](\\d{1,2})|\\s+1/2|½)?\\s*(?:°|º|deg(?:rees?)?)?';

const WHOLE = new RegExp(`^${ANGLE}$`, 'i');

/** Degrees of a typed angle; undefined if it isn't one. */
export function degreesOf(typed: string): number | undefined {
  const match = WHOLE.exec(typed.trim());
  if (!match) return undefined;
  const half = /1\/2|½/.test(typed) ? '5' : '0';
  return Number(`${match[1]}.${match[2] ?? half}`);
}

export function readAngle(text: string, reading: Reading, least: number, most: number): Read<number> {
  const degrees = degreesOf(text);
  if (degrees === undefined || degrees < least || degrees > most)
    return unread(notAnAngle({ option: reading.option, got: text }, least, most));
  return read(degrees);
}

/** No saw can be set and no wall stands beyond these. */
const LEAST_ANGLE = 20;
const MOST_ANGLE = 340;
const MOST_CORNERS = 100;

const ITEM = new RegExp(
  `^(?:corners? ?)?#?(\\d{1,3}(?:\\.\\d)?)(?: ?(?:-|–|/|and) ?\\d{1,3})?(?: (?:of|in) (?:the )?([\\p{L}][\\p{L}\\d -]{0,60}?))? ?(?:[:=]| |\\bis\\b|\\bat\\b) ?(${ANGLE})$`,
  'iu',
);

/** Corners separated by `;`, a newline or a comma and a space; none for `square`. Reports all problems at once. */
export function readCorners(text: string, reading: Reading): Read<readonly MeasuredCorner[]> {
  if (/^\s*(?:none|no|square|all square)\s*$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]|,\s+/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const corners: MeasuredCorner[] = [];
  const wrong: string[] = [];
  const mended = parts.map((part) => {
    const match = ITEM.exec(part.replace(/\s+/g, ' '));
    const interior = match ? degreesOf(match[3] ?? '') : undefined;
    if (!match || interior === undefined || interior < LEAST_ANGLE || interior > MOST_ANGLE) {
      wrong.push(part);
      return `corner ${match?.[1] ?? '1'}: 88.5`;
    }
    corners.push({ wall: match[1] ?? '', room: match[2]?.trim(), interior });
    return part;
  });
  if (parts.length === 0 || parts.length > MOST_CORNERS) {
    return unread(notACorner({ option: reading.option, got: text }, LEAST_ANGLE, MOST_ANGLE, 'corner 3: 88.5'));
  }
  const [first, ...more] = wrong.map(
    (got): Problem => notACorner({ option: reading.option, got }, LEAST_ANGLE, MOST_ANGLE, mended.join('; ')),
  );
  return first ? unread(first, ...more) : read(corners);
}
