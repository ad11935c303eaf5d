/** How sticks are cut, better and better: the one place that says by what. */

import type { StickPlan, StickTask } from '../../../src/trim/sticks.ts';
import { cutSticks } from '../../../src/workers/solve.ts';

/** A first plan at once, then better or proved ones; the last stands. */
export function stickPlans(task: StickTask): AsyncIterable<StickPlan> {
  return cutSticks(task);
}
