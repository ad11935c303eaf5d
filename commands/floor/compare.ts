/** `floor compare`: lays up to five planks in the same rooms and sets them side by side. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome, type Problems } from '../../src/chat/command.ts';
import { drawChoices } from '../../src/drawing/floor-plans.ts';
import { PLANK_FIGURES } from '../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayMoney, sayNumber } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { readPlank } from '../../src/input/parse-plank.ts';
import { type AreaPrice, readPadPrice } from '../../src/input/parse-price.ts';
import { type ParsedPlank, type Read, type Reading, read, unread } from '../../src/input/reading.ts';
import { countCuts } from '../../src/layout/cutting.ts';
import { largestOf } from '../../src/layout/direction.ts';
import { type Block, type Fact, type Problem, type Reply, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { handedInRows, notCompared } from '../../src/text/floor-problems-text.ts';
import {
  COMPARE,
  choicesMissing,
  counted,
  FLOOR_BRIEF,
  tooManyChoices,
  tooManyTogether,
} from '../../src/text/floor-text.ts';
import { cents, portion } from '../../src/units/length.ts';
import { wallToWall } from './floor-facts.ts';
import { layingOptions, type PlanksAsk, roomOption } from './floor-options.ts';
import { type LaidFloor, layAsk, requestedAreas, settledLayout } from './lay.ts';

/** One of the planks. `reflectance` is a percentage (light reflectance value), `tier` is as given. */
interface ParsedChoice {
  readonly name: string;
  readonly plank: ParsedPlank;
  /** The plank as typed, for a follow-up request about it alone. */
  readonly typed: string;
  readonly reflectance?: number;
  readonly tier?: string;
}

const MOST_CHOICES = 5;

const NAME = /^\s*([\p{L}][\p{L}\d -]{0,23}?)\s*[:=]\s*(.+)$/su;
const REFLECTANCE =
  /(?:,\s*|(?<!\s)\s+)?\b(?:lrv|light reflectance(?: value)?|reflectance)(?:\s*(?:of|is|=))?\s*(\d{1,3})(?:\s*%)?/i;
const TIER =
  /(?:,\s*|(?<!\s)\s+)?\b(?:(budget|low|mid|middle|premium|high)[- ]?(?:tier|range|end)|tier\s*(budget|low|mid|middle|premium|high|\d))\b/i;

function choicesIn(text: string): readonly string[] {
  return text
    .split(/[;|\n]|(?<![^\S\n])\s+vs\.?\s+/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/**
 * Planks separated by `;`, `|`, a newline or “vs”, named `oak: 7 x 48 in, …` or otherwise plank A, plank B. Reports all
 * problems at once.
 */
function readChoices(text: string, reading: Reading): Read<readonly ParsedChoice[]> {
  const parts = choicesIn(text);
  if (parts.length < 2) return unread(choicesMissing(reading.option, text));
  if (parts.length > MOST_CHOICES)
    return unread(tooManyChoices(reading.option, text, MOST_CHOICES, parts.slice(0, MOST_CHOICES).join('; ')));
  const choices: ParsedChoice[] = [];
  const problems: Problem[] = [];
  const mended: (string | undefined)[] = [];
  parts.forEach((part, i) => {
    const named = NAME.exec(part);
    const name = named?.[1]?.trim() ?? `plank ${String.fromCodePoint(65 + i)}`;
    const { rest, reflectance, tier } = extras(named?.[2] ?? part);
    const plank = readPlank(rest, { ...reading, note: (line) => reading.note(`${name}: ${line}`) });
    if (plank.ok)
      choices.push({ name: unique(name, choices), plank: plank.value, typed: rest, ...reflectance, ...tier });
    else problems.push(...plank.problems);
    const fix = plank.ok ? part : plank.problems[0].fix;
    mended.push(plank.ok || fix === undefined ? fix : `${named ? `${name}: ` : ''}${fix}`);
  });
  const fix = mended.includes(undefined) ? undefined : mended.join('; ');
  const [first, ...more] = problems.map((problem) => ({ ...problem, fix }));
  return first ? unread(first, ...more) : read(choices);
}

function extras(text: string): { rest: string; reflectance?: { reflectance: number }; tier?: { tier: string } } {
  const light = REFLECTANCE.exec(text);
  const dark = light ? text.replace(light[0], '') : text;
  const tier = TIER.exec(dark);
  const rest = tier ? dark.replace(tier[0], '') : dark;
  const word = (tier?.[1] ?? tier?.[2])?.toLowerCase();
  return {
    rest: rest.replace(/^[\s,]+|(?<![\s,])[\s,]+$/g, ''),
    ...(light && Number(light[1]) <= 100 && { reflectance: { reflectance: Number(light[1]) } }),
    ...(word !== undefined && { tier: { tier: word } }),
  };
}

function unique(name: string, before: readonly ParsedChoice[]): string {
  const same = before.filter((choice) => choice.name.toLowerCase().startsWith(name.toLowerCase())).length;
  return before.some((choice) => choice.name.toLowerCase() === name.toLowerCase()) ? `${name} ${same + 1}` : name;
}

interface CompareAsk extends Omit<PlanksAsk, 'plank'> {
  readonly planks: readonly ParsedChoice[];
  readonly pad: AreaPrice | undefined;
}

/** Money in cents, waste in percent of the wall-to-wall area. */
interface Weighed {
  readonly choice: ParsedChoice;
  readonly laid: LaidFloor;
  readonly area: bigint;
  readonly wastePercent: number;
  readonly rows: number;
  readonly cuts: number;
  /** What the pad costs, when it has a price; 0 where the plank has one attached. */
  readonly padCents: number | undefined;
  /** Cartons with tax, plus the pad if it has a price. */
  readonly total: number | undefined;
}

/** For all planks together: every one is laid before the first answer appears. */
const MOST_TOGETHER = 12_000;

/** Returns the Problems of the first plank that can't be laid, or one Problem if there are too many planks in all. */
async function weigh(ask: CompareAsk, context: Context): Promise<readonly Weighed[] | Problems> {
  const abouts: number[] = [];
  for (const choice of ask.planks) {
    if (choice.plank.handed) return { problems: [handedInRows(context.optionTexts.get('pattern') ?? 'stair-step')] };
    const requested = requestedAreas({ ...ask, plank: choice.plank }, context);
    if ('problems' in requested) return requested;
    abouts.push(requested.about);
  }
  const upTo = (count: number): number => abouts.slice(0, count).reduce((sum, about) => sum + about, 0);
  if (upTo(abouts.length) > MOST_TOGETHER) {
    const few = [4, 3, 2].find((count) => upTo(count) <= MOST_TOGETHER) ?? 0;
    const fewer = choicesIn(context.optionTexts.get('planks') ?? '').slice(0, few);
    return { problems: [tooManyTogether(upTo(abouts.length), MOST_TOGETHER, fewer)] };
  }
  context.begin();
  const weighed: Weighed[] = [];
  for (const choice of ask.planks) {
    const laid = await layAsk({ ...ask, plank: choice.plank }, context);
    if ('problems' in laid) return laid;
    weighed.push(weighedOf(choice, laid, ask));
  }
  return weighed;
}

/** Waits for every layout search to end. */
async function weighSettled(
  weighed: readonly Weighed[],
  ask: CompareAsk,
  context: Context,
): Promise<readonly Weighed[]> {
  const found: Weighed[] = [];
  for (const { choice, laid } of weighed)
    found.push(weighedOf(choice, await settledLayout(laid, { ...ask, plank: choice.plank }, context), ask));
  return found;
}

function weighedOf(choice: ParsedChoice, laid: LaidFloor, { pad }: CompareAsk): Weighed {
  const { plan, cost } = laid;
  const area = wallToWall(plan);
  const bought = BigInt(plan.planks) * BigInt(plan.plank.length) * BigInt(plan.plank.width);
  const padCents = choice.plank.attachedPad === true ? 0 : pad && portion(BigInt(pad.price.cents), area, pad.per);
  return {
    choice,
    laid,
    area,
    wastePercent: Number(((bought - area) * 1000n) / area) / 10,
    rows: plan.regions.reduce((sum, { rows }) => sum + rows.length, 0),
    cuts: countCuts(plan),
    padCents,
    total: cost && cost.cents + cost.tax + (padCents ?? 0),
  };
}

/** None when fewer than two have the figure or all of them tie. */
function firstBy(weighed: readonly Weighed[], figure: (one: Weighed) => number | undefined): readonly Weighed[] {
  const given = weighed.filter((one) => figure(one) !== undefined);
  const least = Math.min(...given.map((one) => figure(one) ?? Number.POSITIVE_INFINITY));
  const first = given.filter((one) => figure(one) === least);
  return given.length < 2 || first.length === given.length ? [] : first;
}

/** Yields a first answer, then a better one when the searches for scattered joints have ended. */
async function* answerCompare(ask: CompareAsk, context: Context): AsyncGenerator<Outcome> {
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
  const saying: Saying = { units: ask.room.units, decimal: context.preferences.decimal };
  const others = [...context.optionTexts].filter(([option]) => !['room', 'planks', 'pad'].includes(option));
  return reply({
    headline: headline(weighed, saying),
    lines: weighed.map((one) => choiceLine(one, saying)),
    blocks: [table(weighed, saying), winners(weighed, saying), picture(weighed, saying)],
    assumed: weighed[0]?.laid.assumed ?? context.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: ask.planks.map(({ name, typed }) => ({
      label: COMPARE.lay(name),
      ask: COMPARE.ask(context.optionTexts.get('room') ?? '', typed, others),
    })),
    data: resultOf(weighed),
  });
}

function choiceLine(one: Weighed, saying: Saying): string {
  const { choice, laid, wastePercent } = one;
  const waste = `${sayNumber(wastePercent, saying, 1)}%`;
  return FLOOR_BRIEF.choice(choice.name, laid.purchase.cartons, laid.plan.planks, waste, total(one, saying));
}

function total(one: Weighed, saying: Saying): string | undefined {
  const price = one.choice.plank.cartonPrice;
  return price && one.total !== undefined ? sayMoney(cents(one.total), price.currency, saying) : undefined;
}

/** The cheapest if all prices are in one currency, otherwise the one that wastes the least. */
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
    return COMPARE.headline(leanest.choice.name, COMPARE.leanest, `${sayNumber(leanest.wastePercent, saying, 1)}%`);
  }
  return COMPARE.even(weighed.map(({ choice }) => choice.name));
}

/** Totals compare only if every plank has a price, all in one currency. */
function comparableTotal(weighed: readonly Weighed[]): (one: Weighed) => number | undefined {
  const currencies = new Set(weighed.map(({ choice }) => choice.plank.cartonPrice?.currency));
  return currencies.size === 1 ? ({ total: sum }) => sum : () => undefined;
}

function table(weighed: readonly Weighed[], saying: Saying): Block {
  const { measures } = COMPARE;
  const line = (label: string, value: (one: Weighed) => string | undefined): readonly string[] => [
    label,
    ...weighed.map((one) => value(one) ?? COMPARE.notGiven),
  ];
  const rows = [
    line(measures.planks, ({ laid }) => String(laid.plan.planks)),
    line(measures.cartons, ({ laid }) => String(laid.purchase.cartons)),
    line(measures.waste, ({ wastePercent }) => `${sayNumber(wastePercent, saying, 1)}%`),
    line(measures.cost, (one) => total(one, saying)),
    line(measures.pad, (one) => sayPad(one, saying)),
    line(measures.rows, ({ rows: count }) => String(count)),
    line(measures.cuts, ({ cuts }) => String(cuts)),
    line(measures.broken, ({ laid }) => String(laid.plan.broken.filter(({ rule }) => rule !== 'pattern').length)),
    line(measures.light, ({ choice }) => (choice.reflectance === undefined ? undefined : `${choice.reflectance}%`)),
    line(measures.tier, ({ choice }) => choice.tier),
  ].filter(([, ...values]) => values.some((value) => value !== COMPARE.notGiven));
  return {
    kind: 'table',
    section: 'list',
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
    (one) => `${sayNumber(one.wastePercent, saying, 1)}%`,
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
    ({ choice }) => `${choice.reflectance}%`,
  );
  return { kind: 'facts', section: 'why', title: COMPARE.winners, facts };
}

/** Money in cents before tax; the wall-to-wall area in square ticks. */
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

const PAD = {
  summary: 'What a separate pad costs, for planks without one attached',
  example: '$0.45/sq ft',
  standard: 'none',
};

export default defineCommand({
  group: 'floor',
  name: 'compare',
  summary: 'Compare up to five planks for the same rooms: cartons, waste, cost, cuts',
  phrases: [
    'which is cheaper, 7 inch planks at $2.49 or 9 inch at 2.89 for a 12x15 room',
    'compare two planks for my bedroom',
    'oak 6x48 10 per box $45 vs ash 7x48 8 per box $52',
    'compare waste for 6 inch and 9 inch wide planks',
    'is the wider plank a better deal',
    'which of these three floors costs least for my rooms',
    'compare product A at 2.19 a foot and B at 1.99 with pad',
    'would i need fewer boxes with the longer plank',
    'put the two options side by side',
    'whats the difference in cost between these planks',
    'two floors: one has pad attached at 3.10, the other needs pad at .45',
    'which plank makes less cuts in a 13x14 room',
    'compare running it the long way or the short way',
    'how do these planks stack up for 3 rooms',
    'price difference between 5 in and 7 in planks for 400 sq ft',
    'compare 2 brands for me',
    'show me which box size leaves less leftover',
    'cheaper option for 850 sq ft 1.79 or 2.29 with free underlay',
    'difference if i turn the planks',
    'what if i use 9x60 instead of 7x48',
    'which is cheaper for a 13x15, the 2.39 plank or the 2.99 one with pad attached',
    'compare 7 inch against 9 inch planks for my living room',
    'two floors i like: 48 by 7 ten a box at 52, or 60 by 9 six a box at 68',
    'pad attached at 3.15 or without at 2.49 plus underlay 0.45, which costs less over 610 sq ft',
    'side by side please',
    'do wider planks waste more in a 10x13 room than narrow ones',
    'is it better to run boards toward the window or across, for waste',
    'the oak at £26 per m2 vs the ash at £22.50, 31 m2',
    "what's the price gap between the two for the whole upstairs",
    'compare three options, $1.89, $2.29 and $2.79 a foot for 420 feet',
    'how many boxes with option a and how many with option b',
    'does the 60 inch plank leave less scrap than the 48 in my 11x14 bedroom',
    'which one needs fewer cuts, 6x36 or 7x48',
    'wife wants the herringbone, i want straight, how do the boxes and waste compare',
    'line up the cheap plank and the nice plank for me with total cost for bedroom and hall',
    'is the thicker one worth 60 cents more over 300 sq ft, cost wise',
    'half offset or third offset, which uses less in a 12x17',
    'box a covers 18.9 for 47.99, box b covers 23.6 for 59, better buy?',
    'put my two picks next to each other',
    'which size leaves a decent last row, 7 1/8 or 8 7/8 wide, room 139 inches',
    "clearance plank at 1.49 but only 8 foot... i mean 8 per box vs regular 1.99, what's cheaper all in",
    'show difference in cartons between long way and short way in the hall',
    'between the two samples on my counter which costs less for 15x18, 2.59 with 20.1 a box or 2.45 with 27.5 a box',
    'would switching to the wider plank save me a box',
    'weigh up laminate at 1.79 plus pad against vinyl at 2.69 for three bedrooms',
    'diff between them?',
    'compare waste of 5 in and 7 in plank for rooms 10x11, 12x14, 9x9',
    'what if i used 9x48 rather than 7x48 in the den, more or fewer boxes',
    'cheapest of these for 72 sq m: 19.99, 23.49 or 21.00 a metre with free delivery',
    "one's sold by the box at $63 and the other by the foot at $2.75, put em on the same footing",
    'compare lengthwise and crosswise layout, number of rows and slivers',
    "we're torn between two planks",
    'how much more would the 9 inch cost me overall',
    'figure both ways, planks running north and planks running west',
    'plank one or plank two for a room with lots of corners, which wastes less',
    'stack up the three floors by boxes, weight and price',
    'is the bigger carton a better deal if i only need 150 sq ft',
    'vs the cheaper 12 mil, how much do i pay for the 20 mil on 540 feet',
    "what's the difference in leftovers between 20 sq ft and 27 sq ft boxes in a 14x15",
    'compare',
  ],
  options: z.object({
    room: roomOption,
    planks: text(
      {
        summary: 'Two to five planks with ; between them, named if you like',
        example: 'oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton',
        colons: 'any',
      },
      readChoices,
    ),
    pad: text(PAD, readPadPrice),
    ...layingOptions,
  }),
  examples: [
    {
      ask: "compare room: bedroom 11' x 12'6\", planks: oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton, attached pad, pad: $0.45/sq ft",
      headline: 'ash costs least: 8 cartons, $416.00.',
    },
    {
      ask: 'compare room: 3,2 x 4,1 m, planks: 180 x 1220 mm, 8 per carton, LRV 45; 228 x 1524 mm, 6 per carton, LRV 30, premium range',
      headline: 'plank A wastes least: 10.4%.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? { problems: [notCompared(context.optionTexts.get('pattern') ?? pattern.name)] }
      : answerCompare({ ...options, pattern }, context),
});
