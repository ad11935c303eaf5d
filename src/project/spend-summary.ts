/** What a project costs by stage: estimate, spent, still to buy, and the budget. */

import { STAGES } from '../reply/need.ts';
import { lineCost, type Tally } from './needs.ts';
import { PAYERS, type Payer } from './project-limits.ts';
import type { Shopping } from './purchases.ts';
import type { Spend, SpendStage } from './spending.ts';

/** Whole cents of one currency. */
interface StageCost {
  readonly stage: SpendStage;
  /** Everything on the list, at known prices. */
  readonly estimate: number;
  readonly spent: number;
  readonly left: number;
}

export interface SpendSummary {
  readonly stages: readonly StageCost[];
  readonly spent: number;
  readonly left: number;
  /** Spent plus still to buy. */
  readonly expected: number;
  readonly payers: Readonly<Record<Payer, number>>;
  /** What each payer pays of the expected total, as agreed; undefined without agreements. */
  readonly shares: Readonly<Record<Payer, number>> | undefined;
  readonly budget: number | undefined;
  readonly verdict: 'within' | 'near' | 'past' | undefined;
  /** Items still to buy that have no price in this currency. */
  readonly unpriced: number;
}

/** Above this share of the budget it counts as nearly used up. */
const NEAR = 0.9;

/** Sums in one currency; amounts in others are left out. A purchase without a payer is the user's own. */
export function summarise(tallies: readonly Tally[], shopping: Shopping, spend: Spend, currency: string): SpendSummary {
  const entries = spend.entries.filter((one) => one.currency === currency);
  const bought = shopping.bought.flatMap(({ cost, stage, payer }) =>
    cost?.currency === currency ? [{ stage, cents: cost.cents, payer: payer ?? ('self' as const) }] : [],
  );
  const paid: readonly { stage: SpendStage; cents: number; payer: Payer }[] = [...bought, ...entries];
  const priced = tallies.filter(({ price }) => price?.currency === currency);
  const costOf = (one: Tally, count: number | undefined): number =>
    lineCost({ ...one, ...(count !== undefined && { count }) }) ?? 0;
  const stages = [...STAGES, 'tools', 'other'].map((stage): StageCost => {
    const own = priced.filter((one) => one.stage === stage);
    return {
      stage: stage as SpendStage,
      estimate: sum(own.map((one) => costOf(one, one.count))),
      spent: sum(paid.filter((one) => one.stage === stage).map(({ cents }) => cents)),
      left: sum(own.map((one) => (one.package ? costOf(one, one.left) : 0))),
    };
  });
  const spent = sum(stages.map((one) => one.spent));
  const left = sum(stages.map((one) => one.left));
  const budget = spend.budget?.currency === currency ? spend.budget.cents : undefined;
  const expected = spent + left;
  const payers = Object.fromEntries(
    PAYERS.map((payer) => [payer, sum(paid.filter((one) => one.payer === payer).map(({ cents }) => cents))]),
  ) as Record<Payer, number>;
  return {
    stages: stages.filter((one) => one.estimate !== 0 || one.spent !== 0),
    spent,
    left,
    expected,
    payers,
    shares: sharesOf(spend, stages, paid, expected, currency),
    budget,
    verdict:
      budget === undefined ? undefined : expected > budget ? 'past' : expected >= NEAR * budget ? 'near' : 'within',
    unpriced: tallies.filter((one) => one.left > 0 && !(one.package && priced.includes(one))).length,
  };
}

/**
 * Who pays what of the expected total. A stage someone covers is theirs entirely. Amounts and shares of the whole come
 * on top, reduced by what they already paid for other stages. Nobody pays more than the total.
 */
function sharesOf(
  { covers = [] }: Spend,
  stages: readonly StageCost[],
  paid: readonly { readonly stage: SpendStage; readonly cents: number; readonly payer: Payer }[],
  expected: number,
  currency: string,
): SpendSummary['shares'] {
  const counted = covers.filter((one) => one.kind !== 'amount' || one.currency === currency);
  if (counted.length === 0) return undefined;
  let rest = Math.max(0, expected);
  const shares: Record<Payer, number> = { self: 0, insurer: 0, landlord: 0 };
  for (const payer of PAYERS.filter((one) => one !== 'self')) {
    const own = counted.filter((one) => one.payer === payer);
    const whole = new Set(own.flatMap((one) => (one.kind === 'stage' ? [one.stage] : [])));
    const ofStages = sum(stages.flatMap((one) => (whole.has(one.stage) ? [one.spent + one.left] : [])));
    const agreed = sum(
      own.map((one) =>
        one.kind === 'amount' ? one.cents : one.kind === 'part' ? Math.round((expected * one.part) / 10_000) : 0,
      ),
    );
    const already = sum(paid.flatMap((one) => (one.payer === payer && !whole.has(one.stage) ? [one.cents] : [])));
    const share = Math.max(0, Math.min(rest, ofStages + Math.max(agreed, already)));
    shares[payer] = share;
    rest -= share;
  }
  return { ...shares, self: rest };
}

function sum(cents: readonly number[]): number {
  return cents.reduce((total, one) => total + one, 0);
}
