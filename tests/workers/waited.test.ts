/** How long somebody's work waited is told to whoever counts it, and nobody else's. */

import { expect, it } from 'vitest';
import { eachOnBehalfOf, WorkQueue } from '../../src/workers/queue.ts';

it('counts the waits of one’s own work, and none where there was a place', async () => {
  const queue = new WorkQueue({ atOnce: 1, forFirst: 0, inAll: 10, ofOne: 10 });
  let go: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    go = resolve;
  });
  async function* working(who: string, work: () => Promise<void>) {
    yield await queue.run({ who, better: false }, work);
  }
  const waits = { first: [] as number[], second: [] as number[] };
  const first = eachOnBehalfOf(
    'a',
    working('a', () => held),
    (ms) => waits.first.push(ms),
  ).next();
  const second = eachOnBehalfOf(
    'b',
    working('b', async () => undefined),
    (ms) => waits.second.push(ms),
  ).next();
  const began = performance.now();
  while (performance.now() - began < 5) await new Promise((resolve) => setImmediate(resolve));
  go();
  await Promise.all([first, second]);
  expect(waits.first).toHaveLength(1);
  expect(waits.second).toHaveLength(1);
  expect(waits.second[0]).toBeGreaterThanOrEqual(4);
  expect(waits.first[0]).toBeLessThan(waits.second[0] ?? 0);
});
