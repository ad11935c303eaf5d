/** The options of `prep lift`, with standards for a carton lifted from the floor to the waist. */

import { LIFT_HEIGHTS, LIFT_REACH, LIFT_WAY } from '../../../src/figures/safety-figures.ts';
import { choice, length, text } from '../../../src/input/options.ts';
import { readLiftPace, readLiftWay, readLoad, readStretch, readTwist } from '../../../src/input/parse-weight.ts';
import { KILOGRAMS_PER_POUND } from '../../../src/prep/tearout-amounts.ts';
import { inches, ticks } from '../../../src/units/length.ts';

const reach = (summary: string) =>
  length({
    summary,
    standard: '10 in',
    metric: '250 mm',
    record: LIFT_REACH,
    example: '16 in',
    least: ticks(0),
    most: inches(60),
  });
const height = (summary: string, standard: string, metric: string) =>
  length({ summary, standard, metric, record: LIFT_HEIGHTS, example: '20 in', least: ticks(0), most: inches(96) });
const twist = (summary: string) => text({ summary, standard: '0', record: LIFT_WAY, example: '45' }, readTwist);

export const liftOptions = {
  weight: text({ summary: 'What the carton weighs', example: '45 lb' }, (typed, reading) =>
    readLoad(typed, reading, KILOGRAMS_PER_POUND, 500 * KILOGRAMS_PER_POUND),
  ),
  from: height('Height of your hands where the lift begins', '4 in', '100 mm'),
  to: height('Height of your hands where it ends', '30 in', '750 mm'),
  reach: reach('From your ankles out to your hands where it begins'),
  'reach-end': reach('From your ankles out to your hands where it ends'),
  twist: twist('Degrees you turn your body where it begins'),
  'twist-end': twist('Degrees you turn your body where it ends'),
  often: text(
    { summary: 'How often you lift', standard: '1 a minute', record: LIFT_WAY, example: 'every 5 minutes' },
    readLiftPace,
  ),
  stretch: text(
    { summary: 'How long you lift in a stretch', standard: '1 h', record: LIFT_WAY, example: '45 min' },
    readStretch,
  ),
  grip: choice(['poor', 'fair', 'good'], {
    summary: 'good: handles; fair: fingers under a box; poor: long or saggy',
    standard: 'poor',
    record: LIFT_WAY,
  }),
  'set-down': choice(['careful', 'loose'], {
    summary: 'Set down with care, or let go',
    standard: 'careful',
    record: LIFT_WAY,
  }),
  way: text(
    {
      summary: 'What is lifted and how',
      standard: 'cartons, two hands, standing',
      record: LIFT_WAY,
      example: 'boxes, both hands',
    },
    readLiftWay,
  ),
};
