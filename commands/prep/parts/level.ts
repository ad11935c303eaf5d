/** From the options of `prep level` to its answer. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import { bagsFor } from '../../../src/core/subfloor/fill.ts';
import type { FlatLimit } from '../../../src/core/subfloor/flatness.ts';
import type { ToldRule } from '../../../src/measure/readings-rule.ts';
import { sayNumber } from '../../../src/measure/say.ts';
import { type Saying, sayLength } from '../../../src/measure/say-length.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { FLATNESS_FIGURES, FLOATING_FLATNESS, NAILED_FLATNESS } from '../../../src/trade/flatness.ts';
import { cautionsFor } from '../../../src/trade/safety.ts';
import { worded } from '../../../src/words/cautions.ts';
import { LEVEL } from '../../../src/words/level.ts';
import type { LevelAsk } from './level-ask.ts';
import { fillFacts, fillOf } from './level-fill.ts';
import { flatFacts, flatOf, hasHigh, highSteps } from './level-flat.ts';
import { levelNeeds } from './level-needs.ts';
import { refusal, refusalOnPanel } from './patch-screen.ts';

/** Result data of kind `level`: litres and kilograms of powder. */
export interface LevelResult extends Result {
  readonly kind: 'level';
  readonly flat: boolean;
  readonly litres: number;
  readonly bags: number;
  readonly kilograms: number;
}

/** Flat enough or not, and what fills it; a refusal where something unsafe was told. */
export function answerLevel(ask: LevelAsk, context: Context): Outcome {
  const refused = refusalOnPanel(ask.readings.found, ask.area.found, ask.found);
  if (refused) return refused;
  if (ask.floor === 'old' && hasHigh(ask.readings)) return refusal(LEVEL.oldFloor);
  const saying: Saying = { units: ask.readings.units, decimal: context.habits.decimal };
  const limits = limitsOf(ask.rule);
  const flatness = flatOf(ask, limits);
  const fill = fillOf(ask);
  const { bags, kilograms } = bagsFor(fill.litres, ask.bag);
  const said = sayNumber(fill.litres, saying, 1);
  const told = fill.litres > 0 ? (flatness.flat ? LEVEL.noFill : LEVEL.fill)(bags, said) : undefined;
  const needs = levelNeeds(ask, fill, saying);
  const rule = limits.map(({ gap, over }) => LEVEL.ruleOf(sayLength(gap, saying), sayLength(over, saying)));
  const floor = ask.floor === 'concrete' ? 'concrete' : 'wood';
  const data: LevelResult = { kind: 'level', flat: flatness.flat, litres: fill.litres, bags, kilograms };
  return {
    headline: LEVEL.headline(flatness.flat, flatness.worst(saying), rule.join(LEVEL.or), told),
    blocks: [
      flatFacts(flatness, rule.join(LEVEL.or), saying),
      fillFacts(ask, fill, bags, kilograms, saying),
      ...highSteps(ask, limits, saying),
      { kind: 'steps', title: LEVEL.stepsTitle, steps: LEVEL.steps[floor] },
      ...(fill.deep && floor === 'wood' ? [{ kind: 'text' as const, text: LEVEL.deep }] : []),
    ],
    assumed: [...context.assumed, ...flatness.assumed(saying)],
    cautions: worded([
      ...cautionsFor('subfloor'),
      ...cautionsFor('sanding').filter(({ topic }) => topic === 'silica' || topic === 'lead'),
    ]),
    sources: FLATNESS_FIGURES.map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data,
    ...(needs.length > 0 && { needs }),
  };
}

function limitsOf(rule: ToldRule): readonly [FlatLimit, ...FlatLimit[]] {
  if (rule.name === 'own') return [{ gap: rule.gap, over: rule.over }];
  const [first, ...rest] = (rule.name === 'floating' ? FLOATING_FLATNESS : NAILED_FLATNESS).value;
  if (!first) throw new RangeError('a rule without limits');
  return [first, ...rest];
}
