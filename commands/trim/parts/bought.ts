/** What a plan of sticks comes to in words: the headline, what to buy, how sure it is, and the cutting list. */

import { type Saying, sayCut, sayLength, sayMoney } from '../../../src/input/format.ts';
import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { TRIM, trimHeadline } from '../../../src/text/trim-text.ts';
import { type StickPlan, type StickTask, sawMarks } from '../../../src/trim/sticks.ts';
import { type Cents, cents, ticks } from '../../../src/units/length.ts';
import { lengthUnit } from './pieces.ts';

/** How often each stock is used, by its place in the list. */
function uses({ sticks }: StickPlan, task: StickTask): readonly { readonly stock: number; readonly count: number }[] {
  return task.stock
    .map((_, stock) => ({ stock, count: sticks.filter((stick) => stick.stock === stock).length }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => (task.stock[b.stock]?.length ?? 0) - (task.stock[a.stock]?.length ?? 0));
}

/** Money in words where prices were told. */
export function sayCost(amount: number, { currency }: ToldStock, saying: Saying): string | undefined {
  return currency === undefined ? undefined : sayMoney(cents(amount), currency, saying);
}

export function boughtHeadline(plan: StickPlan, task: StickTask, told: ToldStock, saying: Saying): string {
  const bought = uses(plan, task).filter(({ stock }) => task.stock[stock]?.have === undefined);
  return trimHeadline(
    bought.map(({ stock, count }) => [count, sayLength(ticks(task.stock[stock]?.length ?? 0), saying)] as const),
    task.pieces.length,
    sayCost(plan.cents, told, saying),
  );
}

/** The sticks of a plan in words: how many of which length. */
export function sayBought(plan: StickPlan, task: StickTask, told: ToldStock, saying: Saying): string {
  return uses(plan, task)
    .map(({ stock, count }) => {
      const { length = 0, cents: price = 0, have } = task.stock[stock] ?? {};
      const each = have === undefined ? sayCost(price, told, saying) : undefined;
      return TRIM.each(count, sayLength(ticks(length), saying), each);
    })
    .join('; ');
}

/** Sticks, cost, leftovers and how sure; `facts` come between. */
export function boughtFacts(
  plan: StickPlan,
  task: StickTask,
  told: ToldStock,
  facts: readonly Fact[],
  saying: Saying,
): Block {
  const all = uses(plan, task);
  const price = (stock: number): string | undefined => sayCost(task.stock[stock]?.cents ?? 0, told, saying);
  const say = ({ stock, count }: (typeof all)[number], priced: boolean): string =>
    TRIM.each(count, sayLength(ticks(task.stock[stock]?.length ?? 0), saying), priced ? price(stock) : undefined);
  const bought = all.filter(({ stock }) => task.stock[stock]?.have === undefined);
  const had = all.filter(({ stock }) => task.stock[stock]?.have !== undefined);
  const cost = sayCost(plan.cents, told, saying);
  const over: Cents = cents(plan.cents - plan.bound);
  const priced = told.currency !== undefined;
  const alike = new Set(task.pieces.map(({ kerf }) => kerf)).size <= 1;
  const sure = plan.proven
    ? `${TRIM.proved(priced)}${alike ? '' : TRIM.widest}`
    : TRIM.atMost(sayCost(over, told, saying) ?? sayLength(ticks(over * lengthUnit(told)), saying));
  const left = plan.sticks.reduce((sum, { leftover }) => sum + leftover, 0);
  return {
    kind: 'facts',
    title: TRIM.title,
    facts: [
      ...(bought.length > 0 ? [{ label: TRIM.sticks, value: bought.map((one) => say(one, true)).join('; ') }] : []),
      ...(had.length > 0 ? [{ label: TRIM.had, value: had.map((one) => say(one, false)).join('; ') }] : []),
      ...(cost === undefined ? [] : [{ label: TRIM.cost, value: cost }]),
      ...facts,
      { label: TRIM.left, value: sayLength(ticks(left), saying) },
      { label: TRIM.sure, value: sure },
    ],
  };
}

/** Each stick with its saw marks, one number after another. */
export function cuttingTable(
  { sticks }: StickPlan,
  task: StickTask,
  saying: Saying,
  title: string = TRIM.cutTitle,
): Block {
  const byId = new Map(task.pieces.map((piece) => [piece.id, piece]));
  const rows = sticks.map((stick, i) => [
    `${i + 1} · ${sayLength(ticks(task.stock[stick.stock]?.length ?? 0), saying)}`,
    sawMarks(stick, byId, task.endTrim)
      .map(({ id, to }) => TRIM.mark(sayCut(to, saying), id))
      .join(', '),
    sayCut(ticks(stick.leftover), saying),
  ]);
  return { kind: 'table', title, columns: TRIM.cutColumns, rows };
}
