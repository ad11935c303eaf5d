/** Pieces of all rows, each with the number of the plank it comes from: planks shared by exact matching. */

import type { Layout } from './broken.ts';
import type { CutPiece } from './cut-pool.ts';
import { sharePlanks } from './cut-share.ts';
import type { Frame, LaidRegion, Part, Piece, Plank, Region, Row, Rules } from './floor.ts';
import { isJointed, pieceLengths } from './run.ts';

interface Placed {
  readonly u: number;
  readonly length: number;
  readonly part: Part;
}

/** Every region's rows of numbered pieces, how many planks that takes, and how many of them serve more than once. */
export function cutAndNumber(
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
