/** Problems with lengths, numbers and names that could not be read, and the helper that words a problem. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';

/** What was typed, and for which option. */
export interface Got {
  readonly option: string;
  readonly got: string;
}

/** Quotes the input, shortened; `fix` is a value the option's reader accepts, if there is one. */
export function problem({ option, got }: Got, expected: string, fix?: string): Problem {
  return { option, got: quoted(got), expected, fix };
}

/** A length as this user would type it. */
export function typedExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}8 m` : `12'6"`;
}

export function typedSumExample(metric: boolean, decimal: '.' | ','): string {
  return metric ? `3${decimal}8 m - 5 mm` : `12'6" - 5/8"`;
}

export function notALength(got: Got, fix: string): Problem {
  return {
    ...got,
    expected: `A length is a number and its unit: ${byUnits('feet and inches, or meters, cm or mm', 'meters, cm or mm')}.`,
    fix,
  };
}

export function notAboveZero(got: Got, fix: string): Problem {
  return { ...got, expected: 'A length must be more than zero.', fix };
}

export function tooLong(got: Got, fix: string): Problem {
  return {
    ...got,
    expected: `A length here is at most ${byUnits('100 m (328 feet)', '100 m')}; is the unit the one you meant?`,
    fix,
  };
}

/** A smaller unit that makes up a larger one, such as 14 inches after feet; `sum` is the parts added up. */
export function partTooLarge(got: Got, parts: { part: string; limit: number; whole: string }, sum: string): Problem {
  const { part, limit, whole } = parts;
  return {
    ...got,
    expected: `Behind ${whole}, ${part} stay below ${limit}: type ${sum} if that is the sum you meant, else fewer ${part}.`,
    fix: sum,
  };
}

/** A comma or point that may be a decimal mark or separate thousands. */
export function doubtfulMark(got: Got, readings: { whole: string; decimal: string }, fix: string): Problem {
  const { whole, decimal } = readings;
  return { ...got, expected: `Did you mean ${whole} or ${decimal}? Type the one you meant.`, fix };
}

/** 3m8 is 3.8 m to one person and 3 m 8 cm to another. */
export function doubtfulCentimetres(got: Got, decimal: string, centimetres: string): Problem {
  return { ...got, expected: `Did you mean ${decimal} or ${centimetres}? Type the one you meant.`, fix: decimal };
}

export function notASum(got: Got, where: string, fix: string): Problem {
  const at = where === '' ? 'It breaks off' : `I got lost at “${where}”`;
  return { ...got, expected: `${at}. Give lengths and numbers with +, −, ×, ÷ or brackets between them.`, fix };
}

/** Two values with nothing between them. */
export function nothingBetween(got: Got, fix: string): Problem {
  return { ...got, expected: 'Two values are side by side: put +, −, × or ÷ between them.', fix };
}

export function sumTooLarge(got: Got, limit: string, fix: string): Problem {
  return { ...got, expected: `A sum can have at most ${limit}: do it in two steps.`, fix };
}

export function dividedByZero(got: Got, fix: string): Problem {
  return { ...got, expected: 'You can’t divide by zero.', fix };
}

export function unlikeThings(got: Got, permission: string, fix: string): Problem {
  return { ...got, expected: `This ${permission}: both have to be the same kind.`, fix };
}

export function noSuchThing(got: Got, permission: string, fix: string): Problem {
  return { ...got, expected: `This ${permission}: the result has to be a length, an area or a number.`, fix };
}

/** `figure` is the result. */
export function sumNotAboveZero(got: Got, figure: string, fix: string): Problem {
  return { ...got, expected: `It comes to ${figure}, and a measurement is more than zero.`, fix };
}

/** A result too large to compute exactly. */
export function sumTooLong(got: Got, limit: string, fix: string): Problem {
  return { ...got, expected: `It comes to more than ${limit}, which is more than I can work out.`, fix };
}

export function wrongTarget(got: Got, kind: string, fix: string): Problem {
  return { ...got, expected: `It comes to ${kind}, which doesn’t go with that unit.`, fix };
}

export function bareRead(got: string, unit: string): string {
  return `${got} read as ${got} ${unit}`;
}

/** Decimal feet that look like feet and inches. */
export function decimalFeetRead(got: string, said: string, feet: string, inch: string): string {
  const whole = `${feet} ${feet === '1' ? 'foot' : 'feet'} ${inch} ${inch === '1' ? 'inch' : 'inches'}`;
  return `${got} read as ${said} — if you meant ${whole}, type ${feet}'${inch}"`;
}

export function rounded(got: string, said: string): string {
  return `${got} rounded to about ${said}`;
}

export function hyphenRead(got: string, said: string): string {
  return `${got} read as ${said} — to subtract, put spaces around the minus`;
}

export function labelEmpty(got: Got): Problem {
  return problem(got, 'A name has at least one letter or number.', 'Upstairs flat');
}

export function labelTooLong(got: Got, most: number, fix: string): Problem {
  return problem(got, `At most ${most} characters are kept here.`, fix);
}

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
  return { ...got(read), expected: 'A percentage from 0 to 100, such as 3% or 8.25%.' };
}

export function notAmong(read: Got, choices: readonly string[], near: string): Problem {
  return { ...got(read), expected: `One of: ${choices.join(', ')}.`, fix: near };
}

export function patternTaken(typed: string, name: string): string {
  return `pattern “${typed}” read as ${name}`;
}

export function notAPattern(read: Got, near: string): Problem {
  return {
    ...got(read),
    expected: `A pattern is stair-step (with its step and rows, such as “stair-step ${byUnits('6 in', '150 mm')} x 5”), half, thirds, offcut-first, scattered or herringbone (with a border of 1 to 4 boards if you like).`,
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
