/** A told pattern: every row's joints on one line for the whole region, or scattered, but for the rows told to leave it. */

import type { FloorData, RegionData } from './floor-checker-data.ts';
import type { RowRuns } from './floor-checker-rows.ts';
import { jointsOf } from './floor-checker-rows.ts';
import { unscattered } from './floor-checker-scatter.ts';

/** What is wrong: no one line is left by just the rows that are told, or a telling is placed outside its row. */
export function faultsOfPattern(floor: FloorData, region: RegionData, rows: readonly RowRuns[]): string[] {
  const given = floor.broken.filter((entry) => entry.region === region.name && entry.rule === 'pattern');
  const rhythm = rhythmOf(floor);
  if (floor.rules.pattern.name === 'scattered') {
    const breaches = unscattered(floor, rows);
    const say = ({ row }: { row: number }): string => `${region.name}, row ${row}: pattern`;
    const has = (list: readonly { row: number; at: number }[], one: { row: number; at: number }): boolean =>
      list.some(({ row, at }) => row === one.row && at === one.at);
    return [
      ...breaches.filter((one) => !has(given, one)).map((one) => `${say(one)} is broken at ${one.at} and not told`),
      ...given.filter((one) => !has(breaches, one)).map((one) => `${say(one)} is told broken at ${one.at} and is not`),
    ];
  }
  if (!rhythm)
    return given.map((entry) => `${region.name}, row ${entry.row}: pattern is told broken and none was asked`);
  const misplaced = given.filter(
    ({ row, at }) => !rows[row]?.runs.some(({ extent }) => at >= extent[0] && at <= extent[1]),
  );
  const faults = misplaced.map(
    ({ row, at }) => `${region.name}, row ${row}: pattern is told broken at ${at}, outside the row`,
  );
  const said = JSON.stringify([...new Set(given.map((entry) => entry.row))].sort((a, b) => a - b));
  const leaving = linesOf(floor, rhythm, rows).map((offsets) => rowsOff(floor, offsets, rows));
  const least = leaving.reduce((best, one) => (one.length < best.length ? one : best), leaving[0] ?? []);
  if (said !== JSON.stringify(least) && !leaving.some((one) => JSON.stringify(one) === said)) {
    faults.push(`${region.name}: rows ${JSON.stringify(least)} leave the pattern and ${said} are told`);
  }
  return faults;
}

interface Rhythm {
  readonly step: number;
  readonly rows: number;
}

function rhythmOf({ plank, rules: { pattern } }: FloorData): Rhythm | undefined {
  if (pattern.name === 'stair-step') return pattern;
  if (pattern.name === 'half') return { step: Math.floor(plank.length / 2), rows: 2 };
  if (pattern.name === 'thirds') return { step: Math.floor(plank.length / 3), rows: 3 };
  return undefined;
}

/** The offset of every row's joints on each line that passes through at least one joint, stepping right or left. */
function linesOf({ plank }: FloorData, { step, rows: cycle }: Rhythm, rows: readonly RowRuns[]): number[][] {
  const places = rows.flatMap(({ runs }, row) => runs.flatMap(jointsOf).map((u) => ({ row, u })));
  return [1, -1].flatMap((way) => {
    const shift = (row: number): number => way * (row % cycle) * step;
    const bases = new Set(places.map(({ row, u }) => modulo(u - shift(row), plank.length)));
    return [...bases].map((base) => rows.map((_, row) => modulo(base + shift(row), plank.length)));
  });
}

function rowsOff({ plank }: FloorData, offsets: readonly number[], rows: readonly RowRuns[]): number[] {
  return rows.flatMap(({ runs }, row) =>
    runs.flatMap(jointsOf).some((u) => modulo(u, plank.length) !== offsets[row]) ? [row] : [],
  );
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
