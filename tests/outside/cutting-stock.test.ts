/** Published cutting-stock and bin-packing instances with known optimum. */

import { describe, expect, it } from 'vitest';
import { firstSticks, type StickPlan, type StickTask } from '../../src/trim/sticks.ts';
import { highs } from '../../src/workers/floor-flow.ts';
import { searchSticks } from '../../src/workers/stick-search.ts';

async function best(task: StickTask): Promise<StickPlan> {
  let last: StickPlan | undefined;
  for (const plan of searchSticks(task, await highs())) last = plan;
  if (!last) throw new Error('no plan');
  return last;
}

function bins(capacity: number, items: readonly (readonly [length: number, demand: number])[]): StickTask {
  const pieces = items.flatMap(([length, demand]) =>
    Array.from({ length: demand }, (_, i) => ({ id: `${length} ${i}`, length, kerf: 0 })),
  );
  return { pieces, stock: [{ length: capacity, cents: 1 }], endTrim: 0 };
}

describe('paper rolls of 5600 mm (textbook example, reported; optimum 73, first-fit and best-fit decreasing 82)', () => {
  const rolls = bins(5600, [
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ]);

  it('takes 73 bars, proven', async () => {
    expect(await best(rolls)).toMatchObject({ cents: 73, bound: 73, proven: true });
  });

  it('takes a best-fit decreasing packer 82', () => {
    expect(firstSticks(rolls).cents).toBe(82);
  });
});

/** A list of sizes as one demand each. */
function list(capacity: number, sizes: string): StickTask {
  return bins(
    capacity,
    [...counted(sizes.trim().split(/\s+/))].map(([size, demand]) => [Number(size), demand] as const),
  );
}

describe('OR-Library bin packing (Falkenauer, 1996; sizes typed in from memory, their number and sum agree with the published optimum)', () => {
  it('u120_00: 120 items, capacity 150, optimum 48', async () => {
    const task = list(
      150,
      `42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64 29 74
       41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79
       71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39`,
    );
    expect(task.pieces).toHaveLength(120);
    expect(await best(task)).toMatchObject({ cents: 48, proven: true });
  });

  it('t60_00: 60 items in triplets, capacity 1000, optimum 20', async () => {
    const task = list(
      1000,
      `495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366 366 366 363 361 357 355 351 350 350 347 320 315 307
       303 299 298 298 292 288 287 283 275 275 274 273 273 272 272 271 269 269 268 263 262 261 259 258 255 254 252 252 252 251`,
    );
    expect(task.pieces.reduce((sum, { length }) => sum + length, 0)).toBe(20_000);
    expect(await best(task)).toMatchObject({ cents: 20, bound: 20, proven: true });
  });
});

function counted(words: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}
