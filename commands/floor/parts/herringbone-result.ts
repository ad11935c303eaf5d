/** A herringbone plan as result data of kind `floor`: boards as polygons, for rows do not describe it. */

import type { HerringPlan, HerringRegion } from '../../../src/layout/herringbone.ts';
import type { Home } from '../../../src/layout/home-regions.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { TICKS_PER_INCH } from '../../../src/units/length.ts';
import type { BoughtBoardCount } from './herringbone-facts.ts';
import type { Cost } from './result.ts';

/** Regions have no rows; `boards` tells every board with its place, its stretch and its shape. */
export interface HerringResult extends Result {
  readonly kind: 'floor';
  readonly ticksPerInch: number;
  readonly plank: HerringPlan['plank'] & { readonly handed: boolean };
  readonly rules: {
    readonly gap: number;
    readonly kerf: number;
    readonly pattern: { readonly name: 'herringbone'; readonly border: number };
  };
  readonly regions: readonly (HerringRegion & { readonly rows: readonly [] })[];
  readonly count: Record<string, number>;
  readonly bound: HerringPlan['bound'];
  readonly broken: readonly [];
  readonly cost?: Cost;
  readonly doorways?: Home['doorways'];
}

/** Plan, purchase and cost as result data. */
export function herringResult(
  plan: HerringPlan,
  bought: BoughtBoardCount,
  cost: Cost | undefined,
  home?: Home,
): HerringResult {
  const { plank, rules, regions, bound, planks, reused, whole, pieces, hands } = plan;
  const { mistakes, spares, cartons } = bought;
  return {
    kind: 'floor',
    ticksPerInch: TICKS_PER_INCH,
    plank: { ...plank, handed: rules.handed },
    rules: { gap: rules.gap, kerf: rules.kerf, pattern: { name: 'herringbone', border: rules.border } },
    regions: regions.map((region) => ({ ...region, rows: [] as const })),
    count: { planks, reused, mistakes, spares, cartons, whole, pieces, ...hands },
    bound,
    broken: [],
    ...(cost && { cost }),
    ...(home && { doorways: home.doorways }),
  };
}
