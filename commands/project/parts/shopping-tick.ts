/** Purchases told, matched to the list: what changes, in words, or the Problems where it is not plain: their fix stands for the purchase alone. */

import { sayMoney } from '../../../src/input/format.ts';
import { thingsNamed } from '../../../src/input/item-named.ts';
import type { Habits } from '../../../src/input/reading.ts';
import type { ToldPurchase } from '../../../src/language/old/bought.ts';
import type { Tally } from '../../../src/project/needs.ts';
import {
  type Bought,
  buy,
  giveBack,
  lastTick,
  open,
  type Shopping,
  unbuyAll,
  untick,
} from '../../../src/project/purchases.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { SHOPPING, SHOPPING_PROBLEMS } from '../../../src/text/shopping-text.ts';
import { roundUp } from '../../../src/units/length.ts';
import { sayAmount, typeable } from './shopping-say.ts';

/** One change of what is bought, pure, and how it is said. */
export interface Tick {
  readonly said: string;
  readonly assumed?: string;
  change(shopping: Shopping): Shopping;
}

type Ticks = { readonly ticks: readonly Tick[] } | { readonly problem: Problem };

/** What is bought by now, and when and how the telling is told. */
interface TickedList {
  readonly shopping: Shopping;
  readonly habits: Habits;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** All that one purchase told comes to: for “all paint” everything of that name that is left. */
export function ticksOf(told: ToldPurchase, tallies: readonly Tally[], list: TickedList): Ticks {
  const { shopping, habits, at } = list;
  const things = thingsMeant(told, tallies);
  if ('problem' in things) return things;
  const ticks: Tick[] = [];
  for (const thing of things.things) {
    const made = told.deed === 'untick' ? untickOf(told, thing, shopping) : tickOf(told, thing, habits, at);
    if ('problem' in made) return made;
    ticks.push(made);
  }
  return { ticks };
}

/** Everything but the paint. */
const EXCEPT = /^(?:but|except|besides|without|excluding)$/;

function thingsMeant(
  { deed, amount, words, text }: ToldPurchase,
  tallies: readonly Tally[],
): { readonly things: readonly Tally[] } | { readonly problem: Problem } {
  const listed = deed === 'buy' ? tallies : tallies.filter(({ bought }) => bought > 0);
  if (deed !== 'buy' && listed.length === 0) return { problem: SHOPPING_PROBLEMS.noneBought(text) };
  const left = listed.filter((one) => one.left > 0);
  if (words.length === 0 && amount.all && deed === 'buy' && left.length > 0) return { things: left };
  const [besides, ...others] = words;
  if (amount.all && deed === 'buy' && besides !== undefined && EXCEPT.test(besides)) {
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
  const wanted = deed === 'buy' ? named.filter((one) => one.left > 0) : named;
  if (named.length === 1) return { things: named };
  if (amount.all && words.length > 0) return { things: wanted.length > 0 ? wanted : named };
  if (wanted.length === 1) return { things: wanted };
  return { problem: SHOPPING_PROBLEMS.which(text, labels, first ? `${text} ${typeable(first.label)}` : fix) };
}

/** A tick is taken back alone: what was bought with its price or its lot is no tick, and stays. */
function untickOf(
  { text }: ToldPurchase,
  { item, label, bought }: Tally,
  shopping: Shopping,
): Tick | { readonly problem: Problem } {
  if (bought === 0) return { problem: SHOPPING_PROBLEMS.notBought(text, label) };
  const last = lastTick(shopping, item);
  if (!last) return { problem: SHOPPING_PROBLEMS.noTick(text, label, `not bought ${typeable(label)}`) };
  return { said: SHOPPING.unticked(label), change: (now) => untick(now, last) };
}

function tickOf(told: ToldPurchase, thing: Tally, habits: Habits, at: number): Tick | { readonly problem: Problem } {
  const { item, label } = thing;
  if (told.deed === 'unbuy') return { said: SHOPPING.unbought(label), change: (shopping) => unbuyAll(shopping, item) };
  if (told.deed !== 'buy' && thing.bought === 0) return { problem: SHOPPING_PROBLEMS.notBought(told.text, label) };
  const much = muchOf(told, thing);
  if ('problem' in much) return much;
  const said = sayAmount(thing, much.packages ?? much.amount, habits);
  if (told.deed === 'open') {
    return { said: SHOPPING.opened(said, label), change: (shopping) => open(shopping, item, much.packages ?? 0) };
  }
  if (told.deed === 'return') {
    // More than was bought cannot go back.
    const all = thing.package ? Math.floor(thing.bought / thing.package.size) : thing.bought;
    const back = much.amount > thing.bought ? sayAmount(thing, all, habits) : said;
    return { said: SHOPPING.returned(back, label), change: (shopping) => giveBack(shopping, item, much.amount) };
  }
  const paid = paidOf(told, thing, much, habits);
  const bought: Bought = {
    item,
    label,
    stage: thing.stage,
    unit: thing.unit,
    amount: much.amount,
    ...(thing.package && much.packages && { packages: { count: much.packages, ...thing.package } }),
    ...(paid.cost && { cost: paid.cost }),
    ...(told.lot !== undefined && { lot: told.lot }),
    ...(told.payer && { payer: told.payer }),
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

/** More packages, or square feet, than a home takes: a slip has them. */
const MOST_AT_ONCE = 100_000;

/** Words for one of the things in a package, where a package holds several. */
const PIECES = /^(?:planks?|boards?|screws?|nails?|pieces?)$/;

function muchOf({ deed, amount, words, text }: ToldPurchase, thing: Tally): Much | { readonly problem: Problem } {
  const { package: sold, unit, left, bought, label } = thing;
  const all = `all ${typeable(label)}`;
  if (amount.figure === undefined) {
    if (deed !== 'buy') return { amount: bought, ...(sold && { packages: roundUp(bought / sold.size) }) };
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

/** What was paid for all of it: a price told neither for one nor for all is the nearer to the price known. */
function paidOf({ price, priceOf }: ToldPurchase, thing: Tally, much: Much, habits: Habits): Paid {
  if (!price) return {};
  const count = much.packages ?? (thing.unit === 'count' && !thing.package ? much.amount : 1);
  const said = sayMoney(price.cents, price.currency, habits);
  const known = thing.price?.cents;
  const near = (of: number): number => Math.abs(Math.log(of / (known ?? of)));
  const each =
    priceOf === undefined ? known === undefined || near(price.cents) <= near(price.cents / count) : priceOf === 'each';
  const told = priceOf !== undefined || count === 1;
  const cost = { cents: Math.round(each ? price.cents * count : price.cents), currency: price.currency };
  return { cost, ...(!told && { assumed: (each ? SHOPPING.each : SHOPPING.total)(said, thing.label) }) };
}
