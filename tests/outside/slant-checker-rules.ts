/** Stagger, end pieces, strips and pattern of a floor with slanted walls: every break told, and none told that is not there. */

import type { FloorData, PieceData, RegionData } from './floor-checker-data.ts';
import { faultsOfPattern } from './floor-checker-pattern.ts';
import type { RowRuns } from './floor-checker-rows.ts';
import { type Ground, groundAlong } from './slant-checker-sweep.ts';

/** How far rounding to ticks may move a line. */
const SLACK = 4;

interface Run {
  readonly row: number;
  readonly pieces: readonly PieceData[];
}

/** What is wrong with the broken rules told of a region. Outer lengths count, as they do for square ends. */
export function faultsOfSlantRules(floor: FloorData, region: RegionData, ground: Ground): string[] {
  const found: string[] = [];
  const runs = region.rows.map((row, r) => runsOf(row.pieces).map((pieces): Run => ({ row: r, pieces })));
  runs.forEach((of, r) => {
    for (const run of of) {
      found.push(...shortEnds(floor, run));
      for (const other of runs[r - 1] ?? []) found.push(...nearJoints(floor, run, other));
    }
  });
  const given = floor.broken
    .filter((one) => one.region === region.name && (one.rule === 'stagger' || one.rule === 'minEnd'))
    .map(({ rule, row, at }) => `${rule} in row ${row} at ${at}`);
  return [
    ...[...new Set(found)]
      .filter((one) => !given.includes(one))
      .map((one) => `${region.name}: ${one} is broken and not told`),
    ...given.filter((one) => !found.includes(one)).map((one) => `${region.name}: ${one} is told broken and kept`),
    ...faultsOfStrips(floor, region, ground),
    ...faultsOfPattern(floor, region, region.rows.map(rowRuns)),
  ];
}

function rowRuns(row: RegionData['rows'][number]): RowRuns {
  const runs = runsOf(row.pieces).map((pieces) => ({
    extent: [pieces[0]?.u ?? 0, endOf({ row: 0, pieces })] as const,
    pieces,
  }));
  return { row, runs, strays: [] };
}

/** Strips beside walls along the rows that are not short enough to be notches; what a few ticks decide may be told or not. */
function faultsOfStrips({ plank, rules, broken }: FloorData, region: RegionData, ground: Ground): string[] {
  const given = broken.filter((one) => one.region === region.name && one.rule === 'minRip');
  const notch = Math.max(plank.width, rules.minEnd);
  const strips = wallsAlong(ground, rules.gap).flatMap(({ v, floorward, longest }) =>
    region.rows.flatMap(({ v: line, height }, row) => {
      const [low, high] = floorward ? [v, line + height] : [line, v];
      if (high - low < -SLACK || high - low > height + SLACK || longest < notch - 3 * SLACK) return [];
      // A wall on a row line has a whole row beside it.
      const thin = high - low > SLACK && high - low < rules.minRip + SLACK;
      const certain = thin && high - low < rules.minRip - SLACK && longest > notch + 3 * SLACK;
      return thin ? [{ row, v, certain }] : [];
    }),
  );
  const is = (one: (typeof given)[number], strip: (typeof strips)[number]): boolean =>
    one.row === strip.row && Math.abs(one.at - strip.v) <= SLACK;
  return [
    ...strips
      .filter((strip) => strip.certain && !given.some((one) => is(one, strip)))
      .map(({ row, v }) => `${region.name}, row ${row}: minRip is broken at ${Math.round(v)} and not told`),
    ...given
      .filter((one) => !strips.some((strip) => is(one, strip)))
      .map(({ row, at }) => `${region.name}, row ${row}: minRip is told broken at ${at} and is not`),
  ];
}

/** The walls of the ground that run along the rows, once a level and side, each with its longest stretch. */
function wallsAlong(ground: Ground, gap: number): { v: number; floorward: boolean; longest: number }[] {
  const found = new Map<string, { v: number; floorward: boolean; longest: number }>();
  for (const loop of ground.loops) {
    loop.forEach(([x, y], i) => {
      const [nx, ny] = loop[(i + 1) % loop.length] ?? [x, y];
      if (Math.abs(ny - y) > SLACK || nx === x) return;
      const floorward = nx > x;
      const v = (y + ny) / 2 + (floorward ? gap : -gap);
      const into = floorward ? 2 * SLACK : -2 * SLACK;
      const open = groundAlong(ground, v + into);
      const behind = groundAlong(ground, v - into);
      const longest = Math.max(0, ...open.flatMap((stretch) => without(stretch, behind)).map(([a, b]) => b - a));
      found.set(`${Math.round(v / SLACK)} ${floorward}`, { v, floorward, longest });
    });
  }
  return [...found.values()];
}

function without([from, to]: [number, number], cover: readonly [number, number][]): [number, number][] {
  const rest: [number, number][] = [];
  let at = from;
  for (const [a, b] of cover) {
    if (b <= at || a >= to) continue;
    if (a > at) rest.push([at, a]);
    at = Math.max(at, b);
  }
  return at < to ? [...rest, [at, to]] : rest;
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
