/** What a project costs, in words: a table by stage, the budget, who pays, and every entry. */

import { sayMoney, sayNumber } from '../../../src/input/format.ts';
import { hostZone, sayDay } from '../../../src/input/moment.ts';
import type { Habits } from '../../../src/input/reading.ts';
import type { Project } from '../../../src/project/project.ts';
import { PAYERS } from '../../../src/project/project-limits.ts';
import type { SpendSummary } from '../../../src/project/spend-summary.ts';
import type { SpendStage } from '../../../src/project/spending.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { SPEND, STAGE_NAMES } from '../../../src/text/shopping-text.ts';
import { cents } from '../../../src/units/length.ts';

export function sayStage(stage: SpendStage): string {
  return stage === 'tools' ? SPEND.tools : stage === 'other' ? SPEND.other : STAGE_NAMES[stage];
}

export function spendBlocks(
  project: Project,
  summary: SpendSummary,
  currency: string,
  habits: Habits,
): readonly Block[] {
  const money = (amount: number): string => sayMoney(cents(amount), currency, habits);
  return [
    ...budgetBlocks(summary, money, habits),
    ...(summary.stages.length > 0
      ? [
          {
            kind: 'table',
            title: SPEND.stageTitle,
            columns: SPEND.stageColumns,
            rows: summary.stages.map(({ stage, estimate, spent, left }) => [
              sayStage(stage),
              estimate === 0 ? '' : money(estimate),
              spent === 0 ? '' : money(spent),
              left === 0 ? '' : money(left),
            ]),
          } as const,
        ]
      : []),
    ...shareBlock(summary, money),
    ...payerBlock(summary, money),
    ...entryBlocks(project, habits),
    ...otherBlock(project, currency, habits),
    ...(summary.unpriced > 0 ? [{ kind: 'text', text: SPEND.unpriced(summary.unpriced) } as const] : []),
  ];
}

function budgetBlocks(summary: SpendSummary, money: (amount: number) => string, habits: Habits): readonly Block[] {
  const { budget, expected, spent, left, verdict } = summary;
  if (budget === undefined) return [];
  const over = expected - budget;
  const facts: Block = {
    kind: 'facts',
    title: SPEND.budgetTitle,
    facts: [
      { label: SPEND.budget, value: money(budget) },
      { label: SPEND.spent, value: money(spent) },
      { label: SPEND.left, value: money(left) },
      { label: SPEND.expected, value: money(expected) },
      over > 0 ? { label: SPEND.over, value: money(over) } : { label: SPEND.room, value: money(-over) },
    ],
  };
  const warning =
    verdict === 'past'
      ? SPEND.past(money(over))
      : verdict === 'near'
        ? SPEND.near(sayNumber(Math.floor((expected * 100) / budget), habits))
        : undefined;
  return [...(warning === undefined ? [] : [{ kind: 'text', text: warning } as const]), facts];
}

/** Who pays what of all that is expected: “you $250.00, insurer $1,500.00”. */
export function sharesSaid(shares: NonNullable<SpendSummary['shares']>, money: (amount: number) => string): string {
  return PAYERS.filter((payer) => payer === 'self' || shares[payer] !== 0)
    .map((payer) => `${SPEND.payers[payer]} ${money(shares[payer])}`)
    .join(', ');
}

function shareBlock({ shares }: SpendSummary, money: (amount: number) => string): readonly Block[] {
  if (!shares) return [];
  const facts = PAYERS.filter((payer) => payer === 'self' || shares[payer] !== 0).map((payer) => ({
    label: SPEND.payers[payer],
    value: money(shares[payer]),
  }));
  return [{ kind: 'facts', title: SPEND.sharesTitle, facts }];
}

/** Only where somebody else pays as well. */
function payerBlock({ payers }: SpendSummary, money: (amount: number) => string): readonly Block[] {
  if (PAYERS.every((payer) => payer === 'self' || payers[payer] === 0)) return [];
  const facts = PAYERS.filter((payer) => payers[payer] !== 0).map((payer) => ({
    label: SPEND.payers[payer],
    value: money(payers[payer]),
  }));
  return [{ kind: 'facts', title: SPEND.payerTitle, facts }];
}

function entryBlocks({ spend, shopping }: Project, habits: Habits): readonly Block[] {
  const zone = hostZone();
  const say = (amount: number, of: string): string => sayMoney(cents(amount), of, habits);
  const entries = spend.entries.map(({ what, cents: amount, currency, stage, payer, at }, i) => [
    String(i + 1),
    sayDay(at, zone),
    what,
    sayStage(stage),
    say(amount, currency),
    SPEND.payers[payer],
  ]);
  const bought = shopping.bought.flatMap(({ label, cost, payer = 'self', at }) =>
    cost ? [[sayDay(at, zone), label, say(cost.cents, cost.currency), SPEND.payers[payer]]] : [],
  );
  return [
    ...(entries.length > 0
      ? [{ kind: 'table', title: SPEND.listTitle, columns: SPEND.listColumns, rows: entries } as const]
      : []),
    ...(bought.length > 0
      ? [{ kind: 'table', title: SPEND.purchasesTitle, columns: SPEND.purchasesColumns, rows: bought } as const]
      : []),
  ];
}

/** Money in other currencies, currency by currency. */
function otherBlock({ spend, shopping }: Project, currency: string, habits: Habits): readonly Block[] {
  const all = [...spend.entries, ...shopping.bought.flatMap(({ cost }) => (cost ? [cost] : []))];
  const sums = new Map<string, number>();
  for (const one of all)
    if (one.currency !== currency) sums.set(one.currency, (sums.get(one.currency) ?? 0) + one.cents);
  const said = [...sums].map(([of, amount]) => sayMoney(cents(amount), of, habits));
  return said.length > 0 ? [{ kind: 'text', text: SPEND.others(said) }] : [];
}
