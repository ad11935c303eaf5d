/** The embedded store: the contract, the adapter's own suite, and one process a folder. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { open } from 'lmdb';
import { readEmbedded } from '../../src/store/embedded.ts';
import { EmbeddedValues } from '../../src/store/embedded-values.ts';
import { MACHINE_CLOCK } from '../../src/store/patience.ts';
import { opener, openStore } from '../../src/store/store.ts';
import { type Backend, storeContract } from '../contracts/store-contract.ts';
import { valuesContract } from '../contracts/values-contract.ts';
import { listHeld } from './held.ts';

storeContract('one data folder', async (): Promise<Backend> => {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-store-'));
  let ahead = 0;
  const clock = { ...MACHINE_CLOCK, now: () => Date.now() + ahead };
  const place = { url: '', folder, clock };
  return {
    shared: false,
    open: (faults) => openStore({ ...place, fault: (cause) => faults.push(cause) }),
    async plant(held) {
      const engine = await opener(place)();
      await engine.fill(held);
      await engine.close();
    },
    held: () => listHeld(readEmbedded({ folder, clock, operation: 1000 })),
    async pass(milliseconds) {
      ahead += milliseconds;
    },
    async clear() {
      rmSync(folder, { recursive: true, force: true });
    },
  };
});

valuesContract('one data folder', async () => {
  const path = mkdtempSync(join(tmpdir(), 'floorhand-values-'));
  const root = open({ path, overlappingSync: false, encoding: 'string' });
  return {
    adapter: () => new EmbeddedValues(root, MACHINE_CLOCK, (work) => work()),
    async clear() {
      await root.close();
      rmSync(path, { recursive: true, force: true });
    },
  };
});
