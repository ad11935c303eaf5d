/** What a patch takes: sheets, blocks, screws and adhesive. */

import { BEAD_WASTE, BLOCK_SCREWS } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayNumber } from '../../../src/input/format.ts';
import { beadLitres, type Patch } from '../../../src/prep/subfloor-patch.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { ticks } from '../../../src/units/length.ts';
import type { PatchAsk } from './patch-ask.ts';
import { panelScrew } from './patch-facts.ts';
import { screwNeed } from './squeaks-needs.ts';

/** US fluid ounces in a litre: 231 in³ a gallon of 128 (NIST Handbook 44, appendix C). */
const OUNCES_PER_LITRE = 128 / 3.785411784;

/** Whole sheets as they are shared out, blocks by their length, adhesive by volume. */
export function patchNeeds(patch: Patch, ask: PatchAsk, saying: Saying): readonly Need[] {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const { sheet, thickness, tube, bead } = ask;
  const size = `${cut(sheet.width)} × ${cut(sheet.length)}`;
  const stage = 'subfloor' as const;
  const blocks = patch.blocking.reduce((sum, { length, count }) => sum + length * count, 0);
  const litres = tube / OUNCES_PER_LITRE;
  const said =
    saying.units === 'metric' ? `${sayNumber(litres * 1000, saying, 0)} ml` : `${sayNumber(tube, saying)} fl oz`;
  return [
    {
      item: `panel ${thickness} ${sheet.width}x${sheet.length}`,
      label: NEEDS.panels(cut(thickness), size),
      stage,
      quantity: { unit: 'count', amount: patch.sheets.length },
      package: { size: 1, ...NEEDS.sheet },
    },
    ...(blocks > 0
      ? [
          {
            item: 'block 2x4',
            label: NEEDS.blocks,
            stage,
            quantity: { unit: 'length', amount: blocks } as const,
            note: NEEDS.blocksNote(patch.blocking.map(({ length }) => cut(length))),
          },
          {
            item: 'block screw',
            label: NEEDS.blockScrews,
            stage,
            quantity: { unit: 'count', amount: patch.blocks.length * BLOCK_SCREWS.value } as const,
          },
        ]
      : []),
    screwNeed(patch.fasteners.length + patch.kept, panelScrew(ask), undefined, saying),
    {
      item: 'subfloor adhesive',
      label: NEEDS.adhesive,
      stage,
      quantity: { unit: 'volume', amount: beadLitres(patch.bead, bead) * BEAD_WASTE.value },
      package: { size: litres, ...NEEDS.tube(said) },
    },
  ];
}
