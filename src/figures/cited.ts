/** A figure of the trade with where it comes from: every constant the answers lean on is one of these. */

import type { Source } from '../reply/reply.ts';

/** `said` is the figure in words, `name` what it is a figure of. */
export interface Cited<T> {
  readonly name: string;
  readonly said: string;
  readonly value: T;
  readonly source: Source;
}

export const COMMON_PRACTICE: Source = { title: 'Common practice of the trade', standing: 'common practice' };
export const TRADE_CUSTOM: Source = { title: 'Trade custom', standing: 'from memory' };
/** A figure on the safe side where no source gives one. */
export const CAUTIOUS_DEFAULT: Source = {
  title: 'Cautious default of this program, no source',
  standing: 'from memory',
};
