/** The noise dose of a planned day: against the recommended limit first, then against the one that binds employers. */

import { LIFT_HEIGHTS, LIFT_REACHES, LIFT_WAY, NOISE_LIMIT } from '../../src/figures/safety-figures.ts';
import { type Saying, sayNumber } from '../../src/input/format.ts';
import { choice, length, text } from '../../src/input/options.ts';
import {
  type NamedNoise,
  readLiftPace,
  readLiftWay,
  readLoad,
  readStretch,
  readTwist,
} from '../../src/input/parse-weight.ts';
import { KILOGRAMS_PER_POUND } from '../../src/prep/old-floor.ts';
import {
  allowedHours,
  LEAST_COUNTED,
  LOUDEST_ALLOWED,
  noiseDose,
  recommendedDose,
  recommendedHours,
  timeWeightedLevel,
} from '../../src/prep/safe-work.ts';
import type { Block } from '../../src/reply/reply.ts';
import { SAFETY } from '../../src/text/caution-text.ts';
import { inches, ticks } from '../../src/units/length.ts';

/** Empty without a day. */
export function noiseBlocks(day: readonly NamedNoise[], saying: Saying): readonly Block[] {
  if (day.length === 0) return [];
  const say = (value: number, decimals: number) => sayNumber(value, saying, decimals);
  const percent = (dose: number): string => `${say(dose * 100, dose < 10 ? 1 : 0)}%`;
  const rows = day.map((noise) => {
    const { name, hours, level } = noise;
    const uncounted = level < LEAST_COUNTED;
    return [
      name,
      say(hours, 2),
      SAFETY.level(say(level, 1)),
      uncounted ? SAFETY.uncounted : `${say(recommendedHours(level), 2)} h`,
      percent(recommendedDose([noise])),
      uncounted ? SAFETY.uncounted : `${say(allowedHours(level), 2)} h`,
      percent(noiseDose([noise])),
    ];
  });
  const [dose, recommended] = [noiseDose(day), recommendedDose(day)];
  const said =
    dose === 0
      ? [SAFETY.quiet]
      : [
          SAFETY.recommended(percent(recommended), recommended > 1 ? say(recommended, 1) : undefined),
          SAFETY.dose(percent(dose), say(timeWeightedLevel(dose), 1)),
        ];
  return [
    { kind: 'table', title: SAFETY.noiseTitle, columns: SAFETY.noiseColumns, rows },
    { kind: 'text', text: [...said, ...verdicts(recommended, dose, day)].join(' ') },
  ];
}

function verdicts(recommended: number, dose: number, day: readonly NamedNoise[]): readonly string[] {
  const loud = day.some(({ level }) => level > LOUDEST_ALLOWED) ? [SAFETY.tooLoud] : [];
  if (recommended > 1) return [...loud, dose > NOISE_LIMIT.value ? SAFETY.overBoth : SAFETY.over];
  return [...loud, SAFETY.under];
}

// The defaults are for a carton lifted from the floor to the waist.

const reach = (summary: string) =>
  length({
    summary,
    standard: '10 in',
    metric: '250 mm',
    record: LIFT_REACHES,
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
  from: height('Height of your hands when the lift starts', '4 in', '100 mm'),
  to: height('Height of your hands when it ends', '30 in', '750 mm'),
  reach: reach('From your ankles out to your hands when it starts'),
  'reach-end': reach('From your ankles out to your hands when it ends'),
  twist: twist('Degrees your body is turned when it starts'),
  'twist-end': twist('Degrees your body is turned when it ends'),
  often: text(
    { summary: 'How often you lift', standard: '1 a minute', record: LIFT_WAY, example: 'every 5 minutes' },
    readLiftPace,
  ),
  stretch: text(
    { summary: 'How long you lift without a break', standard: '1 h', record: LIFT_WAY, example: '45 min' },
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
      summary: 'What you lift, and how',
      standard: 'cartons, two hands, standing',
      record: LIFT_WAY,
      example: 'boxes, both hands',
    },
    readLiftWay,
  ),
};
