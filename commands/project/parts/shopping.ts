/** From what is told of shopping to the list: shown, or ticked off first. */

import type { Context, Outcome, Problems } from '../../../src/chat/command.ts';
import { sayMoney } from '../../../src/input/format.ts';
import { readPurchases, type ToldPurchase } from '../../../src/language/old/bought.ts';
import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import { lotsOf, MOST_BOUGHT } from '../../../src/project/purchases.ts';
import type { Caution, Problem, Result } from '../../../src/reply/reply.ts';
import { tooMany } from '../../../src/text/project-text.ts';
import { mixedLots, SHOPPING, SHOPPING_PROBLEMS, WHOLE_LIST } from '../../../src/text/shopping-text.ts';
import { cents } from '../../../src/units/length.ts';
import { changeHere, projectHere } from './at-desk.ts';
import { TAKE_BACK } from './reply.ts';
import { type SavedElse, savedElse, savedToday } from './saved-today.ts';
import { type Listed, listOf, talliesOf } from './shopping-lines.ts';
import { costsOf, type Grouping, listActions, listBlocks, openBlocks } from './shopping-say.ts';
import { type Tick, ticksOf } from './shopping-tick.ts';

export interface ShoppingAsk {
  readonly do: string;
  readonly by: Grouping;
}

/** Result data of kind `shopping`: amounts in the unit of the need, money in cents, tax included. */
interface ShoppingResult extends Result {
  readonly kind: 'shopping';
  readonly lines: readonly {
    readonly item: string;
    readonly label: string;
    readonly stage: string;
    readonly unit: string;
    readonly amount: number;
    readonly count?: number;
    readonly bought: number;
    readonly left: number;
    readonly back: number;
  }[];
  readonly leftCents: number;
  readonly paidCents: number;
}

/** Commands whose answers are bought. */
const ON_LISTS = [
  'floor planks',
  'prep tearout',
  'prep squeaks',
  'prep patch',
  'prep level',
  'trim list',
  'trim reset',
  'trim edges',
  'trim finish',
];

/** Ways to ask for the list itself. */
const LIST =
  /^(?:the )?(?:list|show(?: list)?|what(?:'s|’s| is) left(?: to buy)?|left(?: to buy)?|all|everything)?(?: ?by (?:aisles?|stages?))?$/i;

/** `handedOn`: to be read by others than the asker, who saved none of the answers. */
export async function answerShopping(
  ask: ShoppingAsk,
  context: Context,
  { handedOn = false }: { readonly handedOn?: boolean } = {},
): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const byAisle = /(?<![a-z])aisles?(?![a-z])/i.test(ask.do);
  const by = byAisle ? 'aisle' : ask.by;
  const listed = await listOf(project, context);
  if (LIST.test(ask.do)) {
    const saved = handedOn || (await context.desk?.share()) ? [] : await savedToday(project, context, ON_LISTS);
    return replyOf(project, listed, by, context, [], savedElse(saved));
  }
  const told = readPurchases(ask.do, { option: 'do', habits: context.habits, note: () => undefined });
  if (!told || told.length === 0) return { problems: [SHOPPING_PROBLEMS.unread(ask.do)] };
  if (talliesOf(listed, project).length === 0)
    return { problems: [SHOPPING_PROBLEMS.nothingListed(ask.do, (await context.desk?.last()) !== undefined)] };
  const made = ticked(told, project, listed, ask.do, context);
  if ('problems' in made) return made;
  // Another may have bought some of it meanwhile: what is left is judged by the project as it is then.
  const done = await changeHere<Ticked>(context, 'tick', (now) => {
    const result = ticked(told, now, listed, ask.do, context);
    if ('problems' in result) return { result };
    const said = result.ticks.map((tick) => tick.said).join(' ');
    return {
      parts: { shopping: result.ticks.reduce((before, tick) => tick.change(before), now.shopping) },
      said: SHOPPING.said(said).slice(0, LIMITS.note),
      result,
    };
  });
  if ('problems' in done) return done;
  if ('problems' in done.result) return done.result;
  return replyOf(done.project, listed, by, context, done.result.ticks);
}

type Ticked = { readonly ticks: readonly Tick[] } | Problems;

/** What all that is told comes to, by what of the list is left. */
function ticked(
  told: readonly ToldPurchase[],
  project: Project,
  listed: Listed,
  line: string,
  { habits, now }: Context,
): Ticked {
  const tallies = talliesOf(listed, project);
  const ticks: Tick[] = [];
  for (const one of told) {
    const made = ticksOf(one, tallies, { shopping: project.shopping, habits, at: now() });
    if ('problem' in made) return { problems: [mended(made.problem, one.text, line)] };
    ticks.push(...made.ticks);
  }
  if (project.shopping.bought.length + ticks.length > MOST_BOUGHT) {
    return { problems: [tooMany('purchases', MOST_BOUGHT, 'project shopping')] };
  }
  return { ticks };
}

function replyOf(
  project: Project,
  listed: Listed,
  by: Grouping,
  context: Context,
  ticks: readonly Tick[],
  saved: SavedElse | undefined = undefined,
): Outcome {
  const { habits } = context;
  const tallies = talliesOf(listed, project);
  const { currency, left, unpriced, paid, things } = costsOf(tallies, project.shopping, habits);
  const cost = left > 0 ? sayMoney(cents(left), currency, habits) : undefined;
  const list = tallies.length === 0 ? SHOPPING.nothing : SHOPPING.headline(things, cost, unpriced);
  const data: ShoppingResult = {
    kind: 'shopping',
    lines: tallies.map(({ item, label, stage, unit, amount, count, bought, left: more, back }) => ({
      item,
      label,
      stage,
      unit,
      amount,
      ...(count !== undefined && { count }),
      bought,
      left: more,
      back,
    })),
    leftCents: left,
    paidCents: paid,
  };
  return {
    headline: [...ticks.map(({ said }) => said), list].join(' '),
    blocks: [...listBlocks(tallies, project.shopping, by, habits), ...openBlocks(listed)],
    assumed: [
      ...(saved ? [saved.line] : []),
      ...context.assumed,
      ...ticks.flatMap(({ assumed }) => (assumed === undefined ? [] : [assumed])),
    ],
    cautions: [...lotCautions(project), ...listed.cautions],
    sources: [],
    actions: [...(ticks.length > 0 ? [TAKE_BACK] : []), ...listActions(tallies, by), ...(saved?.actions ?? [])],
    audience: 'asker',
    data,
  };
}

/** A problem of one purchase, its fix the whole line with that purchase mended. */
function mended(problem: Problem, purchase: string, line: string): Problem {
  const { fix } = problem;
  return fix === undefined || fix === WHOLE_LIST ? problem : { ...problem, fix: line.replace(purchase, () => fix) };
}

function lotCautions({ shopping }: Project): readonly Caution[] {
  const items = new Map(shopping.bought.map(({ item, label }) => [item, label]));
  return [...items].flatMap(([item, label]) => {
    const lots = lotsOf(shopping, item);
    return lots.length > 1 ? [{ topic: `mixed-lots ${item}`, text: mixedLots(label, lots) }] : [];
  });
}
