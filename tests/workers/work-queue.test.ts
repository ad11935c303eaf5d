/** Work waits for its place: in rounds among people, first answers before better ones, and never without bound. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  eachOnBehalfOf,
  onBehalfOf,
  type QueueTerms,
  RoundRobin,
  Unworked,
  WorkQueue,
  whoAsks,
} from '../../src/workers/queue.ts';

describe('things that wait', () => {
  it('are taken in rounds: between two of one person’s comes one of each who waits, and a person’s own in order', () => {
    const who = fc.constantFrom('a', 'b', 'c', 'd');
    fc.assert(
      fc.property(fc.array(who, { maxLength: 30 }), (people) => {
        const robin = new RoundRobin<string>();
        people.forEach((one, at) => void robin.add(one, `${one}${at}`));
        expect(robin.size).toBe(people.length);
        const taken = people.map(() => robin.next() ?? '');
        expect([robin.next(), robin.size]).toEqual([undefined, 0]);
        expect([...taken].sort()).toEqual(people.map((one, at) => `${one}${at}`).sort());
        for (const person of ['a', 'b', 'c', 'd']) {
          const places = taken.flatMap((one, at) => (one.startsWith(person) ? [at] : []));
          const order = places.map((at) => Number(taken[at]?.slice(1)));
          expect(order).toEqual([...order].sort((x, y) => x - y));
          for (const [at, place] of places.entries()) {
            const next = places[at + 1];
            if (next === undefined) continue;
            const between = taken.slice(place + 1, next).map((one) => one.charAt(0));
            const still = new Set(taken.slice(next).map((one) => one.charAt(0)));
            expect(new Set(between).size).toBe(between.length);
            for (const other of still) if (other !== person) expect(between).toContain(other);
          }
        }
      }),
    );
  });

  it('can be taken out of their turn, once', () => {
    const robin = new RoundRobin<string>();
    for (const one of ['x', 'y', 'z']) robin.add('a', one);
    expect([robin.remove('a', 'y'), robin.remove('a', 'y'), robin.remove('b', 'x')]).toEqual([true, false, false]);
    expect([robin.sizeOf('a'), robin.next(), robin.next(), robin.next()]).toEqual([2, 'x', 'z', undefined]);
  });
});

const TERMS: QueueTerms = { atOnce: 2, forFirst: 1, inAll: 6, ofOne: 3 };

/** A queue whose work ends when the test says so. */
function queued(terms: Partial<QueueTerms> = {}) {
  const queue = new WorkQueue({ ...TERMS, ...terms });
  const begun: string[] = [];
  const ends = new Map<string, () => void>();
  const run = (name: string, better = false, patience?: AbortSignal): Promise<string> =>
    queue.run({ who: name.charAt(0), better, ...(patience && { patience }) }, () => {
      begun.push(name);
      return new Promise((resolve) => ends.set(name, () => resolve(name)));
    });
  const end = async (name: string): Promise<void> => {
    ends.get(name)?.();
    await settle();
  };
  return { queue, begun, run, end };
}

const settle = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
const why = (work: Promise<unknown>): Promise<unknown> =>
  work.catch((cause: unknown) => (cause instanceof Unworked ? cause.why : cause));

describe('a queue', () => {
  it('keeps a place for first answers, and takes them before better ones', async () => {
    const { queue, begun, run, end } = queued();
    const all = [run('a1', true), run('b1', true), run('c1'), run('d1')];
    await settle();
    expect(begun).toEqual(['a1', 'c1']);
    await end('a1');
    expect(begun).toEqual(['a1', 'c1', 'd1']);
    await end('c1');
    expect(begun).toEqual(['a1', 'c1', 'd1', 'b1']);
    for (const name of ['d1', 'b1']) await end(name);
    expect(await Promise.all(all)).toEqual(['a1', 'b1', 'c1', 'd1']);
    expect([queue.working, queue.waiting]).toEqual([0, 0]);
  });

  it('refuses what is too much of one person’s, and too much in all, and what waits goes on', async () => {
    const { queue, run, end } = queued({ atOnce: 1, forFirst: 0 });
    const fine = [run('a0'), run('a1'), run('a2'), run('a3')];
    expect(await why(run('a4'))).toBe('own');
    fine.push(run('b1'), run('b2'), run('b3'));
    expect(await why(run('c1'))).toBe('crowded');
    expect(queue.waiting).toBe(6);
    for (const name of ['a0', 'a1', 'b1', 'a2', 'b2', 'a3', 'b3']) await end(name);
    expect((await Promise.all(fine)).length).toBe(7);
  });

  it('bounds work that nobody asked for by the whole alone', async () => {
    const { queue } = queued({ atOnce: 1, forFirst: 0 });
    const never = (): Promise<never> => new Promise(() => undefined);
    for (let i = 0; i < 7; i++) void queue.run({ who: '', better: false }, never);
    expect(await why(queue.run({ who: '', better: false }, never))).toBe('crowded');
  });

  it('gives up a wait when told, and then never begins it; what is begun goes on', async () => {
    const { begun, run, end } = queued({ atOnce: 1, forFirst: 0 });
    const patience = new AbortController();
    const one = run('a1', false, patience.signal);
    const two = why(run('b1', true, patience.signal));
    await settle();
    patience.abort();
    expect(await two).toBe('crowded');
    await end('a1');
    expect([await one, begun]).toEqual(['a1', ['a1']]);
  });

  it('refuses all that waits at the end, and takes work again after', async () => {
    const { queue, begun, run, end } = queued({ atOnce: 1, forFirst: 0 });
    const one = run('a1');
    const waiting = [run('a2'), run('b1', true)].map(why);
    await settle();
    queue.refuseAll();
    await end('a1');
    expect([await one, await Promise.all(waiting), begun]).toEqual(['a1', ['crowded', 'crowded'], ['a1']]);
    const later = run('c1');
    await settle();
    await end('c1');
    expect(await later).toBe('c1');
  });

  it('passes a failure on and gives the place to the next', async () => {
    const { queue, begun, run, end } = queued({ atOnce: 1, forFirst: 0 });
    const failed = queue.run({ who: 'a', better: false }, () => Promise.reject(new Error('broken')));
    const next = run('b1');
    await expect(failed).rejects.toThrow('broken');
    await settle();
    expect(begun).toEqual(['b1']);
    await end('b1');
    await next;
  });
});

describe('whoever asks', () => {
  it('is known wherever the work goes, each in their own, and to every step of a stream', async () => {
    const seen: string[] = [];
    async function* steps(): AsyncGenerator<string> {
      yield whoAsks();
      await settle();
      yield whoAsks();
    }
    const follow = async (who: string): Promise<void> => {
      for await (const one of eachOnBehalfOf(who, steps())) seen.push(one);
    };
    await Promise.all([follow('a'), onBehalfOf('c', () => follow('b'))]);
    expect(seen.sort()).toEqual(['a', 'a', 'b', 'b']);
    expect(whoAsks()).toBe('');
  });
});
