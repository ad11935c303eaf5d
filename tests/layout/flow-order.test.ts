/** How many rows in turn may begin among some places, against every layout on a finer grid; and what bounds make of it. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderRules, rowsInTurn } from '../../src/layout/offcut-flow.ts';
import { fewestOf } from '../outside/layout-oracle.ts';

/** A plank of 12 units, each of 4 steps. */
const [PLANK, STEPS] = [12, 4];
const MOST = 4;

describe('rows in turn', () => {
  it('are never more in any layout on a finer grid than the rule allows', () => {
    const seen = { held: 0, tight: 0 };
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: PLANK - 1 }), { minLength: 2, maxLength: 5 }),
        fc.integer({ min: 13, max: 40 }),
        fc.integer({ min: 4, max: 14 }),
        fc.integer({ min: 2, max: 16 }),
        (cells, length, stagger, inLine) => {
          const rules = orderRules({ plank: PLANK * STEPS, stagger, inLine }, length * STEPS, STEPS);
          const most = rowsInTurn(cells, rules, MOST - 1);
          if (most === undefined) return;
          seen.held++;
          const starts = cells.flatMap((cell) => Array.from({ length: STEPS }, (_, k) => cell * STEPS + k));
          const laid = (count: number): number | undefined =>
            fewestOf({
              rows: Array.from({ length: count }, () => ({ from: 0, length: length * STEPS, starts })),
              plank: PLANK * STEPS,
              kerf: 0,
              minEnd: 1,
              stagger,
              inLine,
            });
          expect(laid(most + 1)).toBeUndefined();
          if (laid(most) !== undefined) seen.tight++;
        },
      ),
      { numRuns: 250 },
    );
    expect(seen.held).toBeGreaterThan(40);
    expect(seen.tight).toBeGreaterThan(seen.held * 0.4);
  });

  it('are two where all begin near places a third of a plank apart: three would be a stair', () => {
    const rules = orderRules({ plank: 48, stagger: 6, inLine: 4 }, 200, 1);
    expect(rowsInTurn([5, 21, 37], rules, 8)).toBe(2);
    expect(rowsInTurn([5, 21, 37, 29], rules, 8)).toBeUndefined();
    // In a run of less than two planks the stair may not show.
    expect(rowsInTurn([5, 21, 37], { ...rules, long: false }, 8)).toBeUndefined();
  });
});
