/** From walls to pieces of trim and the sticks to cut them from; Problems if they're beyond the saw or the sticks. */

import type { Context, Problems } from '../../src/chat/command.ts';
import { sayDegrees } from '../../src/drawing/trim-drawings.ts';
import { NO_SLACK, OFF_TURN } from '../../src/figures/trim-figures.ts';
import { type Saying, sayCut, sayLength, sayMoney } from '../../src/input/format.ts';
import type { ParsedStock } from '../../src/input/parse-stock.ts';
import type { Block, Fact, Problem } from '../../src/reply/reply.ts';
import { noStudInReach, pastReach, tooManyPieces } from '../../src/text/trim-problems-text.ts';
import { TRIM, TRIM_NOTES, TRIM_STEPS, trimHeadline } from '../../src/text/trim-text.ts';
import { type PieceTrouble, stickPiece, type TrimPiece, trimPieces } from '../../src/trim/pieces.ts';
import { type Stick, type StickPlan, type StickTask, type Stock, sawMarks } from '../../src/trim/sticks.ts';
import { turning, wallName } from '../../src/trim/walls.ts';
import {
  type Cents,
  cents,
  type Length,
  millimetres,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  ticks,
} from '../../src/units/length.ts';
import type { ListAsk, SticksAsk } from './trim-options.ts';
import { type RequestedWalls, trimFormat } from './trim-walls.ts';

/** No home has more; beyond that, a unit is probably wrong. */
const MOST_PIECES = 400;

export interface RequestedPieces {
  readonly pieces: readonly TrimPiece[];
  readonly task: StickTask;
}

/** Without prices, sticks cost their length, so that the search minimizes the length to buy. */
export function stockOf({ stock }: Pick<SticksAsk, 'stock'>): readonly Stock[] {
  const priced = stock.currency !== undefined;
  const unit = lengthUnit(stock);
  return stock.items.map(({ length, have, price }) => ({
    length,
    cents: have !== undefined ? 0 : priced ? (price?.cents ?? 0) : Math.round(length / unit),
    ...(have !== undefined && { have }),
  }));
}

/** Ticks per cent of that stand-in price: the greatest length that divides all lengths on sale, but at least 1/16 in. */
function lengthUnit({ items }: ParsedStock): number {
  const lengths = items.flatMap(({ length, have }) => (have === undefined ? [length] : []));
  return Math.max(TICKS_PER_INCH / 16, lengths.reduce<number>(greatestCommonDivisor, 0));
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** The longest stick on sale, less the end trim. */
export function longestPiece({ stock, 'end-trim': endTrim }: SticksAsk): Length {
  const bought = stock.items.filter(({ have }) => have === undefined);
  return ticks(Math.max(...bought.map(({ length }) => length)) - endTrim);
}

export function requestedPieces(
  ask: ListAsk,
  { stretches }: RequestedWalls,
  context: Context,
): RequestedPieces | Problems {
  const saying = trimFormat(ask, context);
  const joint =
    ask['inside-joint'] === 'cope' ? 'cope' : context.optionTexts.get('inside-joint') ? 'miter' : 'as measured';
  const { pieces, troubles } = trimPieces(stretches, {
    thickness: ask.thickness,
    longest: longestPiece(ask),
    glueUp: ask['glue-up'],
    reach: ask['saw-reach'],
    inside: joint,
    studs: { first: ask['first-stud'], spacing: ask['stud-spacing'] },
  });
  const [first, ...more] = problemsOf(troubles, ask, context, saying);
  if (first) return { problems: [first, ...more] };
  if (pieces.length > MOST_PIECES) return { problems: [tooManyPieces(pieces.length, MOST_PIECES, `12' x 14'`)] };
  const task = {
    pieces: pieces.map((piece) => stickPiece(piece, ask.kerf)),
    stock: stockOf(ask),
    endTrim: ask['end-trim'],
  };
  return { pieces, task };
}

function problemsOf(
  troubles: readonly PieceTrouble[],
  ask: ListAsk,
  context: Context,
  saying: Saying,
): readonly Problem[] {
  const steepest = Math.max(0, ...troubles.map((trouble) => ('setting' in trouble ? trouble.setting : 0)));
  const longest = Math.max(0, ...troubles.map((trouble) => ('length' in trouble ? trouble.length : 0)));
  const problems = troubles.map((trouble): Problem => {
    const { wall } = trouble;
    if (trouble.why === 'no stud') {
      const given = context.optionTexts.get('stock');
      const longer = sayLength(longerStick(longest, saying), saying);
      return noStudInReach(
        wallName(wall),
        sayLength(ticks(trouble.length), saying),
        given ? `${given}; ${longer}` : longer,
      );
    }
    const { interior } = wall[trouble.side];
    return pastReach(
      `at the ${trouble.side} of ${wallName(wall)}`,
      sayDegrees(interior, saying),
      sayDegrees(trouble.setting, saying),
      sayDegrees(ask['saw-reach'], saying),
      String(steepest),
    );
  });
  return problems;
}

/** A whole foot, or half a meter in metric, that holds the length and what its ends add. */
export function longerStick(length: number, { units }: Saying): Length {
  const step = units === 'metric' ? millimetres(500) : TICKS_PER_FOOT;
  return ticks((Math.floor(length / step) + 2) * step);
}

/** `stock` is an index into the task's stock list. */
function uses({ sticks }: StickPlan, task: StickTask): readonly { readonly stock: number; readonly count: number }[] {
  return task.stock
    .map((_, stock) => ({ stock, count: sticks.filter((stick) => stick.stock === stock).length }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => (task.stock[b.stock]?.length ?? 0) - (task.stock[a.stock]?.length ?? 0));
}

/** Undefined without prices. */
export function sayCost(amount: number, { currency }: ParsedStock, saying: Saying): string | undefined {
  return currency === undefined ? undefined : sayMoney(cents(amount), currency, saying);
}

export function boughtHeadline(plan: StickPlan, task: StickTask, given: ParsedStock, saying: Saying): string {
  const bought = uses(plan, task).filter(({ stock }) => task.stock[stock]?.have === undefined);
  return trimHeadline(
    bought.map(({ stock, count }) => [count, sayLength(ticks(task.stock[stock]?.length ?? 0), saying)] as const),
    task.pieces.length,
    sayCost(plan.cents, given, saying),
  );
}

export function sayBought(plan: StickPlan, task: StickTask, given: ParsedStock, saying: Saying): string {
  return uses(plan, task)
    .map(({ stock, count }) => {
      const { length = 0, cents: price = 0, have } = task.stock[stock] ?? {};
      const each = have === undefined ? sayCost(price, given, saying) : undefined;
      return TRIM.each(count, sayLength(ticks(length), saying), each);
    })
    .join('; ');
}

/** `facts` go in the middle. */
export function boughtFacts(
  plan: StickPlan,
  task: StickTask,
  given: ParsedStock,
  facts: readonly Fact[],
  saying: Saying,
): Block {
  const all = uses(plan, task);
  const price = (stock: number): string | undefined => sayCost(task.stock[stock]?.cents ?? 0, given, saying);
  const say = ({ stock, count }: (typeof all)[number], priced: boolean): string =>
    TRIM.each(count, sayLength(ticks(task.stock[stock]?.length ?? 0), saying), priced ? price(stock) : undefined);
  const bought = all.filter(({ stock }) => task.stock[stock]?.have === undefined);
  const had = all.filter(({ stock }) => task.stock[stock]?.have !== undefined);
  const cost = sayCost(plan.cents, given, saying);
  const over: Cents = cents(plan.cents - plan.bound);
  const priced = given.currency !== undefined;
  const alike = new Set(task.pieces.map(({ kerf }) => kerf)).size <= 1;
  const sure = plan.proven
    ? `${TRIM.proved(priced)}${alike ? '' : TRIM.widest}`
    : TRIM.atMost(sayCost(over, given, saying) ?? sayLength(ticks(over * lengthUnit(given)), saying));
  const left = plan.sticks.reduce((sum, { leftover }) => sum + leftover, 0);
  return {
    kind: 'facts',
    section: 'buy',
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

/** Saw marks are measured from the start of the stick, so that errors don't add up. */
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
  return { kind: 'table', section: 'cuts', title, columns: TRIM.cutColumns, rows };
}

export function stepsBlock(pieces: readonly TrimPiece[], sticks: readonly Stick[], glue: boolean): Block {
  return {
    kind: 'steps',
    section: 'how',
    title: TRIM_STEPS.title,
    steps: [
      ...TRIM_STEPS.base,
      ...(sticks.some(({ leftover }) => leftover < NO_SLACK.value) ? [TRIM_STEPS.full] : []),
      ...(has(pieces, 'cope') ? [TRIM_STEPS.cope] : []),
      ...(has(pieces, 'scarf') ? [TRIM_STEPS.scarf] : []),
      ...(glue ? [TRIM_STEPS.glue] : []),
      TRIM_STEPS.nail,
    ],
  };
}

/**
 * Studs where joints need one behind them, corners coped because they're out of square, and rooms whose corners don't add up to
 * a full turn.
 */
export function notesOf(
  ask: ListAsk,
  { walls }: RequestedWalls,
  pieces: readonly TrimPiece[],
  context: Context,
): readonly string[] {
  const saying = trimFormat(ask, context);
  const byName = new Map(walls.map((wall) => [wallName(wall), wall]));
  const coped = pieces.filter(({ wall, left }) => left.cut === 'cope' && byName.get(wall)?.left.measured === true);
  const turned = ask.room.rooms.map(({ name }) => ({
    name,
    degrees: turning(walls.filter(({ room }) => room === name).map(({ left }) => left.interior)),
  }));
  return [
    ...takenNote(ask, context, saying),
    ...(has(pieces, 'scarf')
      ? [TRIM_NOTES.studs(sayCut(ask['stud-spacing'], saying), sayCut(ask['first-stud'], saying))]
      : []),
    ...coped.map(({ wall }) => TRIM_NOTES.coped(`the left corner of ${wall}`)),
    ...turned
      .filter(({ degrees }) => Math.abs(degrees - 360) > OFF_TURN.value)
      .map(({ name, degrees }) => TRIM_NOTES.turning(name, sayDegrees(degrees, saying))),
  ];
}

/** Values assumed that affect lengths or what to buy. */
function takenNote(ask: ListAsk, { optionTexts }: Context, saying: Saying): readonly string[] {
  const { takenValues } = TRIM_NOTES;
  const values = [
    ...(optionTexts.has('stock')
      ? []
      : [takenValues.stock(ask.stock.items.map(({ length }) => sayLength(length, saying)).join(', '))]),
    ...(optionTexts.has('casing') || ask.doors.length === 0 ? [] : [takenValues.casing(sayCut(ask.casing, saying))]),
    ...(optionTexts.has('thickness') ? [] : [takenValues.thickness(sayCut(ask.thickness, saying))]),
    ...(optionTexts.has('kerf') ? [] : [takenValues.kerf(sayCut(ask.kerf, saying))]),
  ];
  return values.length === 0 ? [] : [TRIM_NOTES.taken(values)];
}

function has(pieces: readonly TrimPiece[], cut: 'cope' | 'scarf'): boolean {
  return pieces.some(({ left, right }) => left.cut === cut || right.cut === cut);
}
