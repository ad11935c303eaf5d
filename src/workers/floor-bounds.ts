/** What is proved of a floor: bounds of its flow of offcuts, and which of them hold for a plan. */

import type { Bound, Plan } from '../layout/floor.ts';
import { brokenArcs, type FlowTable, flowBound } from '../layout/offcut-flow.ts';
import type { ScatterFloor } from '../layout/scatter-rules.ts';
import type { FlowModel } from './floor-flow.ts';

/** Rounds of rules added to a linear program. */
const ROUNDS = 8;

/** `loose` holds for layouts that keep the shortest end; `tight` for those that keep the stagger and their looks too. */
export interface FlowBounds {
  readonly loose: number;
  readonly tight: number;
}

/** The bounds of one way to cut the rows, rules of rows on one another added as the program breaks them. */
export function bounded(model: FlowModel, table: FlowTable, floor: ScatterFloor): FlowBounds {
  let loose: number | undefined;
  let tight = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const flow = model.relaxed();
    if (!flow) break;
    tight = Math.max(tight, flowBound(table, flow.worth, flow.arcs));
    loose ??= tight;
    const broken = table.exact ? brokenArcs(table, floor, flow.used) : [];
    if (broken.length === 0) break;
    model.hold(broken);
  }
  return { loose: loose ?? 0, tight };
}

/** What holds for every way to cut the rows. */
export function leastOf(all: readonly FlowBounds[]): FlowBounds {
  return {
    loose: Math.min(...all.map(({ loose }) => loose)),
    tight: Math.min(...all.map(({ tight }) => tight)),
  };
}

/** True when a plan keeps every rule that its joints decide; a narrow strip hangs on the rows alone. */
export function breaksNone({ broken }: Plan): boolean {
  return broken.every(({ rule }) => rule === 'minRip');
}

/** The plan with the best bound that holds for it: one that breaks a rule may do with fewer planks than those that keep it. */
export function proved(plan: Plan, plain: Omit<Bound, 'proven'>, flow: FlowBounds | undefined): Plan {
  const endsKept = plan.broken.every(({ rule }) => rule !== 'minEnd');
  if (!flow || !endsKept) return { ...plan, bound: { ...plain, proven: plan.planks === plain.best } };
  const least = breaksNone(plan) ? flow.tight : flow.loose;
  const best = Math.max(plain.best, least);
  return { ...plan, bound: { area: plain.area, row: plain.row, flow: least, best, proven: plan.planks === best } };
}
