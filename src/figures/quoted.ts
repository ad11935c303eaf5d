/** A figure that the handbook quotes by its id, in US and metric words. */

import type { Source } from '../reply/reply.ts';

export interface QuotedFigure {
  /** Lowercase words with hyphens, unique. */
  readonly id: string;
  /** What it measures. */
  readonly name: string;
  /** The figure with its unit, as it stands in a sentence: '1/4 in', '5 to 15%'. */
  readonly us: string;
  /** The same for someone who measures in metric; rounded as a person there would say it. Left out if equal. */
  readonly metric?: string;
  readonly source: Source;
}
