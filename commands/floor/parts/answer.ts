/** From the options of `floor planks` to its answer. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import { costOf, purchaseOf } from '../../../src/core/cost/carton.ts';
import { directed, largestOf } from '../../../src/core/floor/direction.ts';
import type { Piece, Plan } from '../../../src/core/floor/floor.ts';
import { frameOf } from '../../../src/core/floor/frame.ts';
import { coverable, layFloor } from '../../../src/core/floor/lay.ts';
import { doubleArea } from '../../../src/core/geometry.ts';
import { cents } from '../../../src/core/money.ts';
import { PATTERN_NAMES } from '../../../src/measure/layout.ts';
import { sayMoney } from '../../../src/measure/say.ts';
import { type Saying, sayLength } from '../../../src/measure/say-length.ts';
import type { Action, Block } from '../../../src/reply/reply.ts';
import { floorRules } from '../../../src/trade/floor-rule.ts';
import { LONG_RUN, PLANK_FIGURES } from '../../../src/trade/planks.ts';
import { cautionsFor } from '../../../src/trade/safety.ts';
import { worded } from '../../../src/words/cautions.ts';
import { ACTIONS, BUY, planksHeadline, RULES_TITLE, STEPS } from '../../../src/words/floor.ts';
import { gapLeavesNothing, noSuchWall, tooManyPlanks } from '../../../src/words/floor-problems.ts';
import { sayFloorRule } from '../../../src/words/floor-rules.ts';
import { brokenBlock } from './broken.ts';
import { buyFacts, layFacts } from './facts.ts';
import { guideTables } from './guide.ts';
import { otherPatterns } from './others.ts';
import { type Cost, floorResult } from './result.ts';
import { type PlanksAsk, rulesOf } from './rules.ts';

/** Beyond this many planks an ask is refused: no home has them, and a slip of a unit has. */
const MOST_PLANKS = 100_000;
/** Other patterns are laid for comparison up to this many planks: beyond, the answer itself comes first. */
const COMPARED_PLANKS = 1500;

/** Lays the rooms and says what to buy and how; a Problem where the walls or the gap leave no floor to lay. */
export function answerPlanks(ask: PlanksAsk, context: Context): Outcome {
  const saying: Saying = { units: ask.room.units, decimal: context.habits.decimal };
  const { plank } = ask.plank;
  const rules = rulesOf(ask);
  const areas = directed(ask.room.rooms, ask.direction);
  if (!areas) {
    const largest = largestOf(ask.room.rooms);
    return { problems: [noSuchWall(context.told.get('direction') ?? '', largest.name, largest.outline.length)] };
  }
  const about =
    Number(areas.reduce((sum, { region }) => sum + doubleArea(region.outline), 0n)) / 2 / plank.width / plank.length;
  if (about > MOST_PLANKS)
    return { problems: [tooManyPlanks(Math.round(about), MOST_PLANKS, '6 x 48 in, 10 per carton')] };
  const covered = areas.find(({ region, angle }) => coverable(region, frameOf(region, angle), rules.gap).length === 0);
  if (covered) return { problems: [gapLeavesNothing(covered.region.name, sayLength(rules.gap, saying))] };

  const plan = layFloor(areas, plank, rules);
  const purchase = purchaseOf(plan.planks, ask.mistakes, ask.spares, plank.perCarton);
  const price = ask.plank.cartonPrice;
  const cost = price && costOf(purchase.cartons, price.cents, ask.tax);
  const said = cost && price && sayCost(cost, price.currency, ask.tax, saying);
  return {
    headline: planksHeadline({ ...purchase, perCarton: plank.perCarton }, said),
    blocks: [
      buyFacts(plan, purchase, said, saying),
      layFacts(plan, about <= COMPARED_PLANKS ? otherPatterns(areas, ask, plan) : [], saying),
      ...brokenBlock(plan, saying),
      { kind: 'steps', title: STEPS.title, steps: STEPS[plank.lock] },
      ...guideTables(plan, saying),
      rulesBlock(plan, purchase.cartons, ask.plank.attachedPad),
    ],
    assumed: context.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: nextAsks(plan, context),
    audience: 'asker',
    data: floorResult(plan, purchase, cost),
  };
}

/** Price and tax in words. */
function sayCost(cost: Cost, currency: string, tax: number, saying: Saying): string {
  const net = cents(cost.cents);
  if (tax === 0) return sayMoney(net, currency, saying);
  return BUY.taxed(
    sayMoney(cents(cost.cents + cost.tax), currency, saying),
    sayMoney(cents(cost.tax), currency, saying),
  );
}

/** Floor rules that touch this ask. */
function rulesBlock(plan: Plan, cartons: number, attachedPad: boolean | undefined): Block {
  const longest = Math.max(...plan.regions.flatMap(({ rows }) => rows.map(({ pieces }) => longestRun(pieces))));
  const longRun = longest >= LONG_RUN.value;
  const items = floorRules({ lock: plan.plank.lock, attachedPad, cartons, longRun }).map(sayFloorRule);
  return { kind: 'checklist', title: RULES_TITLE, items };
}

/** From the first piece to the last: never less than the longest run. */
function longestRun(pieces: readonly Piece[]): number {
  const last = pieces.at(-1);
  return last ? last.u + last.length - (pieces[0]?.u ?? 0) : 0;
}

function nextAsks(plan: Plan, context: Context): readonly Action[] {
  const patterns = PATTERN_NAMES.filter((name) => name !== plan.rules.pattern.name);
  return [
    ...patterns.map((name) => ({ label: ACTIONS.pattern(name), ask: context.again({ pattern: name }) })),
    { label: ACTIONS.direction, ask: context.again({ direction: turned(context.told.get('direction')) }) },
  ];
}

function turned(direction: string | undefined): string {
  return direction?.trim().toLowerCase() === 'short' ? 'long' : 'short';
}
