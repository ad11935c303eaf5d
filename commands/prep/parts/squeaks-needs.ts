/** Screws for a subfloor as something to buy. */

import { type Saying, sayCut } from '../../../src/input/format.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import type { Length } from '../../../src/units/length.ts';

/** Screws of a length; `pack` is how many a pack holds, where it is told. */
export function screwNeed(screws: number, length: Length, pack: number | undefined, saying: Saying): Need {
  return {
    item: `subfloor screw ${length}`,
    label: NEEDS.screws(sayCut(length, saying)),
    stage: 'subfloor',
    quantity: { unit: 'count', amount: screws },
    ...(pack === undefined ? {} : { package: { size: pack, ...NEEDS.pack(pack) } }),
  };
}
