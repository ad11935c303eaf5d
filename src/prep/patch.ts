/** A whole patch of a panel subfloor: the cut, its panels, blocks, fasteners, sheets and bead. */

import type { Point } from '../units/geometry.ts';
import type { Length } from '../units/length.ts';
import { beadOf } from './adhesive.ts';
import { type BlockingCut, blockingCuts, blockPlaces } from './blocking.ts';
import { type FastenerRule, fastenerPlaces, fastenersOn } from './fastener.ts';
import { type CutRules, type Joists, type NoCut, type PatchCut, patchCut, type Rect } from './patch-cut.ts';
import { dividePatch, type Panel, type SheetSize, SPLITS } from './patch-panel.ts';
import { type PlacedPiece, planSheets } from './sheet-plan.ts';

export interface PatchRules extends CutRules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly sheet: SheetSize;
  readonly fasteners: FastenerRule;
  /** How far a fastener stands from a panel's rim. */
  readonly rim: Length;
  /** Face of the blocks, laid flat: half under each side of an edge. */
  readonly block: Length;
}

/** Everything in (u, v): u across the joists from the wall, v along them; ticks. */
export interface Patch {
  readonly cut: PatchCut;
  readonly damage: Rect;
  readonly panels: readonly Panel[];
  readonly blocks: readonly Rect[];
  readonly blocking: readonly BlockingCut[];
  readonly fasteners: readonly Point[];
  /** Fasteners for the floor that stays, along the cut. */
  readonly kept: number;
  readonly sheets: readonly (readonly PlacedPiece[])[];
  readonly bead: number;
}

/**
 * The patch for a damage, or why there is none. The fasteners follow the edge and field spacing, long edges blocked; the floor
 * that stays is fastened at the edge spacing all round the cut. Throws a RangeError as patchCut does.
 */
export function planPatch(damage: Rect, joists: Joists, rules: PatchRules): Patch | NoCut {
  const cut = patchCut(damage, joists, rules);
  if (typeof cut === 'string') return cut;
  const { grid, sheets } = fewestSheets(cut, rules);
  const blocks = blockPlaces(cut, joists, grid.edges, rules.block);
  const sides = fastenersOn(cut.v1 - cut.v0, rules.fasteners.edge);
  const perBay = fastenersOn(joists.spacing, rules.fasteners.edge) - 2;
  return {
    cut,
    damage,
    panels: grid.panels,
    blocks,
    blocking: blockingCuts(blocks),
    fasteners: grid.panels.flatMap((panel) => fastenerPlaces(panel, rules.fasteners, true, rules.rim)),
    kept: 2 * sides + 2 * cut.bays * perBay,
    sheets,
    bead: beadOf(cut, grid),
  };
}

/** The way to share out the hole that takes the fewest sheets; of several the evenest. */
function fewestSheets(cut: PatchCut, { sheet, gap, kerf, least }: PatchRules) {
  const plans = SPLITS.map((split) => {
    const grid = dividePatch(cut, sheet, gap, least, split);
    const sizes = grid.panels.map(({ u0, u1, v0, v1 }) => ({ width: v1 - v0, length: u1 - u0 }));
    return { grid, sheets: planSheets(sizes, sheet, kerf) };
  });
  return plans.reduce((best, plan) => (plan.sheets.length < best.sheets.length ? plan : best));
}

/** (u, v) as room coordinates (x, y): the same where joists run up, turned over where they run across. */
export function toRoom([u, v]: Point, run: 'up' | 'across'): Point {
  return run === 'up' ? [u, v] : [v, u];
}

/** A rectangle's corners in the room, counter-clockwise from the lower left. */
export function cornersOf({ u0, v0, u1, v1 }: Rect, run: 'up' | 'across'): readonly Point[] {
  const [x0, y0] = toRoom([u0, v0], run);
  const [x1, y1] = toRoom([u1, v1], run);
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
