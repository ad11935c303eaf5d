/** What the rules leave to rows on one another: how many of them may have their joints near one place. */

import type { FlowTable } from './flow-table.ts';
import type { ScatterFloor } from './scatter-floor.ts';

/** At most `most` rows of some blocks, which lie on one another, begin with one of the options `first` to `last`. */
export interface FlowArc {
  readonly blocks: readonly number[];
  readonly first: number;
  readonly last: number;
  readonly most: number;
}

const TOLERANCE = 1e-6;

/**
 * Arcs that `used` (rows by block and option) breaks: of rows on one another only every other begins within less than a
 * stagger, and where joints must not line up only every third within less than that. Arcs that pass the end of a plank are
 * left out, for there the rule binds long runs only. Distances are cut to whole units: joints that keep them can all be moved
 * to the grid at once, and then keep as much.
 */
export function brokenArcs(
  { blocks, unit }: FlowTable,
  { stagger, inLine }: Pick<ScatterFloor, 'stagger' | 'inLine'>,
  used: readonly (readonly number[])[],
): readonly FlowArc[] {
  const found: FlowArc[] = [];
  for (const stack of new Set(blocks.map((block) => block.stack))) {
    const over = blocks.flatMap((block, b) => (block.stack === stack ? [b] : []));
    const options = blocks[over[0] ?? 0]?.options ?? [];
    const count = over.reduce((sum, b) => sum + (blocks[b]?.runs.length ?? 0), 0);
    const rows = options.map((_, i) => over.reduce((sum, b) => sum + (used[b]?.[i] ?? 0), 0));
    for (const [apart, every] of [
      [stagger, 2],
      [inLine, 3],
    ] as const) {
      const width = apart - (apart % unit);
      const most = Math.ceil(count / every);
      options.forEach(({ start }, first) => {
        if ((rows[first] ?? 0) < TOLERANCE) return;
        let last = first;
        let sum = 0;
        for (let i = first; i < options.length && (options[i]?.start ?? 0) - start < width; i++) {
          sum += rows[i] ?? 0;
          last = i;
        }
        if (sum > most + TOLERANCE) found.push({ blocks: over, first, last, most });
      });
    }
  }
  return found;
}
