/** What can hurt someone, or ruin the floor, said with an answer. */

import type { Source } from './source.ts';

export interface Caution {
  /** A stable name, for tests and for saying each caution once. */
  readonly topic: string;
  readonly text: string;
  readonly source?: Source;
}
