/** A region cut into rows: what planks may cover of it, its walls along the rows, its runs. */

import type { Frame, Plank, Region, Rules } from './floor.ts';
import { type Angle, frameOf, toFrame } from './frame.ts';
import { inset } from './inset.ts';
import { chooseRowLine } from './row-line.ts';
import { type SlicedRow, sliceRows } from './row-slice.ts';
import { type Run, runsOf } from './run.ts';
import { type Slab, slabsOf } from './slab.ts';
import { leastWall, type WallLevel, wallLevels } from './wall-level.ts';

/** A region and the angle its rows run at. */
export interface Area {
  readonly region: Region;
  readonly angle: Angle;
}

/** A region cut into rows: `slabs` are what planks may cover, `line` where a row line lies (laying frame, ticks). */
export interface Sliced {
  readonly region: Region;
  readonly frame: Frame;
  readonly slabs: readonly Slab[];
  readonly levels: readonly WallLevel[];
  readonly line: number;
  readonly rows: readonly SlicedRow[];
  readonly runs: readonly Run[];
}

/** Slabs (laying frame, ticks) of what planks may cover in a region: none when the gap leaves nothing. */
export function coverable(region: Region, frame: Frame, gap: number): readonly Slab[] {
  return slabsOf(
    inset(
      toFrame(region.outline, frame),
      region.holes.map((hole) => toFrame(hole, frame)),
      gap,
    ),
  );
}

/** A region in rows: a whole row at the starting wall where that leaves no sliver. */
export function sliceArea(
  { region, angle }: Area,
  plank: Plank,
  rules: Pick<Rules, 'gap' | 'minEnd' | 'minRip'>,
): Sliced {
  const frame = frameOf(region, angle);
  const slabs = coverable(region, frame, rules.gap);
  const levels = wallLevels(slabs);
  const line = chooseRowLine(levels, plank.width, rules.minRip, leastWall(plank, rules));
  return slicedAt({ region, frame, slabs, levels }, line, plank);
}

/** The same region with its row lines elsewhere. */
export function slicedAt(
  { region, frame, slabs, levels }: Pick<Sliced, 'region' | 'frame' | 'slabs' | 'levels'>,
  line: number,
  plank: Plank,
): Sliced {
  const rows = sliceRows(slabs, line, plank.width);
  return { region, frame, slabs, levels, line, rows, runs: runsOf(rows) };
}
