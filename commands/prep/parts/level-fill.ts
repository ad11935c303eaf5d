/** What fills the low places, by whatever was told of them: a grid, an area with its gaps, a ramp. */

import { inches, type Length, ticks } from '../../../src/core/length.ts';
import { gridFill, meanFill, poursFor, rampFill } from '../../../src/core/subfloor/fill.ts';
import { sayArea, sayNumber, sayWeight } from '../../../src/measure/say.ts';
import { type Saying, sayCut } from '../../../src/measure/say-length.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { LEVEL } from '../../../src/words/level.ts';
import type { LevelAsk } from './level-ask.ts';

const LITRES_PER_CUBIC_FOOT = 28.316846592;
/** A dip deeper than this on wood is looked at from below first: common practice. */
const DEEP = inches(0.75);

/** Litres in all and by part, the area in square ticks, the deepest place in ticks. */
export interface Fill {
  readonly litres: number;
  readonly mean: number;
  readonly ramp: number;
  readonly cells: number;
  readonly area: bigint;
  readonly deepest: Length;
  readonly deep: boolean;
}

/** Volumes of all that was told. */
export function fillOf({ readings, area, ramp }: LevelAsk): Fill {
  const low = readings.kind === 'gaps' ? readings.gaps.filter(({ spot }) => spot === 'low').map(({ gap }) => gap) : [];
  const cells = readings.kind === 'grid' ? gridFill(readings.grid) : 0;
  const mean = meanFill(area.area, low);
  const sloped = rampFill(ramp.area, ramp.height);
  const depths = readings.kind === 'grid' ? readings.grid.rows.flat() : low;
  const deepest = ticks(Math.max(0, ramp.height, ...depths));
  const under = mean > 0 ? area.area : 0n;
  const covered = readings.kind === 'grid' ? gridArea(readings.grid) : under;
  return {
    litres: mean + sloped + cells,
    mean,
    ramp: sloped,
    cells,
    area: covered + ramp.area,
    deepest,
    deep: deepest > DEEP,
  };
}

/** Volume, bags, pours, primer and weight; or what to tell so that they can be worked out. */
export function fillFacts({ bag, pour }: LevelAsk, fill: Fill, bags: number, kilograms: number, saying: Saying): Block {
  const title = LEVEL.fillTitle;
  if (fill.litres === 0) return { kind: 'facts', title, facts: [{ label: LEVEL.untold, value: LEVEL.untoldOf }] };
  const litres = (value: number): string => sayNumber(value, saying, 1);
  const part = (label: string, value: number): readonly Fact[] =>
    value > 0 && value < fill.litres ? [{ label, value: `${litres(value)} L` }] : [];
  const facts: readonly Fact[] = [
    {
      label: LEVEL.volume,
      value: LEVEL.volumeOf(litres(fill.litres), sayNumber(fill.litres / LITRES_PER_CUBIC_FOOT, saying, 2)),
    },
    ...part(LEVEL.mean, fill.mean),
    ...part(LEVEL.ramp, fill.ramp),
    ...part(LEVEL.cells, fill.cells),
    { label: LEVEL.bags, value: LEVEL.bagsOf(bags, litres(bag.litres), sayWeight(bag.kilograms, saying)) },
    { label: LEVEL.pours, value: LEVEL.poursOf(poursFor(fill.deepest, pour), sayCut(pour, saying)) },
    { label: LEVEL.weight, value: LEVEL.weightOf(sayWeight(kilograms, saying)) },
    { label: LEVEL.primer, value: LEVEL.primerOf(sayArea(fill.area, saying)) },
  ];
  return { kind: 'facts', title, facts };
}

function gridArea({ dx, dy, rows }: Extract<LevelAsk['readings'], { kind: 'grid' }>['grid']): bigint {
  return BigInt(dx) * BigInt(dy) * BigInt((rows.length - 1) * ((rows[0]?.length ?? 1) - 1));
}
