/** The problems of names and notes. */

import type { Problem } from '../reply/reply.ts';
import { type Got, problem } from './got.ts';

export function labelEmpty(got: Got): Problem {
  return problem(got, 'A name has at least one letter or figure.', 'Upstairs flat');
}

export function labelTooLong(got: Got, most: number, fix: string): Problem {
  return problem(got, `At most ${most} characters are kept here.`, fix);
}
