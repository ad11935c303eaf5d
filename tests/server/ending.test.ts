/** The end: in order, in time, whatever does not end or fails. */

import { describe, expect, it } from 'vitest';
import { endingWith } from '../../src/server/ending.ts';

/** A clock that goes forward only when nothing else is left to do. */
function stopwatch() {
  let now = 0;
  const waits: { at: number; go: () => void }[] = [];
  let turning = false;
  const turn = (): void => {
    const [next] = waits.sort((a, b) => a.at - b.at);
    if (!next) {
      turning = false;
      return;
    }
    waits.shift();
    now = Math.max(now, next.at);
    next.go();
    setImmediate(turn);
  };
  const wait = (milliseconds: number): Promise<void> =>
    new Promise((go) => {
      waits.push({ at: now + milliseconds, go });
      if (!turning) setImmediate(turn);
      turning = true;
    });
  return { passed: () => now, wait };
}

function ending() {
  const clock = stopwatch();
  const given: string[] = [];
  const faults: unknown[] = [];
  const end = endingWith({
    ...clock,
    given: (part, how) => given.push(`${part} ${how}`),
    fault: (cause) => faults.push(cause),
  });
  return { ...end, clock, given, faults };
}

describe('the end', () => {
  it('closes stage by stage, however they were added, each once', async () => {
    const { add, end, begun, clock, given } = ending();
    add('keeps', 'store', async () => undefined);
    add('works', 'later', () => clock.wait(30));
    add('takes', 'slack', () => clock.wait(200));
    add('takes', 'discord', () => clock.wait(100));
    expect(begun()).toBe(false);
    const both = [end(), end()];
    expect(begun()).toBe(true);
    expect(await Promise.all(both)).toEqual([true, true]);
    expect(given).toEqual(['discord ended', 'slack ended', 'later ended', 'store ended']);
  });

  it('hurries what takes long, and goes on without what never ends, within ten seconds', async () => {
    const { add, end, clock, given } = ending();
    const hurried: number[] = [];
    let go: () => void = () => {};
    const searching = new Promise<void>((resolve) => {
      go = resolve;
    });
    add(
      'takes',
      'http',
      () => searching,
      () => {
        hurried.push(clock.passed());
        go();
      },
    );
    add('takes', 'discord', () => new Promise(() => undefined));
    add('works', 'later', () => new Promise(() => undefined));
    add('keeps', 'store', async () => undefined);
    expect(await end()).toBe(false);
    expect(hurried).toEqual([3_500]);
    expect(given).toEqual(['http ended', 'discord late', 'later late', 'store ended']);
    expect(clock.passed()).toBeLessThan(10_000);
  });

  it('is not held up by what fails', async () => {
    const { add, end, faults, given } = ending();
    const broken = new Error('broken');
    add('takes', 'slack', async () => {
      throw broken;
    });
    add('keeps', 'store', async () => undefined);
    expect(await end()).toBe(true);
    expect(faults).toEqual([broken]);
    expect(given).toEqual(['slack ended', 'store ended']);
  });
});
