/** Problems with lengths, figures and names that could not be read, and the helper that words a problem. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';

/** What was typed, and for which option. */
export interface Got {
  readonly option: string;
  readonly got: string;
}

/** A problem with what was typed, said back short; `fix` is a value that the option's reader reads, where one can be made. */
export function problem({ option, got }: Got, expected: string, fix?: string): Problem {
  return { option, got: quoted(got), expected, fix };
}

// The texts about lengths: what is wrong with one that was typed, and how a doubtful one was read.

/** A length as this asker would type one. */
export function typedExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}8 m` : `12'6"`;
}

/** A sum as this asker would type one. */
export function typedSumExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}8 m - 5 mm` : `12'6" - 5/8"`;
}

/** The text is no length at all. */
export function notALength(got: Got, fix: string): Problem {
  return { ...got, expected: 'A length is a number and its unit: feet and inches, or metres, cm or mm.', fix };
}

/** A length of zero or below. */
export function notAboveZero(got: Got, fix: string): Problem {
  return { ...got, expected: 'A length is above zero.', fix };
}

/** A length no room has. */
export function tooLong(got: Got, fix: string): Problem {
  return { ...got, expected: 'A length here is at most 100 m (328 feet); is the unit the one you meant?', fix };
}

/** A lesser part that fills its greater part, such as 14 inches after feet; `sum` is what the parts come to. */
export function partTooLarge(got: Got, parts: { part: string; limit: number; whole: string }, sum: string): Problem {
  const { part, limit, whole } = parts;
  return {
    ...got,
    expected: `Behind ${whole}, ${part} stay below ${limit}: type ${sum} if that is the sum you meant, else fewer ${part}.`,
    fix: sum,
  };
}

/** A comma or a point that may stand for a decimal or for thousands. */
export function doubtfulMark(got: Got, readings: { whole: string; decimal: string }, fix: string): Problem {
  const { whole, decimal } = readings;
  return { ...got, expected: `Did you mean ${whole} or ${decimal}? Type the one you meant.`, fix };
}

/** One figure after metres: 3m8 is 3.8 m to one person and 3 m 8 cm to another. */
export function doubtfulCentimetres(got: Got, decimal: string, centimetres: string): Problem {
  return { ...got, expected: `Did you mean ${decimal} or ${centimetres}? Type the one you meant.`, fix: decimal };
}

/** Arithmetic that cannot be followed at `where`. */
export function notASum(got: Got, where: string, fix: string): Problem {
  const at = where === '' ? 'It breaks off' : `It cannot be followed at “${where}”`;
  return { ...got, expected: `${at}: lengths and numbers joined by + − × ÷ and brackets are read.`, fix };
}

/** Two values set side by side with nothing between them. */
export function nothingBetween(got: Got, fix: string): Problem {
  return { ...got, expected: 'Two values stand side by side: put +, −, × or ÷ between them.', fix };
}

/** Arithmetic longer or deeper than is read. */
export function sumTooLarge(got: Got, limit: string, fix: string): Problem {
  return { ...got, expected: `At most ${limit} are read in one sum: work it out in two steps.`, fix };
}

/** A division by zero. */
export function dividedByZero(got: Got, fix: string): Problem {
  return { ...got, expected: 'Nothing can be divided by zero.', fix };
}

/** Lengths, areas and plain numbers mixed where they cannot be. */
export function unlikeThings(got: Got, permission: string, fix: string): Problem {
  return { ...got, expected: `This ${permission}: only like can be added to like.`, fix };
}

/** A product or quotient that is neither a number, a length nor an area. */
export function noSuchThing(got: Got, permission: string, fix: string): Problem {
  return { ...got, expected: `This ${permission}: a tape gives a length, an area or a number.`, fix };
}

/** A sum that comes to zero or below; `figure` is what it comes to. */
export function sumNotAboveZero(got: Got, figure: string, fix: string): Problem {
  return { ...got, expected: `It comes to ${figure}, and what is measured is above zero.`, fix };
}

/** A sum that comes to more than is counted exactly; `limit` says how much is. */
export function sumTooLong(got: Got, limit: string, fix: string): Problem {
  return { ...got, expected: `It comes to more than ${limit}, which is more than is worked out here.`, fix };
}

/** A conversion into a unit of another kind. */
export function wrongTarget(got: Got, kind: string, fix: string): Problem {
  return { ...got, expected: `It comes to ${kind}, which cannot be said in that unit.`, fix };
}

/** How a number without a unit was read. */
export function bareRead(got: string, unit: string): string {
  return `${got} read as ${got} ${unit}`;
}

/** How decimal feet that look like feet and inches were read. */
export function decimalFeetRead(got: string, said: string, feet: string, inch: string): string {
  const whole = `${feet} ${feet === '1' ? 'foot' : 'feet'} ${inch} ${inch === '1' ? 'inch' : 'inches'}`;
  return `${got} read as ${said} — if you meant ${whole}, type ${feet}'${inch}"`;
}

/** What was typed finer than is kept. */
export function rounded(got: string, said: string): string {
  return `${got} rounded to about ${said}`;
}

/** A hyphen that was read as part of one length in a sum. */
export function hyphenRead(got: string, said: string): string {
  return `${got} read as ${said} — to take away, put spaces round the minus`;
}

// The problems of names and notes.

export function labelEmpty(got: Got): Problem {
  return problem(got, 'A name has at least one letter or figure.', 'Upstairs flat');
}

export function labelTooLong(got: Got, most: number, fix: string): Problem {
  return problem(got, `At most ${most} characters are kept here.`, fix);
}

// The texts about counts, percentages, choices, patterns and directions that cannot be read.

function got({ option, got: text }: Got): Got {
  return { option, got: quoted(text) };
}

export function notACount(read: Got, least: number, most: number): Problem {
  return {
    ...got(read),
    expected: `A whole number from ${least} to ${most}.`,
  };
}

export function notAPercent(read: Got): Problem {
  return { ...got(read), expected: 'A percentage from 0 to 100, such as 3 % or 8.25 %.' };
}

export function notAmong(read: Got, choices: readonly string[], near: string): Problem {
  return { ...got(read), expected: `One of: ${choices.join(', ')}.`, fix: near };
}

/** A slip in a pattern's name, taken for it. */
export function patternTaken(typed: string, name: string): string {
  return `pattern “${typed}” taken as ${name}`;
}

export function notAPattern(read: Got, near: string): Problem {
  return {
    ...got(read),
    expected:
      'A pattern is stair-step (with its step and rows, such as “stair-step 6 in x 5”), half, thirds, offcut-first, scattered or herringbone (with a border of 1 to 4 boards if you like).',
    fix: near,
  };
}

export function notADirection(read: Got): Problem {
  return {
    ...got(read),
    expected:
      'Rows run long, short, along a wall (“wall 2”, or “wall 2 of living”), or at an angle to the long side (“diagonal”, or whole degrees from 1° to 179°); or each room its own way: “hall long; bedroom short”.',
  };
}

export function outOfRange(read: Got, least: string, most: string): Problem {
  return { ...got(read), expected: `A length from ${least} to ${most}.` };
}

export function notAnArea(): string {
  return 'What does a box cover? Give its area, or the plank’s size and how many are in a box.';
}

export function areaExample(units: 'imperial' | 'metric'): string {
  return units === 'metric' ? '2.2 m²' : '23.33 sq ft';
}
