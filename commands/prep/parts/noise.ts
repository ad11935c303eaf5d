/** The noise dose of a planned day, in a table and a verdict. */

import {
  allowedHours,
  LEAST_COUNTED,
  LOUDEST_ALLOWED,
  noiseDose,
  timeWeightedLevel,
} from '../../../src/core/safety/noise.ts';
import type { NamedNoise } from '../../../src/measure/noise-day.ts';
import { sayNumber } from '../../../src/measure/say.ts';
import type { Saying } from '../../../src/measure/say-length.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { HEARING_PROGRAMME, NOISE_LIMIT } from '../../../src/trade/noise.ts';
import { SAFETY } from '../../../src/words/safety.ts';

/** Nothing where no day is told. */
export function noiseBlocks(day: readonly NamedNoise[], saying: Saying): readonly Block[] {
  if (day.length === 0) return [];
  const say = (value: number, decimals: number) => sayNumber(value, saying, decimals);
  const rows = day.map(({ name, hours, level }) => [
    name,
    say(hours, 2),
    SAFETY.level(say(level, 1)),
    level < LEAST_COUNTED ? SAFETY.uncounted : `${say(allowedHours(level), 2)} h`,
    `${say(noiseDose([{ hours, level }]) * 100, 1)} %`,
  ]);
  const dose = noiseDose(day);
  const said = dose === 0 ? SAFETY.quiet : SAFETY.dose(`${say(dose * 100, 1)} %`, say(timeWeightedLevel(dose), 1));
  return [
    { kind: 'table', title: SAFETY.noiseTitle, columns: SAFETY.noiseColumns, rows },
    { kind: 'text', text: [said, ...verdicts(dose, day)].join(' ') },
  ];
}

function verdicts(dose: number, day: readonly NamedNoise[]): readonly string[] {
  const loud = day.some(({ level }) => level > LOUDEST_ALLOWED) ? [SAFETY.tooLoud] : [];
  if (dose > NOISE_LIMIT.value) return [...loud, SAFETY.over];
  return [...loud, dose >= HEARING_PROGRAMME.value ? SAFETY.half : SAFETY.under];
}
