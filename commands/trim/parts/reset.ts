/** From the options of `trim reset` to its answer. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../../src/core/length.ts';
import { type Board, brokenBoards, labelledBoards } from '../../../src/core/trim/board.ts';
import { firstSticks } from '../../../src/core/trim/stick-first.ts';
import type { StickPlan, StickTask } from '../../../src/core/trim/stick-task.ts';
import { wallName } from '../../../src/core/trim/wall.ts';
import { type Saying, sayLength } from '../../../src/measure/say-length.ts';
import type { ToldStock } from '../../../src/measure/stock.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { BREAKS, TRIM_FIGURES } from '../../../src/trade/trim.ts';
import { RESET } from '../../../src/words/trim-reset.ts';
import type { ListAsk } from './ask.ts';
import { sayBought, sayCost } from './bought.ts';
import { cautionsOf } from './cautions.ts';
import { askedPieces } from './pieces.ts';
import type { ResetResult } from './result.ts';
import { askedWalls, sayingOf } from './walls.ts';

/** What `trim reset` reads. */
export interface ResetAsk extends ListAsk {
  readonly shoe: ToldStock;
  readonly 'shoe-thickness': Length;
  /** In hundredths of a percent. */
  readonly breaks: number;
}

export function answerReset(ask: ResetAsk, context: Context): Outcome {
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
  const saying = sayingOf(ask, context);
  const boards = labelledBoards(asked.stretches, asked.openings);
  const broken = brokenBoards(boards.length, ask.breaks);
  const range = [
    Math.min(broken, brokenBoards(boards.length, BREAKS.value.least)),
    Math.max(broken, brokenBoards(boards.length, BREAKS.value.most)),
  ] as const;
  const plans = {
    reset: firstSticks(longestBoards(fresh.task, fresh.pieces, boards, broken)),
    replace: firstSticks(fresh.task),
    shoe: firstSticks(shoe.task),
  };
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
    sayCost(plans.reset.cents, ask.stock, saying) ?? sayBought(plans.reset, fresh.task, ask.stock, saying);
  const unpriced = ask.stock.currency === undefined || ask.shoe.currency === undefined;
  return {
    headline: RESET.headline(boards.length, broken, RESET.range(...range)),
    blocks: [
      {
        kind: 'facts',
        title: RESET.moneyTitle,
        facts: [
          { label: RESET.reset, value: RESET.resetValue(resetCost, broken) },
          { label: RESET.replace, value: way(plans.replace, fresh.task, ask.stock) },
          { label: RESET.shoe, value: way(plans.shoe, shoe.task, ask.shoe) },
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
