/** Rows and the pieces in them: stacked without a break, every run tiled from wall to wall, every part where it can lock. */

import type { FloorData, PieceData, RegionData, RowData } from './floor-checker-data.ts';
import type { Column, Interval } from './floor-checker-ground.ts';
import { areaWithin, extents, reach } from './floor-checker-ground.ts';

/** A stretch of a row from wall to wall, and its pieces from left to right. */
export interface Run {
  readonly extent: Interval;
  readonly pieces: readonly PieceData[];
}

/** A row's runs; `strays` are pieces that lie in none of them. */
export interface RowRuns {
  readonly row: RowData;
  readonly runs: readonly Run[];
  readonly strays: readonly PieceData[];
}

/** The runs of every row: the outer extents of the ground within its strip, with the pieces that lie in each. */
export function runsOf(region: RegionData, ground: readonly Column[]): RowRuns[] {
  return region.rows.map((row) => {
    const runs = extents(ground, [row.v, row.v + row.height]).map((extent) => ({
      extent,
      pieces: row.pieces.filter((piece) => lies(piece, extent)).sort((a, b) => a.u - b.u),
    }));
    const strays = row.pieces.filter((piece) => !runs.some(({ extent }) => lies(piece, extent)));
    return { row, runs, strays };
  });
}

/** What is wrong with a region's rows and pieces, each planks and rules aside. */
export function faultsOfRows(
  floor: FloorData,
  region: RegionData,
  ground: readonly Column[],
  rows: RowRuns[],
): string[] {
  const faults = [...stacking(floor, region, ground), ...coverage(region, ground)];
  rows.forEach(({ row, runs, strays }, index) => {
    const say = (text: string): void => void faults.push(`${region.name}, row ${index}: ${text}`);
    for (const piece of strays) say(`the piece at ${piece.u} does not lie within a run`);
    for (const run of runs) {
      tiling(run).forEach(say);
      run.pieces.forEach((piece, i) => {
        ofPart(piece, run, floor.plank).forEach(say);
        const next = run.pieces[i + 1];
        if (next && floor.plank.lock === 'click') ofJoint(piece, next).forEach(say);
      });
    }
    for (const piece of row.pieces) ofEdge(piece, row, index, region.rows.length, floor.plank).forEach(say);
  });
  return faults;
}

/** True when a piece is its run's only one, wall to wall. */
export function spans(piece: PieceData, extent: Interval): boolean {
  return piece.u === extent[0] && piece.u + piece.length === extent[1];
}

/** The places along u where two pieces of a run meet. */
export function jointsOf(run: Run): number[] {
  return run.pieces.slice(1).map((piece) => piece.u);
}

function lies(piece: PieceData, [low, high]: Interval): boolean {
  return piece.u >= low && piece.u + piece.length <= high;
}

function stacking(floor: FloorData, region: RegionData, ground: readonly Column[]): string[] {
  const faults: string[] = [];
  const { rows, name } = region;
  rows.forEach((row, i) => {
    const next = rows[i + 1];
    if (next && next.v !== row.v + row.height)
      faults.push(`${name}, row ${i + 1}: starts at v ${next.v}, not on the row before`);
    if (row.height > floor.plank.width) faults.push(`${name}, row ${i}: higher than a plank is wide`);
    if (row.height < floor.plank.width && i > 0 && next) faults.push(`${name}, row ${i}: a ripped row amid the floor`);
  });
  const [first, last, deep] = [rows[0], rows.at(-1), reach(ground)];
  if (!deep) return rows.length > 0 ? [...faults, `${name}: rows where the gap leaves no floor`] : faults;
  if (!first || !last) return [`${name}: no rows`];
  if (first.v !== deep[0]) faults.push(`${name}: the first row starts at v ${first.v}, the floor at ${deep[0]}`);
  if (last.v + last.height !== deep[1])
    faults.push(`${name}: the last row ends at v ${last.v + last.height}, the floor at ${deep[1]}`);
  return faults;
}

function coverage(region: RegionData, ground: readonly Column[]): string[] {
  const faults: string[] = [];
  const everywhere: Interval = [-Infinity, Infinity];
  let covered = 0n;
  region.rows.forEach((row, i) => {
    for (const piece of row.pieces) {
      const area = areaWithin(ground, [piece.u, piece.u + piece.length], [row.v, row.v + row.height]);
      if (area === 0n) faults.push(`${region.name}, row ${i}: the piece at ${piece.u} lies on no floor`);
      covered += area;
    }
  });
  const all = areaWithin(ground, everywhere, everywhere);
  if (covered !== all) faults.push(`${region.name}: pieces cover ${covered} of ${all} square ticks`);
  return faults;
}

function tiling({ extent, pieces }: Run): string[] {
  const faults: string[] = [];
  let [reached] = extent;
  for (const piece of pieces) {
    if (piece.u > reached) faults.push(`no piece from ${reached} to ${piece.u}`);
    if (piece.u < reached) faults.push(`the piece at ${piece.u} overlaps the one before, which ends at ${reached}`);
    reached = Math.max(reached, piece.u + piece.length);
  }
  if (reached < extent[1]) faults.push(`no piece from ${reached} to ${extent[1]}`);
  return faults;
}

function ofPart(piece: PieceData, { extent }: Run, plank: FloorData['plank']): string[] {
  const { u, length, part } = piece;
  const faults: string[] = [];
  if (length > plank.length) faults.push(`the piece at ${u} is longer than a plank`);
  if (part === 'whole' && length !== plank.length)
    faults.push(`the piece at ${u} is called whole and is not a plank long`);
  if ((part === 'start' || part === 'end') && length === plank.length)
    faults.push(`the piece at ${u} is a whole plank, not a ${part}`);
  if (part === 'start' && u !== extent[0]) faults.push(`the start at ${u} does not begin at a wall`);
  if (part === 'end' && u + length !== extent[1]) faults.push(`the end at ${u} does not finish at a wall`);
  if (part === 'any' && plank.lock === 'click' && !spans(piece, extent)) {
    faults.push(`the piece at ${u} comes from any part and has an end at no wall`);
  }
  return faults;
}

/** Click boards lock at factory ends only: a start keeps its right end, an end its left one, a whole plank both. */
function ofJoint(left: PieceData, right: PieceData): string[] {
  const locks = (left.part === 'whole' || left.part === 'start') && (right.part === 'whole' || right.part === 'end');
  return locks ? [] : [`the joint at ${right.u} has a cut end (${left.part} to ${right.part})`];
}

function ofEdge(
  { u, edge }: PieceData,
  row: RowData,
  index: number,
  rows: number,
  plank: FloorData['plank'],
): string[] {
  if (row.height === plank.width)
    return edge === 'full' ? [] : [`the piece at ${u} is called ${edge} in a row of full width`];
  if (edge === 'full') return [`the piece at ${u} is called full in a ripped row`];
  if (plank.lock === 'none' || rows === 1) return [];
  if (index === 0 && edge !== 'near') return [`the piece at ${u} lost the edge that locks to the next row`];
  if (index === rows - 1 && edge !== 'far') return [`the piece at ${u} lost the edge that locks to the row before`];
  return [];
}
