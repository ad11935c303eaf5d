/** An angle in degrees, as people type one: 88.5, 88,5°, 22 1/2 degrees. */

import { notAnAngle } from '../../text/trim-problems-text.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';

/** The pattern of an angle's figure, with one group for the whole and one for its part. */
export const ANGLE = '(\\d{1,3})(?:[.,](\\d{1,2})|\\s+1/2|½)?\\s*(?:°|º|deg(?:rees?)?)?';

const WHOLE = new RegExp(`^${ANGLE}$`, 'i');

/** Degrees of a typed angle; undefined when it is none. */
export function degreesOf(typed: string): number | undefined {
  const match = WHOLE.exec(typed.trim());
  if (!match) return undefined;
  const half = /1\/2|½/.test(typed) ? '5' : '0';
  return Number(`${match[1]}.${match[2] ?? half}`);
}

/** An angle from `least` to `most` degrees. */
export function readAngle(text: string, reading: Reading, least: number, most: number): Read<number> {
  const degrees = degreesOf(text);
  if (degrees === undefined || degrees < least || degrees > most)
    return unread(notAnAngle({ option: reading.option, got: text }, least, most));
  return read(degrees);
}
