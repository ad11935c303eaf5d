/** A server that takes what it is sent and answers nothing: an outage in bounded time, and all is well once it answers again. */

import { randomBytes } from 'node:crypto';
import { expect, it } from 'vitest';
import { openStore } from '../../src/storage/store.ts';
import { type Codec, Outage } from '../../src/storage/types.ts';
import { slowProxy } from '../bench/faults/slow-proxy.ts';
import { clearPostgres, clearRedis, POSTGRES, REDIS, withServer } from './servers.ts';

const SUM: Codec<number> = { read: Number, write: (value) => value };
const PATIENT = { operation: 100, lost: 50, contended: 5_000 };

for (const [name, url, clear] of [
  ['Postgres', POSTGRES, clearPostgres],
  ['Redis', REDIS, clearRedis],
] as const) {
  await withServer(name, url, () => {
    it(`${name} that falls silent is an outage, and is found again`, async () => {
      const proxy = await slowProxy(Number(new URL(url).port));
      const space = `test_${randomBytes(6).toString('hex')}`;
      const through = url.replace(new URL(url).host, `127.0.0.1:${proxy.port}`);
      // Long enough to connect on a busy machine; what is tested is short.
      const slow = openStore({ url, folder: '', space, fault: () => {} });
      const store = openStore({ url: through, folder: '', space, fault: () => {}, patience: PATIENT });
      const sums = store.shelf('sum', SUM);
      const add = () => sums.change('a', (sum) => ({ put: sum + 1, result: sum + 1 }));
      try {
        await slow.shelf('sum', SUM).create('a', 0);
        const again = async (): Promise<number | undefined> => {
          for (let tries = 0; tries < 50; tries++) {
            const given = await add().catch((cause) => cause);
            if (typeof given === 'number') return given;
            expect(given).toBeInstanceOf(Outage);
          }
          return undefined;
        };
        const before = await again();
        expect(before).toBeGreaterThan(0);
        proxy.deaf = true;
        const silent = [add(), store.kept.get('x'), store.kept.set('x', 1), store.kept.claim('y', 1000), store.ping()];
        const given = await Promise.allSettled(silent);
        for (const one of given) expect(one).toMatchObject({ status: 'rejected', reason: expect.any(Outage) });
        proxy.deaf = false;
        expect(await again()).toBeGreaterThan(before ?? 0);
      } finally {
        await store.close();
        await slow.close();
        await proxy.close();
        await clear(space);
      }
    });
  });
}
