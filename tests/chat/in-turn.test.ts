/** Sums are worked on a few at a time, and one that waits or fails holds up none for good. */

import { describe, expect, it } from 'vitest';
import type { Request } from '../../src/chat/ports.ts';
import { inTurn } from '../../src/chat/rate-limit.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';

/** Answers that come when the test says so, and the asks that were begun. */
function requested(wait: () => Promise<void> = () => new Promise(() => undefined)) {
  const begun: string[] = [];
  const doors = new Map<string, { open(value: string): void; fail(): void }>();
  const answer = inTurn(async function* ({ text: ask }: Request): AsyncGenerator<string> {
    begun.push(ask);
    yield await new Promise<string>((open, reject) => doors.set(ask, { open, fail: () => reject(new Error(ask)) }));
    yield `${ask}, better`;
  }, wait);
  const all = async (ask: string, id = 'somebody'): Promise<readonly string[]> => {
    const answers: string[] = [];
    const asker = { platform: 'slack', id } as const;
    for await (const one of answer({ asker, preferences: DEFAULT_PREFERENCES, text: ask })) answers.push(one);
    return answers;
  };
  return { begun, doors, all };
}

/** As many turns as lie between two sums, and some more. */
async function turns(): Promise<void> {
  for (let i = 0; i < 200; i++) await new Promise((resolve) => setImmediate(resolve));
}

describe('asks in turn', () => {
  it('begin two at once, the others as answers come, and each gives all its answers', async () => {
    const { begun, doors, all } = requested();
    const asks = ['a', 'b', 'c', 'd'].map((ask) => all(ask));
    await turns();
    expect(begun).toEqual(['a', 'b']);
    doors.get('b')?.open('B');
    await turns();
    expect(begun).toEqual(['a', 'b', 'c']);
    for (const ask of ['a', 'c']) doors.get(ask)?.open(ask.toUpperCase());
    await turns();
    doors.get('d')?.open('D');
    expect(await Promise.all(asks)).toEqual(['a', 'b', 'c', 'd'].map((ask) => [ask.toUpperCase(), `${ask}, better`]));
  });

  it('leave turns between two sums, in which what came is heard', async () => {
    const { begun, doors, all } = requested();
    const asks = ['a', 'b', 'c'].map((ask) => all(ask));
    await turns();
    doors.get('a')?.open('A');
    let heard = 0;
    while (begun.length < 3) {
      heard += 1;
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(heard).toBeGreaterThanOrEqual(50);
    for (const ask of ['b', 'c']) doors.get(ask)?.open(ask);
    await Promise.all(asks);
  });

  it('do not wait for one that only waits, or that fails', async () => {
    let late = (): void => undefined;
    const wait = new Promise<void>((resolve) => {
      late = resolve;
    });
    const { begun, doors, all } = requested(() => wait);
    const asks = ['a', 'b', 'c', 'd'].map((ask) => all(ask));
    await turns();
    const failed = expect(asks[0]).rejects.toThrow('a');
    doors.get('a')?.fail();
    await failed;
    await turns();
    expect(begun).toEqual(['a', 'b', 'c']);
    late();
    await turns();
    expect(begun).toEqual(['a', 'b', 'c', 'd']);
    for (const ask of ['b', 'c', 'd']) doors.get(ask)?.open(ask);
    await Promise.all(asks.slice(1));
  });

  it('go round among people: somebody with many asks holds up nobody with one', async () => {
    const { begun, doors, all } = requested();
    const many = ['a', 'b', 'c', 'd', 'e'].map((ask) => all(ask, 'many'));
    const one = all('mine', 'one');
    await turns();
    expect(begun).toEqual(['a', 'b']);
    for (const ask of ['a', 'b']) doors.get(ask)?.open(ask);
    await turns();
    expect(begun.slice(0, 4)).toEqual(['a', 'b', 'c', 'mine']);
    for (let at = 2; at < 6; at++) {
      doors.get(begun[at] ?? '')?.open('answered');
      await turns();
    }
    await Promise.all([...many, one]);
    expect(begun).toEqual(['a', 'b', 'c', 'mine', 'd', 'e']);
  });
});
