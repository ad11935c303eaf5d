/** The rest of a floor without an offcut at hand, against every way to divide a few pieces among whole planks. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/layout/cutting.ts';
import { sourced } from '../../src/layout/resume-floor.ts';
import { inches } from '../../src/units/length.ts';
import { plank } from '../outside/laid.ts';
import { fewestLockingPlanks } from '../outside/matching-oracle.ts';

const PLANK = plank(6, 60);
const KERF = inches(1);

describe('whole planks for the rest of a floor', () => {
  it('are as few as can be, pieces between two walls paired with the others', () => {
    const lengths = (most: number) => fc.array(fc.integer({ min: 8, max: 59 }).map(inches), { maxLength: most });
    fc.assert(
      fc.property(lengths(3), lengths(3), lengths(3), (starts, ends, shorts) => {
        let index = 0;
        const pieces = (some: readonly number[], part: CutPiece['part']): readonly CutPiece[] =>
          some.map((length) => ({ length, part, index: index++ }));
        const all = [...pieces(starts, 'start'), ...pieces(ends, 'end'), ...pieces(shorts, 'any')];
        const { planks, sources } = sourced(all, [], PLANK, KERF);
        expect(sources.size).toBe(all.length);
        expect(planks).toBe(fewestLockingPlanks({ starts, ends, shorts }, PLANK.length, KERF));
      }),
      { numRuns: 150 },
    );
  });
});
