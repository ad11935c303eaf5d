/** The answer of `floor compare`. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { drawChoices } from '../../../src/drawing/choices-sheet.ts';
import { PLANK_FIGURES } from '../../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { type Saying, sayMoney, sayNumber } from '../../../src/input/format.ts';
import { largestOf } from '../../../src/layout/direction.ts';
import type { Block, Fact, Reply, Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { COMPARE, counted } from '../../../src/text/floor-text.ts';
import { cents } from '../../../src/units/length.ts';
import { type CompareAsk, firstBy, type Weighed, weigh, weighSettled } from './choices.ts';

/** Lays every plank in the same rooms and sets them side by side: first answers, then what the searches of scattered joints end with. */
export async function* answerCompare(ask: CompareAsk, context: Context): AsyncGenerator<Outcome> {
  const weighed = await weigh(ask, context);
  if ('problems' in weighed) {
    yield weighed;
    return;
  }
  yield replyOf(weighed, ask, context);
  if (weighed.some(({ laid }) => laid.searching))
    yield replyOf(await weighSettled(weighed, ask, context), ask, context);
}

function replyOf(weighed: readonly Weighed[], ask: CompareAsk, context: Context): Reply {
  const saying: Saying = { units: ask.room.units, decimal: context.habits.decimal };
  const others = [...context.told].filter(([option]) => !['room', 'planks', 'pad'].includes(option));
  return {
    headline: headline(weighed, saying),
    blocks: [table(weighed, saying), winners(weighed, saying), picture(weighed, saying)],
    assumed: weighed[0]?.laid.assumed ?? context.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: ask.planks.map(({ name, typed }) => ({
      label: COMPARE.lay(name),
      ask: COMPARE.ask(context.told.get('room') ?? '', typed, others),
    })),
    audience: 'asker',
    data: resultOf(weighed),
  };
}

function total(one: Weighed, saying: Saying): string | undefined {
  const price = one.choice.plank.cartonPrice;
  return price && one.total !== undefined ? sayMoney(cents(one.total), price.currency, saying) : undefined;
}

/** The cheapest where prices are told in one currency, else the one that wastes least. */
function headline(weighed: readonly Weighed[], saying: Saying): string {
  const [cheapest, ...tied] = firstBy(weighed, comparableTotal(weighed));
  if (cheapest && tied.length === 0) {
    return COMPARE.headline(
      cheapest.choice.name,
      COMPARE.cheapest,
      `${counted(cheapest.laid.purchase.cartons, 'carton')}, ${total(cheapest, saying)}`,
    );
  }
  const [leanest, ...others] = firstBy(weighed, (one) => one.wastePercent);
  if (leanest && others.length === 0) {
    return COMPARE.headline(leanest.choice.name, COMPARE.leanest, `${sayNumber(leanest.wastePercent, saying, 1)} %`);
  }
  return COMPARE.even(weighed.map(({ choice }) => choice.name));
}

/** Totals compare only when each was told, in one currency. */
function comparableTotal(weighed: readonly Weighed[]): (one: Weighed) => number | undefined {
  const currencies = new Set(weighed.map(({ choice }) => choice.plank.cartonPrice?.currency));
  return currencies.size === 1 ? ({ total: sum }) => sum : () => undefined;
}

function table(weighed: readonly Weighed[], saying: Saying): Block {
  const { measures } = COMPARE;
  const line = (label: string, value: (one: Weighed) => string | undefined): readonly string[] => [
    label,
    ...weighed.map((one) => value(one) ?? COMPARE.untold),
  ];
  const rows = [
    line(measures.planks, ({ laid }) => String(laid.plan.planks)),
    line(measures.cartons, ({ laid }) => String(laid.purchase.cartons)),
    line(measures.waste, ({ wastePercent }) => `${sayNumber(wastePercent, saying, 1)} %`),
    line(measures.cost, (one) => total(one, saying)),
    line(measures.pad, (one) => sayPad(one, saying)),
    line(measures.rows, ({ rows: count }) => String(count)),
    line(measures.cuts, ({ cuts }) => String(cuts)),
    line(measures.broken, ({ laid }) => String(laid.plan.broken.filter(({ rule }) => rule !== 'pattern').length)),
    line(measures.light, ({ choice }) => (choice.reflectance === undefined ? undefined : `${choice.reflectance} %`)),
    line(measures.tier, ({ choice }) => choice.tier),
  ].filter(([, ...values]) => values.some((value) => value !== COMPARE.untold));
  return {
    kind: 'table',
    title: COMPARE.title,
    columns: [COMPARE.measure, ...weighed.map(({ choice }) => choice.name)],
    rows,
  };
}

function sayPad({ choice, padCents }: Weighed, saying: Saying): string {
  if (choice.plank.attachedPad === true) return COMPARE.padAttached;
  if (padCents === undefined) return choice.plank.attachedPad === false ? COMPARE.padSeparate : COMPARE.padUnknown;
  return COMPARE.pad(sayMoney(cents(padCents), choice.plank.cartonPrice?.currency ?? 'USD', saying));
}

/** The same wall laid in each plank. */
function picture(weighed: readonly Weighed[], saying: Saying): Block {
  const choices = weighed.map(({ choice, laid }) => ({ name: choice.name, plan: laid.plan }));
  const room = largestOf(weighed.flatMap(({ laid }) => laid.plan.regions)).name;
  return { kind: 'picture', drawing: drawChoices(choices, room, saying) };
}

function winners(weighed: readonly Weighed[], saying: Saying): Block {
  const { best } = COMPARE;
  const facts: Fact[] = [];
  const first = (label: string, figure: (one: Weighed) => number | undefined, say: (one: Weighed) => string): void => {
    const won = firstBy(weighed, figure);
    const [one] = won;
    if (one) facts.push({ label, value: `${won.map(({ choice }) => choice.name).join(', ')} (${say(one)})` });
  };
  first(best.cost, comparableTotal(weighed), (one) => total(one, saying) ?? '');
  first(
    best.waste,
    (one) => one.wastePercent,
    (one) => `${sayNumber(one.wastePercent, saying, 1)} %`,
  );
  first(
    best.planks,
    ({ laid }) => laid.plan.planks,
    ({ laid }) => String(laid.plan.planks),
  );
  first(
    best.rows,
    ({ rows }) => rows,
    ({ rows }) => String(rows),
  );
  first(
    best.cuts,
    ({ cuts }) => cuts,
    ({ cuts }) => String(cuts),
  );
  first(
    best.light,
    ({ choice }) => choice.reflectance && -choice.reflectance,
    ({ choice }) => `${choice.reflectance} %`,
  );
  return { kind: 'facts', title: COMPARE.winners, facts };
}

/** Result data of kind compare: money in cents before tax, the area wall to wall in square ticks. */
export interface CompareResult extends Result {
  readonly kind: 'compare';
  readonly choices: readonly {
    readonly name: string;
    readonly planks: number;
    readonly cartons: number;
    readonly cents?: number;
    readonly laid: number;
    readonly wastePercent: number;
  }[];
}

function resultOf(weighed: readonly Weighed[]): CompareResult {
  const choices = weighed.map(({ choice, laid: { plan, purchase, cost }, area, wastePercent }) => ({
    name: choice.name,
    planks: plan.planks,
    cartons: purchase.cartons,
    ...(cost && { cents: cost.cents }),
    laid: Number(area),
    wastePercent,
  }));
  return { kind: 'compare', choices };
}
