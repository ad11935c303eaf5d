/** What an asker can mend (Problem), and what is not safe to compute (Refusal): plain data. */

import type { Caution } from './caution.ts';
import type { Result } from './reply.ts';

export interface Problem {
  /** The option it is about, or 'ask' for the line as a whole. */
  readonly option: string;
  /** What was read, word for word. */
  readonly got: string;
  /** What is expected instead, as a sentence. */
  readonly expected: string;
  /** A line that can be typed as it is: it holds all that was typed, no figure that was not, and is answered. Left out where none can be made. */
  readonly fix?: string | undefined;
}

/** Result data of whatever is about a hazard: an answer, or a refusal. */
export interface HazardResult extends Result {
  readonly kind: 'hazard';
  readonly hazard: string;
  /** Somebody may be hurt this minute: it is answered first and alone. */
  readonly emergency: boolean;
}

export interface Refusal {
  readonly why: string;
  readonly call: string;
  readonly cautions: readonly Caution[];
  readonly data: HazardResult;
}

/** The data of a refusal that is no emergency. */
export function unsafe(hazard: string): HazardResult {
  return { kind: 'hazard', hazard, emergency: false };
}
