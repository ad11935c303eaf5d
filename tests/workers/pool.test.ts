/** Tasks and their threads: what takes too long or too much is given up, its worker replaced, and the next task is well. */

import { afterEach, describe, expect, it } from 'vitest';
import { feet } from '../../src/units/length.ts';
import {
  answersFrom,
  boundTasks,
  closeWorkers,
  lastAnswerFrom,
  type Task,
  taskFigures,
} from '../../src/workers/pool.ts';
import { onBehalfOf, Unworked } from '../../src/workers/queue.ts';
import { benchRules, plank, region } from '../outside/laid.ts';

const USUAL = { workers: 0, queue: 200, queuePerPerson: 10, askSeconds: 20, askMegabytes: 512 };
afterEach(async () => {
  await closeWorkers();
  boundTasks(USUAL);
});

const board = plank(6, 48);

/** A square room, so many feet each way. */
function floor(kind: 'floor' | 'floor-search', side: number): Task {
  const [near, far] = [feet(0), feet(side)];
  const hall = region('hall', [
    [near, near],
    [far, near],
    [far, far],
    [near, far],
  ]);
  const name = kind === 'floor' ? 'stair-step' : 'scattered';
  return { kind, areas: [{ region: hall, angle: 0 }], plank: board, rules: benchRules(board, name) };
}

const why = (cause: unknown): unknown => (cause instanceof Unworked ? cause.why : cause);

async function all(task: Task): Promise<readonly unknown[]> {
  const found: unknown[] = [];
  for await (const one of answersFrom(task)) found.push(one);
  return found;
}

describe('a task', () => {
  it('that takes too long is given up: no better answer, or a first one not worked out; the next is well', async () => {
    const before = taskFigures().replaced;
    // Far more planks than any worker lays or searches in a few milliseconds, its own start included.
    boundTasks({ askSeconds: 0.005 });
    expect(await all(floor('floor-search', 120))).toEqual([]);
    expect(await lastAnswerFrom(floor('floor', 200)).catch(why)).toBe('large');
    expect(taskFigures()).toEqual({ working: 0, waiting: 0, replaced: before + 2 });
    boundTasks(USUAL);
    expect(await lastAnswerFrom(floor('floor', 12))).toMatchObject({ bound: expect.anything() });
  });

  it('that takes too much memory is given up, and the process stays', async () => {
    boundTasks({ askMegabytes: 16 });
    expect(await lastAnswerFrom(floor('floor', 1000)).catch(why)).toBe('large');
    await closeWorkers();
    boundTasks(USUAL);
    expect(await lastAnswerFrom(floor('floor', 12))).toMatchObject({ bound: expect.anything() });
  });

  it('waits behind its own person’s, who may have only so many wait', async () => {
    boundTasks({ workers: 1, queuePerPerson: 2 });
    const asks = Array.from({ length: 6 }, () =>
      onBehalfOf('somebody', () => lastAnswerFrom(floor('floor', 40)).then(() => 'laid', why)),
    );
    const other = onBehalfOf('another', () => lastAnswerFrom(floor('floor', 12)).then(() => 'laid', why));
    expect((await Promise.all(asks)).sort()).toEqual(['laid', 'laid', 'laid', 'laid', 'own', 'own']);
    expect(await other).toBe('laid');
  });

  it('waits no longer when the workers are closed, and better ones end as they are', async () => {
    boundTasks({ workers: 1 });
    const begun = all(floor('floor-search', 60));
    const waiting = all(floor('floor-search', 60)).catch(why);
    await closeWorkers();
    expect(Array.isArray(await begun)).toBe(true);
    expect(await waiting).toBe('crowded');
  });
});
