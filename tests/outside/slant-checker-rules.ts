/** Stagger and end pieces of a floor with slanted walls: every break told, and none told that is not there. */

import type { FloorData, PieceData, RegionData } from './floor-checker-data.ts';

interface Run {
  readonly row: number;
  readonly pieces: readonly PieceData[];
}

/** What is wrong with the broken rules told of a region. Outer lengths count, as they do for square ends. */
export function faultsOfSlantRules(floor: FloorData, region: RegionData): string[] {
  const found: string[] = [];
  const runs = region.rows.map((row, r) => runsOf(row.pieces).map((pieces): Run => ({ row: r, pieces })));
  runs.forEach((of, r) => {
    for (const run of of) {
      found.push(...shortEnds(floor, run));
      for (const other of runs[r - 1] ?? []) found.push(...nearJoints(floor, run, other));
    }
  });
  const told = floor.broken
    .filter((one) => one.region === region.name && (one.rule === 'stagger' || one.rule === 'minEnd'))
    .map(({ rule, row, at }) => `${rule} in row ${row} at ${at}`);
  return [
    ...[...new Set(found)]
      .filter((one) => !told.includes(one))
      .map((one) => `${region.name}: ${one} is broken and not told`),
    ...told.filter((one) => !found.includes(one)).map((one) => `${region.name}: ${one} is told broken and kept`),
  ];
}

function runsOf(pieces: readonly PieceData[]): PieceData[][] {
  const runs: PieceData[][] = [];
  for (const piece of pieces) {
    const last = runs.at(-1)?.at(-1);
    if (last && last.u + last.length === piece.u) runs.at(-1)?.push(piece);
    else runs.push([piece]);
  }
  return runs;
}

function shortEnds({ rules }: FloorData, { row, pieces }: Run): string[] {
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (!first || !last || first === last) return [];
  return [first, last].filter((piece) => piece.length < rules.minEnd).map(({ u }) => `minEnd in row ${row} at ${u}`);
}

function nearJoints({ rules }: FloorData, run: Run, other: Run): string[] {
  const [from, to] = [run.pieces[0]?.u ?? 0, endOf(run)];
  if ((other.pieces[0]?.u ?? 0) >= to || endOf(other) <= from) return [];
  const joints = other.pieces.slice(1).map(({ u }) => u);
  return run.pieces
    .slice(1)
    .filter(({ u }) => joints.some((joint) => Math.abs(joint - u) < rules.stagger))
    .map(({ u }) => `stagger in row ${run.row} at ${u}`);
}

function endOf({ pieces }: Run): number {
  const last = pieces.at(-1);
  return last ? last.u + last.length : 0;
}
