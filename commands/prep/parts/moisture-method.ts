/** How moisture was measured and which limit is for it: as told, or as the readings' own unit says; never guessed on concrete. */

import type { Context } from '../../../src/chat/command.ts';
import {
  MOISTURE_RANGES,
  MOISTURE_STOPS,
  type MoistureKind,
  type MoistureMethod,
} from '../../../src/figures/moisture-figures.ts';
import { type Mineral, mineralIn } from '../../../src/input/parse-moisture.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import {
  limitTooWet,
  METHOD_TAKEN,
  methodForWood,
  methodRead,
  methodUnit,
  notLikely,
  whichScreed,
  whichTest,
} from '../../../src/text/prep-problems-text.ts';
import type { MoistureAsk } from './moisture-ask.ts';

const UNITS = {
  lb: { method: 'chloride', said: 'lb' },
  rh: { method: 'rh', said: '% RH' },
  cm: { method: 'cm', said: '% CM' },
} as const;

export type MethodRead =
  | { readonly kind: MoistureKind; readonly method: MoistureMethod; readonly assumed: readonly string[] }
  | { readonly problem: Problem };

/**
 * The method and the kind of limit. A Problem where the readings are on concrete and no test for it is named, where what was
 * told does not go together, where a reading is none of that method, or where the limit is one that wood must stay below.
 */
export function methodOf(ask: MoistureAsk, context: Context): MethodRead {
  const { readings, method: told, limit } = ask;
  const unit = readings.unit && UNITS[readings.unit];
  if (unit && context.told.has('method') && unit.method !== told)
    return { problem: methodUnit(told, unit.said, unit.method) };
  const method = unit?.method ?? told;
  const mineral = mineralOf(ask, context);
  const got = { option: 'readings', got: context.told.get('readings') ?? '' };
  if (mineral && method === 'wood') return { problem: whichTest({ ...got, option: 'method' }, mineral) };
  if (ask.floor === 'wood' && method !== 'wood')
    return { problem: methodForWood({ option: 'method', got: context.told.get('method') ?? got.got }) };
  const { least, most } = MOISTURE_RANGES[method].value;
  const odd = readings.values.find((value) => value < least || value > most);
  if (odd !== undefined) return { problem: notLikely({ option: 'readings', got: String(odd) }, least, most) };
  const kind = method === 'cm' ? screedOf(mineral, limit) : method;
  if (!kind) return { problem: whichScreed({ option: 'floor', got: context.told.get('floor') ?? got.got }) };
  const keepBelow = MOISTURE_STOPS.wood.value;
  if (kind === 'wood' && limit !== 'usual' && limit >= keepBelow)
    return { problem: limitTooWet({ option: 'limit', got: context.told.get('limit') ?? String(limit) }, keepBelow) };
  const taken = kind === 'wood' && ask.floor === 'untold' && !context.told.has('method') ? [METHOD_TAKEN] : [];
  const read = unit && !context.told.has('method') ? [methodRead(unit.said, method)] : taken;
  return { kind, method, assumed: read };
}

/** The mineral base that any option names. */
function mineralOf({ floor }: MoistureAsk, { told }: Context): Mineral | undefined {
  if (floor !== 'untold' && floor !== 'wood') return floor;
  const texts = [...told].flatMap(([option, text]) => (['method', 'limit', 'floor'].includes(option) ? [] : [text]));
  return mineralIn(texts.join(' ; '));
}

/** What binds a screed decides its limit; undefined where that is not told and no limit of the maker's is. */
function screedOf(mineral: Mineral | undefined, limit: number | 'usual'): 'cement' | 'gypsum' | undefined {
  if (mineral === 'gypsum') return 'gypsum';
  return mineral === 'concrete' || limit !== 'usual' ? 'cement' : undefined;
}
