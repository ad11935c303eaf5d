/** Which way the rows had better run, as a fact: both ways laid by the quick answer. */

import { purchaseOf } from '../../../src/layout/cartons.ts';
import type { Area } from '../../../src/layout/covered-area.ts';
import { betterWay, quarterTurned } from '../../../src/layout/direction.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { Fact } from '../../../src/reply/reply.ts';
import { WAY } from '../../../src/text/floor-text.ts';
import { layAway } from '../../../src/workers/solve.ts';
import type { PlanksAsk } from './rules.ts';

/**
 * The fact, for a floor's first plan; none where rooms run each their own way. A way that was `told` is kept, and the other
 * one only mentioned.
 */
export async function wayFact(
  areas: readonly Area[],
  first: Plan,
  ask: PlanksAsk,
  told: boolean,
): Promise<Fact | undefined> {
  if (ask.direction.kind === 'each') return undefined;
  const { plank, rules } = first;
  const other = await layAway(quarterTurned(areas), plank, rules, first.planks);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const here = { plan: first, cartons: cartonsOf(first.planks) };
  const there = { plan: other, cartons: cartonsOf(other.planks) };
  const { turned, reasons } = betterWay(here, there);
  const why = reasons.map(WAY.reason);
  const otherTakes = { planks: other.planks, cartons: there.cartons };
  return { label: WAY.label, value: turned ? WAY.turn(told, otherTakes, why) : WAY.stay(told, otherTakes, why) };
}
