/** What finishing trim takes: nails, caulk, filler, primer and paint, none of them rounded up. */

import { type Saying, sayCut, sayNumber } from '../../../src/input/format.ts';
import type { Need, Package, Stage } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { beadLength } from '../../../src/trim/finishing.ts';
import type { Length } from '../../../src/units/length.ts';

/** US fluid ounces in a litre: 231 in³ a gallon of 128 (NIST Handbook 44, appendix C). */
const OUNCES_PER_LITRE = 128 / 3.785411784;
/** Paint is sold by the quart (almanac.com, as PAINT_COVERAGE); metric cans differ. */
const LITRES_PER_QUART = 32 / OUNCES_PER_LITRE;

/** Exact amounts: nails by number, the bead's length and diameter in ticks, the rest in litres. */
export interface Finishing {
  readonly nails: number;
  readonly nail: Length;
  readonly length: number;
  readonly bead: Length;
  readonly tube: number;
  readonly filler: number;
  readonly primer: number;
  readonly paint: number;
}

export function finishNeeds(finishing: Finishing, saying: Saying): readonly Need[] {
  const { nails, nail, length, bead, tube, filler, primer, paint } = finishing;
  const can: Package | undefined = saying.units === 'imperial' ? { size: LITRES_PER_QUART, ...NEEDS.quart } : undefined;
  const liquid = (item: string, label: string, stage: Stage, amount: number, sold?: Package): readonly Need[] =>
    amount > 0 ? [{ item, label, stage, quantity: { unit: 'volume', amount }, ...(sold && { package: sold }) }] : [];
  const size = sayCut(nail, saying);
  const ounces = `${sayNumber(tube * OUNCES_PER_LITRE, saying, 1)} fl oz`;
  const told = saying.units === 'metric' ? `${sayNumber(tube * 1000, saying, 0)} ml` : ounces;
  return [
    {
      item: `finish nail ${nail}`,
      label: NEEDS.nails(size),
      stage: 'baseboards',
      quantity: { unit: 'count', amount: nails },
      note: NEEDS.nailsNote,
    },
    ...liquid('caulk', NEEDS.caulk, 'caulk', (length / beadLength(tube, bead)) * tube, {
      size: tube,
      ...NEEDS.tube(told),
    }),
    ...liquid('wood filler', NEEDS.filler, 'caulk', filler),
    ...liquid('trim primer', NEEDS.trimPrimer, 'paint', primer, can),
    ...liquid('trim paint', NEEDS.paint, 'paint', paint, can),
  ];
}
