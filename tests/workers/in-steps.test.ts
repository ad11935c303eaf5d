/** Work in steps comes to what it returns, and others have the event loop between long stretches of it. */

import { describe, expect, it } from 'vitest';
import { inSteps } from '../../src/workers/time-limits.ts';

function* counted(steps: number, each: number): Generator<undefined, number> {
  for (let i = 0; i < steps; i++) {
    const until = performance.now() + each;
    while (performance.now() < until);
    yield;
  }
  return steps;
}

/** How often others had the loop while work went on. */
async function turnsDuring(work: Promise<unknown>): Promise<number> {
  let [turns, over] = [0, false];
  const turn = (): void => {
    turns += 1;
    if (!over) setImmediate(turn);
  };
  setImmediate(turn);
  await work;
  over = true;
  return turns;
}

describe('work in steps', () => {
  it('comes to what it returns, and lets others in between long stretches', async () => {
    expect(await inSteps(counted(3, 0))).toBe(3);
    expect(await turnsDuring(inSteps(counted(5, 10)))).toBeGreaterThanOrEqual(4);
  });

  it('goes on at once after a short one', async () => {
    let turns = 0;
    setImmediate(() => {
      turns += 1;
    });
    await inSteps(counted(20, 0));
    expect(turns).toBe(0);
  });

  it('rejects with what the work throws', async () => {
    const failing = function* (): Generator<undefined, number> {
      yield;
      throw new Error('no paper');
    };
    await expect(inSteps(failing())).rejects.toThrow('no paper');
  });
});
