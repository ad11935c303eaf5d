/** The texts about counts, percentages, choices, patterns and directions that cannot be read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

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
