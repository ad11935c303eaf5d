/** An outsider's check of a laid floor: knows only its plain data, and shares no code with what lays floors. */

import type { FloorData, PointData, RegionData } from './floor-checker-data.ts';
import { readFloor } from './floor-checker-data.ts';
import { areaWithin, groundOf } from './floor-checker-ground.ts';
import { faultsOfBound, faultsOfCounts, faultsOfPlanks } from './floor-checker-planks.ts';
import type { RowRuns } from './floor-checker-rows.ts';
import { faultsOfRows, runsOf } from './floor-checker-rows.ts';
import { faultsOfRules } from './floor-checker-rules.ts';
import { checkHerringbone, isHerringbone } from './herringbone-checker.ts';
import { faultsOfSlanted, isSlanted } from './slant-checker.ts';

/**
 * Every fault of a laid floor (result data of kind "floor", lengths in ticks), each a sentence with its place; none when it is
 * legal: whole coverage, pieces that lock and can be cut, counts and bounds that follow, and every broken rule told.
 * Regions whose walls run along and across the rows are judged exactly; where one has slanted walls or rows, all are judged by
 * polygons, to a few ticks.
 */
export function checkFloor(data: unknown): string[] {
  if (isHerringbone(data)) return checkHerringbone(data);
  const read = readFloor(data);
  if ('faults' in read) return read.faults;
  const { floor } = read;
  if (floor.regions.some(isSlanted))
    return [...faultsOfNames(floor), ...faultsOfCounts(floor), ...faultsOfSlanted(floor)];
  const faults = [...faultsOfNames(floor), ...faultsOfPlanks(floor), ...faultsOfCounts(floor)];
  const all: RowRuns[] = [];
  let area = 0n;
  for (const region of floor.regions) {
    const sought = groundOf(region, floor.rules.gap);
    if ('faults' in sought) {
      faults.push(...sought.faults);
      continue;
    }
    const rows = runsOf(region, sought.ground);
    faults.push(...faultsOfOpenings(region));
    faults.push(
      ...faultsOfRows(floor, region, sought.ground, rows),
      ...faultsOfRules(floor, region, sought.ground, rows),
    );
    area += areaWithin(sought.ground, [-Infinity, Infinity], [-Infinity, Infinity]);
    all.push(...rows);
  }
  return [...faults, ...faultsOfBound(floor, area, all)];
}

function faultsOfNames(floor: FloorData): string[] {
  const names = floor.regions.map((region) => region.name);
  const twice = names.filter((name, i) => names.indexOf(name) !== i);
  const nowhere = floor.broken.filter(({ region, row }) => {
    const found = floor.regions.find((one) => one.name === region);
    return !found || row >= found.rows.length;
  });
  return [
    ...twice.map((name) => `${name}: two regions have this name`),
    ...nowhere.map(
      ({ rule, region, row }) => `${region}, row ${row}: ${rule} is told broken where there is no such row`,
    ),
  ];
}

function faultsOfOpenings({ name, outline, holes, openings }: RegionData): string[] {
  const walls = [outline, ...holes].flatMap((loop) =>
    loop.map((a, i): [PointData, PointData] => [a, loop[(i + 1) % loop.length] ?? a]),
  );
  const off = openings.filter(({ from, to }) => !walls.some(([a, b]) => lies(from, a, b) && lies(to, a, b)));
  return off.map(({ from }) => `${name}: the opening at ${from.join(', ')} is not in one wall`);
}

function lies([x, y]: PointData, [ax, ay]: PointData, [bx, by]: PointData): boolean {
  return x >= Math.min(ax, bx) && x <= Math.max(ax, bx) && y >= Math.min(ay, by) && y <= Math.max(ay, by);
}
