/** Rules that may be broken but must then be told: stagger, shortest end, narrowest strip, and every telling must be true. */

import type { FloorData, RegionData } from './floor-checker-data.ts';
import type { Column } from './floor-checker-ground.ts';
import { overlap, rowWalls } from './floor-checker-ground.ts';
import { faultsOfPattern } from './floor-checker-pattern.ts';
import type { RowRuns } from './floor-checker-rows.ts';
import { jointsOf, spans } from './floor-checker-rows.ts';

/** A rule broken in a row, anywhere from `low` to `high` (along u; along v for a strip). */
interface Breach {
  readonly rule: 'stagger' | 'minEnd' | 'minRip';
  readonly row: number;
  readonly low: number;
  readonly high: number;
}

/** Every breach that is not told and every telling that is not a breach. */
export function faultsOfRules(
  floor: FloorData,
  region: RegionData,
  ground: readonly Column[],
  rows: RowRuns[],
): string[] {
  const breaches = [...staggers(floor, rows), ...shortEnds(floor, rows), ...thinStrips(floor, ground, rows)];
  const given = floor.broken.filter((entry) => entry.region === region.name && entry.rule !== 'pattern');
  const tells = (entry: (typeof given)[number], { rule, row, low, high }: Breach): boolean =>
    entry.rule === rule && entry.row === row && entry.at >= low && entry.at <= high;
  const notGiven = breaches.filter((breach) => !given.some((entry) => tells(entry, breach)));
  const untrue = given.filter((entry) => !breaches.some((breach) => tells(entry, breach)));
  return [
    ...notGiven.map(({ rule, row, low }) => `${region.name}, row ${row}: ${rule} is broken at ${low} and not told`),
    ...untrue.map(({ rule, row, at }) => `${region.name}, row ${row}: ${rule} is told broken at ${at} and is not`),
    ...faultsOfPattern(floor, region, rows),
  ];
}

function staggers(floor: FloorData, rows: readonly RowRuns[]): Breach[] {
  return rows.flatMap(({ runs }, row) => {
    const before = rows[row - 1]?.runs ?? [];
    return runs.flatMap((run) => {
      const below = before.filter((other) => overlap(run.extent, other.extent) > 0).flatMap(jointsOf);
      const close = jointsOf(run).filter((u) => below.some((other) => Math.abs(u - other) < floor.rules.stagger));
      return close.map((u): Breach => ({ rule: 'stagger', row, low: u, high: u }));
    });
  });
}

function shortEnds(floor: FloorData, rows: readonly RowRuns[]): Breach[] {
  return rows.flatMap(({ runs }, row) =>
    runs.flatMap(({ extent, pieces }) =>
      pieces
        .filter((piece) => piece.part !== 'whole' && !spans(piece, extent) && piece.length < floor.rules.minEnd)
        .map(({ u, length }): Breach => ({ rule: 'minEnd', row, low: u, high: u + length })),
    ),
  );
}

/**
 * The strip between a wall and the row line on its open side, within the row that holds the wall. Beside a wall that is shorter
 * than a plank is wide, or than the shortest end piece, a plank is notched and no strip lies.
 */
function thinStrips(floor: FloorData, ground: readonly Column[], rows: readonly RowRuns[]): Breach[] {
  const notch = Math.max(floor.plank.width, floor.rules.minEnd);
  const walls = rowWalls(ground).filter(({ longest }) => longest >= notch);
  return walls.flatMap(({ v, floorward }) =>
    rows.flatMap(({ row: { v: line, height } }, row) => {
      const beside = floorward ? v >= line && v < line + height : v > line && v <= line + height;
      const [low, high] = floorward ? [v, line + height] : [line, v];
      return beside && high - low < floor.rules.minRip ? [{ rule: 'minRip' as const, row, low, high }] : [];
    }),
  );
}
