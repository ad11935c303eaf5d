/** Who may use a data folder together: one bot and any number of terminals; one that is gone without closing is followed. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { open, type RootDatabase } from 'lmdb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  FolderAccess,
  FolderTaken,
  type FolderUse,
  type FolderUser,
  GONE_AFTER,
} from '../../src/storage/folder-users.ts';
import { openStore } from '../../src/storage/store.ts';
import { Outage } from '../../src/storage/types.ts';
import { startWriter } from '../bench/faults/writers.ts';
import { steppedClock } from './scripted-engine.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'floorhand-owner-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('a folder', () => {
  it('that a bot has is refused to a second one, naming the process; when it is killed, the folder can be had', async () => {
    const writer = await startWriter({ url: '', folder, writer: 'other', changes: 1_000_000, lanes: 1 });
    const clock = steppedClock();
    const store = () => openStore({ url: '', folder, fault: () => {}, clock });
    const refused = store().ping();
    await expect(refused).rejects.toThrow(Outage);
    await expect(refused).rejects.toThrow(
      /in use by process \d+, a bot that runs already\. Stop that process, or set FLOORHAND_DATA/,
    );
    writer.kill();
    await writer.ended;
    const after = store();
    await after.ping();
    await after.close();
  });

  it('is had once in one process, and again when it was closed', async () => {
    const clock = steppedClock();
    const [one, two] = [1, 2].map(() => openStore({ url: '', folder, fault: () => {}, clock }));
    await one?.ping();
    await expect(two?.ping()).rejects.toThrow(FolderTaken);
    await one?.close();
    await two?.ping();
    await two?.close();
  });

  it('is shared by a bot and terminals, which see what the others saved; whoever restores needs it alone', async () => {
    const clock = steppedClock();
    const open = (use: FolderUse) => openStore({ url: '', folder, use, fault: () => {}, clock });
    const [bot, one, two] = [open('bot'), open('terminal'), open('terminal')];
    await one.ping();
    await bot.ping();
    await two.kept.set('a', 'from two');
    expect(await bot.kept.get('a')).toBe('from two');
    await bot.close();
    await one.close();
    await expect(open('alone').ping()).rejects.toThrow(/in use by process \d+\. Stop that process, then try again/);
    await two.close();
    const alone = open('alone');
    await alone.ping();
    for (const use of ['bot', 'terminal', 'alone'] as const)
      await expect(open(use).ping()).rejects.toThrow(/is being restored by process \d+\. Try again/);
    await alone.close();
    expect(await openStore({ url: '', folder, fault: () => {} }).kept.get('a')).toBe('from two');
  });

  it('that cannot be made is an outage that names it', async () => {
    writeFileSync(join(folder, 'file'), 'in the way');
    const store = openStore({ url: '', folder: join(folder, 'file', 'data'), fault: () => {} });
    await expect(store.ping()).rejects.toThrow(/file\/data cannot be opened/);
  });
});

describe('the owner written in a folder', () => {
  let root: RootDatabase;
  beforeEach(() => {
    root = open({ path: join(folder, 'store'), overlappingSync: false, encoding: 'string' });
  });
  afterEach(() => root.close());

  const owners = () => root.openDB<FolderUser, string>({ name: 'owned', encoding: 'json', useVersions: true });
  const write = (owner: Partial<FolderUser>) =>
    owners().put('owner', { pid: process.pid, started: '', host: hostname(), seen: 0, ...owner }, 7);
  const take = (now: number, use: FolderUse = 'bot') => new FolderAccess(root, folder, use, { now: () => now });

  it('counts while its process runs, and not when it is one of before with the same number', async () => {
    await write({});
    expect(() => take(1e12)).toThrow(FolderTaken);
    await write({ started: '1' });
    // Where the system tells when a process was started; elsewhere the number alone counts.
    if (process.platform === 'linux') expect(() => take(0)).not.toThrow();
  });

  it('on another machine counts for as long as it says that it is there', async () => {
    await write({ host: 'another', seen: 5000 });
    for (const use of ['bot', 'terminal', 'alone'] as const)
      expect(() => take(5000 + GONE_AFTER - 1, use)).toThrow(/on another, and only one machine/);
    expect(() => take(5000 + GONE_AFTER)).not.toThrow();
  });

  it('says again and again that it is there, while others write', async () => {
    let now = 0;
    const mine = new FolderAccess(root, folder, 'bot', { now: () => now });
    for (now = 1; now <= 50; now++) await Promise.all([mine.say(), root.put('else', String(now))]);
    expect(owners().get('owner')?.seen).toBe(50);
    await mine.release();
    expect(owners().get('owner')).toBeUndefined();
  });

  it('that another followed says no more', async () => {
    const mine = take(0);
    await write({ host: 'another', seen: 9 });
    await mine.say();
    expect(owners().get('owner')).toMatchObject({ host: 'another', seen: 9 });
  });

  it('is let go by itself only', async () => {
    const mine = take(0);
    await write({});
    await mine.release();
    expect(() => take(0)).toThrow(FolderTaken);
  });
});
