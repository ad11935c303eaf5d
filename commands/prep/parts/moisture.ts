/** From the options of `prep moisture` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import {
  CONCRETE_TESTS,
  DRY_WITHIN,
  MOISTURE_LIMITS,
  MOISTURE_SPREAD,
  MOISTURE_STOPS,
  MOULD_AREA,
  type MoistureKind,
  moistureFigures,
  WOOD_READINGS,
} from '../../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import type { Saying } from '../../../src/input/format.ts';
import { moistureVerdict, readingsByArea, testsByArea } from '../../../src/prep/dryness.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { referral } from '../../../src/text/found-text.ts';
import { MOISTURE } from '../../../src/text/prep-text.ts';
import { SQUARE_TICKS_PER_SQUARE_FOOT } from '../../../src/units/length.ts';
import type { MoistureAsk } from './moisture-ask.ts';
import { methodOf } from './moisture-method.ts';
import { leakBlocks, moistureFacts, moistureHeadline, moistureSteps } from './moisture-say.ts';
import { refusal, refusalFor } from './patch-screen.ts';

/** Result data of kind `moisture`: the limit in the method's own unit. */
export interface MoistureResult extends Result {
  readonly kind: 'moisture';
  readonly verdict: 'accept' | 'wait' | 'stop';
  readonly limit: number;
  readonly readings: number;
  readonly required: number;
}

/** Accept, wait or stop, and why; a refusal for sewage, for much mould and for whatever else is unsafe. */
export function answerMoisture(ask: MoistureAsk, context: Context): Outcome {
  const { readings, area, found, water, mould } = ask;
  const refused = refusalFor(readings.found, area.found, mould.found, found);
  if (refused) return refused;
  if (water === 'sewage' || water === 'unsure')
    return refusal(referral([water]), water === 'sewage' ? 'sewage' : 'water');
  // A stretch of mould told by its length alone is taken as wide as it is long.
  const spread = mould.line === undefined ? mould.area : BigInt(mould.line) ** 2n;
  if (spread >= BigInt(MOULD_AREA.value) * SQUARE_TICKS_PER_SQUARE_FOOT) return refusal(referral(['mould']), 'mold');
  const method = methodOf(ask, context);
  if ('problem' in method) return { problems: [method.problem] };
  const { kind } = method;
  const limit = ask.limit === 'usual' ? MOISTURE_LIMITS[kind].value : ask.limit;
  const required = requiredFor(kind, area.area);
  const most = MOISTURE_SPREAD.value[ask.boards];
  const { verdict, flaws } = moistureVerdict({
    readings: readings.values,
    limit,
    // A maker who allows more than usual moves the stop with the limit.
    stop: Math.max(MOISTURE_STOPS[kind].value, limit),
    required,
    ...(ask.flooring !== 'none' && kind === 'wood' && { flooring: { moisture: ask.flooring, most } }),
    ...(ask.leak !== 'none' && { leak: { hours: ask.leak, dryWithin: DRY_WITHIN.value.to } }),
  });
  const saying: Saying = context.habits;
  const known = { kind, limit, required, verdict, flaws };
  const data: MoistureResult = { kind: 'moisture', verdict, limit, readings: readings.values.length, required };
  const areaUntold = MOISTURE.areaUntold[kind === 'wood' ? 'wood' : 'concrete'];
  return {
    headline: moistureHeadline(ask, known, saying),
    blocks: [moistureFacts(ask, known, saying), moistureSteps(ask, known), ...leakBlocks(ask)],
    assumed: [...context.assumed, ...method.assumed, ...(area.area === 0n ? [areaUntold] : [])],
    cautions: worded(cautionsOf(kind)),
    sources: moistureFigures(kind).map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data,
  };
}

/** What can hurt who measures: water and mould; on concrete also the dust of the holes that probes go into, and what lies in it. */
function cautionsOf(kind: MoistureKind) {
  const topics = ['leak-water', 'mould', ...(kind === 'wood' ? [] : ['asbestos', 'hidden-lines'])];
  const silica = kind === 'wood' ? [] : cautionsFor('levelling').filter(({ topic }) => topic === 'silica');
  return [...cautionsFor('leak').filter(({ topic }) => topics.includes(topic)), ...silica];
}

function requiredFor(kind: MoistureKind, area: bigint): number {
  if (kind === 'wood' && area === 0n) return 1;
  if (kind === 'wood') return readingsByArea(area, WOOD_READINGS.value.count, WOOD_READINGS.value.squareFeet);
  const { first, more, squareFeet } = CONCRETE_TESTS.value;
  return testsByArea(area, first, more, squareFeet);
}
