/** The embedded store: the contract, the adapter's own suite, and one process a folder. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { open } from 'lmdb';
import { expect, it } from 'vitest';
import { EmbeddedValues, openEmbedded, readEmbedded } from '../../src/storage/embedded.ts';
import { MACHINE_CLOCK } from '../../src/storage/engine.ts';
import { opener, openStore } from '../../src/storage/store.ts';
import { Outage } from '../../src/storage/types.ts';
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

it('on a disk that is all but full refuses what is to be written, reads on, and takes it once there is room', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-store-'));
  let room = 2 ** 30;
  const engine = await openEmbedded({ folder, clock: MACHINE_CLOCK, operation: 5_000, left: () => room });
  try {
    await engine.create('project', 'one', { rev: 1, text: 'before' }, 'a');
    room = 2 ** 20;
    await expect(engine.put('project', 'one', { rev: 2, text: 'after' }, 1, 'b')).rejects.toThrow(Outage);
    await expect(engine.create('project', 'two', { rev: 1, text: 'new' }, 'c')).rejects.toThrow(Outage);
    await expect(engine.remove('project', 'one', 'd')).rejects.toThrow(Outage);
    await expect(engine.values.claim('claimed', 'yes', 1000)).rejects.toThrow(Outage);
    expect(await engine.read('project', 'one')).toEqual({ rev: 1, text: 'before' });
    room = 2 ** 30;
    expect(await engine.put('project', 'one', { rev: 2, text: 'after' }, 1, 'b')).toBe(true);
  } finally {
    await engine.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
