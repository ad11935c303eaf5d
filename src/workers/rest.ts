/** The rest of a floor begun, planned off the event loop when it is long. */

import type { Plan } from '../layout/floor.ts';
import { type Progress, planRest, type Stock } from '../layout/resume-floor.ts';
import { lastAnswerFrom } from './pool.ts';

/** More rows than this, laid ones among them, may take over 20 ms. */
const LONG = 25;

/** As `planRest`. Throws an Error when the worker that plans a long one dies or overruns. */
export async function restAway(
  plan: Plan,
  progress: readonly Progress[],
  stock: Stock,
): Promise<ReturnType<typeof planRest>> {
  const rows = plan.regions.reduce((sum, region) => sum + region.rows.length, 0);
  if (rows <= LONG) return planRest(plan, progress, stock);
  return lastAnswerFrom({ kind: 'rest', plan, progress, stock });
}
