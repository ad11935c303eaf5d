/** What was typed for an option, and a problem with it. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

/** What was typed, and for which option. */
export interface Got {
  readonly option: string;
  readonly got: string;
}

/** A problem with what was typed, said back short; `fix` is a value that the option's reader reads, where one can be made. */
export function problem({ option, got }: Got, expected: string, fix?: string): Problem {
  return { option, got: quoted(got), expected, fix };
}
