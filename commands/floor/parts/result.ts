/** A plan as result data: plain numbers that outside checkers read. */

import type { Purchase } from '../../../src/layout/cartons.ts';
import type { HomeDoorway } from '../../../src/layout/doorways.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { Home } from '../../../src/layout/home-regions.ts';
import { type KeptOffcut, keptOffcuts, type Leftover, leftoverOf } from '../../../src/layout/offcuts.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { TICKS_PER_INCH } from '../../../src/units/length.ts';

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
  readonly doorways?: readonly HomeDoorway[];
  /** Offcuts that one region leaves and a later one uses. */
  readonly kept?: readonly KeptOffcut[];
  readonly leftover?: Leftover & { readonly planks: number };
}

/** Plan, purchase and cost as result data. */
export function floorResult(plan: Plan, purchase: Purchase, cost: Cost | undefined, home?: Home): FloorResult {
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
    ...(home
      ? {
          doorways: home.doorways,
          kept: keptOffcuts(plan),
          leftover: { planks: purchase.left + mistakes + spares, ...leftoverOf(plan, 1) },
        }
      : {}),
  };
}

/** Result data of kind `floor` of some regions alone: how they are laid, and nothing of what the whole floor takes or costs. */
export type RegionResult = Pick<FloorResult, 'kind' | 'ticksPerInch' | 'plank' | 'rules' | 'regions' | 'broken'>;

export function regionResult({ plank, rules, regions, broken }: Plan): RegionResult {
  return { kind: 'floor', ticksPerInch: TICKS_PER_INCH, plank, rules, regions, broken };
}
