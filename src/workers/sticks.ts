/** Sticks cut for least money, off the event loop: a first answer at once, then better ones, proven where it can be. */

import { firstSticks, type StickPlan, type StickTask } from '../trim/sticks.ts';
import { answersFrom } from './pool.ts';

/** Plans in rising quality, each replacing the one before. Throws a RangeError when a piece fits no stock. */
export async function* cutSticks(task: StickTask): AsyncGenerator<StickPlan> {
  let best = firstSticks(task);
  yield best;
  if (best.proven) return;
  for await (const plan of answersFrom<StickPlan>({ kind: 'sticks', task })) {
    if (plan.cents > best.cents || (plan.cents === best.cents && plan.bound <= best.bound)) continue;
    best = plan;
    yield best;
    if (best.proven) return;
  }
}
