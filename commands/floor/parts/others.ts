/** What the same floor needs in the other patterns, in a phrase each. */

import { PATTERN_NAMES } from '../../../src/input/parse-layout.ts';
import { purchaseOf } from '../../../src/layout/cartons.ts';
import type { Area } from '../../../src/layout/covered-area.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import { LAY } from '../../../src/text/floor-text.ts';
import { layAway } from '../../../src/workers/solve.ts';
import { otherWork } from './other-work.ts';
import { type PlanksAsk, patternOf } from './rules.ts';

/** One phrase a pattern other than the plan's, with planks, cartons and broken rules. */
export async function otherPatterns(areas: readonly Area[], ask: PlanksAsk, plan: Plan): Promise<readonly string[]> {
  const { plank, rules } = plan;
  const hard = hardBreaks(plan);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const phrases: string[] = [];
  for (const name of PATTERN_NAMES.filter((one) => one !== rules.pattern.name)) {
    await otherWork();
    const pattern = patternOf({ name }, plank, rules.stagger, ask.room.units);
    const other = await layAway(areas, plank, { ...rules, pattern }, plan.planks);
    const cartons = cartonsOf(other.planks);
    const broken = hardBreaks(other);
    phrases.push(
      LAY.other(name, other.planks, cartons, cartonsOf(plan.planks) - cartons, broken, hard > 0 && broken === 0),
    );
  }
  return phrases;
}

function hardBreaks(plan: Plan): number {
  return plan.broken.filter(({ rule }) => rule !== 'pattern').length;
}
