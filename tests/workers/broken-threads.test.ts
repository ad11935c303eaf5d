/** A pool whose threads fail before they have a task ends, and says so to whoever waits; the process goes on. */

import { Piscina } from 'piscina';
import { describe, expect, it } from 'vitest';
import { endWhenBroken } from '../../src/workers/thread-pool.ts';

describe('threads', () => {
  it('whose file is gone reject what waits for them, at once and heard', async () => {
    const pool = new Piscina({ filename: '/nowhere/kanari-worker.js', minThreads: 0, maxThreads: 1 });
    let gone = 0;
    endWhenBroken(pool, () => {
      gone += 1;
    });
    // Long enough that the task's own time is not what ends it.
    const run: Promise<unknown> = pool.run({}, { signal: AbortSignal.timeout(60_000) });
    await expect(run).rejects.toThrow(Error);
    await expect.poll(() => gone, { timeout: 60_000 }).toBeLessThanOrEqual(1);
    await pool.destroy();
  });

  it('that fail without a task are told of once, and the pool ends', async () => {
    let given: (cause: Error) => void = () => undefined;
    let [gone, ended] = [0, 0];
    const threads = {
      on: (_event: 'error', listener: (cause: Error) => void) => {
        given = listener;
      },
      destroy: async () => {
        ended += 1;
      },
    };
    endWhenBroken(threads, () => {
      gone += 1;
    });
    given(new Error('no memory for a thread'));
    expect([gone, ended]).toEqual([1, 1]);
  });
});
