/** What else a project keeps beside its rooms and answers: each part's schema, and what it is while nothing is in it. */

import { EMPTY_FOUND, foundSchema } from './found.ts';
import { EMPTY_LOG, logSchema } from './log.ts';
import { EMPTY_MEASURES, measuresSchema } from './measure.ts';
import { EMPTY_SHOPPING, shoppingSchema } from './shopping.ts';
import { EMPTY_SPEND, spendSchema } from './spend.ts';
import { EMPTY_STAGES, stagesSchema } from './stages.ts';

/** The schema of each part, by its name. */
export const partsSchema = {
  shopping: shoppingSchema,
  stages: stagesSchema,
  spend: spendSchema,
  log: logSchema,
  found: foundSchema,
  // What was taken out before there was any has none.
  measures: measuresSchema.default(EMPTY_MEASURES),
};

/** Every part with nothing in it. */
export function emptyParts() {
  return {
    shopping: EMPTY_SHOPPING,
    stages: EMPTY_STAGES,
    spend: EMPTY_SPEND,
    log: EMPTY_LOG,
    found: EMPTY_FOUND,
    measures: EMPTY_MEASURES,
  };
}
