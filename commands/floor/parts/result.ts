/** A plan as result data: plain numbers that outside checkers read. */

import type { Purchase } from '../../../src/core/cost/carton.ts';
import type { Plan } from '../../../src/core/floor/floor.ts';
import { TICKS_PER_INCH } from '../../../src/core/length.ts';
import type { Result } from '../../../src/reply/reply.ts';

/** Cost in whole cents, tax apart. */
export interface Cost {
  readonly cents: number;
  readonly tax: number;
}

/** Result data of kind `floor`; lengths in ticks, money in cents, cost only if a price was told. */
export interface FloorResult extends Result, Pick<Plan, 'plank' | 'rules' | 'regions' | 'bound' | 'broken'> {
  readonly kind: 'floor';
  readonly ticksPerInch: number;
  readonly count: {
    readonly planks: number;
    readonly reused: number;
    readonly mistakes: number;
    readonly spares: number;
    readonly cartons: number;
  };
  readonly cost?: Cost;
}

/** Plan, purchase and cost as result data. */
export function floorResult(plan: Plan, purchase: Purchase, cost: Cost | undefined): FloorResult {
  const { plank, rules, regions, bound, broken, planks, reused } = plan;
  const { mistakes, spares, cartons } = purchase;
  return {
    kind: 'floor',
    ticksPerInch: TICKS_PER_INCH,
    plank,
    rules,
    regions,
    count: { planks, reused, mistakes, spares, cartons },
    bound,
    broken,
    ...(cost ? { cost } : {}),
  };
}
