/** Searched floors: legal at every step, never below their bound, certified against brute force, the same each time. */

import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { isFewer, type Plan, type Plank, type Rules } from '../../src/layout/floor.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { inches } from '../../src/units/length.ts';
import { highs } from '../../src/workers/floor-flow.ts';
import { searchFloor } from '../../src/workers/floor-search.ts';
import { closeWorkers, workerThreads } from '../../src/workers/pool.ts';
import { betterFloors } from '../../src/workers/solve.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { benchRules, dataOf, plank, region } from '../outside/laid.ts';
import { fewestOf } from '../outside/layout-oracle.ts';

afterAll(closeWorkers);

const solver = await highs();
const areasOf = (seed: number, index: number) => {
  const room = randomRooms(seed, index + 1)[index];
  return [{ region: region(room?.name ?? '', room?.outline ?? []), angle: 0 as const }];
};

describe('a search', () => {
  it('tells legal plans only, each no worse than the one before and none below its bound', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 0, max: 3 }), (seed, shape) => {
        const board = plank(8, 60);
        let before: Plan | undefined;
        for (const plan of searchFloor(areasOf(seed, shape), board, benchRules(board, 'scattered'), solver)) {
          expect(checkFloor(dataOf(plan))).toEqual([]);
          expect(plan.planks).toBeGreaterThanOrEqual(plan.bound.best);
          if (before) expect(isFewer(before, plan)).toBe(false);
          before = plan;
        }
      }),
      { numRuns: 12 },
    );
  });

  it('comes to the same plan each time', () => {
    const board = plank(8, 60);
    const last = () => [...searchFloor(areasOf(3, 1), board, benchRules(board, 'scattered'), solver)].at(-1);
    expect(last()).toEqual(last());
  });

  it('proves a rectangle that the simple bounds do not', () => {
    const board = plank(6, 48);
    const last = [...searchFloor(areasOf(60, 0), board, benchRules(board, 'scattered'), solver)].at(-1);
    expect(last?.bound.proven).toBe(true);
    expect(last?.broken).toEqual([]);
  });
});

/** Rows of a rectangle in whole inches: a plank of 12 in, so that every place of every joint can be tried. */
function small(
  rows: number,
  length: number,
  kerf: number,
): { board: Plank; rules: Rules; areas: ReturnType<typeof areasOf> } {
  const board = { ...plank(4, 12), perCarton: 10 };
  const rules: Rules = {
    gap: inches(0),
    kerf: inches(kerf),
    stagger: inches(3),
    minEnd: inches(2),
    minRip: inches(1),
    pattern: { name: 'scattered' },
  };
  const outline = [
    [0, 0],
    [inches(length), 0],
    [inches(length), inches(4 * rows)],
    [0, inches(4 * rows)],
  ] as const;
  return { board, rules, areas: [{ region: region('small', outline), angle: 0 }] };
}

describe('the certificate', () => {
  it('is never above the fewest planks that brute force finds, and the search reaches those', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }),
        fc.integer({ min: 25, max: 44 }),
        fc.integer({ min: 0, max: 1 }),
        (rows, length, kerf) => {
          const { board, rules, areas } = small(rows, length, kerf);
          const row = { from: 0, length };
          const fewest = fewestOf({
            rows: Array.from({ length: rows }, () => row),
            plank: 12,
            kerf,
            minEnd: 2,
            stagger: 3,
            inLine: 0.5,
          });
          const last = [...searchFloor(areas, board, rules, solver)].at(-1);
          if (fewest === undefined || !last || last.broken.length > 0) return;
          expect(last.bound.best).toBeLessThanOrEqual(fewest);
          expect(last.planks).toBeLessThanOrEqual(fewest);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a worker that dies amid a search', () => {
  it('takes nothing that was found with it, and the next ask works', async () => {
    const board = plank(5, 36);
    // A room that takes the search long enough for its worker to be ended before it is done.
    const areas = areasOf(60, 21);
    const first = layFloor(areas, board, benchRules(board, 'scattered'));
    const found: Plan[] = [first];
    for await (const plan of betterFloors(areas, first)) {
      found.push(plan);
      for (const thread of workerThreads()) await thread.terminate();
    }
    expect(found.length).toBeGreaterThan(1);
    for (const plan of found) expect(checkFloor(dataOf(plan))).toEqual([]);
    const again: Plan[] = [];
    for await (const plan of betterFloors(areas, first)) again.push(plan);
    expect(again.length).toBeGreaterThan(0);
    expect(again.at(-1)?.planks).toBeLessThanOrEqual(first.planks);
  });
});
