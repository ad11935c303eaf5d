/** The noise dose of a planned day, in a table and a verdict: first what is recommended, then what an employer must keep to. */

import { NOISE_LIMIT } from '../../../src/figures/safety-figures.ts';
import { type Saying, sayNumber } from '../../../src/input/format.ts';
import type { NamedNoise } from '../../../src/input/parse-noise.ts';
import {
  allowedHours,
  LEAST_COUNTED,
  LOUDEST_ALLOWED,
  noiseDose,
  recommendedDose,
  recommendedHours,
  timeWeightedLevel,
} from '../../../src/prep/noise-dose.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { SAFETY } from '../../../src/text/caution-text.ts';

/** Nothing where no day is told. */
export function noiseBlocks(day: readonly NamedNoise[], saying: Saying): readonly Block[] {
  if (day.length === 0) return [];
  const say = (value: number, decimals: number) => sayNumber(value, saying, decimals);
  const percent = (dose: number): string => `${say(dose * 100, dose < 10 ? 1 : 0)} %`;
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
