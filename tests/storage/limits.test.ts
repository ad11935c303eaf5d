/** Asks counted by the minute while the store does not answer, or is there for one process alone. */

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Clock, Lost, MACHINE_CLOCK } from '../../src/storage/engine.ts';
import { limitsOn } from '../../src/storage/request-limits.ts';
import { openStore } from '../../src/storage/store.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const LIMITS = { person: 2, server: 100 };
const WHO = { person: 'slack:T1:U1', server: 'slack:T1' };
/** As Date.now under Vitest's clock, which also moves the timers. */
const clock: Clock = { ...MACHINE_CLOCK, passed: () => Date.now() };
const TERMS = { clock, fault: (cause: unknown) => expect.fail(String(cause)) };

describe('asks counted', () => {
  it('in the memory of one process: no folder is opened, and a minute later all is free', async () => {
    const store = openStore({ url: '', folder: '/nowhere/at/all', fault: (cause) => expect.fail(String(cause)) });
    const allowed = store.allowed(LIMITS);
    expect((await allowed(WHO, 2)).again).toBe(0);
    const { again } = await allowed(WHO, 1);
    expect(again).toBeGreaterThan(59_000);
    await vi.advanceTimersByTimeAsync(again + 1);
    expect((await allowed(WHO, 1)).again).toBe(0);
    await store.close();
  });

  it('never more than a minute’s for one ask: it is possible once a minute', async () => {
    const allowed = limitsOn(undefined, { person: 1, server: 1 }, TERMS);
    expect((await allowed(WHO, 4)).again).toBe(0);
    expect((await allowed(WHO, 4)).again).toBeGreaterThan(0);
  });

  it('while the store refuses: nobody is refused for it, limits hold in memory, and it is left alone for a while', async () => {
    let opened = 0;
    const open = async (): Promise<never> => {
      opened += 1;
      throw new Lost('gone');
    };
    const allowed = limitsOn(open, LIMITS, TERMS);
    const person = { person: 'web:share' };
    expect((await allowed(person, 1)).again).toBe(0);
    expect((await allowed(person, 1)).again).toBe(0);
    expect((await allowed(person, 1)).again).toBeGreaterThan(0);
    expect(opened).toBe(1);
    await vi.advanceTimersByTimeAsync(5_001);
    expect((await allowed({ person: 'other' }, 1)).again).toBe(0);
    expect(opened).toBe(2);
  });

  it('while the store says nothing: an ask waits a quarter of a second once, and no other does', async () => {
    const allowed = limitsOn(() => new Promise<never>(() => undefined), LIMITS, TERMS);
    const first = allowed({ person: 'a' }, 1);
    await vi.advanceTimersByTimeAsync(250);
    expect((await first).again).toBe(0);
    expect((await allowed({ person: 'b' }, 1)).again).toBe(0);
  });
});
