/** A region with slanted walls sliced into rows: each run is the outer extent of the strip, and the strip's own outlines are kept. */

import { at, boxOf, type Outline } from '../units/geometry.ts';
import { within } from './ground.ts';
import type { SlicedRow } from './row-slice.ts';
import { type Span, subtract, union } from './slab.ts';
import type { WallLevel } from './wall-level.ts';

/** A row with the outlines (frame, even–odd) of what lies in it. */
export interface SlantRow extends SlicedRow {
  readonly rings: readonly Outline[];
}

/** Rows from bottom to top; row lines lie at `line` + k × `width`. Rows that hold nothing are left out. */
export function sliceSlanted(ground: readonly Outline[], line: number, width: number): readonly SlantRow[] {
  if (ground.length === 0) return [];
  const boxes = ground.map(boxOf);
  const [left, right] = [Math.min(...boxes.map(({ minX }) => minX)), Math.max(...boxes.map(({ maxX }) => maxX))];
  const [bottom, end] = [Math.min(...boxes.map(({ minY }) => minY)), Math.max(...boxes.map(({ maxY }) => maxY))];
  const rows: SlantRow[] = [];
  for (let v = bottom; v < end; ) {
    const offset = (((v - line) % width) + width) % width;
    const top = Math.min(v + width - offset, end);
    const rings = within(ground, { left: left - 1, right: right + 1, bottom: v, top });
    const runs = union(
      rings.map((ring): Span => {
        const { minX, maxX } = boxOf(ring);
        return { from: minX, to: maxX };
      }),
    );
    if (runs.length > 0) rows.push({ v, height: top - v, runs, rings });
    v = top;
  }
  return rows;
}

/** The walls of the ground that run along the rows, from bottom to top. */
export function levelsOf(ground: readonly Outline[]): readonly WallLevel[] {
  const found = new Map<number, { floor: Span[]; ceiling: Span[] }>();
  for (const path of ground) {
    path.forEach(([u, v], i) => {
      const [nextU, nextV] = at(path, i + 1);
      if (v !== nextV || u === nextU) return;
      const level = found.get(v) ?? { floor: [], ceiling: [] };
      found.set(v, level);
      // Ground lies to the left of every wall.
      if (nextU > u) level.floor.push({ from: u, to: nextU });
      else level.ceiling.push({ from: nextU, to: u });
    });
  }
  return [...found]
    .sort(([a], [b]) => a - b)
    .flatMap(([v, { floor, ceiling }]) =>
      (['floor', 'ceiling'] as const).flatMap((side): readonly WallLevel[] => {
        const spans =
          side === 'floor' ? subtract(union(floor), union(ceiling)) : subtract(union(ceiling), union(floor));
        return spans.length > 0 ? [{ v, side, spans }] : [];
      }),
    );
}
