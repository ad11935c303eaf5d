/** `floor planks`: how many cartons of a plank the rooms need, and how to lay them. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawPlan, planAsGiven } from '../../src/drawing/floor-plans.ts';
import { floorRules, LONG_RUN, PERIMETER_GAP, PLANK_FIGURES } from '../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { PATTERN_NAMES } from '../../src/input/parse-layout.ts';
import { purchaseOf } from '../../src/layout/cartons.ts';
import type { CoveredArea } from '../../src/layout/covered-area.ts';
import { betterWay, quarterTurned } from '../../src/layout/direction.ts';
import type { Plan } from '../../src/layout/floor.ts';
import { type Action, type Block, type Fact, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { ACTIONS, LAY, planksHeadline, RULES_TITLE, STEPS, sayFloorRule, WAY } from '../../src/text/floor-text.ts';
import { type Length, TICKS_PER_MM } from '../../src/units/length.ts';
import { layAway } from '../../src/workers/solve.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { buyFacts, floorNeeds, keepBlocks, layFacts, leftoverBlock } from './floor-facts.ts';
import { answerHerringbone } from './floor-herringbone.ts';
import { brokenBlocks, floorOptions, type PlanksAsk, patternOf } from './floor-options.ts';
import { guideTables, stepsFor } from './guide.ts';
import { better, floorFormat, floorResult, type LaidFloor, layAsk, otherWork } from './lay.ts';
import { sureBlock } from './sure.ts';

// What the same floor needs in the other patterns, in a phrase each.

/** One phrase a pattern other than the plan's, with planks, cartons and broken rules. */
async function otherPatterns(areas: readonly CoveredArea[], ask: PlanksAsk, plan: Plan): Promise<readonly string[]> {
  const { plank, rules } = plan;
  const hard = hardBreaks(plan);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const phrases: string[] = [];
  for (const name of PATTERN_NAMES.filter((one) => one !== rules.pattern.name)) {
    await otherWork();
    const pattern = patternOf({ name }, plank, rules.stagger, ask.room.units);
    const other = await layAway(areas, plank, { ...rules, pattern }, plan.planks);
    const cartons = cartonsOf(other.planks);
    const broken = hardBreaks(other);
    phrases.push(
      LAY.other(name, other.planks, cartons, cartonsOf(plan.planks) - cartons, broken, hard > 0 && broken === 0),
    );
  }
  return phrases;
}

function hardBreaks(plan: Plan): number {
  return plan.broken.filter(({ rule }) => rule !== 'pattern').length;
}

// Which way the rows had better run, as a fact: both ways laid by the quick answer.

/**
 * The fact, for a floor's first plan; none where rooms run each their own way. A way that was `told` is kept, and the other
 * one only mentioned.
 */
async function wayFact(
  areas: readonly CoveredArea[],
  first: Plan,
  ask: PlanksAsk,
  given: boolean,
): Promise<Fact | undefined> {
  if (ask.direction.kind === 'each') return undefined;
  const { plank, rules } = first;
  const other = await layAway(quarterTurned(areas), plank, rules, first.planks);
  const cartonsOf = (planks: number): number => purchaseOf(planks, ask.mistakes, ask.spares, plank.perCarton).cartons;
  const here = { plan: first, cartons: cartonsOf(first.planks) };
  const there = { plan: other, cartons: cartonsOf(other.planks) };
  const { turned, reasons } = betterWay(here, there);
  const why = reasons.map(WAY.reason);
  const otherTakes = { planks: other.planks, cartons: there.cartons };
  return { label: WAY.label, value: turned ? WAY.turn(given, otherTakes, why) : WAY.stay(given, otherTakes, why) };
}

// From the options of `floor planks` to its answer.

/** Other patterns are laid for comparison up to this many planks: beyond, the answer itself comes first. */
const COMPARED_PLANKS = 1500;

/** A first answer at once, then the same with its pictures, then with how sure it is and other patterns. */
export async function* answerSurely(ask: PlanksAsk, context: Context): AsyncGenerator<Outcome> {
  const first = await layAsk(ask, context);
  if ('problems' in first) {
    yield first;
    return;
  }
  yield answerPlanks(first, ask, context);
  let laid = first;
  for await (const next of better(first, ask, context)) {
    if (next.searching && next.plan.planks < laid.plan.planks) yield answerPlanks(next, ask, context);
    laid = next;
  }
  await otherWork();
  const reply = answerPlanks(laid, ask, context);
  const saying = floorFormat(ask, context);
  await otherWork();
  const drawings = await inSteps(drawPlan(planAsGiven(laid.plan, saying)));
  const pictures = drawings.map((drawing) => ({ kind: 'picture' as const, drawing }));
  const [buy, plainly, ...blocks] = reply.blocks;
  // A chat draws the pictures while the rest is worked out.
  if (buy && plainly) yield { ...reply, blocks: [buy, plainly, ...pictures, ...blocks] };
  const others = laid.plan.planks <= COMPARED_PLANKS ? await otherPatterns(laid.areas, ask, laid.plan) : [];
  const given = context.optionTexts.has('direction');
  const way = laid.plan.planks <= COMPARED_PLANKS ? await wayFact(first.areas, first.plan, ask, given) : undefined;
  const lay = layFacts(laid, others, saying, way);
  const sure = await sureBlock(ask, laid, saying, first.plan.planks - laid.plan.planks);
  yield { ...reply, blocks: [...(buy ? [buy] : []), sure, lay, ...pictures, ...blocks] };
}

/** What to buy and how to lay it, for a laid floor. */
export function answerPlanks(laid: LaidFloor, ask: PlanksAsk, context: Context): Reply {
  const { plan, purchase, cost, said } = laid;
  const saying = floorFormat(ask, context);
  return reply({
    headline: planksHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said),
    blocks: [
      buyFacts(laid, saying),
      layFacts(laid, [], saying),
      ...brokenBlocks(plan, saying),
      { kind: 'steps', title: STEPS.title, steps: stepsFor(plan) },
      ...keepBlocks(laid, saying),
      ...guideTables(plan, saying),
      leftoverBlock(laid, saying),
      rulesBlock(plan, purchase.cartons, ask.plank.attachedPad),
    ],
    assumed: laid.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: nextFloorRequests(plan, context),
    data: floorResult(plan, purchase, cost, laid.home),
    needs: floorNeeds(laid, ask),
  });
}

/** Floor rules that touch this ask. */
function rulesBlock(plan: Plan, cartons: number, attachedPad: boolean | undefined): Block {
  const longRun = plan.regions.some(({ rows }) => longestSpan(rows) >= LONG_RUN.value);
  const smallGap = plan.rules.gap < wholeMillimetres(PERIMETER_GAP.value);
  const items = floorRules({ lock: plan.plank.lock, attachedPad, cartons, longRun, smallGap }).map(sayFloorRule);
  return { kind: 'checklist', title: RULES_TITLE, items };
}

/** A metric tape shows no finer: 6 mm is the standard gap there. */
function wholeMillimetres(length: Length): number {
  return Math.floor(length / TICKS_PER_MM) * TICKS_PER_MM;
}

/** From the first piece of a row to its last, or across the rows, whichever is longer: never less than the longest run. */
function longestSpan(rows: Plan['regions'][number]['rows']): number {
  const along = rows.map(({ pieces }) => {
    const last = pieces.at(-1);
    return last ? last.u + last.length - (pieces[0]?.u ?? 0) : 0;
  });
  const across = Math.max(...rows.map(({ v, height }) => v + height)) - Math.min(...rows.map(({ v }) => v));
  return Math.max(...along, across);
}

/** The same floor in the other patterns, and with its rows turned. */
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
  summary: 'Cartons of plank for your rooms, and a laying guide row by row',
  options: z.object(floorOptions),
  examples: [
    {
      ask: `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`,
      headline: 'Buy 10 cartons (100 planks): 92 to lay, 3 for mistakes, 5 left over.',
    },
    {
      ask: 'planks room: living 12x14 + 3x6 closet; hall 3 x 11, plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft, tax: 8 %',
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
