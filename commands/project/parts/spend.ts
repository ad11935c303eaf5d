/** From what is told of money to what the project costs: estimate against actual, budget, who pays. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { sayMoney, sayNumber } from '../../../src/input/format.ts';
import { thingsNamed } from '../../../src/input/item-named.ts';
import type { Habits } from '../../../src/input/reading.ts';
import { stageNamed } from '../../../src/language/old/progress-said.ts';
import { readMoney, type ToldMoney } from '../../../src/language/old/spent.ts';
import type { Tally } from '../../../src/project/needs.ts';
import type { Project } from '../../../src/project/project.ts';
import { currencyOf, LIMITS } from '../../../src/project/project-limits.ts';
import { type SpendSummary, summarise } from '../../../src/project/spend-summary.ts';
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
} from '../../../src/project/spending.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { NEXT, noSuchPlace, tooMany } from '../../../src/text/project-text.ts';
import { SPEND, SPEND_PROBLEMS } from '../../../src/text/shopping-text.ts';
import { cents } from '../../../src/units/length.ts';
import { changeHere, projectHere } from './at-desk.ts';
import { removeActions, TAKE_BACK } from './reply.ts';
import { listOf, talliesOf } from './shopping-lines.ts';
import { sayStage, sharesSaid, spendBlocks } from './spend-say.ts';

export interface SpendAsk {
  readonly do: string;
}

/** Result data of kind `spend`: whole cents of the asker's currency. */
interface SpendResult extends Result, SpendSummary {
  readonly kind: 'spend';
}

const TOOLS =
  /(?<![a-z])(?:saws?|drills?|nailers?|knives|knife|hammer|tools?|rent(?:al|ed)?|hire[d]?|vacuum|meter|pads|gloves|bar|scraper|mixer)(?![a-z])/i;
/** What the old floor goes away in. */
const HAULED =
  /(?<![a-z])(?:dumpsters?|skips?|roll-?offs?|containers?|junk|haul(?:ing|er|age)?|dump fees?|landfill|disposal)(?![a-z])/i;
const LONGEST_WHAT = 200;

export async function answerSpend(ask: SpendAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const notes: string[] = [];
  const told = readMoney(ask.do, { option: 'do', habits: context.habits, note: (line) => notes.push(line) });
  if (!told) return { problems: [SPEND_PROBLEMS.unread(ask.do)] };
  const listed = await listOf(project, context);
  const tallies = talliesOf(listed, project);
  if (told.kind === 'show') return replyOf(project, tallies, '', notes, context);
  const { entries } = project.spend;
  if (told.kind === 'remove' && entries[told.place - 1] === undefined) {
    return {
      problems: [noSuchPlace(ask.do, entries.length, entries.length > 0 ? `remove ${entries.length}` : 'list')],
    };
  }
  if ((told.kind === 'spent' || told.kind === 'refund') && entries.length >= MOST_ENTRIES) {
    return { problems: [tooMany('entries', MOST_ENTRIES, 'project spend remove 1')] };
  }
  const made = madeOf(told, tallies, context);
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

function madeOf(told: Exclude<ToldMoney, { kind: 'show' }>, tallies: readonly Tally[], context: Context): MadeSpend {
  const { habits } = context;
  if (told.kind === 'budget') {
    const { price } = told;
    return {
      said: () => (price ? SPEND.budgetSet(sayMoney(price.cents, price.currency, habits)) : SPEND.budgetGone),
      change: (spend) => setBudget(spend, price && { cents: price.cents, currency: price.currency }),
      assumed: [],
    };
  }
  if (told.kind === 'remove') {
    return {
      said: ({ entries }) => SPEND.removed(entries[told.place - 1]?.what ?? String(told.place)),
      change: (spend) => removeEntry(spend, told.place - 1),
      assumed: [],
    };
  }
  if (told.kind === 'cover') return coverOf(told, habits);
  const { price, payer = 'self' } = told;
  const stage = stageOf(told.what, tallies);
  const what = told.what.slice(0, LONGEST_WHAT);
  const amount = sayMoney(price.cents, price.currency, habits);
  const say = told.kind === 'refund' ? SPEND.refunded : SPEND.added;
  const entry = {
    what: what === '' ? SPEND.untold : what,
    cents: told.kind === 'refund' ? -price.cents : price.cents,
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

function coverOf({ payer, of }: ToldMoney & { readonly kind: 'cover' }, habits: Habits): MadeSpend {
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
      ? sayMoney(of.price.cents, of.price.currency, habits)
      : 'part' in of
        ? `${sayNumber(of.part / 100, habits)} %`
        : of.stages.map((stage) => sayStage(stage).toLowerCase()).join(', ');
  return { said: () => SPEND.cover(who, what), change: (spend) => covers.reduce(addCover, spend), assumed: [] };
}

/** The stage that something is for: named, or that of the thing of the list it names; tools and the rest apart. */
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
  const { habits } = context;
  const { budget, entries } = project.spend;
  const amounts = [
    ...entries,
    ...project.shopping.bought.flatMap(({ cost }) => cost ?? []),
    ...tallies.flatMap(({ price }) => price ?? []),
  ];
  const currency = budget?.currency ?? currencyOf(amounts, habits.currency);
  const summary = summarise(tallies, project.shopping, project.spend, currency);
  const money = (amount: number): string => sayMoney(cents(amount), currency, habits);
  const line = SPEND.headline(
    money(summary.spent),
    summary.left > 0 ? money(summary.expected) : undefined,
    summary.budget === undefined ? undefined : money(summary.budget),
    summary.shares && sharesSaid(summary.shares, money),
  );
  const data: SpendResult = { kind: 'spend', ...summary };
  return {
    headline: [said, line].filter((one) => one !== '').join(' '),
    blocks: spendBlocks(project, summary, currency, habits),
    assumed: [...context.assumed, ...notes],
    cautions: [],
    sources: [],
    actions: [
      ...(said === '' ? [] : [TAKE_BACK]),
      ...(summary.left > 0 ? [{ label: NEXT.shopping, ask: 'project shopping' }] : []),
      ...removeActions(entries.length, 'spend', SPEND.remove),
    ],
    audience: 'asker',
    data,
  };
}
