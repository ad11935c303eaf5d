/** `trim reset`: labels for old baseboard that goes back up, and the cost compared with new baseboard or adding shoe. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome, type Problems } from '../../src/chat/command.ts';
import { BREAKS, SHOE, STICKS, TRIM_FIGURES } from '../../src/figures/trim-figures.ts';
import { type Saying, sayLength } from '../../src/input/format.ts';
import { length, percent, text } from '../../src/input/options.ts';
import { type ParsedStock, readStock } from '../../src/input/parse-stock.ts';
import { type Block, reply } from '../../src/reply/reply.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { RESET } from '../../src/text/trim-text.ts';
import { type Board, brokenBoards, labelledBoards } from '../../src/trim/pieces.ts';
import { firstSticks, type StickPlan, type StickTask } from '../../src/trim/sticks.ts';
import { wallName } from '../../src/trim/walls.ts';
import { inches, type Length, millimetres, TICKS_PER_INCH, ticks } from '../../src/units/length.ts';
import { stickPlans } from './list.ts';
import { cautionsOf, type ListAsk, listOptions } from './trim-options.ts';
import { requestedPieces, sayBought, sayCost } from './trim-pieces.ts';
import { type ResetResult, stickNeeds, toBuy } from './trim-results.ts';
import { type RequestedWalls, requestedWalls, trimFormat } from './trim-walls.ts';

interface ResetAsk extends ListAsk {
  readonly shoe: ParsedStock;
  readonly 'shoe-thickness': Length;
  /** In hundredths of a percent. */
  readonly breaks: number;
}

/** Yields an answer at once, then one with the cheapest sticks. */
async function* answerReset(ask: ResetAsk, context: Context): AsyncGenerator<Outcome> {
  const ways = requestedWays(ask, context);
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

interface RequestedWays {
  readonly requested: RequestedWalls;
  readonly boards: readonly Board[];
  readonly broken: number;
  readonly tasks: Each<StickTask>;
}

async function cheapest(task: StickTask): Promise<StickPlan> {
  let best = firstSticks(task);
  for await (const plan of stickPlans(task)) best = plan;
  return best;
}

function requestedWays(ask: ResetAsk, context: Context): RequestedWays | Problems {
  const requested = requestedWalls(ask, context);
  if ('problems' in requested) return requested;
  const fresh = requestedPieces(ask, requested, context);
  if ('problems' in fresh) return fresh;
  const given = context.optionTexts.get('shoe');
  const shoeContext = {
    ...context,
    optionTexts: new Map([...context.optionTexts, ...(given ? [['stock', given] as const] : [])]),
  };
  const shoe = requestedPieces({ ...ask, stock: ask.shoe, thickness: ask['shoe-thickness'] }, requested, shoeContext);
  if ('problems' in shoe) {
    const [first, ...more] = shoe.problems.map((one) => (one.option === 'stock' ? { ...one, option: 'shoe' } : one));
    return first ? { problems: [first, ...more] } : shoe;
  }
  const boards = labelledBoards(requested.stretches, requested.openings);
  const broken = brokenBoards(boards.length, ask.breaks);
  const reset = longestBoards(fresh.task, fresh.pieces, boards, broken);
  return { requested, boards, broken, tasks: { reset, replace: fresh.task, shoe: shoe.task } };
}

function replyOf(
  ask: ResetAsk,
  { requested, boards, broken, tasks }: RequestedWays,
  plans: Each<StickPlan>,
  context: Context,
): Outcome {
  const saying = trimFormat(ask, context);
  const range = [
    Math.min(broken, brokenBoards(boards.length, BREAKS.value.least)),
    Math.max(broken, brokenBoards(boards.length, BREAKS.value.most)),
  ] as const;
  const priced = (plan: StickPlan, { currency }: ParsedStock): number => (currency === undefined ? 0 : plan.cents);
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
  const way = (plan: StickPlan, task: StickTask, stock: ParsedStock): string =>
    RESET.sticks(sayBought(plan, task, stock, saying), sayCost(plan.cents, stock, saying));
  const resetCost =
    sayCost(plans.reset.cents, ask.stock, saying) ?? sayBought(plans.reset, tasks.reset, ask.stock, saying);
  const unpriced = ask.stock.currency === undefined || ask.shoe.currency === undefined;
  return reply({
    headline: RESET.headline(boards.length, broken, RESET.range(...range)),
    lines: [
      RESET.line(RESET.replace, way(plans.replace, tasks.replace, ask.stock)),
      RESET.line(RESET.shoe, way(plans.shoe, tasks.shoe, ask.shoe)),
      RESET.labelLine,
      ...(unpriced ? [RESET.noPrices] : []),
    ],
    blocks: [
      {
        kind: 'facts',
        section: 'buy',
        title: RESET.moneyTitle,
        facts: [
          { label: RESET.reset, value: RESET.resetValue(resetCost, broken) },
          { label: RESET.replace, value: way(plans.replace, tasks.replace, ask.stock) },
          { label: RESET.shoe, value: way(plans.shoe, tasks.shoe, ask.shoe) },
        ],
      },
      ...(unpriced ? [{ kind: 'text' as const, section: 'buy' as const, text: RESET.noPrices }] : []),
      ...labelBlocks(boards, saying),
      { kind: 'steps', section: 'how', title: RESET.stepsTitle, steps: RESET.steps },
    ],
    assumed: [...context.assumed, ...requested.assumed],
    cautions: cautionsOf('tear-out', 'nailing'),
    sources: TRIM_FIGURES.map(({ source }) => source),
    data,
    ...toBuy(
      stickNeeds(plans.reset, ask.stock, { item: 'baseboard', label: NEEDS.replacement, stage: 'baseboards' }, saying),
    ),
  });
}

/** The most that could break: if fewer or shorter boards do, it costs less. */
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
      section: 'list',
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
      section: 'list',
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

export default defineCommand({
  group: 'trim',
  name: 'reset',
  summary: 'Put the old baseboards back: a label for each, and the cost next to new ones or adding shoe',
  phrases: [
    'i want to put my old baseboards back, help me label them',
    'reuse existing baseboards or buy new, which costs less',
    'labels for baseboards i took off',
    'cost to reset old trim compared with new',
    'marking each baseboard so i know where it goes',
    'putting the old base back and adding shoe, what do i need',
    'numbering my trim pieces before i pull them',
    'is it cheaper to reinstall my baseboard or replace',
    'make me labels for the trim in bedroom 12x14',
    'reset baseboards after floor goes in',
    'i pulled all baseboards, now how do i keep them straight',
    'reinstall same trim with a shoe on top',
    'tags for trim pieces wall by wall',
    'new base vs reset the old for 3 rooms',
    'which pieces go back where',
    'old baseboard goes back on, list for it',
    'save the old trim and set it again',
    'reset trim at the new floor height',
    'keep my trim and put it back, nails and labels',
    'baseboards numbered wall 1 to 4',
    'putting my old baseboards back after the floor, what do i need',
    'numbering the old base before i pull it off the bedroom walls so i know which goes where',
    'can i reuse the baseboards that are on there now or am i wasting time',
    "old trim's in good shape, plan to nail it back up with a shoe in front to hide the gap",
    'labels for the old baseboard 12x14 room',
    'what would it save me to reset the existing trim versus buying new for 3 rooms',
    'three pieces split when i pried them off the wall, the rest goes back, how many new ones',
    'i took off all the base in the hall and stacked it in the garage, help me keep it straight',
    'old skirting goes back on, but floor is 8 mm lower now',
    'make tags for every piece of base by wall',
    'reinstall old base, need nails and caulk and which piece first',
    'base came off in one piece mostly, 14 pieces, four walls, two closets, mark them somehow',
    'how do i get the nails out of the old boards without wrecking the face',
    'carpet was thick so the baseboard sits half an inch up, do i drop it down when i put it back',
    "i'd rather not buy new trim, can the old stuff be set back",
    'reset list for the living room baseboards',
    'will the old base cover a 3/8 gap or do i need quarter round with it',
    'save the 1950s tall baseboard, we want it back up after the floor is in',
    "pull the nails, scrape the caulk, put back up, what's it take in supplies for 70 feet",
    'wall a piece 1, wall a piece 2, that kind of labels for my old trim please',
    'the original skirting is 170 mm pine, going back in the same spots',
    'which baseboards go back where, i mixed up two rooms',
    'reset vs replace baseboard',
    'nail the old base up again over the new vinyl plank, how far off the floor',
    'how long does it take to put back 5 rooms of old trim',
    'i labelled them in pencil but the paint touched up over it, make me a new map',
    'broke 2 boards of 11, can i put the rest back and patch in the closet where nobody looks',
    'reusing the trim in den and hall, buying for the bath only',
    'is the old base worth saving if it has six coats of paint on it',
    'what goes with resetting trim: nails, filler, touch up paint, shoe molding, how much of each for a 13x15',
    'put old trim back',
    'the old baseboards are coming back after we lay, so give me pieces by wall with lengths',
    'existing base goes back on two walls, other two get new pieces',
    'put up the same baseboards again 10x12 door 30',
    'do i need shoe molding if old base goes right back where it was',
    'keeping my trim, want a sheet to write where each length lives',
    'price to keep the old trim in four bedrooms and just add quarter round',
    'i pried it off carefully, now what order do i reattach it in',
    'sort out my removed trim, 3 rooms worth',
    'reattach the base that was there before in the 11 by 13 guest room with one closet',
  ],
  options: z.object({
    ...listOptions,
    shoe: text(
      {
        summary: 'Sticks of shoe molding, written like stock',
        example: '8 ft $3.98',
        standard: '8 ft; 12 ft; 16 ft',
        metric: '2.4 m; 3 m; 4.2 m',
        record: STICKS,
      },
      readStock,
    ),
    'shoe-thickness': length({
      summary: 'Thickness of the shoe',
      standard: '1/2 in',
      metric: '12 mm',
      record: SHOE,
      example: '3/4 in',
      least: millimetres(2),
      most: inches(2),
    }),
    breaks: percent({
      summary: 'Share of the boards likely to break',
      standard: '10%',
      record: BREAKS,
      example: '15%',
    }),
  }),
  examples: [
    {
      ask: `reset room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 16 ft $15.48, shoe: 8 ft $3.98; 16 ft $6.98`,
      headline: '5 boards to label and set again; expect 1 to break (1 to 2).',
    },
    {
      ask: `reset room: living 12' x 15'; hall 4' x 11', doors: 32 in on wall 2 of living; 30 in on wall 1 of hall, breaks: 25%`,
      headline: '10 boards to label and set again; expect 3 to break (1 to 3).',
    },
  ],
  run: (options, context) => answerReset(options, context),
});
