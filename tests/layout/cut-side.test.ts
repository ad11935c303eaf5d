/** Short pieces given a side, against every way to divide a few pieces. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutPiece, pairSided } from '../../src/layout/cutting.ts';
import { fewestLockingPlanks } from '../outside/matching-oracle.ts';

const PLANK = 60;
const KERF = 1;

describe('short pieces with a side', () => {
  it('take the fewest planks where no plank has room for three', () => {
    const part = fc.array(fc.integer({ min: 16, max: PLANK }), { maxLength: 4 });
    fc.assert(
      fc.property(
        part,
        part,
        fc.integer({ min: 31, max: 59 }),
        fc.integer({ min: 1, max: 3 }),
        (starts, ends, long, n) => {
          const shorts = new Array<number>(n).fill(long);
          let index = 0;
          const pieces = (lengths: readonly number[], which: CutPiece['part']): readonly CutPiece[] =>
            lengths.map((length) => ({ length, part: which, index: index++ }));
          const planks = pairSided(
            pieces(starts, 'start'),
            pieces(ends, 'end'),
            pieces(shorts, 'any'),
            PLANK,
            KERF,
            PLANK / 2,
          );
          const given = planks.flatMap((shared) => shared.pieces.map((piece) => piece.index));
          expect(given.sort((a, b) => a - b)).toEqual(Array.from({ length: index }, (_, i) => i));
          for (const { pieces: some } of planks) {
            const length = some.reduce((sum, piece) => sum + piece.length + KERF, -KERF);
            expect(length).toBeLessThanOrEqual(PLANK);
            for (const side of ['start', 'end']) expect(some.filter((p) => p.part === side).length).toBeLessThan(2);
          }
          expect(planks.length).toBe(fewestLockingPlanks({ starts, ends, shorts }, PLANK, KERF));
        },
      ),
      { numRuns: 120 },
    );
  });
});
