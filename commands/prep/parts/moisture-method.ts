/** How moisture was measured: as told, or as the readings' own unit says. */

import type { Context } from '../../../src/bot/command.ts';
import type { Problem } from '../../../src/reply/problem.ts';
import { MOISTURE_STOPS, type MoistureMethod } from '../../../src/trade/moisture.ts';
import { limitTooWet, methodRead, methodUnit, notLikely } from '../../../src/words/moisture-problems.ts';
import type { MoistureAsk } from './moisture-ask.ts';

/** What meters and tests can show, by method. */
const RANGES: Readonly<Record<MoistureMethod, readonly [least: number, most: number]>> = {
  wood: [1, 60],
  chloride: [0.1, 30],
  rh: [10, 100],
};

const UNITS = { lb: { method: 'chloride', said: 'lb' }, rh: { method: 'rh', said: '% RH' } } as const;

export type MethodRead =
  | { readonly method: MoistureMethod; readonly assumed: readonly string[] }
  | { readonly problem: Problem };

/** The method, with a Problem where told method and unit differ, a reading is none of that method, or wood decays within the limit. */
export function methodOf({ readings, method: told, limit }: MoistureAsk, context: Context): MethodRead {
  const unit = readings.unit && UNITS[readings.unit];
  if (unit && context.told.has('method') && unit.method !== told)
    return { problem: methodUnit(told, unit.said, unit.method) };
  const method = unit?.method ?? told;
  const [least, most] = RANGES[method];
  const odd = readings.values.find((value) => value < least || value > most);
  if (odd !== undefined) {
    const got = { option: 'readings', got: String(odd) };
    return { problem: notLikely(got, least, most, { wood: '10 11 12', chloride: '2.5 lb', rh: '72 % RH' }[method]) };
  }
  const decay = MOISTURE_STOPS.wood.value;
  if (method === 'wood' && limit !== 'usual' && limit >= decay)
    return { problem: limitTooWet({ option: 'limit', got: context.told.get('limit') ?? String(limit) }, decay) };
  return { method, assumed: unit && !context.told.has('method') ? [methodRead(unit.said, method)] : [] };
}
