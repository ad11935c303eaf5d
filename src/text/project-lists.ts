/** The words where a list of a project is full, or has no such place. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

/** Something that is full. */
export function tooMany(what: string, most: number, fix: string): Problem {
  return { option: 'ask', got: what, expected: `A project keeps ${most} ${what} at most: remove one first.`, fix };
}

/** A place in a list that is not there. */
export function noSuchPlace(got: string, most: number, fix: string): Problem {
  return {
    option: 'do',
    got: quoted(got),
    expected: most === 0 ? 'There is nothing in the list yet.' : `Tell a number from the list: 1 to ${most}.`,
    fix,
  };
}
