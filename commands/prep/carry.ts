/** `prep carry`: how many trips it takes to carry a delivery in partial loads. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { ONE_PERSON } from '../../src/figures/tearout-figures.ts';
import { sayWeight } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { readWeight } from '../../src/input/parse-weight.ts';
import { reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { CARRY } from '../../src/text/prep-text.ts';
import { roundUp } from '../../src/units/length.ts';

/** Kilograms. */
const LEAST = 1;
const HEAVIEST_DELIVERY = 20_000;
const HEAVIEST_LOAD = 50;

export default defineCommand({
  group: 'prep',
  name: 'carry',
  summary: 'How many trips it takes to carry in a delivery, or to carry out debris',
  phrases: [
    'how many trips to carry 1200 lb of flooring inside',
    'delivery is 900 pounds and i am alone, how many loads is that',
    'two pallets of planks at the curb, 2400 lb, how many carries up the stairs',
    'how many times do i walk if every box is 40 lb and i have 28 of them',
    '1500 lb of leveler bags have to go to the second floor, trips?',
    'truck drops 1100 lb of plank in the driveway and nobody helps me, how many trips',
    'loads to bring in 640 kg of laminate by myself',
    'how many carries for 850 pounds of tile out to the dumpster',
    'curbside delivery only, 1300 lb, how many trips at 35 lb each',
    'can i carry 1000 lb of flooring in one afternoon alone',
    'is 30 trips about right for half a ton of boxes',
    'how much walking is it to move 20 cartons at 38 lb to the third floor',
  ],
  options: z.object({
    weight: text({ summary: 'What it all weighs', example: '1210 lb' }, (typed, reading) =>
      readWeight(typed, reading, LEAST, HEAVIEST_DELIVERY),
    ),
    load: text(
      {
        summary: 'What one person carries at a time',
        standard: '35 lb',
        example: '30 lb',
        metric: '16 kg',
        record: ONE_PERSON,
      },
      (typed, reading) => readWeight(typed, reading, LEAST, HEAVIEST_LOAD),
    ),
  }),
  examples: [
    // By hand: 1210 / 35 is 34.6, 1210 / 30 is 40.3.
    { ask: 'carry 1210 lb', headline: '35 trips of 35 lb for 1,210 lb.' },
    { ask: 'carry 1210 lb, load: 30 lb', headline: '41 trips of 30 lb for 1,210 lb.' },
  ],
  run: ({ weight, load }, { preferences, assumed, optionTexts }) => {
    const said = optionTexts.get('weight') ?? '';
    const units = /k/i.test(said) ? 'metric' : /lb|pound/i.test(said) ? 'imperial' : preferences.units;
    const saying = { units, decimal: preferences.decimal } as const;
    const trips = roundUp(weight / load);
    return reply({
      headline: CARRY.headline(trips, sayWeight(load, saying), sayWeight(weight, saying)),
      lines: [CARRY.two(roundUp(trips / 2)), CARRY.boxes(sayWeight(load, saying))],
      blocks: [],
      assumed: optionTexts.has('load') ? assumed : [CARRY.assumed(sayWeight(load, saying)), ...assumed],
      cautions: worded(cautionsFor('lifting')),
      sources: [ONE_PERSON.source],
      data: { kind: 'carry', trips, load, kilograms: weight },
    });
  },
});
