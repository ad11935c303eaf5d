/** What a project costs, stage by stage: the estimate, what is spent, what is left to buy, and how that stands to the budget. */

import { STAGES } from '../reply/stage.ts';
import { lineCost } from './needs-merged.ts';
import { PAYERS, type Payer } from './payer.ts';
import type { Shopping } from './shopping.ts';
import type { Tally } from './shopping-left.ts';
import type { Spend, SpendStage } from './spend.ts';

/** Whole cents of one currency. */
export interface StageCost {
  readonly stage: SpendStage;
  /** All that the list needs, at the prices known. */
  readonly estimate: number;
  readonly spent: number;
  readonly left: number;
}

export interface SpendSummary {
  readonly stages: readonly StageCost[];
  readonly spent: number;
  readonly left: number;
  /** Spent and left to buy. */
  readonly expected: number;
  readonly payers: Readonly<Record<Payer, number>>;
  readonly budget: number | undefined;
  readonly verdict: 'within' | 'near' | 'past' | undefined;
  /** Things left to buy without a price in this currency. */
  readonly unpriced: number;
}

/** From nine tenths of the budget on it is near. */
const NEAR = 0.9;

/** Sums in one currency; what is in another is in no sum. A purchase nobody is told to have paid is the asker's own. */
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
  return {
    stages: stages.filter((one) => one.estimate !== 0 || one.spent !== 0),
    spent,
    left,
    expected,
    payers: Object.fromEntries(
      PAYERS.map((payer) => [payer, sum(paid.filter((one) => one.payer === payer).map(({ cents }) => cents))]),
    ) as Record<Payer, number>,
    budget,
    verdict:
      budget === undefined ? undefined : expected > budget ? 'past' : expected >= NEAR * budget ? 'near' : 'within',
    unpriced: tallies.filter((one) => one.left > 0 && !(one.package && priced.includes(one))).length,
  };
}

function sum(cents: readonly number[]): number {
  return cents.reduce((total, one) => total + one, 0);
}
