/** `floor planks`: how many cartons of a plank the rooms need, and how to lay them. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawPlan, planAsGiven } from '../../src/drawing/floor-plans.ts';
import { floorRules, LONG_RUN, PERIMETER_GAP, PLANK_FIGURES } from '../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayCut } from '../../src/input/format.ts';
import { PATTERN_NAMES } from '../../src/input/parse-layout.ts';
import type { CoveredArea } from '../../src/layout/covered-area.ts';
import { betterWay, quarterTurned } from '../../src/layout/direction.ts';
import { type Plan, purchaseOf } from '../../src/layout/floor.ts';
import { type Action, type Block, type Fact, type Reason, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import {
  ACTIONS,
  costHeadline,
  FLOOR_BRIEF,
  LAY,
  planksHeadline,
  RULES_TITLE,
  STEPS,
  sayFloorRule,
  WAY,
} from '../../src/text/floor-text.ts';
import { type Length, TICKS_PER_MM } from '../../src/units/length.ts';
import { layAway } from '../../src/workers/solve.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { floorLines, type Saver } from './floor-brief.ts';
import { buyFacts, floorNeeds, keepBlocks, layFacts, leftoverBlock } from './floor-facts.ts';
import { answerHerringbone } from './floor-herringbone.ts';
import { brokenBlocks, floorOptions, type PlanksAsk, patternOf } from './floor-options.ts';
import { guideTables, stepsFor } from './guide.ts';
import { better, floorFormat, floorResult, type LaidFloor, layAsk, otherWork } from './lay.ts';
import { sureBlock } from './sure.ts';

interface OtherPattern {
  readonly phrase: string;
  readonly saver?: Saver;
}

/** Lays each pattern other than the plan's for comparison. */
async function otherPatterns(
  areas: readonly CoveredArea[],
  ask: PlanksAsk,
  plan: Plan,
): Promise<readonly OtherPattern[]> {
  const { plank, rules } = plan;
  const hard = hardBreaks(plan);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const found: OtherPattern[] = [];
  for (const name of PATTERN_NAMES.filter((one) => one !== rules.pattern.name)) {
    await otherWork();
    const pattern = patternOf({ name }, plank, rules.stagger, ask.room.units);
    const other = await layAway(areas, plank, { ...rules, pattern }, plan.planks);
    const cartons = cartonsOf(other.planks);
    const broken = hardBreaks(other);
    const saved = cartonsOf(plan.planks) - cartons;
    found.push({
      phrase: LAY.other(name, other.planks, cartons, saved, broken, hard > 0 && broken === 0),
      ...(saved > 0 && broken <= hard && { saver: { cartons, line: FLOOR_BRIEF.pattern(cartons, name) } }),
    });
  }
  return found;
}

function hardBreaks(plan: Plan): number {
  return plan.broken.filter(({ rule }) => rule !== 'pattern').length;
}

/**
 * Compares the rows with the same rows turned a quarter. Undefined if rooms run in different directions. A direction that was
 * `given` is kept, and the other one only mentioned.
 */
async function wayFact(
  areas: readonly CoveredArea[],
  first: Plan,
  ask: PlanksAsk,
  given: boolean,
): Promise<{ readonly fact: Fact; readonly saver?: Saver } | undefined> {
  if (ask.direction.kind === 'each') return undefined;
  const { plank, rules } = first;
  const other = await layAway(quarterTurned(areas), plank, rules, first.planks);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const here = { plan: first, cartons: cartonsOf(first.planks) };
  const there = { plan: other, cartons: cartonsOf(other.planks) };
  const { turned, reasons } = betterWay(here, there);
  const why = reasons.map(WAY.reason);
  const otherTakes = { planks: other.planks, cartons: there.cartons };
  return {
    fact: { label: WAY.label, value: turned ? WAY.turn(given, otherTakes, why) : WAY.stay(given, otherTakes, why) },
    ...(turned &&
      there.cartons < here.cartons && {
        saver: { cartons: there.cartons, line: FLOOR_BRIEF.turned(there.cartons) },
      }),
  };
}

/** Larger floors aren't compared with other patterns, so that their own answer comes sooner. */
const COMPARED_PLANKS = 1500;

/** Yields an answer at once, then adds pictures, and last how certain it is and how other patterns compare. */
export async function* answerSurely(ask: PlanksAsk, context: Context): AsyncGenerator<Outcome> {
  const first = await layAsk(ask, context);
  if ('problems' in first) {
    yield first;
    return;
  }
  await otherWork();
  const soon = answerPlanks(first, ask, context);
  await otherWork();
  yield soon;
  let laid = first;
  for await (const next of better(first, ask, context)) {
    if (next.searching && next.plan.planks < laid.plan.planks) yield answerPlanks(next, ask, context);
    laid = next;
  }
  await otherWork();
  const reply = laid === first ? soon : answerPlanks(laid, ask, context);
  const saying = floorFormat(ask, context);
  await otherWork();
  const drawings = await inSteps(drawPlan(planAsGiven(laid.plan, saying)));
  const pictures = drawings.map((drawing) => ({ kind: 'picture' as const, drawing }));
  const [buy, plainly, ...blocks] = reply.blocks;
  await otherWork();
  // The chat draws these while the comparison is computed.
  if (buy && plainly) yield { ...reply, blocks: [buy, plainly, ...pictures, ...blocks] };
  const others = laid.plan.planks <= COMPARED_PLANKS ? await otherPatterns(laid.areas, ask, laid.plan) : [];
  const given = context.optionTexts.has('direction');
  const way = laid.plan.planks <= COMPARED_PLANKS ? await wayFact(first.areas, first.plan, ask, given) : undefined;
  const phrases = others.map(({ phrase }) => phrase);
  const lay = layFacts(laid, phrases, saying, way?.fact);
  const sure = await sureBlock(ask, laid, saying, first.plan.planks - laid.plan.planks);
  const savers = [...others, ...(way ? [way] : [])].flatMap(({ saver }) => saver ?? []);
  const lines = floorLines(laid.plan, saying, { savers, sure: sure.lines });
  await otherWork();
  yield { ...reply, lines, blocks: [...(buy ? [buy] : []), sure.block, lay, ...pictures, ...blocks] };
}

export function answerPlanks(laid: LaidFloor, ask: PlanksAsk, context: Context): Reply {
  const { plan, purchase, cost, said } = laid;
  const saying = floorFormat(ask, context);
  return reply({
    headline: planksHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said),
    ...(said === undefined
      ? {}
      : { leads: { cost: costHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said) } }),
    lines: floorLines(plan, saying),
    blocks: [
      buyFacts(laid, saying),
      layFacts(laid, [], saying),
      ...brokenBlocks(plan, saying),
      { kind: 'steps', section: 'how', title: STEPS.title, steps: stepsFor(plan) },
      ...keepBlocks(laid, saying),
      ...guideTables(plan, saying),
      leftoverBlock(laid, saying),
      rulesBlock(plan, purchase.cartons, ask.plank.attachedPad),
    ],
    assumed: laid.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: nextFloorRequests(plan, context),
    reasons: floorReasons(plan, saying),
    data: floorResult(plan, purchase, cost, laid.home),
    needs: floorNeeds(laid, ask),
  });
}

function rulesBlock(plan: Plan, cartons: number, attachedPad: boolean | undefined): Block {
  const longRun = plan.regions.some(({ rows }) => longestSpan(rows) >= LONG_RUN.value);
  const smallGap = plan.rules.gap < wholeMillimetres(PERIMETER_GAP.value);
  const items = floorRules({ lock: plan.plank.lock, attachedPad, cartons, longRun, smallGap }).map(sayFloorRule);
  return { kind: 'checklist', section: 'checklist', title: RULES_TITLE, items };
}

/** 6 mm is the standard gap in metric, and a metric tape shows nothing finer. */
function wholeMillimetres(length: Length): number {
  return Math.floor(length / TICKS_PER_MM) * TICKS_PER_MM;
}

/** The longest a region gets along its rows or across them, in ticks; never less than its longest run. */
function longestSpan(rows: Plan['regions'][number]['rows']): number {
  const along = rows.map(({ pieces }) => {
    const last = pieces.at(-1);
    return last ? last.u + last.length - (pieces[0]?.u ?? 0) : 0;
  });
  const across = Math.max(...rows.map(({ v, height }) => v + height)) - Math.min(...rows.map(({ v }) => v));
  return Math.max(...along, across);
}

/** The figures a floor is laid by. */
export function floorReasons({ rules }: Plan, saying: Saying): readonly Reason[] {
  return [
    { entry: 'stagger', figure: sayCut(rules.stagger, saying) },
    { entry: 'gap', figure: sayCut(rules.gap, saying) },
    { entry: 'short-end', figure: sayCut(rules.minEnd, saying) },
  ];
}

export function nextFloorRequests(plan: Plan, context: Context): readonly Action[] {
  const patterns = PATTERN_NAMES.filter((name) => name !== plan.rules.pattern.name);
  return [
    ...patterns.map((name) => ({
      label: ACTIONS.pattern(name),
      ask: context.again({ pattern: name }),
      among: ACTIONS.patterns,
    })),
    { label: ACTIONS.direction, ask: context.again({ direction: turned(context.optionTexts.get('direction')) }) },
  ];
}

function turned(direction: string | undefined): string {
  return direction?.trim().toLowerCase() === 'short' ? 'long' : 'short';
}

export default defineCommand({
  group: 'floor',
  name: 'planks',
  summary: 'How many cartons your rooms need, and a row-by-row laying guide',
  phrases: [
    'how many boxes for a 12x14 room, planks 7x48, 10 in a box',
    'boxes needed for 11x13 with 6 inch planks',
    'need to know how many cartons of vinyl plank for my bedroom 10x12',
    'how much flooring do i need for a 15x20 living room',
    '16 by 22 great room how many boxes',
    'how many planks to do a hallway 3 ft by 18 ft',
    'flooring for 3 bedrooms 10x11 12x12 and 13x14, 23.8 sq ft per carton',
    'L shaped room 14x20 minus 4x6, how many boxes',
    'calculate the flooring for my house, rooms are 12x10, 9x9, 20x14',
    'what do i need to order for a room 4.2 m by 3.6 m',
    'how many packs of lvp for 9\'6" x 11\'2"',
    'boxes of laminate for 14x16 at 19.6 sq ft per box',
    'how much plank for bedroom plus closet, 12x13 and 2x6',
    'i have a 10 x 10 room and the planks are 9 by 60',
    'number of cartons for living room 13x21 and dining 10x11',
    'how mny boxs for 12x15 rm',
    'plank count for 8x10 bathroom with 6x36 planks',
    'doing an L shaped family room, how much flooring should i get',
    'what quantity of click vinyl for 18x12',
    'order quantity for basement 24x30, box covers 18.9',
    'how much material for a den 11 ft 4 by 13 ft 9',
    'two bedrooms same size 11x12, boxes?',
    '12x15 bedroom, 7x48 planks ten to a box, how many boxes',
    "how many cartons for the den, it's 13'4\" by 11'8\" and the planks are 9 x 60, six in a carton",
    'boxes for three rooms 10x11, 12x14 and 9x13, planks 6 by 36, 24 sq ft per box',
    'need plank count for a hallway 3 ft 5 by 21 ft with 7 1/8 x 48 boards',
    'lounge is 4.6 x 3.8 m and the boards are 1220 x 180, 10 to a pack, how many packs do i need',
    'figure the boxes for my living room and dining room together, 14x19 and 11x12, same 8.9 inch plank all through',
    'i picked a 5.75 x 47 plank with 12 per box, will be going in a 10 by 16 office',
    'the l shaped family room is 15x20 with a 6x8 corner missing, planks 7x60, eight a box',
    'kitchen 11x13 minus island 3x6, box of 9 planks 7 1/4 by 48',
    'whole upstairs in the same plank, master 13x16, kids 10x11 and 10x12, hall 4x15, how many do i buy',
    'how many 48 inch planks fit in a 9x9 room',
    'master plus walk in closet, 14x15 and 6x7, 23.6 per box, planks seven inches wide',
    'cartons please: 12 ft 7 x 16 ft 2, plank 6 in by 48 in',
    'two identical bedrooms 11 by 12, plank is 9x48 with 7 in the box',
    "work out how many boxes i need, room's 118 by 164 inches and a plank covers 6.8 by 47.6",
    'bathroom 5x8, plank 6x36, how many',
    'going from the front door clear through to the kitchen, 42 ft by 12 ft, seven inch planks',
    'order count for basement rec room 22x27 using 8x72 planks, 5 per carton, 20 sq ft',
    'how many packs of click vinyl for the box room, 2.1 by 2.7 m, pack has 8 boards of 1500 x 220',
    "boxes needed for my sunroom, it's got a slanted wall, 12 on one side and 9 on the other, 14 deep, planks 7x48",
    "i've got a walk-in pantry 4x6 and a mudroom 7x9, same plank 5 by 36",
    "what do i order if the room is 15'10 x 17'3 and planks come 10 in a box at 7 by 48",
    'planks 184 mm x 1219 mm, bedroom 3.3 by 4 metres, number of boxes',
    'how many boxes of the wide stuff, 9 inches by 5 feet, for a 16x21 great room',
    'add up the boxes for living 14x18, hall 3.5x12 and bedroom 11x11 with 6x48 planks 14 each box',
    'room 10x12 planks 7.09x48.03 box of 10',
    'count the boards for a studio apartment 13 x 24, plank 6 in wide 4 ft long',
    'want cartons and how many left over, nursery 9\'8" x 10\'6", 7x48 plank, ten per carton',
    'stairs landing 4x7 and the hall at the top 3x14, boards 7 by 48',
    'the grey oak ones are 48 by 7, ten per box, my room measures 13 by 13',
    'how many boxes does it take with a third offset in a 12x14, planks 48 long 6 wide',
    'boxes for the front room, bay window sticks out 2x6, main part 12x16, planks 9x59',
    'do the numbers for my dining room 11\'2" x 13\'11", planks 5x48 with 16 a box at 26.7 sq ft',
    'buying plank for a camper sized cabin 8x18, 6x36 boards',
    "den 12x12 and its closet 2x5, 7x48, 19.6 sq ft a carton, what's the box count",
    'how many planks am i cutting through for a 17x23 room with 60 inch long 9 inch wide boards',
    "rental has 4 rooms all 10x10, i'm using 6 inch by 4 foot plank, 15 in box",
    'how much of this 7x48 plank goes in a room 14 ft by 12 ft 6',
    "boxes needed, 3 bedrooms, plank's 1285 x 192 mm, rooms 3x3, 3x4 and 2.8x3.5",
    'laying 8 inch plank diagonal in a 12x15, how many boxes',
  ],
  options: z.object(floorOptions),
  examples: [
    {
      ask: `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`,
      headline: 'Buy 10 cartons (100 planks): 92 to lay, 3 for mistakes, 5 left over.',
    },
    {
      ask: 'planks room: living 12x14 + 3x6 closet; hall 3 x 11, plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft, tax: 8%',
      headline: 'Buy 12 cartons (120 planks): 107 to lay, 4 for mistakes, 9 left over. $873.76 with $64.72 tax.',
    },
    {
      ask: 'planks room: 3,8 x 4,2 m, plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton, pattern: thirds',
      headline: 'Buy 11 cartons (88 planks): 81 to lay, 3 for mistakes, 4 left over. €350.90.',
    },
    {
      ask: `planks room: bay walk 12' right 10' right 5' left 4' right 7' right, plank: 6 x 36 in, 12 per carton, kerf: 1/8 in, pattern: offcut-first`,
      headline: 'Buy 9 cartons (108 planks): 99 to lay, 3 for mistakes, 6 left over.',
    },
    {
      ask: "planks room: living 14' x 12' with a bay 8' x 2', plank: 7 x 48 in, 10 per carton, pattern: half",
      headline: 'Buy 9 cartons (90 planks): 79 to lay, 3 for mistakes, 8 left over.',
    },
    {
      ask: "planks room: den walk 10' right 10' right diagonal 2' x 2' 8' right 12' right, plank: 7 x 48 in, 10 per carton, direction: diagonal, pattern: thirds",
      headline: 'Buy 6 cartons (60 planks): 53 to lay, 2 for mistakes, 5 left over.',
    },
    {
      ask: "planks room: hall 3'6\" x 14'; bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, doorways: hall to bedroom 32 in, 18 in from the left corner of wall 4, 12 in from the right of wall 2 of bedroom, runs on",
      headline: 'Buy 10 cartons (100 planks): 90 to lay, 3 for mistakes, 7 left over.',
    },
    {
      ask: "planks room: living 13' x 15', plank: 7 x 48 in, 10 per carton, holes: hearth 5 x 1.5 ft at wall 3, 4' from left; post 4x4 in, 6' from left, 5' from bottom",
      headline: 'Buy 10 cartons (100 planks): 88 to lay, 3 for mistakes, 9 left over.',
    },
    {
      ask: "planks room: den 12' x 10', plank: 3 x 18 in, 24 per carton, no lock, pattern: herringbone with a border of 1, kerf: 1/8 in",
      headline: 'Buy 15 cartons (360 boards): 330 to lay, 10 for mistakes, 20 left over.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? answerHerringbone({ ...options, pattern }, context)
      : answerSurely({ ...options, pattern }, context),
});
