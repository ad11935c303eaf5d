/** Sticks: every piece once, every stick long enough with its kerfs, cost at least the bound, and cheapest against every way on small lists. */

import fc from 'fast-check';
import type { Highs } from 'highs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { firstSticks, type StickPlan, type StickTask } from '../../src/trim/sticks.ts';
import { highs } from '../../src/workers/floor-flow.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { cutSticks } from '../../src/workers/solve.ts';
import { searchSticks } from '../../src/workers/stick-search.ts';
import { randomLists } from '../bench/sticks.ts';
import { cheapestByEveryWay } from '../outside/stick-oracle.ts';

let solver: Highs;
beforeAll(async () => {
  solver = await highs();
});
afterAll(closeWorkers);

function best(task: StickTask): StickPlan {
  let last: StickPlan | undefined;
  for (const plan of searchSticks(task, solver)) last = plan;
  if (!last) throw new Error('no plan');
  return last;
}

function expectLegal(task: StickTask, plan: StickPlan): void {
  const cut = plan.sticks.flatMap(({ pieces }) => pieces);
  expect([...cut].sort()).toEqual(task.pieces.map(({ id }) => id).sort());
  for (const { stock, pieces, leftover } of plan.sticks) {
    const own = pieces.map((id) => task.pieces.find((piece) => piece.id === id));
    const lengths = own.reduce((sum, piece) => sum + (piece?.length ?? 0), 0);
    const kerfs =
      own.reduce((sum, piece) => sum + (piece?.kerf ?? 0), 0) - Math.max(...own.map((piece) => piece?.kerf ?? 0));
    const length = (task.stock[stock]?.length ?? 0) - task.endTrim;
    expect(lengths + kerfs).toBeLessThanOrEqual(length);
    expect(leftover).toBeGreaterThanOrEqual(0);
    expect(leftover).toBeLessThanOrEqual(length - lengths);
  }
  task.stock.forEach(({ have }, stock) => {
    if (have !== undefined)
      expect(plan.sticks.filter((stick) => stick.stock === stock).length).toBeLessThanOrEqual(have);
  });
  expect(plan.cents).toBe(
    plan.sticks.reduce(
      (sum, { stock }) => sum + (task.stock[stock]?.have === undefined ? (task.stock[stock]?.cents ?? 0) : 0),
      0,
    ),
  );
  expect(plan.cents).toBeGreaterThanOrEqual(plan.bound);
  expect(plan.proven).toBe(plan.cents === plan.bound);
}

const small = fc.record({
  lengths: fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 7 }),
  kerf: fc.integer({ min: 0, max: 2 }),
  endTrim: fc.integer({ min: 0, max: 3 }),
  prices: fc.tuple(fc.integer({ min: 50, max: 90 }), fc.integer({ min: 80, max: 140 })),
  have: fc.option(fc.record({ length: fc.integer({ min: 10, max: 60 }), have: fc.integer({ min: 1, max: 2 }) }), {
    nil: undefined,
  }),
});

function taskOf({
  lengths,
  kerf,
  endTrim,
  prices,
  have,
}: typeof small extends fc.Arbitrary<infer T> ? T : never): StickTask {
  return {
    pieces: lengths.map((length, i) => ({ id: `p${i}`, length, kerf })),
    stock: [
      { length: 70, cents: prices[0] },
      { length: 110, cents: prices[1] },
      ...(have ? [{ length: have.length, cents: 0, have: have.have }] : []),
    ],
    endTrim,
  };
}

describe('small lists', () => {
  it('are cut legally, and as cheap as any way (every set of pieces on every stock enumerated)', () => {
    fc.assert(
      fc.property(small, (given) => {
        const task = taskOf(given);
        const plan = best(task);
        expectLegal(task, plan);
        expect(plan.proven).toBe(true);
        expect(plan.cents).toBe(cheapestByEveryWay(task));
      }),
      { numRuns: 120 },
    );
  });

  it('never cost more when a stock length is added', () => {
    fc.assert(
      fc.property(
        small,
        fc.integer({ min: 65, max: 130 }),
        fc.integer({ min: 40, max: 160 }),
        (given, length, cents) => {
          const task = taskOf(given);
          expect(best({ ...task, stock: [...task.stock, { length, cents }] }).cents).toBeLessThanOrEqual(
            best(task).cents,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('lists of a home', () => {
  it('are legal from the first answer to the last, each no dearer than the one before, through the worker', async () => {
    for (const task of randomLists(9, 4)) {
      expectLegal(task, firstSticks(task));
      let before = Number.POSITIVE_INFINITY;
      for await (const plan of cutSticks(task)) {
        expectLegal(task, plan);
        expect(plan.cents).toBeLessThanOrEqual(before);
        before = plan.cents;
      }
    }
  });

  it('give the same plan again', () => {
    const [task] = randomLists(10, 1);
    if (task) expect(best(task)).toEqual(best(task));
  });

  it('refuse a piece longer than every stick', () => {
    expect(() =>
      firstSticks({ pieces: [{ id: 'a', length: 200, kerf: 0 }], stock: [{ length: 100, cents: 1 }], endTrim: 0 }),
    ).toThrow(RangeError);
  });
});
