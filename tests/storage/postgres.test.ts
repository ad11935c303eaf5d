/** The store on Postgres: the contract, each test in a schema of its own. */

import { randomBytes } from 'node:crypto';
import { opener, openStore } from '../../src/storage/store.ts';
import { limitsContract } from '../contracts/limits-contract.ts';
import { storeContract } from '../contracts/store-contract.ts';
import { valuesContract } from '../contracts/values-contract.ts';
import { listHeld } from './held.ts';
import { clearPostgres, POSTGRES, pass, withServer } from './servers.ts';

await withServer('Postgres', POSTGRES, () => {
  storeContract('Postgres', async () => {
    const place = { url: POSTGRES, folder: '', space: `test_${randomBytes(6).toString('hex')}` };
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
      clear: () => clearPostgres(place.space),
    };
  });

  valuesContract('Postgres', async () => {
    const space = `test_${randomBytes(6).toString('hex')}`;
    const engine = await opener({ url: POSTGRES, folder: '', space })();
    await engine.ping();
    return {
      adapter: () => engine.values.adapter(),
      async clear() {
        await engine.close();
        await clearPostgres(space);
      },
    };
  });

  limitsContract('Postgres', () => {
    const space = `test_${randomBytes(6).toString('hex')}`;
    const fault = (cause: unknown): never => {
      throw cause;
    };
    return {
      open: (clock) => openStore({ url: POSTGRES, folder: '', space, fault, clock }),
      clear: () => clearPostgres(space),
    };
  });
});
