/** From the options of `floor planks` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { drawPlan, toldPlan } from '../../../src/drawing/floor-plans.ts';
import { floorRules, LONG_RUN, PERIMETER_GAP, PLANK_FIGURES } from '../../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { PATTERN_NAMES } from '../../../src/input/parse-layout.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { Action, Block, Reply } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { ACTIONS, planksHeadline, RULES_TITLE, STEPS, sayFloorRule } from '../../../src/text/floor-text.ts';
import { type Length, TICKS_PER_MM } from '../../../src/units/length.ts';
import { inSteps } from '../../../src/workers/time-limits.ts';
import { brokenBlocks } from './broken.ts';
import { buyFacts, layFacts } from './facts.ts';
import { guideTables, stepsFor } from './guide.ts';
import { keepBlocks, leftoverBlock } from './home-blocks.ts';
import { better, type LaidFloor, layAsk, sayingOf } from './laid.ts';
import { floorNeeds } from './needs.ts';
import { otherWork } from './other-work.ts';
import { otherPatterns } from './others.ts';
import { floorResult } from './result.ts';
import type { PlanksAsk } from './rules.ts';
import { sureBlock } from './sure.ts';
import { wayFact } from './way.ts';

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
  const saying = sayingOf(ask, context);
  await otherWork();
  const drawings = await inSteps(drawPlan(toldPlan(laid.plan, saying)));
  const pictures = drawings.map((drawing) => ({ kind: 'picture' as const, drawing }));
  const [buy, plainly, ...blocks] = reply.blocks;
  // A chat draws the pictures while the rest is worked out.
  if (buy && plainly) yield { ...reply, blocks: [buy, plainly, ...pictures, ...blocks] };
  const others = laid.plan.planks <= COMPARED_PLANKS ? await otherPatterns(laid.areas, ask, laid.plan) : [];
  const told = context.told.has('direction');
  const way = laid.plan.planks <= COMPARED_PLANKS ? await wayFact(first.areas, first.plan, ask, told) : undefined;
  const lay = layFacts(laid, others, saying, way);
  const sure = await sureBlock(ask, laid, saying, first.plan.planks - laid.plan.planks);
  yield { ...reply, blocks: [...(buy ? [buy] : []), sure, lay, ...pictures, ...blocks] };
}

/** What to buy and how to lay it, for a laid floor. */
export function answerPlanks(laid: LaidFloor, ask: PlanksAsk, context: Context): Reply {
  const { plan, purchase, cost, said } = laid;
  const saying = sayingOf(ask, context);
  return {
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
    actions: nextAsks(plan, context),
    audience: 'asker',
    data: floorResult(plan, purchase, cost, laid.home),
    needs: floorNeeds(laid, ask),
  };
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
export function nextAsks(plan: Plan, context: Context): readonly Action[] {
  const patterns = PATTERN_NAMES.filter((name) => name !== plan.rules.pattern.name);
  return [
    ...patterns.map((name) => ({
      label: ACTIONS.pattern(name),
      ask: context.again({ pattern: name }),
      among: ACTIONS.patterns,
    })),
    { label: ACTIONS.direction, ask: context.again({ direction: turned(context.told.get('direction')) }) },
  ];
}

function turned(direction: string | undefined): string {
  return direction?.trim().toLowerCase() === 'short' ? 'long' : 'short';
}
