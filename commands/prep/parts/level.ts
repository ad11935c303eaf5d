/** From the options of `prep level` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import {
  FLATNESS_FIGURES,
  FLOATING_FLATNESS,
  FLOATING_FLATNESS_METRIC,
  HEAVIEST_FILL,
  NAILED_FLATNESS,
  NAILED_FLATNESS_METRIC,
} from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { ToldRule } from '../../../src/input/parse-flatness.ts';
import { mineralIn } from '../../../src/input/parse-moisture.ts';
import type { Units } from '../../../src/input/reading.ts';
import { bagsFor, type DipVerdict, type FlatLimit } from '../../../src/prep/flatness.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { LEVEL } from '../../../src/text/prep-text.ts';
import type { LevelAsk } from './level-ask.ts';
import { fillFacts, fillOf, sayLitres, sayLoad, sayRange } from './level-fill.ts';
import { flatFacts, flatOf, hasHigh, highSteps } from './level-flat.ts';
import { levelNeeds } from './level-needs.ts';
import { loadRange, stopRefusal, verdictOf } from './level-stop.ts';
import { refusal, refusalOnPanel } from './patch-screen.ts';

/** Litres of filling, bags and kilograms of powder. */
interface Amount {
  readonly litres: number;
  readonly bags: number;
  readonly kilograms: number;
}

/** Result data of kind `level`: for the fullest shape a dip may have, and for the emptiest. */
export interface LevelResult extends Result, Amount {
  readonly kind: 'level';
  readonly flat: boolean;
  readonly least: Amount;
  /** Whether it may be filled, or its shape is measured first. */
  readonly verdict: DipVerdict;
}

/** Flat enough or not, and what fills it; a refusal where something unsafe was told. */
export function answerLevel(told: LevelAsk, context: Context): Outcome {
  const slab = !context.told.has('floor') && isSlab(context.told.get('readings') ?? '');
  const ask: LevelAsk = slab ? { ...told, floor: 'concrete' } : told;
  const refused = refusalOnPanel(ask.readings.found, ask.area.found, ask.found);
  if (refused) return refused;
  if (ask.floor === 'old' && hasHigh(ask.readings)) return refusal(LEVEL.oldFloor, 'asbestos');
  const saying: Saying = { units: ask.readings.units, decimal: context.habits.decimal };
  const limits = limitsOf(ask.rule, saying.units);
  const flatness = flatOf(ask, limits);
  const fill = fillOf(ask);
  const verdict = verdictOf(ask, fill, flatness.flat);
  const floorTold = slab || context.told.has('floor');
  if (verdict === 'stop') return stopRefusal(ask, fill, flatness.worst(saying), floorTold, saying);
  const [least, most] = [bagsFor(fill.least, ask.bag), bagsFor(fill.litres, ask.bag)];
  const rule = limits.map(({ gap, over }) => LEVEL.ruleOf(sayLength(gap, saying), sayLength(over, saying)));
  const floor = ask.floor === 'concrete' ? 'concrete' : 'wood';
  const needs = verdict === 'fill' ? levelNeeds(ask, fill, saying) : [];
  const bags = sayRange(String(least.bags), String(most.bags));
  const amount = { bags, one: bags === '1', litres: sayLitres(fill, saying) };
  const measure = LEVEL.measureFirst(loadRange(fill, saying) ?? '', sayLoad(HEAVIEST_FILL.value, saying));
  const toFill = fill.litres > 0 ? (flatness.flat ? LEVEL.noFill : LEVEL.fill)(amount) : undefined;
  const data: LevelResult = {
    kind: 'level',
    flat: flatness.flat,
    litres: fill.litres,
    ...most,
    least: { litres: fill.least, ...least },
    verdict,
  };
  return {
    headline: LEVEL.headline(
      flatness.flat,
      flatness.worst(saying),
      rule.join(LEVEL.or),
      verdict === 'measure' ? measure : toFill,
    ),
    blocks: [
      flatFacts(flatness, rule.join(LEVEL.or), saying),
      ...(verdict === 'measure' ? [{ kind: 'text' as const, text: LEVEL.measureHow }] : []),
      fillFacts(ask, fill, verdict, saying),
      ...highSteps(ask, limits, saying),
      ...(verdict === 'measure'
        ? []
        : [{ kind: 'steps' as const, title: LEVEL.stepsTitle, steps: LEVEL.steps[floor] }]),
    ],
    assumed: [
      ...context.assumed,
      ...(slab ? [LEVEL.slabRead] : []),
      ...(floorTold ? [] : [LEVEL.floorTaken]),
      ...flatness.assumed(saying),
    ],
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

/** Whether the readings say that they are of a slab; a board of cement lies on wood. */
function isSlab(readings: string): boolean {
  const mineral = mineralIn(readings);
  return (
    (mineral === 'concrete' || mineral === 'screed') &&
    !/board|backer|over (?:wood|ply)|on (?:wood|ply)|joist/i.test(readings)
  );
}

function limitsOf(rule: ToldRule, units: Units): readonly [FlatLimit, ...FlatLimit[]] {
  if (rule.name === 'own') return [{ gap: rule.gap, over: rule.over }];
  const metric = units === 'metric';
  const floating = metric ? FLOATING_FLATNESS_METRIC : FLOATING_FLATNESS;
  const nailed = metric ? NAILED_FLATNESS_METRIC : NAILED_FLATNESS;
  const [first, ...rest] = (rule.name === 'floating' ? floating : nailed).value;
  if (!first) throw new RangeError('a rule without limits');
  return [first, ...rest];
}
