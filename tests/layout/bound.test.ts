/** Lower bounds, against every layout of tiny floors on a coarse grid, stagger and pattern left free. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundOf } from '../../src/layout/bounds.ts';
import type { Plank } from '../../src/layout/floor.ts';
import { slabsOf } from '../../src/layout/slab.ts';
import { ticks } from '../../src/units/length.ts';
import { fewestLockingPlanks } from '../outside/matching-oracle.ts';

const PLANK: Plank = { width: ticks(10), length: ticks(12), perCarton: 1, lock: 'click' };

/** Fewest planks over every start piece of every row (whole ticks); rows share planks lengthwise only. */
function fewest(runs: readonly number[], kerf: number): number {
  let best = Number.POSITIVE_INFINITY;
  const lay = (
    row: number,
    whole: number,
    starts: readonly number[],
    ends: readonly number[],
    shorts: readonly number[],
  ): void => {
    const run = runs[row];
    if (run === undefined) {
      best = Math.min(best, whole + fewestLockingPlanks({ starts, ends, shorts }, PLANK.length, kerf));
      return;
    }
    if (run <= PLANK.length) {
      const isWhole = run === PLANK.length;
      lay(row + 1, whole + (isWhole ? 1 : 0), starts, ends, isWhole ? shorts : [...shorts, run]);
      return;
    }
    for (let start = 1; start <= PLANK.length; start++) {
      const rest = (run - start) % PLANK.length;
      const wholes = Math.floor((run - start) / PLANK.length) + (start === PLANK.length ? 1 : 0);
      lay(
        row + 1,
        whole + wholes,
        start === PLANK.length ? starts : [...starts, start],
        rest === 0 ? ends : [...ends, rest],
        shorts,
      );
    }
  };
  lay(0, 0, [], [], []);
  return best;
}

describe('bound', () => {
  it('is never above the best layout of a rectangle', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 0, max: 2 }),
        (run, rows, kerf) => {
          const slabs = slabsOf([
            [
              [0, 0],
              [run, 0],
              [run, rows * PLANK.width],
              [0, rows * PLANK.width],
            ],
          ]);
          const { best, area, row } = boundOf([slabs], PLANK, {
            kerf: ticks(kerf),
            minEnd: ticks(0),
            minRip: ticks(2),
          });
          const least = fewest(
            Array.from({ length: rows }, () => run),
            kerf,
          );
          expect(best).toBe(Math.max(area, row));
          expect(best).toBeLessThanOrEqual(least);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('is never above the best layout of an L whose jog lies on a row line', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 36 }),
        fc.integer({ min: 1, max: 35 }),
        fc.integer({ min: 0, max: 1 }),
        (long, cut, kerf) => {
          const short = Math.max(1, long - cut);
          if (short === long) return;
          const slabs = slabsOf([
            [
              [0, 0],
              [long, 0],
              [long, 10],
              [short, 10],
              [short, 30],
              [0, 30],
            ],
          ]);
          const { best } = boundOf([slabs], PLANK, { kerf: ticks(kerf), minEnd: ticks(0), minRip: ticks(2) });
          expect(best).toBeLessThanOrEqual(fewest([long, short, short], kerf));
        },
      ),
      { numRuns: 80 },
    );
  });

  it('needs one plank, not two, for a run a kerf short of it', () => {
    // 47 15/16 in against 48 in, kerf 1/8 in, in sixteenths.
    const run = slabsOf([
      [
        [0, 0],
        [767, 0],
        [767, 96],
        [0, 96],
      ],
    ]);
    const board: Plank = { width: ticks(96), length: ticks(768), perCarton: 1, lock: 'click' };
    expect(boundOf([run], board, { kerf: ticks(2), minEnd: ticks(0), minRip: ticks(32) })).toEqual({
      area: 1,
      row: 1,
      best: 1,
    });
  });
});
