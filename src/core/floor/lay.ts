/** Laying a floor: regions sliced into rows, start pieces chosen, pieces cut from the fewest planks, planks numbered. */

import { boundOf } from './bound.ts';
import { brokenRules, type Layout } from './broken.ts';
import type { CutPiece } from './cut-pool.ts';
import { sharePlanks } from './cut-share.ts';
import type { Frame, LaidRegion, Part, Piece, Plan, Plank, Region, Row, Rules } from './floor.ts';
import { type Angle, frameOf, toFrame } from './frame.ts';
import { inset } from './inset.ts';
import { chooseRowLine } from './row-line.ts';
import { sliceRows } from './row-slice.ts';
import { isJointed, pieceLengths, runsOf } from './run.ts';
import { type Slab, slabsOf } from './slab.ts';
import { chooseStarts } from './starts.ts';
import { wallLevels } from './wall-level.ts';

/** A region and the angle its rows run at. */
export interface Area {
  readonly region: Region;
  readonly angle: Angle;
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

/**
 * The plan of a floor: every region laid, planks counted by exact matching and numbered from 1 in laying order.
 * Rectilinear regions only; a region in which the gap leaves nothing gets no rows.
 */
export function layFloor(areas: readonly Area[], plank: Plank, rules: Rules): Plan {
  const sliced = areas.map(({ region, angle }) => {
    const frame = frameOf(region, angle);
    const slabs = coverable(region, frame, rules.gap);
    const levels = wallLevels(slabs);
    const line = chooseRowLine(levels, plank.width, rules.minRip);
    const rows = sliceRows(slabs, line, plank.width);
    return { region, frame, slabs, levels, line, rows, runs: runsOf(rows) };
  });
  const starts = chooseStarts(
    sliced.map(({ runs }) => runs),
    plank,
    rules,
  );
  const layouts = sliced.map((part, i) => ({
    ...part,
    name: part.region.name,
    starts: starts[i]?.starts ?? [],
    patterned: starts[i]?.patterned,
  }));
  const { regions, planks, reused } = cutAndNumber(layouts, plank, rules);
  const bound = boundOf(
    sliced.map(({ slabs }) => slabs),
    plank,
    rules,
  );
  return {
    plank,
    rules,
    regions,
    planks,
    reused,
    bound: { ...bound, proven: planks === bound.best },
    broken: layouts.flatMap((layout) => brokenRules(layout, plank, rules)),
  };
}

interface Placed {
  readonly u: number;
  readonly length: number;
  readonly part: Part;
}

/** Pieces of all rows, each with the number of the plank it comes from. */
function cutAndNumber(
  layouts: readonly (Layout & { region: Region; frame: Frame })[],
  plank: Plank,
  rules: Rules,
): { regions: readonly LaidRegion[]; planks: number; reused: number } {
  const rows = layouts.map((layout) => piecesOf(layout, plank));
  const flat = rows.flat(2);
  const cut: CutPiece[] = [];
  flat.forEach(({ length, part }, index) => {
    if (part !== 'whole') cut.push({ length, part, index });
  });
  const shared = sharePlanks(cut, plank.length, rules.kerf, plank.lock);
  const sources = new Map<number, number>();
  shared.forEach(({ pieces }, source) => {
    for (const piece of pieces) sources.set(piece.index, source);
  });
  const numbers = new Map<number, number>();
  let last = 0;
  let index = 0;
  const number = (): number => {
    const source = sources.get(index++);
    if (source === undefined) return ++last;
    const known = numbers.get(source);
    if (known !== undefined) return known;
    numbers.set(source, ++last);
    return last;
  };
  const regions = layouts.map(({ region, frame, rows: slices }, i) => ({
    ...region,
    frame,
    rows: slices.map((slice, r): Row => {
      const edge = slice.height === plank.width ? 'full' : r === 0 ? 'near' : 'far';
      const pieces = (rows[i]?.[r] ?? []).map((placed): Piece => ({ ...placed, plank: number(), edge }));
      return { v: slice.v, height: slice.height, pieces };
    }),
  }));
  return { regions, planks: last, reused: shared.filter(({ pieces }) => pieces.length > 1).length };
}

/** The pieces of every row from left to right. */
function piecesOf(layout: Layout, plank: Plank): readonly (readonly Placed[])[] {
  const rows: Placed[][] = layout.rows.map(() => []);
  layout.runs.forEach((run, i) => {
    const lengths = pieceLengths(run, layout.starts[i] ?? 0, plank.length);
    let u = run.from;
    lengths.forEach((length, k) => {
      rows[run.row]?.push({ u, length, part: partOf(length, k, lengths.length, isJointed(run, plank.length), plank) });
      u += length;
    });
  });
  return rows;
}

function partOf(length: number, index: number, count: number, jointed: boolean, plank: Plank): Part {
  if (length === plank.length) return 'whole';
  if (!jointed || plank.lock === 'none') return 'any';
  return index === 0 ? 'start' : index === count - 1 ? 'end' : 'whole';
}
