/** What the rules leave to rows on one another: how many of them may have their joints near one place. */

import type { FlowTable } from './flow-table.ts';
import type { ScatterFloor } from './scatter-floor.ts';

/** At most `most` rows of a block begin with one of its options `first` to `last`. */
export interface FlowArc {
  readonly block: number;
  readonly first: number;
  readonly last: number;
  readonly most: number;
}

const TOLERANCE = 1e-6;

/**
 * Arcs that `used` (rows by block and option) breaks: of rows on one another only every other begins within less than a
 * stagger, and where joints must not line up only every third within less than that. Arcs that pass the end of a plank are
 * left out, for there the rule binds long runs only.
 */
export function brokenArcs(
  { blocks }: FlowTable,
  { stagger, inLine }: Pick<ScatterFloor, 'stagger' | 'inLine'>,
  used: readonly (readonly number[])[],
): readonly FlowArc[] {
  return blocks.flatMap(({ runs, options }, block) => {
    const rows = used[block] ?? [];
    const found: FlowArc[] = [];
    for (const [width, every] of [
      [stagger, 2],
      [inLine, 3],
    ] as const) {
      const most = Math.ceil(runs.length / every);
      options.forEach(({ start }, first) => {
        if ((rows[first] ?? 0) < TOLERANCE) return;
        let last = first;
        let sum = 0;
        for (let i = first; i < options.length && (options[i]?.start ?? 0) - start < width; i++) {
          sum += rows[i] ?? 0;
          last = i;
        }
        if (sum > most + TOLERANCE) found.push({ block, first, last, most });
      });
    }
    return found;
  });
}
