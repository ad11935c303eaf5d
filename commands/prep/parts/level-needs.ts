/** What levelling takes: compound by volume, and its primer by area. */

import { type Saying, sayNumber, sayWeight } from '../../../src/input/format.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import type { LevelAsk } from './level-ask.ts';
import type { Fill } from './level-fill.ts';

/** Nothing where nothing is filled. */
export function levelNeeds({ bag }: LevelAsk, fill: Fill, saying: Saying): readonly Need[] {
  if (fill.litres === 0) return [];
  const sold = NEEDS.sack(sayWeight(bag.kilograms, saying), sayNumber(bag.litres, saying, 1));
  return [
    {
      item: 'levelling compound',
      label: NEEDS.leveller,
      stage: 'flat',
      quantity: { unit: 'volume', amount: fill.litres },
      package: { size: bag.litres, ...sold },
    },
    ...(fill.area > 0n
      ? [
          {
            item: 'levelling primer',
            label: NEEDS.primer,
            stage: 'flat',
            quantity: { unit: 'area', amount: Number(fill.area) },
          } as const,
        ]
      : []),
  ];
}
