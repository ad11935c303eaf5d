/** The facts of a patch: where to cut, what to buy, and what comes from which sheet. */

import {
  BEAD_WASTE,
  BLOCK_SCREWS,
  CUBIC_INCHES_PER_FLUID_OUNCE,
  FASTENER_BITE,
  FASTENER_SPACING,
  SCREW_STEPS,
} from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import { squeakScrews } from '../../../src/prep/joist-cut.ts';
import { cornersOf, feetPerTube, type Patch, tubesFor } from '../../../src/prep/subfloor-patch.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { PATCH } from '../../../src/text/prep-text.ts';
import { type Length, roundUpRatio, ticks } from '../../../src/units/length.ts';
import { type PatchAsk, roomSides } from './patch-ask.ts';

/** Tubes of adhesive for the bead of a patch. */
export function tubesOf(patch: Patch, { tube, bead }: PatchAsk): number {
  return tubesFor(patch.bead, feetPerTube(tube * CUBIC_INCHES_PER_FLUID_OUNCE.value, bead), BEAD_WASTE.value);
}

/** The least screw through the panel into the joist. */
export function panelScrew({ spacing, thickness, damage }: PatchAsk): Length {
  const step = SCREW_STEPS.value[damage.units];
  const screwed = { panel: thickness, bite: FASTENER_BITE.value, step };
  return squeakScrews({ along: spacing, across: ticks(0) }, spacing, spacing, screwed).length;
}

/** Where and how deep to cut. */
export function cutFacts(patch: Patch, ask: PatchAsk, saying: Saying): Block {
  const [corner] = cornersOf(patch.cut, ask.joists);
  const [across, up] = roomSides(patch.cut, ask.joists);
  const say = (length: number): string => sayLength(ticks(length), saying);
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const facts: readonly Fact[] = [
    { label: PATCH.size, value: PATCH.sizeOf(cut(across), cut(up)) },
    { label: PATCH.from, value: PATCH.fromWalls(say(corner?.[0] ?? 0), say(corner?.[1] ?? 0)) },
    { label: PATCH.lands, value: PATCH.joists(patch.cut.joists.map(say), ask.joists === 'up' ? 'left' : 'bottom') },
    { label: PATCH.depth, value: PATCH.depthOf(cut(ask.thickness)) },
  ];
  return { kind: 'facts', title: PATCH.cutTitle, facts };
}

/** Panels, sheets, blocks, screws and adhesive. */
export function buyFacts(patch: Patch, ask: PatchAsk, saying: Saying): Block {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const sizes = new Map<string, number>();
  for (const { u0, u1, v0, v1 } of patch.panels) {
    const size = `${cut(u1 - u0)}|${cut(v1 - v0)}`;
    sizes.set(size, (sizes.get(size) ?? 0) + 1);
  }
  const area = patch.panels.reduce((sum, { u0, u1, v0, v1 }) => sum + BigInt(u1 - u0) * BigInt(v1 - v0), 0n);
  const least = roundUpRatio(area, BigInt(ask.sheet.width) * BigInt(ask.sheet.length));
  const { edge, field } = FASTENER_SPACING.value;
  const panels = [...sizes].map(([size, count]) => {
    const [long = '', wide = ''] = size.split('|');
    return PATCH.panel(count, long, wide, cut(ask.thickness));
  });
  const facts: readonly Fact[] = [
    ...panels.map((value) => ({ label: PATCH.panels, value })),
    {
      label: PATCH.sheets,
      value: PATCH.sheetsOf(patch.sheets.length, `${cut(ask.sheet.width)} × ${cut(ask.sheet.length)}`, least),
    },
    {
      label: PATCH.blocking,
      value: patch.blocking.map((block) => PATCH.block(block.count, cut(block.length))).join(', '),
    },
    { label: PATCH.screws, value: PATCH.screwsOf(patch.fasteners.length, cut(edge), cut(field), cut(panelScrew(ask))) },
    { label: PATCH.keptScrews, value: PATCH.keptScrewsOf(patch.kept) },
    { label: PATCH.blockScrews, value: PATCH.blockScrewsOf(patch.blocks.length * BLOCK_SCREWS.value) },
    {
      label: PATCH.adhesive,
      value: PATCH.adhesiveOf(
        PATCH.tubes(tubesOf(patch, ask)),
        sayLength(ticks(Math.round(patch.bead)), saying),
        cut(ask.bead),
      ),
    },
  ];
  return { kind: 'facts', title: PATCH.buyTitle, facts };
}

/** Each piece on its sheet. */
export function sheetTable(patch: Patch, saying: Saying): Block {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const rows = patch.sheets.flatMap((pieces, sheet) =>
    pieces.map(({ piece, x, y, length, width }) => [
      String(sheet + 1),
      String(piece + 1),
      `${cut(length)} × ${cut(width)}`,
      cut(x),
      cut(y),
    ]),
  );
  return { kind: 'table', title: PATCH.planTitle, columns: PATCH.planColumns, rows };
}
