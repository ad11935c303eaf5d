/** A moisture answer in words: the headline, the facts, and what a leak asks for. */

import type { MoistureFlaw, Verdict } from '../../../src/core/subfloor/moisture.ts';
import { sayNumber } from '../../../src/measure/say.ts';
import type { Saying } from '../../../src/measure/say-length.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import {
  DRY_WITHIN,
  MOISTURE_LIMITS,
  MOISTURE_SPREAD,
  MOISTURE_STOPS,
  type MoistureMethod,
} from '../../../src/trade/moisture.ts';
import { MOISTURE } from '../../../src/words/moisture.ts';
import { saySource } from '../../../src/words/sources.ts';
import type { MoistureAsk } from './moisture-ask.ts';

/** What was worked out. */
export interface Known {
  readonly method: MoistureMethod;
  readonly limit: number;
  readonly required: number;
  readonly verdict: Verdict;
  readonly flaws: readonly MoistureFlaw[];
}

function sayMoisture(value: number, method: MoistureMethod, saying: Saying): string {
  return `${sayNumber(value, saying)} ${{ wood: '%', chloride: 'lb', rh: '% RH' }[method]}`;
}

/** The verdict and its first reason. */
export function moistureHeadline({ readings }: MoistureAsk, known: Known, saying: Saying): string {
  const { method, limit, required, verdict, flaws } = known;
  const worst = sayMoisture(Math.max(...readings.values), method, saying);
  const said = sayMoisture(limit, method, saying);
  const [flaw] = flaws;
  if (verdict === 'accept' || flaw === undefined) return MOISTURE.headline.accept(worst, said);
  const why =
    flaw === 'too-few' ? MOISTURE.flaw['too-few'](required - readings.values.length) : MOISTURE.flaw[flaw](worst, said);
  return MOISTURE.headline[verdict](why);
}

/** Readings, limit and its source, and the flooring's own moisture. */
export function moistureFacts(ask: MoistureAsk, known: Known, saying: Saying): Block {
  const { method, limit, required, verdict, flaws } = known;
  const { values } = ask.readings;
  const say = (value: number): string => sayMoisture(value, method, saying);
  const source = ask.limit === 'usual' ? saySource(MOISTURE_LIMITS[method].source) : MOISTURE.own;
  const others = flaws.slice(1).filter((flaw) => flaw === 'apart' || flaw === 'too-few');
  const facts: readonly Fact[] = [
    { label: MOISTURE.method, value: MOISTURE.methods[method] },
    { label: MOISTURE.count, value: MOISTURE.countOf(values.length, required) },
    { label: MOISTURE.range, value: `${say(Math.min(...values))}, ${say(Math.max(...values))}` },
    { label: MOISTURE.limit, value: `${say(limit)} (${source})` },
    ...(verdict === 'accept' ? [] : [{ label: MOISTURE.stop, value: MOISTURE_STOPS[method].said }]),
    ...(ask.flooring === 'none' || method !== 'wood'
      ? []
      : [
          {
            label: MOISTURE.flooring,
            value: MOISTURE.flooringOf(say(ask.flooring), String(MOISTURE_SPREAD.value[ask.boards])),
          },
        ]),
    ...others.map((flaw) => ({
      label: MOISTURE.also,
      value: flaw === 'apart' ? MOISTURE.flaw.apart() : MOISTURE.flaw['too-few'](required - values.length),
    })),
  ];
  return { kind: 'facts', title: MOISTURE.title, facts };
}

/** The checklist after a leak, and what grey water asks for. */
export function leakBlocks({ leak, water }: MoistureAsk): readonly Block[] {
  if (leak === 'none' && water === 'none') return [];
  const left = leak === 'none' ? DRY_WITHIN.value.to : Math.floor(DRY_WITHIN.value.to - leak);
  const items = MOISTURE.leak(left > 0 ? MOISTURE.hours(left) : undefined);
  return [
    { kind: 'checklist', title: MOISTURE.leakTitle, items: water === 'grey' ? [MOISTURE.grey, ...items] : items },
  ];
}
