/** A moisture answer in words: the headline, the facts, and what a leak asks for. */

import {
  DRY_WITHIN,
  MOISTURE_LIMITS,
  MOISTURE_SPREAD,
  MOISTURE_STOPS,
  type MoistureKind,
} from '../../../src/figures/moisture-figures.ts';
import { type Saying, sayNumber } from '../../../src/input/format.ts';
import type { MoistureFlaw, Verdict } from '../../../src/prep/dryness.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { saySource } from '../../../src/text/help-text.ts';
import { MOISTURE } from '../../../src/text/prep-text.ts';
import type { MoistureAsk } from './moisture-ask.ts';

/** What was worked out. */
export interface Known {
  readonly kind: MoistureKind;
  readonly limit: number;
  readonly required: number;
  readonly verdict: Verdict;
  readonly flaws: readonly MoistureFlaw[];
}

const UNIT_NAMES: Readonly<Record<MoistureKind, string>> = {
  wood: '%',
  chloride: 'lb',
  rh: '% RH',
  cement: '% CM',
  gypsum: '% CM',
};

function sayMoisture(value: number, kind: MoistureKind, saying: Saying): string {
  return `${sayNumber(value, saying)} ${UNIT_NAMES[kind]}`;
}

/** The verdict and its first reason. */
export function moistureHeadline({ readings }: MoistureAsk, known: Known, saying: Saying): string {
  const { kind, limit, required, verdict, flaws } = known;
  const worst = sayMoisture(Math.max(...readings.values), kind, saying);
  const said = sayMoisture(limit, kind, saying);
  const [flaw] = flaws;
  if (verdict === 'accept' || flaw === undefined) return MOISTURE.headline.accept(worst, said);
  const why =
    flaw === 'too-few'
      ? MOISTURE.flaw['too-few'](required - readings.values.length, kind !== 'wood')
      : MOISTURE.flaw[flaw](worst, said);
  return MOISTURE.headline[verdict](why);
}

/** Readings, limit and its source, and the flooring's own moisture. */
export function moistureFacts(ask: MoistureAsk, known: Known, saying: Saying): Block {
  const { kind, limit, required, flaws } = known;
  const { values } = ask.readings;
  const say = (value: number): string => sayMoisture(value, kind, saying);
  const source = ask.limit === 'usual' ? saySource(MOISTURE_LIMITS[kind].source) : MOISTURE.own;
  const plank =
    ask.limit === 'usual' && flaws.includes('over') && (kind === 'rh' || kind === 'chloride')
      ? [{ label: MOISTURE.plank, value: MOISTURE.plankOf[kind] }]
      : [];
  const others = flaws.slice(1).filter((flaw) => flaw === 'apart' || flaw === 'too-few');
  const facts: readonly Fact[] = [
    { label: MOISTURE.method, value: MOISTURE.methods[kind] },
    { label: MOISTURE.count, value: MOISTURE.countOf(values.length, required) },
    { label: MOISTURE.range, value: `${say(Math.min(...values))}, ${say(Math.max(...values))}` },
    { label: MOISTURE.limit, value: `${say(limit)} (${source})` },
    ...plank,
    ...(flaws.includes('over') ? [{ label: MOISTURE.stop, value: MOISTURE_STOPS[kind].said }] : []),
    ...(ask.flooring === 'none' || kind !== 'wood'
      ? []
      : [
          {
            label: MOISTURE.flooring,
            value: MOISTURE.flooringOf(say(ask.flooring), String(MOISTURE_SPREAD.value[ask.boards])),
          },
        ]),
    ...others.map((flaw) => ({
      label: MOISTURE.also,
      value:
        flaw === 'apart' ? MOISTURE.flaw.apart() : MOISTURE.flaw['too-few'](required - values.length, kind !== 'wood'),
    })),
  ];
  return { kind: 'facts', title: MOISTURE.title, facts };
}

/** What to do, by what stands against laying; too few readings alone call for no drying. */
export function moistureSteps({ readings }: MoistureAsk, { kind, required, verdict, flaws }: Known): Block {
  const base = kind === 'wood' ? 'wood' : 'concrete';
  const { steps } = MOISTURE;
  const over = flaws.includes('over') ? steps.over[base] : [];
  const all = [
    ...(verdict === 'stop' ? steps.stop[base] : over),
    ...(flaws.includes('apart') ? [steps.apart] : []),
    ...(flaws.includes('too-few') ? [steps.more(required - readings.values.length, base === 'concrete')] : []),
  ];
  return { kind: 'steps', title: MOISTURE.stepsTitle[verdict], steps: verdict === 'accept' ? steps.lay[base] : all };
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
