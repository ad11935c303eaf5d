/** `prep lift`: how heavy a carton one person may lift, by the NIOSH lifting equation. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { cautionsFor, LIFTING_FIGURES } from '../../src/figures/safety-figures.ts';
import { type Saying, sayNumber } from '../../src/input/format.ts';
import { KILOGRAMS_PER_POUND } from '../../src/prep/old-floor.ts';
import { liftingIndex, weightLimits } from '../../src/prep/safe-work.ts';
import { type Fact, type Result, reply, unsafe } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { LIFT_CALL, LIFT_REACH, liftWhy } from '../../src/text/found-text.ts';
import { LIFT } from '../../src/text/prep-text.ts';
import { liftOptions } from './noise-day.ts';

type LiftAsk = { readonly [O in keyof typeof liftOptions]: z.output<(typeof liftOptions)[O]> };

/** `limit` is the lower one that counts, in kilograms; `index` is weight ÷ limit. */
interface LiftResult extends Result {
  readonly kind: 'lift';
  readonly limit: number;
  readonly index: number;
}

/** Refuses where the equation doesn't apply. The end of the lift counts only if the carton is set down carefully. */
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
    lines: [LIFT.limitsLine(say(limits.origin), careful ? say(limits.destination) : undefined), LIFT.tip, LIFT.note],
    blocks: [
      { kind: 'facts', section: 'why', title: LIFT.title, facts },
      { kind: 'steps', section: 'how', title: LIFT.stepsTitle, steps: LIFT.steps },
      { kind: 'text', section: 'why', text: LIFT.note },
    ],
    assumed: context.assumed,
    cautions,
    sources: LIFTING_FIGURES.map(({ source }) => source),
    data,
  });
}

/** The source prints its limits to a tenth. */
function sayTenths(kilograms: number, saying: Saying): string {
  const metric = saying.units === 'metric';
  return `${sayNumber(metric ? kilograms : kilograms / KILOGRAMS_PER_POUND, saying, 1)} ${metric ? 'kg' : 'lb'}`;
}

export default defineCommand({
  group: 'prep',
  name: 'lift',
  summary: 'How heavy a carton one person should lift, by the NIOSH lifting equation',
  phrases: [
    'can i lift a 55 lb box of flooring by myself',
    'how heavy a box should one person carry',
    'box weighs 62 lb is that safe to lift',
    'how many trips to carry 30 boxes at 40 lb',
    'carton is 48 pounds, carry upstairs alone?',
    'how to move 1500 lb of flooring into the house',
    "i'm 60 with a bad back how much should i carry",
    'lift limit for flooring cartons',
    'pallet of flooring dropped in driveway, 2400 lb',
    'carry 50 lb leveler bags down to basement',
    'how heavy is 25 boxes of vinyl plank',
    'safe weight to lift off the floor',
    'will 900 lb of flooring hurt my suv',
    'can two people carry a 90 lb roll',
    'how much can my wife and i carry safely',
    'boxes are 38 lb each, 24 of them, one person',
    'weight of carton too heavy?',
    'lifting 70 lb boxes onto a truck',
    'how many loads with a 300 lb dolly',
    'hauling cartons up two flights of stairs',
    'box of plank says 58 lb, too heavy for me alone?',
    'can i carry a 44 pound carton up two flights by myself',
    'is 30 kg ok for one person',
    "i'm 63 and had a hernia, flooring is 51 lb a box, should i",
    '50 lb leveler bags, 14 of them, down basement steps',
    'how heavy of a roll of carpet is safe for one guy',
    'lifting 38 lb boxes from the trunk to the porch all morning, okay?',
    'carpet roll weighs 75 pounds, two people enough',
    "what's the max a person should pick up off the floor",
    'sheet of 3/4 plywood 70 lb, carry solo or no',
    "my wife wants to help, cartons are 47 lb, what's safe",
    '22 boxes at 62 lb each, how do i move them in without hurting myself',
    'is a 25 kg bag of compound over the limit for lifting on your own',
    'lift 55 lb',
    'boxes are long and floppy, 41 lb, hard to grip, do i split them',
    'can my 15 year old lift these, 36 pounds',
    "how often can i lift a 45 pound box before it's too much, like one a minute",
    'taking them out of the van at knee height, 28 kg',
    'too heavy to lift?',
    'toilet weighs 90 lbs, me and my buddy carrying it out to do the floor',
    "i've got a bad back, carton's 33 lb and sits low on a pallet",
    'carry limit if i turn with the box to stack it on the other side',
    '52 lb bundles of baseboard 16 ft long, awkward, one person?',
    'is it better to open the cartons and carry half, they weigh 64',
    'weight limit for one man lifting from floor to waist',
    'thirty cartons of 40 pounds in one afternoon by myself, dumb idea?',
    'rolled carpet about 48 lb, over my shoulder down the stairs',
    'safe lifting for a sixty pound box held away from my body',
    'fridge has to move, is that a two person lift',
    'delivery left 1,900 lb of cartons in the driveway, can i hump them in alone',
    "reckon 23 kilos each is fine? there's 27 of them to go up to the flat",
    'do i need a helper for 49 lb boxes if i only lift every 5 minutes',
    'how much should i load on a hand truck, boxes 56 lb',
    "i'm five foot two and 120 pounds, can i manage a 35 lb box",
    "my shoulder's shot, 29 pound carton, overhead onto a shelf",
    'pack weighs 19.8 kg ok to lift',
    'underlay roll 22 lb, piece of cake or should i worry about twisting',
    'rolls of wet carpet 110 lb',
    'would you lift a 68 lb carton',
    'what weight is it smart to keep each load of tile rubble under in buckets',
  ],
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
