/** Bounds of floors whose first and last rows share planks, against every layout there is. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lane } from '../../src/layout/cutting.ts';
import { flowTable } from '../../src/layout/offcut-flow.ts';
import type { Run } from '../../src/layout/runs.ts';
import { scatterFloor } from '../../src/layout/starts.ts';
import { inches } from '../../src/units/length.ts';
import { bounded, FlowModel, highs } from '../../src/workers/floor-flow.ts';
import { fewestOf } from '../outside/layout-oracle.ts';

const solver = await highs();
const PLANK = 12;

/** The bounds of rows by length in whole inches, planks of 12 in, the first row near and the last one far unless told otherwise. */
function boundsOf(
  lengths: readonly number[],
  kerf: number,
  lanes?: readonly Lane[],
  looks?: { readonly inLine: number; readonly minEnd: number; readonly stagger?: number },
): ReturnType<typeof bounded> {
  const runs = lengths.map((length, row): Run => {
    return { row, from: 0, length: inches(length), touching: row === 0 ? [] : [row - 1] };
  });
  const rules = { kerf: inches(kerf), stagger: inches(looks?.stagger ?? 3), minEnd: inches(looks?.minEnd ?? 2) };
  const plain = scatterFloor([runs], { length: inches(PLANK) }, rules);
  const floor = looks ? { ...plain, inLine: inches(looks.inLine) } : plain;
  const edges = lengths.map((_, i): Lane => (i === 0 ? 'near' : i === lengths.length - 1 ? 'far' : 'full'));
  const table = flowTable(floor, lanes ?? edges);
  const model = new FlowModel(solver, table);
  const found = bounded(model, table, floor);
  model.dispose();
  return found;
}

function fewest(lengths: readonly number[], kerf: number): number | undefined {
  const rows = lengths.map((length, i) => {
    const edge = i === 0 ? ('near' as const) : i === lengths.length - 1 ? ('far' as const) : undefined;
    return edge ? { from: 0, length, edge } : { from: 0, length };
  });
  return fewestOf({ rows, plank: PLANK, kerf, minEnd: 2, stagger: 3, inLine: 0.5 });
}

describe('the bound of a floor whose ripped rows share planks', () => {
  it('is never above the fewest planks of any layout', () => {
    const met: boolean[] = [];
    fc.assert(
      fc.property(
        fc.integer({ min: 13, max: 34 }),
        fc.integer({ min: 13, max: 34 }),
        fc.integer({ min: 1, max: 2 }),
        fc.integer({ min: 13, max: 34 }),
        fc.integer({ min: 0, max: 1 }),
        (first, between, count, last, kerf) => {
          const lengths = [first, ...Array.from({ length: count }, () => between), last];
          const least = fewest(lengths, kerf);
          if (least === undefined) return;
          const { loose, tight } = boundsOf(lengths, kerf);
          expect(loose).toBeLessThanOrEqual(tight);
          expect(tight).toBeLessThanOrEqual(least);
          met.push(tight === least);
        },
      ),
      { numRuns: 80 },
    );
    expect(met.filter((is) => is).length).toBeGreaterThan(met.length * 0.75);
  });

  it('counts what the longer of the two takes, whichever it is', () => {
    const [short, long] = [13, 44];
    for (const lengths of [
      [short, 30, long],
      [long, 30, short],
    ]) {
      const none = (at: number): readonly Lane[] => lengths.map((_, i): Lane => (i === at ? 'none' : 'full'));
      const { tight } = boundsOf(lengths, 1);
      expect(tight).toBeGreaterThanOrEqual(boundsOf(lengths, 1, none(0)).tight);
      expect(tight).toBeGreaterThanOrEqual(boundsOf(lengths, 1, none(2)).tight);
      expect(tight).toBeLessThan(boundsOf(lengths, 1, ['full', 'full', 'full']).tight);
    }
  });
});

describe('the bound of rows on one another that must look scattered', () => {
  it('is never above the fewest planks of any layout, and at times higher than without the looks', () => {
    let raised = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 6 }),
        fc.integer({ min: 24, max: 35 }),
        fc.integer({ min: 0, max: 1 }),
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 2, max: 4 }),
        (count, length, kerf, minEnd, inLine) => {
          const lengths = new Array<number>(count).fill(length);
          const rows = lengths.map(() => ({ from: 0, length }));
          const least = fewestOf({ rows, plank: PLANK, kerf, minEnd, stagger: 3, inLine });
          if (least === undefined) return;
          const full = lengths.map((): Lane => 'full');
          const { tight } = boundsOf(lengths, kerf, full, { inLine, minEnd });
          expect(tight).toBeLessThanOrEqual(least);
          if (tight > boundsOf(lengths, kerf, full, { inLine: 0, minEnd }).tight) raised++;
        },
      ),
      { numRuns: 60 },
    );
    expect(raised).toBeGreaterThan(0);
  });

  it('takes no rule from joints that may lie as near as they like, or nearer than a unit', () => {
    let same = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 4 }),
        fc.integer({ min: 20, max: 35 }),
        fc.integer({ min: 0, max: 1 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom(0, 0.5, 1, 2),
        (count, length, kerf, minEnd, stagger, inLine) => {
          const lengths = new Array<number>(count).fill(length);
          const rows = lengths.map(() => ({ from: 0, length }));
          // Joints on whole inches: what is less than one forbids the same place only, which moving one of two by less mends.
          const least = fewestOf({
            rows,
            plank: PLANK,
            kerf,
            minEnd,
            stagger,
            inLine: inLine < 1 ? undefined : inLine,
          });
          if (least === undefined) return;
          const { tight } = boundsOf(
            lengths,
            kerf,
            lengths.map((): Lane => 'full'),
            { inLine, minEnd, stagger },
          );
          expect(tight).toBeLessThanOrEqual(least);
          if (tight === least) same++;
        },
      ),
      { numRuns: 60 },
    );
    expect(same).toBeGreaterThan(30);
  });
});
