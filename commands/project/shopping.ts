/** `project shopping`: everything to buy for the job, what's been bought, and what can go back. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome, type Problems } from '../../src/chat/command.ts';
import { sayMoney } from '../../src/input/format.ts';
import { choice, text } from '../../src/input/options.ts';
import { type ParsedPurchase, readPurchases, thingsNamed } from '../../src/input/parse-purchases.ts';
import { type Preferences, read } from '../../src/input/reading.ts';
import type { Tally } from '../../src/project/needs.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import {
  type Bought,
  buy,
  giveBack,
  lastTick,
  lotsOf,
  MOST_BOUGHT,
  open,
  type Shopping,
  unbuyAll,
  untick,
} from '../../src/project/purchases.ts';
import { type Caution, type Problem, type Result, reply } from '../../src/reply/reply.ts';
import { tooMany } from '../../src/text/project-text.ts';
import { mixedLots, SHOPPING, SHOPPING_PROBLEMS, WHOLE_LIST } from '../../src/text/shopping-text.ts';
import { cents, roundUp } from '../../src/units/length.ts';
import { changeHere, projectHere, TAKE_BACK } from './project-command.ts';
import { type SavedElse, savedElse, savedToday } from './saved-today.ts';
import { costsOf, type Grouping, listActions, listBlocks, openBlocks, sayAmount, typeable } from './shopping-list.ts';
import { type Listed, listOf, talliesOf } from './shopping-needs.ts';

// The fix in a Problem is for one purchase alone; the caller puts it back into the whole line.

/** `change` is pure. */
interface Tick {
  readonly said: string;
  readonly assumed?: string;
  change(shopping: Shopping): Shopping;
}

type Ticks = { readonly ticks: readonly Tick[] } | { readonly problem: Problem };

interface TickedList {
  readonly shopping: Shopping;
  readonly preferences: Preferences;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** One purchase can mean several things: “all paint” is everything left with that name. */
function ticksOf(given: ParsedPurchase, tallies: readonly Tally[], list: TickedList): Ticks {
  const { shopping, preferences, at } = list;
  const things = thingsMeant(given, tallies);
  if ('problem' in things) return things;
  const ticks: Tick[] = [];
  for (const thing of things.things) {
    const made = given.action === 'untick' ? untickOf(given, thing, shopping) : tickOf(given, thing, preferences, at);
    if ('problem' in made) return made;
    ticks.push(made);
  }
  return { ticks };
}

/** As in “everything but the paint”. */
const EXCEPT = /^(?:but|except|besides|without|excluding)$/;

function thingsMeant(
  { action, amount, words, text }: ParsedPurchase,
  tallies: readonly Tally[],
): { readonly things: readonly Tally[] } | { readonly problem: Problem } {
  const listed = action === 'buy' ? tallies : tallies.filter(({ bought }) => bought > 0);
  if (action !== 'buy' && listed.length === 0) return { problem: SHOPPING_PROBLEMS.noneBought(text) };
  const left = listed.filter((one) => one.left > 0);
  if (words.length === 0 && amount.all && action === 'buy' && left.length > 0) return { things: left };
  const [besides, ...others] = words;
  if (amount.all && action === 'buy' && besides !== undefined && EXCEPT.test(besides)) {
    const without = thingsNamed(others, left);
    const rest = left.filter((one) => !without.includes(one));
    if (others.length > 0 && without.length > 0 && rest.length > 0) return { things: rest };
  }
  const named = words.length === 0 ? listed : thingsNamed(words, listed);
  const labels = (named.length > 0 ? named : listed).map(({ label }) => label);
  const [first] = named.length > 0 ? named : left.length > 0 ? left : listed;
  const figure = amount.figure === undefined ? 'all' : String(amount.figure);
  const fix = first ? `${figure} ${typeable(first.label)}` : 'everything';
  if (named.length === 0) return { problem: SHOPPING_PROBLEMS.notListed(text, labels, fix) };
  const wanted = action === 'buy' ? named.filter((one) => one.left > 0) : named;
  if (named.length === 1) return { things: named };
  if (amount.all && words.length > 0) return { things: wanted.length > 0 ? wanted : named };
  if (wanted.length === 1) return { things: wanted };
  return { problem: SHOPPING_PROBLEMS.which(text, labels, first ? `${text} ${typeable(first.label)}` : fix) };
}

/** Only ticks can be undone this way; purchases with a price or a lot stay. */
function untickOf(
  { text }: ParsedPurchase,
  { item, label, bought }: Tally,
  shopping: Shopping,
): Tick | { readonly problem: Problem } {
  if (bought === 0) return { problem: SHOPPING_PROBLEMS.notBought(text, label) };
  const last = lastTick(shopping, item);
  if (!last) return { problem: SHOPPING_PROBLEMS.noTick(text, label, `not bought ${typeable(label)}`) };
  return { said: SHOPPING.unticked(label), change: (now) => untick(now, last) };
}

function tickOf(
  given: ParsedPurchase,
  thing: Tally,
  preferences: Preferences,
  at: number,
): Tick | { readonly problem: Problem } {
  const { item, label } = thing;
  if (given.action === 'unbuy')
    return { said: SHOPPING.unbought(label), change: (shopping) => unbuyAll(shopping, item) };
  if (given.action !== 'buy' && thing.bought === 0) return { problem: SHOPPING_PROBLEMS.notBought(given.text, label) };
  const much = muchOf(given, thing);
  if ('problem' in much) return much;
  const said = sayAmount(thing, much.packages ?? much.amount, preferences);
  if (given.action === 'open') {
    return { said: SHOPPING.opened(said, label), change: (shopping) => open(shopping, item, much.packages ?? 0) };
  }
  if (given.action === 'return') {
    // They can't return more than they bought.
    const all = thing.package ? Math.floor(thing.bought / thing.package.size) : thing.bought;
    const back = much.amount > thing.bought ? sayAmount(thing, all, preferences) : said;
    return { said: SHOPPING.returned(back, label), change: (shopping) => giveBack(shopping, item, much.amount) };
  }
  const paid = paidOf(given, thing, much, preferences);
  const bought: Bought = {
    item,
    label,
    stage: thing.stage,
    unit: thing.unit,
    amount: much.amount,
    ...(thing.package && much.packages && { packages: { count: much.packages, ...thing.package } }),
    ...(paid.cost && { cost: paid.cost }),
    ...(given.lot !== undefined && { lot: given.lot }),
    ...(given.payer && { payer: given.payer }),
    at,
  };
  return {
    said: SHOPPING.bought(said, label),
    ...(paid.assumed !== undefined && { assumed: paid.assumed }),
    change: (shopping) => buy(shopping, bought),
  };
}

interface Much {
  /** In the unit of the need. */
  readonly amount: number;
  readonly packages?: number;
}

/** Packages or square feet; no home needs more, so it's a typo. */
const MOST_AT_ONCE = 100_000;

/** Words for single things that are sold by the package. */
const PIECES = /^(?:planks?|boards?|screws?|nails?|pieces?)$/;

function muchOf({ action, amount, words, text }: ParsedPurchase, thing: Tally): Much | { readonly problem: Problem } {
  const { package: sold, unit, left, bought, label } = thing;
  const all = `all ${typeable(label)}`;
  if (amount.figure === undefined) {
    if (action !== 'buy') return { amount: bought, ...(sold && { packages: roundUp(bought / sold.size) }) };
    if (left === 0) return { problem: SHOPPING_PROBLEMS.bought(text, label, `1 ${typeable(label)}`) };
    if (!sold) return { amount: left };
    return { amount: left * sold.size, packages: left };
  }
  if (amount.figure > MOST_AT_ONCE) return { problem: SHOPPING_PROBLEMS.tooMuch(text, MOST_AT_ONCE, all) };
  if (amount.unit !== undefined) {
    if (amount.unit !== unit) return { problem: SHOPPING_PROBLEMS.measure(text, label, all) };
    return whole(amount.figure * (amount.each ?? 1), sold?.size);
  }
  if (!sold) {
    return unit === 'count' ? { amount: amount.figure } : { problem: SHOPPING_PROBLEMS.measure(text, label, all) };
  }
  if (
    sold.size !== 1 &&
    unit === 'count' &&
    words.some((word) => PIECES.test(word)) &&
    !namesPackage(words, sold.label)
  ) {
    return whole(amount.figure, sold.size);
  }
  if (!Number.isInteger(amount.figure)) return { problem: SHOPPING_PROBLEMS.whole(text, all) };
  return { amount: amount.figure * sold.size, packages: amount.figure };
}

function whole(amount: number, size: number | undefined): Much {
  const packages = size === undefined ? 0 : Math.round(amount / size);
  const even = size !== undefined && packages > 0 && Math.abs(packages * size - amount) < 1e-6 * amount;
  return { amount, ...(even && { packages }) };
}

function namesPackage(words: readonly string[], label: string): boolean {
  return words.some(
    (word) => /^(?:cartons?|box|boxes|cases?|packs?)$/.test(word) || label.startsWith(word.replace(/s$/, '')),
  );
}

interface Paid {
  readonly cost?: { readonly cents: number; readonly currency: string };
  readonly assumed?: string;
}

/** If it's unclear whether the price is for one or for all, it takes whichever is closer to the known price. */
function paidOf({ price, priceOf }: ParsedPurchase, thing: Tally, much: Much, preferences: Preferences): Paid {
  if (!price) return {};
  const count = much.packages ?? (thing.unit === 'count' && !thing.package ? much.amount : 1);
  const said = sayMoney(price.cents, price.currency, preferences);
  const known = thing.price?.cents;
  const near = (of: number): number => Math.abs(Math.log(of / (known ?? of)));
  const each =
    priceOf === undefined ? known === undefined || near(price.cents) <= near(price.cents / count) : priceOf === 'each';
  const given = priceOf !== undefined || count === 1;
  const cost = { cents: Math.round(each ? price.cents * count : price.cents), currency: price.currency };
  return { cost, ...(!given && { assumed: (each ? SHOPPING.each : SHOPPING.total)(said, thing.label) }) };
}

interface ShoppingAsk {
  readonly do: string;
  readonly by: Grouping;
}

/** Amounts in the unit of the need, money in cents with tax. */
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

/** Commands whose needs go on the list. */
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

/** What they may say to see the list itself. */
const LIST =
  /^(?:the )?(?:list|show(?: list)?|what(?:'s|’s| is) left(?: to buy)?|left(?: to buy)?|all|everything)?(?: ?by (?:aisles?|stages?))?$/i;

/** `handedOn`: for readers other than the user, without notes on saved answers and without what to type. */
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
    const saved = handedOn || (await context.access?.share()) ? [] : await savedToday(project, context, ON_LISTS);
    const shown = handedOn ? untyped(listed) : listed;
    return replyOf(project, shown, by, context, [], savedElse(saved));
  }
  const given = readPurchases(ask.do, { option: 'do', preferences: context.preferences, note: () => undefined });
  if (!given || given.length === 0) return { problems: [SHOPPING_PROBLEMS.unread(ask.do)] };
  if (talliesOf(listed, project).length === 0)
    return { problems: [SHOPPING_PROBLEMS.nothingListed(ask.do, (await context.access?.last()) !== undefined)] };
  const made = ticked(given, project, listed, ask.do, context);
  if ('problems' in made) return made;
  // Somebody else may have bought some of it in the meantime, so this uses the project as it is at that moment.
  const done = await changeHere<Ticked>(context, 'tick', (now) => {
    const result = ticked(given, now, listed, ask.do, context);
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

/** What isn't worked out yet, for readers who can't type it in. */
function untyped(listed: Listed): Listed {
  const { notGiven, unread } = listed;
  return { ...listed, notGiven: [], unread: [...notGiven.map(({ what }) => what), ...unread] };
}

type Ticked = { readonly ticks: readonly Tick[] } | Problems;

function ticked(
  given: readonly ParsedPurchase[],
  project: Project,
  listed: Listed,
  line: string,
  { preferences, now }: Context,
): Ticked {
  const tallies = talliesOf(listed, project);
  const ticks: Tick[] = [];
  for (const one of given) {
    const made = ticksOf(one, tallies, { shopping: project.shopping, preferences, at: now() });
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
  const { preferences } = context;
  const tallies = talliesOf(listed, project);
  const { currency, left, unpriced, paid, things } = costsOf(tallies, project.shopping, preferences);
  const cost = left > 0 ? sayMoney(cents(left), currency, preferences) : undefined;
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
  return reply({
    headline: [...ticks.map(({ said }) => said), list].join(' '),
    lines: [],
    ...(ticks.length === 0 && { opens: 'list' }),
    blocks: [...listBlocks(tallies, project.shopping, by, preferences), ...openBlocks(listed)],
    assumed: [
      ...(saved ? [saved.line] : []),
      ...context.assumed,
      ...ticks.flatMap(({ assumed }) => (assumed === undefined ? [] : [assumed])),
    ],
    cautions: [...lotCautions(project), ...listed.cautions],
    actions: [...(ticks.length > 0 ? [TAKE_BACK] : []), ...listActions(tallies, by), ...(saved?.actions ?? [])],
    data,
  });
}

/** The fix becomes the whole line with this purchase corrected. */
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

export default defineCommand({
  group: 'project',
  name: 'shopping',
  summary: 'Everything to buy for the job; tick off what you bought, opened or returned',
  phrases: [
    'whats my shopping list',
    'what do i need to buy',
    'list everything to buy for the job',
    'show shopping list',
    "what's left to get at the store",
    'shopping list for bedroom and hall',
    'got the underlayment, check it off',
    'mark caulk as bought',
    'what should i pick up today',
    'what materials do i still need',
    'going to the store what do i need',
    'make a list of everything i need to buy',
    'buy list please',
    'tick off 12 boxes of plank',
    'what else do i need besides the planks',
    'supply list for the floor and trim',
    'add tape to my shopping list',
    'full materials list',
    'things to buy for laying a floor',
    'remaining items to purchase',
    'shopping list',
    "at the store now, what's left on my list",
    'show me everything to buy for bedroom and hall',
    'got the underlayment, tick it off',
    'cross off the caulk and the nails',
    'what materials am i still missing',
    'add painters tape to the list',
    'buy list for this weekend only',
    'put two tubes of adhesive on my shopping list',
    'picked up all 14 boxes of plank today, mark them bought',
    'how much more stuff do i have to get',
    'list for the store please',
    'what do i have to pick up before saturday when my brother comes',
    'materials list whole project',
    'take the trowel off, i already have one',
    'is leveler on the list?',
    "everything i need, with prices if you've got them",
    'what should i get on my way home from work',
    'bought the transitions, uncheck... i mean check them',
    'shopping',
    'remaining purchases',
    'send me the list of what to buy, sorted by room',
    'need a supply list for the trim stage',
    "i'm in the car, what was i supposed to get",
    'what else besides planks am i buying',
    'screws are bought, 2 boxes',
    'add knee pads and a pull bar',
    "let me see what i've bought and what i haven't",
    'how many things are left to buy',
    'got half of it today, six boxes and the pad',
    'what am i out of',
    "the merchants closes at five, what's on the list",
    'materials still needed for downstairs',
    "remove quarter round from my buy list we're not doing it",
    'list stuff to order online versus pick up',
    'groceries for the floor lol, show me',
    'check off reducer strips',
    'full shopping list with quantities',
    'what should i buy first',
  ],
  options: z.object({
    do: text(
      {
        summary: 'list, or what you bought: “10 cartons at $32.50 lot B7”; opened, returned',
        example: 'bought 10 cartons at $32.50 lot B7',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
    by: choice(['stage', 'aisle'], {
      summary: 'Grouped by stage of the job or by aisle of the store',
      standard: 'stage',
    }),
  }),
  examples: [
    {
      ask: 'project shopping',
      headline: '5 things left to buy: $1,415.82 for those with a price, 4 without.',
    },
    {
      ask: 'project shopping bought 4 cartons at $62.50 lot B7',
      headline:
        'Bought: Planks 7" × 48", 4 cartons of 10. 5 things left to buy: $1,146.14 for those with a price, 4 without.',
    },
  ],
  run: (options, context) => answerShopping(options, context),
});
