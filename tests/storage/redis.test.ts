/** The store on Redis: the contract, each test under a prefix of its own. */

import { randomBytes } from 'node:crypto';
import { createClient, createKeyv, default as KeyvRedis } from '@keyv/redis';
import { opener, openStore } from '../../src/storage/store.ts';
import { limitsContract } from '../contracts/limits-contract.ts';
import { storeContract } from '../contracts/store-contract.ts';
import { valuesContract } from '../contracts/values-contract.ts';
import { listHeld } from './held.ts';
import { clearRedis, pass, REDIS, withServer } from './servers.ts';

await withServer('Redis', REDIS, () => {
  storeContract('Redis', async () => {
    const place = { url: REDIS, folder: '', space: `test-${randomBytes(6).toString('hex')}` };
    return {
      shared: true,
      open: (faults) => openStore({ ...place, fault: (cause) => faults.push(cause) }),
      async plant(held) {
        const engine = await opener(place)();
        await engine.fill(held);
        await engine.close();
      },
      held: () => listHeld(opener(place)()),
      pass,
      clear: () => clearRedis(place.space),
    };
  });

  const contract = async () => {
    const space = `test-${randomBytes(6).toString('hex')}`;
    const client = createClient({ url: REDIS });
    client.setMaxListeners(0);
    await client.connect();
    const options = { keyPrefixSeparator: ':', throwOnErrors: true };
    return {
      adapter: () => new KeyvRedis(client as never, { ...options, namespace: space }),
      keyv: (namespace: string) => createKeyv(client as never, { ...options, namespace: `${space}:${namespace}` }),
      async clear() {
        if (client.isOpen) await client.close();
        await clearRedis(space);
      },
    };
  };
  valuesContract('Redis', contract);

  limitsContract('Redis', () => {
    const space = `test-${randomBytes(6).toString('hex')}`;
    const fault = (cause: unknown): never => {
      throw cause;
    };
    return {
      open: (clock) => openStore({ url: REDIS, folder: '', space, fault, clock }),
      clear: () => clearRedis(space),
    };
  });
});
