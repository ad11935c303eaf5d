/** Figures with their sources: those the answers compute with, and those the handbook only quotes. */

import type { Source } from '../reply/reply.ts';

/** `said` is the figure in words, `name` says what it measures. */
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

// The foot, inch and pound the answers use.

export const INCH: Cited<number> = {
  name: 'Inch',
  said: '1 in = 25.4 mm exactly; 1 ft = 0.3048 m exactly',
  value: 25.4,
  source: {
    title: 'U.S. Survey Foot: Revised Unit Conversion Factors',
    publisher: 'NIST',
    year: 2022,
    standing: 'published',
  },
};

export const SQUARE_FOOT: Cited<number> = {
  name: 'Square foot',
  said: '1 sq ft = 0.09290304 m² exactly',
  value: 0.09290304,
  source: { title: 'Follows from the foot of 0.3048 m', publisher: 'NIST', year: 2022, standing: 'reported' },
};

export const UNIT_FIGURES = [INCH, SQUARE_FOOT] as const;

// A figure that the handbook quotes by its id, in US and metric words.

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
