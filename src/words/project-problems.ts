/** The problems of projects: what is not there, what is full, what cannot be read, and what to type instead. */

import type { Problem } from '../reply/problem.ts';
import { quoted } from './asks.ts';

/** An ask that starts a project. */
export const START_ASK = 'project new Upstairs flat';

/** A line asked on somebody's behalf that would change what they keep. */
export function notForKeeping(line: string): Problem {
  return {
    option: 'ask',
    got: quoted(line),
    expected: 'Only answers that are worked out can be kept, such as planks or a tear-out.',
    fix: 'project show',
  };
}
