/** The texts about a day's noises that cannot be read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

const EXAMPLE = 'saw 2 h at 100, vacuum 1 h at 85';

export function notADay({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected: `Noises of a day, each with its time and level in dBA: “${EXAMPLE}”.`,
    fix: undefined,
  };
}

export function dayTooLong({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'These come to more than 24 hours.', fix: undefined };
}
