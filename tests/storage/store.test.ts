/** The store as main sees it: addresses, and nothing opened before it is needed. */

import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { openStore } from '../../src/storage/store.ts';

const fault = (): void => {};

it.each(['mysql://db/x', 'floors', 'http://db'])('refuses the address %s', (url) => {
  expect(() => openStore({ url, folder: '', fault })).toThrow(/of no kind that is known/);
});

it('opens nothing until it is needed, and closes what was never opened', async () => {
  const folder = join(mkdtempSync(join(tmpdir(), 'floorhand-lazy-')), 'data');
  const store = openStore({ url: '', folder, fault });
  const shelf = store.shelf('count', { read: Number, write: (value) => value });
  expect(existsSync(folder)).toBe(false);
  await store.close();
  expect(existsSync(folder)).toBe(false);
  await shelf.create('a', 1);
  expect(existsSync(folder)).toBe(true);
  await store.close();
  rmSync(join(folder, '..'), { recursive: true, force: true });
});

it('a kind of record is named by small letters', () => {
  const store = openStore({ url: '', folder: '', fault });
  expect(() => store.shelf('a:b', { read: Number, write: (value) => value })).toThrow(RangeError);
});
