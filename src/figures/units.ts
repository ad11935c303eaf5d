/** What a foot, an inch and a pound are, as the answers use them. */

import type { Cited } from './cited.ts';

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
