/** `project spend`: what the job has cost and will cost, by stage and against its budget, and who pays. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { sayMoney, sayNumber } from '../../src/input/format.ts';
import { hostZone, sayDay } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { stageNamed } from '../../src/input/parse-progress.ts';
import { thingsNamed } from '../../src/input/parse-purchases.ts';
import { type ParsedSpending, readSpending } from '../../src/input/parse-spending.ts';
import { type Preferences, read } from '../../src/input/reading.ts';
import { type SpendSummary, summarise, type Tally } from '../../src/project/needs.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS, PAYERS, projectCurrency } from '../../src/project/project-limits.ts';
import {
  addCover,
  addEntry,
  type Cover,
  dropCovers,
  MOST_ENTRIES,
  removeEntry,
  type Spend,
  type SpendStage,
  setBudget,
} from '../../src/project/purchases.ts';
import { type Block, type Result, reply } from '../../src/reply/reply.ts';
import { NEXT, noSuchPlace, tooMany } from '../../src/text/project-text.ts';
import { SPEND, SPEND_PROBLEMS, STAGE_NAMES } from '../../src/text/shopping-text.ts';
import { cents } from '../../src/units/length.ts';
import { changeHere, projectHere, removeActions, TAKE_BACK } from './project-command.ts';
import { listOf, talliesOf } from './shopping-needs.ts';

function sayStage(stage: SpendStage): string {
  return stage === 'tools' ? SPEND.tools : stage === 'other' ? SPEND.other : STAGE_NAMES[stage];
}

function spendBlocks(
  project: Project,
  summary: SpendSummary,
  currency: string,
  preferences: Preferences,
): readonly Block[] {
  const money = (amount: number): string => sayMoney(cents(amount), currency, preferences);
  return [
    ...budgetBlocks(summary, money, preferences),
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
    ...entryBlocks(project, preferences),
    ...otherBlock(project, currency, preferences),
    ...(summary.unpriced > 0
      ? [{ kind: 'text', section: 'list', text: SPEND.unpriced(summary.unpriced) } as const]
      : []),
  ];
}

function budgetBlocks(
  summary: SpendSummary,
  money: (amount: number) => string,
  preferences: Preferences,
): readonly Block[] {
  const { budget, expected, spent, left, verdict } = summary;
  if (budget === undefined) return [];
  const over = expected - budget;
  const facts: Block = {
    kind: 'facts',
    section: 'list',
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
        ? SPEND.near(sayNumber(Math.floor((expected * 100) / budget), preferences))
        : undefined;
  return [...(warning === undefined ? [] : [{ kind: 'text', section: 'list', text: warning } as const]), facts];
}

/** For example “you $250.00, insurer $1,500.00”. */
function sharesSaid(shares: NonNullable<SpendSummary['shares']>, money: (amount: number) => string): string {
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
  return [{ kind: 'facts', section: 'list', title: SPEND.sharesTitle, facts }];
}

/** Only if somebody else pays too. */
function payerBlock({ payers }: SpendSummary, money: (amount: number) => string): readonly Block[] {
  if (PAYERS.every((payer) => payer === 'self' || payers[payer] === 0)) return [];
  const facts = PAYERS.filter((payer) => payers[payer] !== 0).map((payer) => ({
    label: SPEND.payers[payer],
    value: money(payers[payer]),
  }));
  return [{ kind: 'facts', section: 'list', title: SPEND.payerTitle, facts }];
}

function entryBlocks({ spend, shopping }: Project, preferences: Preferences): readonly Block[] {
  const zone = hostZone();
  const say = (amount: number, of: string): string => sayMoney(cents(amount), of, preferences);
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

/** One line per currency. */
function otherBlock({ spend, shopping }: Project, currency: string, preferences: Preferences): readonly Block[] {
  const all = [...spend.entries, ...shopping.bought.flatMap(({ cost }) => (cost ? [cost] : []))];
  const sums = new Map<string, number>();
  for (const one of all)
    if (one.currency !== currency) sums.set(one.currency, (sums.get(one.currency) ?? 0) + one.cents);
  const said = [...sums].map(([of, amount]) => sayMoney(cents(amount), of, preferences));
  return said.length > 0 ? [{ kind: 'text', section: 'list', text: SPEND.others(said) }] : [];
}

interface SpendAsk {
  readonly do: string;
}

/** Whole cents of the user's currency. */
interface SpendResult extends Result, SpendSummary {
  readonly kind: 'spend';
}

const TOOLS =
  /(?<![a-z])(?:saws?|drills?|nailers?|knives|knife|hammer|tools?|rent(?:al|ed)?|hire[d]?|vacuum|meter|pads|gloves|bar|scraper|mixer)(?![a-z])/i;
/** Words for hauling the old floor away. */
const HAULED =
  /(?<![a-z])(?:dumpsters?|skips?|roll-?offs?|containers?|junk|haul(?:ing|er|age)?|dump fees?|landfill|disposal)(?![a-z])/i;
const LONGEST_WHAT = 200;

async function answerSpend(ask: SpendAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const notes: string[] = [];
  const given = readSpending(ask.do, {
    option: 'do',
    preferences: context.preferences,
    note: (line) => notes.push(line),
  });
  if (!given) return { problems: [SPEND_PROBLEMS.unread(ask.do)] };
  const listed = await listOf(project, context);
  const tallies = talliesOf(listed, project);
  if (given.kind === 'show') return replyOf(project, tallies, '', notes, context);
  const { entries } = project.spend;
  if (given.kind === 'remove' && entries[given.place - 1] === undefined) {
    return {
      problems: [noSuchPlace(ask.do, entries.length, entries.length > 0 ? `remove ${entries.length}` : 'list')],
    };
  }
  if ((given.kind === 'spent' || given.kind === 'refund') && entries.length >= MOST_ENTRIES) {
    return { problems: [tooMany('entries', MOST_ENTRIES, 'project spend remove 1')] };
  }
  const made = madeOf(given, tallies, context);
  const done = await changeHere(context, 'spend', ({ spend }) => {
    const said = made.said(spend);
    return { parts: { spend: made.change(spend) }, said: SPEND.said(said).slice(0, LIMITS.note), result: said };
  });
  if ('problems' in done) return done;
  return replyOf(done.project, talliesOf(listed, done.project), done.result, [...notes, ...made.assumed], context);
}

interface MadeSpend {
  said(spend: Spend): string;
  change(spend: Spend): Spend;
  readonly assumed: readonly string[];
}

function madeOf(
  given: Exclude<ParsedSpending, { kind: 'show' }>,
  tallies: readonly Tally[],
  context: Context,
): MadeSpend {
  const { preferences } = context;
  if (given.kind === 'budget') {
    const { price } = given;
    return {
      said: () => (price ? SPEND.budgetSet(sayMoney(price.cents, price.currency, preferences)) : SPEND.budgetGone),
      change: (spend) => setBudget(spend, price && { cents: price.cents, currency: price.currency }),
      assumed: [],
    };
  }
  if (given.kind === 'remove') {
    return {
      said: ({ entries }) => SPEND.removed(entries[given.place - 1]?.what ?? String(given.place)),
      change: (spend) => removeEntry(spend, given.place - 1),
      assumed: [],
    };
  }
  if (given.kind === 'cover') return coverOf(given, preferences);
  const { price, payer = 'self' } = given;
  const stage = stageOf(given.what, tallies);
  const what = given.what.slice(0, LONGEST_WHAT);
  const amount = sayMoney(price.cents, price.currency, preferences);
  const say = given.kind === 'refund' ? SPEND.refunded : SPEND.added;
  const entry = {
    what: what === '' ? SPEND.notGiven : what,
    cents: given.kind === 'refund' ? -price.cents : price.cents,
    currency: price.currency,
    stage,
    payer,
    at: context.now(),
  };
  return {
    said: () => say(amount, what, SPEND.payers[payer]),
    change: (spend) => addEntry(spend, entry),
    assumed: [SPEND.stageTaken(sayStage(stage))],
  };
}

function coverOf({ payer, of }: ParsedSpending & { readonly kind: 'cover' }, preferences: Preferences): MadeSpend {
  const who = SPEND.payers[payer];
  if (of === 'nothing')
    return { said: () => SPEND.coverGone(who), change: (spend) => dropCovers(spend, payer), assumed: [] };
  const covers: readonly Cover[] =
    'price' in of
      ? [{ kind: 'amount', payer, cents: of.price.cents, currency: of.price.currency }]
      : 'part' in of
        ? [{ kind: 'part', payer, part: of.part }]
        : of.stages.map((stage) => ({ kind: 'stage', payer, stage }));
  const what =
    'price' in of
      ? sayMoney(of.price.cents, of.price.currency, preferences)
      : 'part' in of
        ? `${sayNumber(of.part / 100, preferences)}%`
        : of.stages.map((stage) => sayStage(stage).toLowerCase()).join(', ');
  return { said: () => SPEND.cover(who, what), change: (spend) => covers.reduce(addCover, spend), assumed: [] };
}

/** The stage they name, or that of the item on the list; tools and everything else are stages of their own. */
function stageOf(what: string, tallies: readonly Tally[]): SpendStage {
  const words = what
    .toLowerCase()
    .split(/[^\p{L}\p{N}-]+/u)
    .filter((word) => word.length > 2);
  const things = words.length === 0 ? [] : thingsNamed(words, tallies);
  if (HAULED.test(what)) return 'tear-out';
  if (TOOLS.test(what) && !/(?<![a-z])blades?(?![a-z])/i.test(what)) return 'tools';
  const stages = new Set(things.map(({ stage }) => stage));
  const [stage] = stages;
  if (stage !== undefined && stages.size === 1) return stage;
  if (/(?<![a-z])(?:adhesive|glue)(?![a-z])/i.test(what)) return 'subfloor';
  return stageNamed(what) ?? 'other';
}

function replyOf(
  project: Project,
  tallies: readonly Tally[],
  said: string,
  notes: readonly string[],
  context: Context,
): Outcome {
  const { preferences } = context;
  const { budget, entries } = project.spend;
  const amounts = [
    ...entries,
    ...project.shopping.bought.flatMap(({ cost }) => cost ?? []),
    ...tallies.flatMap(({ price }) => price ?? []),
  ];
  const currency = budget?.currency ?? projectCurrency(amounts, preferences.currency);
  const summary = summarise(tallies, project.shopping, project.spend, currency);
  const money = (amount: number): string => sayMoney(cents(amount), currency, preferences);
  const line = SPEND.headline(
    money(summary.spent),
    summary.left > 0 ? money(summary.expected) : undefined,
    summary.budget === undefined ? undefined : money(summary.budget),
    summary.shares && sharesSaid(summary.shares, money),
  );
  const data: SpendResult = { kind: 'spend', ...summary };
  return reply({
    headline: [said, line].filter((one) => one !== '').join(' '),
    lines: [],
    ...(said === '' && { opens: 'list' }),
    blocks: spendBlocks(project, summary, currency, preferences),
    assumed: [...context.assumed, ...notes],
    actions: [
      ...(said === '' ? [] : [TAKE_BACK]),
      ...(summary.left > 0 ? [{ label: NEXT.shopping, ask: 'project shopping' }] : []),
      ...removeActions(entries.length, 'spend', SPEND.remove),
    ],
    data,
  });
}

export default defineCommand({
  group: 'project',
  name: 'spend',
  summary: 'What the job has cost and will cost, its budget, and who pays',
  phrases: [
    'i spent 340 at the store on planks',
    'log $48 for underlayment',
    'how much have i spent so far',
    'paid 212.50 for trim',
    'receipt 86.14 for caulk and nails',
    'how much of my budget is left',
    'bought saw blades 24 dollars',
    'am i over budget',
    'record a purchase of $1,240 for flooring',
    'add expense dumpster 375',
    'whats my total spending',
    'spent another 60 bucks',
    'returned 2 boxes got 96 back',
    'money left out of 3000',
    'set budget to 2500',
    'budget is 4k',
    'show expenses',
    'what did i pay for the pad',
    'costs so far vs estimate',
    'put 45 for blades on the tab',
    'spent 62.40 on knee pads and blades',
    'put down 418 for the planks, paid today',
    'how much money have i gone through so far',
    'log $27.80 for caulk and a gun',
    'receipt from the hardware store came to 134.55, screws leveler and a trowel',
    "what's left of my 2500 budget",
    'insurance is paying 1,800 for the water damage, put that in',
    'set my budget at $3,200 for the three rooms',
    'got 71 back for two unopened boxes',
    'dump fee 35',
    'rented a trailer for 29.95 plus 10 gas, add those',
    'am i over what i planned on spending',
    'paid my nephew 150 cash for helping with the carpet',
    'adjuster approved $940, deductible is 500, how much of this do i eat',
    'mark down 12 boxes at 57.30 each as bought',
    'total spent?',
    'how much did the underlayment cost me, i think i entered it tuesday',
    'the trim ran 212 with tax, charge it to the bedroom',
    '£86 at the merchants for adhesive and ply',
    'budget left after today',
    'expenses by room please',
    "landlord's giving me 600 toward materials, record it",
    'i returned the wrong reducer, refund was 24.99',
    'where did all the money go',
    'bought a second hand flooring cutter off a guy for 45 bucks',
    'raise the budget to 4 grand, the subfloor was worse than we thought',
    'is there enough left in the budget for baseboards at about 300',
    'put 19 dollars for blades under tools',
    'insurer pays for the kitchen but not the hall, keep those costs apart',
    'add 3 sheets of plywood, 54.97 each',
    "show me everything i've paid for, i need it for the claim",
    'remove that 62 dollar expense it was for groceries',
    "how does what i've spent compare with the estimate",
    'cost so far on the basement',
    'my share is 30 percent and the insurance company covers the rest of it',
    "we've blown 1,940 already right",
    'another 8.47 on shims ugh',
    'trip to the store, 3 tubes of adhesive 7.98 each and a box of screws 11.20',
    'delivery charge 79 add it to the flooring',
    'how much do i have to play with before i hit the budget',
    'how much has it cost so far',
    'how much has the job cost',
    'costs',
  ],
  options: z.object({
    do: text(
      {
        summary: '“spent $84.20 on adhesive”, “refund $32.50 carton”, “budget $2500”, “insurer pays 25%”',
        example: 'spent $84.20 on adhesive, insurer',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project spend', headline: 'Spent $0.00, $1,415.82 expected in all.' },
    {
      ask: 'project spend $84.20 on adhesive, insurer',
      headline: 'Spent: $84.20, adhesive (insurer). Spent $84.20, $1,500.02 expected in all.',
    },
    {
      ask: 'project spend budget $2500',
      headline: 'Budget: $2,500.00. Spent $0.00, $1,415.82 expected in all, of a budget of $2,500.00.',
    },
  ],
  run: (options, context) => answerSpend(options, context),
});
