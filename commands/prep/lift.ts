/** `prep lift`: what a carton may weigh for one person, by the NIOSH lifting equation. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { cautionsFor, LIFTING_FIGURES } from '../../src/figures/safety-figures.ts';
import { type Saying, sayNumber } from '../../src/input/format.ts';
import { liftingIndex, weightLimits } from '../../src/prep/lifting.ts';
import { KILOGRAMS_PER_POUND } from '../../src/prep/tearout-amounts.ts';
import { type Fact, type Result, reply, unsafe } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { LIFT_CALL, LIFT_REACH, liftWhy } from '../../src/text/found-text.ts';
import { LIFT } from '../../src/text/prep-text.ts';
import { liftOptions } from './noise-day.ts';

// From the options of `prep lift` to its answer, or the Refusal where the equation does not hold.

type LiftAsk = { readonly [O in keyof typeof liftOptions]: z.output<(typeof liftOptions)[O]> };

/** Result data of kind lift: the limit that counts in kilograms, and weight ÷ limit. */
interface LiftResult extends Result {
  readonly kind: 'lift';
  readonly limit: number;
  readonly index: number;
}

/** The limits of both ends, and the weight against the lower one that counts. */
function answerLift(ask: LiftAsk, context: Context): Outcome {
  const cautions = worded(cautionsFor('lifting'));
  const wrong = ask.way ?? ask.weight.wrong;
  if (wrong) return { why: liftWhy(LIFT.ways[wrong]), call: LIFT_CALL, cautions, data: unsafe('lifting') };
  const { kilograms, units } = ask.weight;
  const saying: Saying = { units, decimal: context.preferences.decimal };
  const metric = units === 'metric';
  const limits = weightLimits(
    {
      origin: { horizontal: ask.reach, vertical: ask.from, twist: ask.twist },
      destination: { horizontal: ask['reach-end'], vertical: ask.to, twist: ask['twist-end'] },
      perMinute: ask.often,
      duration: ask.stretch,
      grip: ask.grip,
    },
    metric,
  );
  const careful = ask['set-down'] === 'careful';
  const limit = careful ? Math.min(limits.origin, limits.destination) : limits.origin;
  if (limit === 0) return { why: LIFT_REACH, call: LIFT_CALL, cautions, data: unsafe('lifting') };
  const index = liftingIndex(kilograms, limit);
  const say = (weight: number) => sayTenths(weight, saying);
  const times = sayNumber(index, saying, 2);
  const data: LiftResult = { kind: 'lift', limit, index };
  const facts: readonly Fact[] = [
    { label: LIFT.origin, value: say(limits.origin) },
    { label: LIFT.destination, value: careful ? say(limits.destination) : LIFT.loose },
    { label: LIFT.index, value: LIFT.indexValue(times) },
  ];
  return reply({
    headline: index <= 1 ? LIFT.ok(say(kilograms), say(limit)) : LIFT.over(say(kilograms), say(limit), times),
    blocks: [
      { kind: 'facts', title: LIFT.title, facts },
      { kind: 'steps', title: LIFT.stepsTitle, steps: LIFT.steps },
      { kind: 'text', text: LIFT.note },
    ],
    assumed: context.assumed,
    cautions,
    sources: LIFTING_FIGURES.map(({ source }) => source),
    data,
  });
}

/** The limits are printed to a tenth in their source. */
function sayTenths(kilograms: number, saying: Saying): string {
  const metric = saying.units === 'metric';
  return `${sayNumber(metric ? kilograms : kilograms / KILOGRAMS_PER_POUND, saying, 1)} ${metric ? 'kg' : 'lb'}`;
}

export default defineCommand({
  group: 'prep',
  name: 'lift',
  summary: 'How heavy a carton one person may lift, by the NIOSH lifting equation',
  options: z.object(liftOptions),
  examples: [
    {
      ask: 'lift 45 lb',
      headline: '45 lb is 1.46 times the 30.9 lb recommended for this lift: split it, or lift with two.',
    },
    {
      ask: 'lift 26 lb, from: 22 in, to: 59 in, reach-end: 20 in, often: 3 a minute, grip: fair',
      headline: '26 lb is 1.7 times the 15.3 lb recommended for this lift: split it, or lift with two.',
    },
  ],
  run: (options, context) => answerLift(options, context),
});
