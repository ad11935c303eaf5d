/** A shopping list in words: what's left, in the order of the job or the store, what's bought, and what can go back. */

import { sayArea, sayLength, sayMoney, sayNumber, sayWeight } from '../../src/input/format.ts';
import type { Preferences } from '../../src/input/reading.ts';
import { lineCost, type Tally } from '../../src/project/needs.ts';
import { projectCurrency } from '../../src/project/project-limits.ts';
import type { Shopping } from '../../src/project/purchases.ts';
import { type Need, STAGES } from '../../src/reply/need.ts';
import type { Action, Block, Fact } from '../../src/reply/reply.ts';
import { withSigned } from '../../src/text/sharing-text.ts';
import { AISLES, aisleOf, SHOPPING, STAGE_NAMES } from '../../src/text/shopping-text.ts';
import { cents, ticks } from '../../src/units/length.ts';
import type { Listed } from './shopping-needs.ts';

export type Grouping = 'stage' | 'aisle';

const LITRES_PER_QUART = 3.785411784 / 4;
/** The most choices one list of them can show. */
const MOST_ACTIONS = 20;

/** Whole packages if it comes in packages, otherwise its own unit. */
export function sayAmount(thing: Pick<Tally, 'unit' | 'package'>, amount: number, preferences: Preferences): string {
  if (thing.package)
    return `${sayNumber(amount, preferences)} ${amount === 1 ? thing.package.label : thing.package.labels}`;
  return sayMeasure(thing.unit, amount, preferences);
}

function sayMeasure(unit: Need['quantity']['unit'], amount: number, preferences: Preferences): string {
  if (unit === 'area') return sayArea(BigInt(Math.round(amount)), preferences);
  if (unit === 'length') return sayLength(ticks(Math.round(amount)), preferences);
  if (unit === 'weight') return sayWeight(amount, preferences);
  if (unit === 'count') return sayNumber(amount, preferences);
  if (preferences.units === 'imperial') {
    const quarts = amount / LITRES_PER_QUART;
    return quarts < 0.1 ? `${sayNumber(quarts * 32, preferences, 1)} fl oz` : `${sayNumber(quarts, preferences)} qt`;
  }
  return amount < 1 ? `${sayNumber(amount * 1000, preferences, 0)} ml` : `${sayNumber(amount, preferences)} L`;
}

export function listBlocks(
  tallies: readonly Tally[],
  shopping: Shopping,
  by: Grouping,
  preferences: Preferences,
): readonly Block[] {
  const left = tallies.filter((one) => one.left > 0);
  const groups: readonly (readonly [string, readonly Tally[]])[] =
    by === 'stage'
      ? STAGES.map((stage) => [STAGE_NAMES[stage], left.filter((one) => one.stage === stage)])
      : AISLES.map((aisle) => [aisle, left.filter((one) => aisleOf(one.item) === aisle)]);
  const lists = groups.flatMap(([title, things]): Block[] =>
    things.length === 0
      ? []
      : [{ kind: 'checklist', section: 'list', title, items: things.map((one) => sayLeft(one, preferences)) }],
  );
  return [
    ...lists,
    ...costBlock(tallies, shopping, preferences),
    ...boughtBlock(shopping, preferences),
    ...backBlock(tallies, preferences),
  ];
}

export function sayLeft(one: Tally, preferences: Preferences): string {
  const what = sayAmount(one, one.left, preferences);
  const cost = costOf(one);
  const price = cost === undefined || !one.price ? undefined : sayMoney(cents(cost), one.price.currency, preferences);
  const line = one.bought > 0 ? SHOPPING.more(what, one.label, one.lots, price) : SHOPPING.some(what, one.label, price);
  return SHOPPING.note(line, one.notes);
}

/** In cents with tax. */
function costOf({ left, price, package: sold }: Tally): number | undefined {
  return sold && price ? lineCost({ count: left, price }) : undefined;
}

/** In the user's currency, or the one most of it is in; other currencies don't count in the sums. */
export function costsOf(tallies: readonly Tally[], shopping: Shopping, preferences: Preferences) {
  const left = tallies.filter((one) => one.left > 0);
  const bought = shopping.bought.flatMap(({ cost }) => cost ?? []);
  const currency = projectCurrency([...bought, ...left.flatMap(({ price }) => price ?? [])], preferences.currency);
  const priced = left.filter((one) => one.price?.currency === currency && costOf(one) !== undefined);
  const paid = bought.filter((one) => one.currency === currency).map((one) => one.cents);
  return {
    currency,
    left: priced.reduce((sum, one) => sum + (costOf(one) ?? 0), 0),
    unpriced: left.length - priced.length,
    paid: paid.reduce((sum, one) => sum + one, 0),
    things: left.length,
  };
}

function costBlock(tallies: readonly Tally[], shopping: Shopping, preferences: Preferences): readonly Block[] {
  const { currency, left, paid, unpriced } = costsOf(tallies, shopping, preferences);
  const money = (amount: number): string => sayMoney(cents(amount), currency, preferences);
  const facts: readonly Fact[] = [
    ...(left > 0 ? [{ label: SHOPPING.costLeft, value: money(left) }] : []),
    ...(paid > 0 ? [{ label: SHOPPING.costPaid, value: money(paid) }] : []),
    ...(left > 0 && paid > 0 ? [{ label: SHOPPING.costSum, value: money(left + paid) }] : []),
    ...(unpriced > 0 ? [{ label: SHOPPING.unpriced, value: String(unpriced) }] : []),
  ];
  return left + paid > 0 ? [{ kind: 'facts', section: 'details', title: SHOPPING.costTitle, facts }] : [];
}

function boughtBlock({ bought }: Shopping, preferences: Preferences): readonly Block[] {
  if (bought.length === 0) return [];
  const rows = bought.map(({ label, unit, amount, packages, cost, lot, by }) => [
    withSigned(label, by),
    packages
      ? sayAmount({ unit, package: packages }, packages.count, preferences)
      : sayMeasure(unit, amount, preferences),
    cost ? sayMoney(cents(cost.cents), cost.currency, preferences) : '',
    lot ?? '',
  ]);
  return [{ kind: 'table', section: 'details', title: SHOPPING.boughtTitle, columns: SHOPPING.boughtColumns, rows }];
}

function backBlock(tallies: readonly Tally[], preferences: Preferences): readonly Block[] {
  const items = tallies.flatMap((one) => {
    const { over, back, label, item } = one;
    if (over === 0) return [];
    if (back === 0) return [SHOPPING.overOpened(sayAmount(one, over, preferences), label)];
    const say = item.startsWith('plank') ? SHOPPING.back : SHOPPING.backPlain;
    return [say(sayAmount(one, back, preferences), label)];
  });
  return items.length === 0 ? [] : [{ kind: 'checklist', section: 'list', title: SHOPPING.backTitle, items }];
}

/** What can't be computed yet, and what isn't a job for the user. */
export function openBlocks({ notGiven, unread, refused }: Listed): readonly Block[] {
  const open = [...notGiven.map(SHOPPING.notGiven), ...unread];
  return [
    ...(refused.length > 0
      ? [{ kind: 'checklist', section: 'list', title: SHOPPING.refusedTitle, items: refused } as const]
      : []),
    ...(open.length > 0
      ? [{ kind: 'checklist', section: 'list', title: SHOPPING.notGivenTitle, items: open } as const]
      : []),
  ];
}

/** Buttons to tick off each thing, and one for the other order. */
export function listActions(tallies: readonly Tally[], by: Grouping): readonly Action[] {
  const left = tallies.filter((one) => one.left > 0).slice(0, MOST_ACTIONS);
  const other = by === 'stage' ? 'aisle' : 'stage';
  return [
    ...left.map(({ label }) => ({
      label: SHOPPING.buyAll(label),
      ask: `project shopping bought all ${typeable(label)}`,
      among: SHOPPING.among,
    })),
    ...(left.length > 0
      ? [{ label: other === 'aisle' ? SHOPPING.byAisle : SHOPPING.byStage, ask: `project shopping by: ${other}` }]
      : []),
  ];
}

/** Without the signs that separate two purchases on one line. */
export function typeable(label: string): string {
  return label.replace(/;|,(?=\s)/g, '').replace(/\s+/g, ' ');
}
