/** From the options of `trim reset` to its answer. */

import type { Context, Outcome, Problems } from '../../../src/chat/command.ts';
import { BREAKS, TRIM_FIGURES } from '../../../src/figures/trim-figures.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { RESET } from '../../../src/text/trim-text.ts';
import { type Board, brokenBoards, labelledBoards } from '../../../src/trim/pieces.ts';
import { firstSticks, type StickPlan, type StickTask } from '../../../src/trim/sticks.ts';
import { wallName } from '../../../src/trim/walls.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../../src/units/length.ts';
import type { ListAsk } from './ask.ts';
import { sayBought, sayCost } from './bought.ts';
import { cautionsOf } from './cautions.ts';
import { askedPieces } from './pieces.ts';
import { stickPlans } from './plans.ts';
import type { ResetResult } from './result.ts';
import { stickNeeds, toBuy } from './stick-needs.ts';
import { type AskedWalls, askedWalls, sayingOf } from './walls.ts';

/** What `trim reset` reads. */
export interface ResetAsk extends ListAsk {
  readonly shoe: ToldStock;
  readonly 'shoe-thickness': Length;
  /** In hundredths of a percent. */
  readonly breaks: number;
}

/** A first answer at once, then the one with the cheapest sticks. */
export async function* answerReset(ask: ResetAsk, context: Context): AsyncGenerator<Outcome> {
  const ways = askedWays(ask, context);
  if ('problems' in ways) {
    yield ways;
    return;
  }
  context.begin();
  const { reset, replace, shoe } = ways.tasks;
  const first = { reset: firstSticks(reset), replace: firstSticks(replace), shoe: firstSticks(shoe) };
  yield replyOf(ask, ways, first, context);
  const best = { reset: await cheapest(reset), replace: await cheapest(replace), shoe: await cheapest(shoe) };
  if (WAYS.some((way) => best[way].cents < first[way].cents)) yield replyOf(ask, ways, best, context);
}

const WAYS = ['reset', 'replace', 'shoe'] as const;
type Each<T> = Readonly<Record<(typeof WAYS)[number], T>>;

interface AskedWays {
  readonly asked: AskedWalls;
  readonly boards: readonly Board[];
  readonly broken: number;
  readonly tasks: Each<StickTask>;
}

async function cheapest(task: StickTask): Promise<StickPlan> {
  let best = firstSticks(task);
  for await (const plan of stickPlans(task)) best = plan;
  return best;
}

function askedWays(ask: ResetAsk, context: Context): AskedWays | Problems {
  const asked = askedWalls(ask, context);
  if ('problems' in asked) return asked;
  const fresh = askedPieces(ask, asked, context);
  if ('problems' in fresh) return fresh;
  const told = context.told.get('shoe');
  const shoeContext = { ...context, told: new Map([...context.told, ...(told ? [['stock', told] as const] : [])]) };
  const shoe = askedPieces({ ...ask, stock: ask.shoe, thickness: ask['shoe-thickness'] }, asked, shoeContext);
  if ('problems' in shoe) {
    const [first, ...more] = shoe.problems.map((one) => (one.option === 'stock' ? { ...one, option: 'shoe' } : one));
    return first ? { problems: [first, ...more] } : shoe;
  }
  const boards = labelledBoards(asked.stretches, asked.openings);
  const broken = brokenBoards(boards.length, ask.breaks);
  const reset = longestBoards(fresh.task, fresh.pieces, boards, broken);
  return { asked, boards, broken, tasks: { reset, replace: fresh.task, shoe: shoe.task } };
}

function replyOf(
  ask: ResetAsk,
  { asked, boards, broken, tasks }: AskedWays,
  plans: Each<StickPlan>,
  context: Context,
): Outcome {
  const saying = sayingOf(ask, context);
  const range = [
    Math.min(broken, brokenBoards(boards.length, BREAKS.value.least)),
    Math.max(broken, brokenBoards(boards.length, BREAKS.value.most)),
  ] as const;
  const priced = (plan: StickPlan, { currency }: ToldStock): number => (currency === undefined ? 0 : plan.cents);
  const data: ResetResult = {
    kind: 'reset',
    ticksPerInch: TICKS_PER_INCH,
    boards: boards.map(({ label, stretch: { wall, from, to } }) => ({
      label,
      wall: wallName(wall),
      length: to - from,
    })),
    broken,
    brokenRange: range,
    cents: {
      reset: priced(plans.reset, ask.stock),
      replace: priced(plans.replace, ask.stock),
      shoe: priced(plans.shoe, ask.shoe),
    },
  };
  const way = (plan: StickPlan, task: StickTask, stock: ToldStock): string =>
    RESET.sticks(sayBought(plan, task, stock, saying), sayCost(plan.cents, stock, saying));
  const resetCost =
    sayCost(plans.reset.cents, ask.stock, saying) ?? sayBought(plans.reset, tasks.reset, ask.stock, saying);
  const unpriced = ask.stock.currency === undefined || ask.shoe.currency === undefined;
  return {
    headline: RESET.headline(boards.length, broken, RESET.range(...range)),
    blocks: [
      {
        kind: 'facts',
        title: RESET.moneyTitle,
        facts: [
          { label: RESET.reset, value: RESET.resetValue(resetCost, broken) },
          { label: RESET.replace, value: way(plans.replace, tasks.replace, ask.stock) },
          { label: RESET.shoe, value: way(plans.shoe, tasks.shoe, ask.shoe) },
        ],
      },
      ...(unpriced ? [{ kind: 'text' as const, text: RESET.noPrices }] : []),
      ...labelBlocks(boards, saying),
      { kind: 'steps', title: RESET.stepsTitle, steps: RESET.steps },
    ],
    assumed: [...context.assumed, ...asked.assumed],
    cautions: cautionsOf('tear-out', 'nailing'),
    sources: TRIM_FIGURES.map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data,
    ...toBuy(
      stickNeeds(plans.reset, ask.stock, { item: 'baseboard', label: NEEDS.replacement, stage: 'baseboards' }, saying),
    ),
  };
}

/** The pieces of the longest boards: should fewer or shorter ones break, it costs less. */
function longestBoards(
  task: StickTask,
  pieces: readonly { readonly id: string; readonly wall: string; readonly from: number; readonly to: number }[],
  boards: readonly Board[],
  broken: number,
): StickTask {
  const longest = [...boards]
    .sort((a, b) => b.stretch.to - b.stretch.from - (a.stretch.to - a.stretch.from))
    .slice(0, broken);
  const ids = new Set(
    longest.flatMap(({ stretch }) =>
      pieces
        .filter(({ wall, from, to }) => wall === wallName(stretch.wall) && from >= stretch.from && to <= stretch.to)
        .map(({ id }) => id),
    ),
  );
  return { ...task, pieces: task.pieces.filter(({ id }) => ids.has(id)) };
}

function labelBlocks(boards: readonly Board[], saying: Saying): readonly Block[] {
  const letters = [...new Set(boards.map(({ letter }) => letter))];
  return [
    {
      kind: 'table',
      title: RESET.labelsTitle,
      columns: RESET.labelColumns,
      rows: boards.map(({ label, stretch: { wall, from, to } }) => [
        label,
        wallName(wall),
        sayLength(ticks(to - from), saying),
        sayLength(from, saying),
      ]),
    },
    {
      kind: 'checklist',
      title: RESET.mapTitle,
      items: letters.map((letter) => {
        const own = boards.filter((board) => board.letter === letter);
        return RESET.map(
          letter,
          own[0]?.stretch.wall.room ?? '',
          own.map(({ label }) => label),
        );
      }),
    },
  ];
}
