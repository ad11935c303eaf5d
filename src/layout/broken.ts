/** Rules a layout does not keep, each with its place: read off the finished layout, whatever made it. */

import type { BrokenRule, Plank, Rules } from './floor.ts';
import { jointLine } from './pattern.ts';
import type { SlicedRow } from './row-slice.ts';
import { endOf, isJointed, jointsOf, type Run, tooNear, withinPlank } from './run.ts';
import { scatterBreaches } from './scatter-rule.ts';
import { leastWall, longWalls, stripBeside, type WallLevel } from './wall-level.ts';

/** One region's layout as far as the rules go. */
export interface Layout {
  readonly name: string;
  readonly levels: readonly WallLevel[];
  readonly line: number;
  readonly rows: readonly SlicedRow[];
  readonly runs: readonly Run[];
  readonly starts: readonly number[];
  /** The start pieces its pattern asks for, where it asks for any. */
  readonly patterned: readonly number[] | undefined;
}

/** Every broken rule of a region, row by row. */
export function brokenRules(layout: Layout, plank: Plank, rules: Rules): readonly BrokenRule[] {
  const broken: BrokenRule[] = [];
  const tell = (rule: BrokenRule['rule'], row: number, at: number): void => {
    broken.push({ rule, region: layout.name, row, at });
  };
  for (const level of longWalls(layout.levels, leastWall(plank, rules))) {
    if (stripBeside(level, layout.line, plank.width) < rules.minRip)
      tell('minRip', rowBeside(layout.rows, level), level.v);
  }
  layout.runs.forEach((run, i) => {
    if (!isJointed(run, plank.length)) return;
    const start = layout.starts[i] ?? 0;
    const end = endOf(run.length, start, plank.length);
    if (start < rules.minEnd) tell('minEnd', run.row, run.from);
    if (end < rules.minEnd) tell('minEnd', run.row, run.from + run.length - end);
    for (const j of run.touching) {
      const other = layout.runs[j];
      if (!other) continue;
      for (const at of tooNear(run, start, other, layout.starts[j] ?? 0, plank.length, rules.stagger))
        tell('stagger', run.row, at);
    }
    const place = layout.patterned?.[i];
    if (
      place !== undefined &&
      jointLine(rules.pattern, plank) &&
      withinPlank(place - start, plank.length) !== plank.length
    ) {
      tell('pattern', run.row, jointsOf(run, start, plank.length)[0] ?? run.from);
    }
  });
  if (rules.pattern.name === 'scattered') {
    for (const { row, at } of scatterBreaches(layout.runs, layout.starts, plank.length)) tell('pattern', row, at);
  }
  return broken.sort((a, b) => a.row - b.row || a.at - b.at);
}

/** Index of the row that lies against a wall level. */
function rowBeside(rows: readonly SlicedRow[], level: WallLevel): number {
  const index = rows.findIndex((row) =>
    level.side === 'floor'
      ? level.v >= row.v && level.v < row.v + row.height
      : level.v > row.v && level.v <= row.v + row.height,
  );
  return Math.max(0, index);
}
