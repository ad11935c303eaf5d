/** What an asker can mend (Problem), and what is not safe to compute (Refusal): plain data. */

import type { Caution } from './caution.ts';

export interface Problem {
  /** The option it is about, or 'ask' for the line as a whole. */
  readonly option: string;
  /** What was read, word for word. */
  readonly got: string;
  /** What is expected instead, as a sentence. */
  readonly expected: string;
  /** Something the asker can type as it is. */
  readonly fix: string;
}

export interface Refusal {
  readonly why: string;
  readonly call: string;
  readonly cautions: readonly Caution[];
}
