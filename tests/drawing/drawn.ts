/** The pictures of a plan, drawn in one go. */

import { planAsGiven, drawPlan as planSteps, drawRoom as roomSteps } from '../../src/drawing/floor-plans.ts';
import type { Saying } from '../../src/input/format.ts';
import type { LaidRegion, Plan } from '../../src/layout/floor.ts';
import type { Drawing } from '../../src/reply/drawing.ts';

export function drawPlan(plan: Plan, saying: Saying): readonly Drawing[] {
  return atOnce(planSteps(planAsGiven(plan, saying)));
}

export function drawRoom(plan: Plan, region: LaidRegion, saying: Saying): readonly Drawing[] {
  return atOnce(roomSteps(planAsGiven(plan, saying), region));
}

/** What work in steps comes to. */
export function atOnce<T>(work: Generator<undefined, T>): T {
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
  }
}
