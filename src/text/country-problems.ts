/** The texts about the country of a home. */

import type { Problem } from '../reply/reply.ts';
import { type Got, problem } from './got.ts';

export function notACountry(got: Got): Problem {
  return problem(got, 'The country the home is in: US, Canada, UK, Australia, or the name of another.', 'elsewhere');
}

export function countryElsewhere(typed: string): string {
  return `${typed} has no years of its own here: the latest ones are taken for old paint, old floors and glue`;
}

/** Which country’s years were taken, where none was told. */
export const COUNTRY_TAKEN: Readonly<Record<'us' | 'elsewhere', string>> = {
  us: 'country not told: the years of the US are taken for asbestos and lead; tell “country” here, or once for all with “project settings country: …”',
  elsewhere:
    'country not told and sizes in metric: the latest years are taken for asbestos and lead; tell “country” here, or once for all with “project settings country: …”',
};
