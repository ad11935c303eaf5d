/** The options that commands are made of. */

import { outOfRange } from '../text/length-problems-text.ts';
import { type Length, ticks } from '../units/length.ts';
import { sayLength } from './format.ts';
import { HERRINGBONE, PATTERN_NAMES, readDirection, readPattern } from './parse-layout.ts';
import { readLength } from './parse-length.ts';
import { readChoice, readCount, readPercent } from './parse-number.ts';
import { readPlank } from './parse-plank.ts';
import { type OptionFacts, type Read, type Reading, read, reader, unread } from './reading.ts';
import { readRooms } from './rooms/parse-room.ts';

type ReadLine = Pick<OptionFacts, 'summary'> & Partial<OptionFacts>;

/** One or more rooms, by their sides or by a walk around the walls. */
export const room = (given: ReadLine) =>
  reader({ kind: 'room', example: `12' x 14'`, colons: 'rooms', ...given }, readRooms);

export const plank = (given: ReadLine) =>
  reader({ kind: 'plank', example: '6 x 48 in, 10 per carton', colons: 'any', ...given }, readPlank);

type Bounded = ReadLine & { readonly example: string; readonly least: Length; readonly most: Length };

const lengthBetween =
  (least: Length, most: Length) =>
  (text: string, reading: Reading): Read<Length> => {
    if (least === 0 && /^(?:none|no|0+(?:[.,]0+)?\s*(?:"|″|in|inch|inches|mm|cm)?)$/i.test(text.trim()))
      return read(ticks(0));
    const value = readLength(text, reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
    if (!value.ok || (value.value >= least && value.value <= most)) return value;
    const say = (bound: Length): string => sayLength(bound, reading.preferences);
    return unread(outOfRange({ option: reading.option, got: text }, say(least), say(most)));
  };

/** A length from `least` to `most` ticks; zero is accepted if `least` is 0. Bare numbers are inches or millimeters. */
export const length = ({ least, most, ...facts }: Bounded) =>
  reader({ kind: 'length', ...facts }, lengthBetween(least, most));

/** A length that may be left open. */
export const lengthIfKnown = ({ least, most, ...facts }: Bounded) =>
  reader(
    { kind: 'length', standard: 'unknown', ...facts },
    (text, reading): Read<Length | 'unknown'> =>
      /^(?:unknown|unsure|not sure|no idea|\?)$/i.test(text.trim())
        ? read('unknown')
        : lengthBetween(least, most)(text, reading),
  );

export const count = (given: ReadLine & { readonly least: number; readonly most: number }) => {
  const { least, most, ...facts } = given;
  return reader({ kind: 'count', example: '2', ...facts }, (text, reading) => readCount(text, reading, least, most));
};

export const percent = (given: ReadLine) => reader({ kind: 'percent', example: '3 %', ...given }, readPercent);

export const choice = <const T extends string>(choices: readonly [T, ...T[]], given: ReadLine) =>
  reader({ kind: 'choice', example: choices[0], choices, ...given }, (text, reading) =>
    readChoice(text, reading, choices),
  );

export const pattern = (given: ReadLine) =>
  reader(
    { kind: 'pattern', example: 'stair-step 6 in x 5', choices: [...PATTERN_NAMES, HERRINGBONE], ...given },
    readPattern,
  );

export const direction = (given: ReadLine) =>
  reader({ kind: 'direction', example: 'wall 2', colons: 'any', ...given }, readDirection);

/** Any text, parsed further by `readText`. */
export const text = <T>(
  given: ReadLine & { readonly example: string },
  readText: (text: string, reading: Reading) => Read<T>,
) => reader({ kind: 'text', ...given }, readText);
