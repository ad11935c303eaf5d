/** A damaged data file: found before lmdb opens it, named with the newest backup, left as it is, and replaced by a restore. */

import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { findings } from '../../src/server/doctor.ts';
import { findingsText } from '../../src/server/doctor-machine.ts';
import { backUpToday, backupsIn } from '../../src/storage/backup.ts';
import { checkDataFile, dataFileOf } from '../../src/storage/data-file.ts';
import { openEmbedded, readEmbedded } from '../../src/storage/embedded.ts';
import { MACHINE_CLOCK } from '../../src/storage/engine.ts';
import { lookAtStore } from '../../src/storage/look.ts';
import { openStore } from '../../src/storage/store.ts';
import { StoreUnusable } from '../../src/storage/types.ts';
import { listHeld } from './held.ts';

const run = promisify(execFile);
const PAGE = 4096;
const made = mkdtempSync(join(tmpdir(), 'floorhand-sound-'));
const today = Date.UTC(2026, 0, 5, 12);
let folder = '';

/** A store as one that was used for a while: several trees of two levels, overflow pages, free pages, a backup. */
beforeAll(async () => {
  const engine = await openEmbedded({ folder: made, clock: MACHINE_CLOCK, operation: 20_000 });
  for (let round = 0; round < 6; round++) {
    const numbers = Array.from({ length: 60 }, (_, i) => i);
    await Promise.all(
      numbers.map(async (i) => {
        const text = JSON.stringify({ round, i, text: 'plank '.repeat(i * (i % 7 === 0 ? 60 : 4)) });
        const row = await engine.read('project', `p${i}`);
        if (row && i % 5 === round % 5) await engine.remove('project', `p${i}`, 'w');
        else if (row) await engine.put('project', `p${i}`, { rev: row.rev + 1, text }, row.rev, 'w');
        else await engine.create('project', `p${i}`, { rev: 1, text }, 'w');
        await engine.values.claim(`k${round}:${i}`, JSON.stringify({ value: i }), 60_000);
      }),
    );
  }
  await backUpToday(made, engine, today);
  await engine.close();
}, 60_000);
afterAll(() => rmSync(made, { recursive: true, force: true }));

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'floorhand-damaged-'));
  cpSync(made, folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const bytes = (): Buffer => readFileSync(dataFileOf(folder));
const damage = (change: (file: Buffer) => Buffer | undefined): void => {
  const file = bytes();
  writeFileSync(dataFileOf(folder), change(file) ?? file);
};
const flip = (file: Buffer, from: number, to: number): void => {
  for (let i = from; i < to; i++) file[i] = (file[i] ?? 0) ^ 0xff;
};

/** Pages that the newest commit uses for data: those without which the file isn't sound. */
async function pagesInUse(): Promise<readonly number[]> {
  const file = bytes();
  const used: number[] = [];
  for (let page = 2; page < file.length / PAGE; page++) {
    const changed = Buffer.from(file);
    flip(changed, page * PAGE, page * PAGE + 24);
    writeFileSync(dataFileOf(folder), changed);
    if ((await checkDataFile(folder)).state === 'damaged') used.push(page);
  }
  writeFileSync(dataFileOf(folder), file);
  return used;
}

describe('a data file', () => {
  it('of a store in use is sound, and so is one whose unused end is missing', async () => {
    expect(await checkDataFile(folder)).toMatchObject({ state: 'sound' });
    expect(await checkDataFile(join(folder, 'elsewhere'))).toEqual({ state: 'none' });
  });

  it('is damaged with any page in use flipped, zeroed, or where another belongs', async () => {
    const whole = bytes();
    const used = await pagesInUse();
    expect(used.length).toBeGreaterThan(40);
    const [other = 0] = used;
    for (const page of used) {
      const [from, to] = [page * PAGE, (page + 1) * PAGE];
      const changes: readonly ((file: Buffer) => void)[] = [
        (file) => flip(file, from, to),
        (file) => void file.fill(0, from, to),
        (file) => void (page !== other && whole.copy(file, from, other * PAGE, (other + 1) * PAGE)),
      ];
      for (const [i, change] of changes.entries()) {
        const file = Buffer.from(whole);
        change(file);
        if (file.equals(whole)) continue;
        writeFileSync(dataFileOf(folder), file);
        expect({ page, i, ...(await checkDataFile(folder)) }).toMatchObject({ page, i, state: 'damaged' });
      }
    }
  });

  it('never throws or lets through what kills lmdb, whatever bytes change', async () => {
    const whole = bytes();
    let state = 7;
    const next = (below: number): number => {
      state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
      return Math.floor((state / 2 ** 32) * below);
    };
    for (let i = 0; i < 300; i++) {
      const file = Buffer.from(whole);
      for (let n = 0; n < 1 + next(4); n++) file[next(file.length)] = next(256);
      writeFileSync(dataFileOf(folder), file);
      const found = await checkDataFile(folder);
      if (found.state !== 'sound') continue;
      const held = await listHeld(readEmbedded({ folder, clock: MACHINE_CLOCK, operation: 5_000 }));
      expect(held.length).toBeGreaterThan(100);
    }
  }, 60_000);

  it.each([
    ['emptied', () => Buffer.alloc(0), /is damaged: it is empty/],
    ['cut to half', (file: Buffer) => file.subarray(0, file.length / 2), /is damaged: it is cut short/],
    ['cut to its first page', (file: Buffer) => file.subarray(0, PAGE), /is damaged: it is cut short/],
    ['another file', () => Buffer.from('a shopping list '.repeat(900)), /is damaged: it does not begin as a data file/],
    ['junk', (file: Buffer) => Buffer.alloc(file.length, 0xa5), /is damaged: it does not begin/],
    ['without its first pages', (file: Buffer) => file.fill(0, 0, 2 * PAGE), /is damaged: it does not begin/],
  ])('that is %s opens for nobody, and stays as it is', async (_, change, said) => {
    damage(change);
    const before = bytes();
    const store = openStore({ url: '', folder, fault: () => {} });
    const began = performance.now();
    await expect(store.ping()).rejects.toThrow(StoreUnusable);
    await expect(store.ping()).rejects.toThrow(said);
    await expect(store.backUp()).rejects.toThrow(said);
    await expect(lookAtStore({ url: '', folder })).rejects.toThrow(said);
    expect(performance.now() - began).toBeLessThan(2_000);
    expect(bytes().equals(before)).toBe(true);
    await store.close();
  });

  it('that is missing is not a new store', async () => {
    rmSync(dataFileOf(folder));
    await expect(openStore({ url: '', folder, fault: () => {} }).ping()).rejects.toThrow(/is damaged: it is missing/);
    expect(readdirSync(join(folder, 'store'))).toEqual(['lock.mdb']);
  });
});

const MAIN = join(import.meta.dirname, '../../dist/src/main.js');
const RESTORE = join(import.meta.dirname, '../../dist/deploy/tools/restore.js');

/** What the doctor says of the store. */
async function seen(): Promise<string> {
  const terms = { node: process.versions.node, now: Date.now, online: false, works: async () => [] };
  return findingsText(await findings({ FLOORHAND_DATA: folder }, terms));
}

async function ran(...words: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const env = { PATH: process.env.PATH, FLOORHAND_DATA: folder, FLOORHAND_PICTURES: join(folder, 'pictures') };
  try {
    const { stdout, stderr } = await run(process.execPath, [...words], { env });
    return { code: 0, out: stdout, err: stderr };
  } catch (cause) {
    const { code, stdout, stderr } = cause as { code: number; stdout: string; stderr: string };
    return { code, out: stdout, err: stderr };
  }
}

describe('whoever meets a damaged file', () => {
  it('is shown the file, the newest backup and the command, which works and keeps the damaged file', async () => {
    damage((file) => file.subarray(0, file.length / 2));
    const before = bytes();
    const [backup] = backupsIn(folder);
    const met = await ran(MAIN, 'ask', 'project list');
    expect(met).toMatchObject({ code: 1, out: '' });
    expect(met.err).toContain(`The data file ${dataFileOf(folder)} is damaged: it is cut short. Nothing was changed.`);
    expect(met.err).toContain(`npm run restore -- ${backup?.path}`);
    expect(met.err).not.toMatch(/fault|nothing of yours is lost/);
    expect(await seen()).toMatch(/FAULT +Store +The data file .* is damaged/);
    expect(bytes().equals(before)).toBe(true);

    const restored = await ran(RESTORE, backup?.path ?? '');
    expect(restored.err).toBe('');
    const [aside = ''] = readdirSync(folder).filter((name) => name.startsWith('damaged-store-'));
    expect(readFileSync(join(folder, aside, 'data.mdb')).equals(before)).toBe(true);
    const place = { clock: MACHINE_CLOCK, operation: 5_000 };
    const held = await listHeld(readEmbedded({ folder, ...place }));
    expect(held.filter((one) => 'record' in one)).toEqual(
      (await listHeld(readEmbedded({ folder: made, ...place }))).filter((one) => 'record' in one),
    );
    expect(await seen()).toMatch(/ok +Store +the data folder is sound: \d+ texts, \d+ pages/);
  }, 60_000);

  it('without a backup is shown where one would be, and how to start with nothing', async () => {
    rmSync(join(folder, 'backups'), { recursive: true });
    truncateSync(dataFileOf(folder), 0);
    const { code, err } = await ran(MAIN, 'ask', 'project list');
    expect(code).toBe(1);
    expect(err).toContain(`There is no backup in ${join(folder, 'backups')}.`);
    expect(err).toContain(`To start with nothing instead, move ${join(folder, 'store')} to another place.`);
  });

  it.runIf(process.platform === 'linux')('is refused a restore while a process has the file open', async () => {
    const program = `import { open } from 'lmdb'; open({ path: process.argv[1] }); console.log('open'); setInterval(() => {}, 1e6);`;
    const other = spawn(process.execPath, ['--input-type=module', '-e', program, join(folder, 'store')], {
      cwd: join(import.meta.dirname, '../..'),
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await once(other.stdout, 'data');
    truncateSync(dataFileOf(folder), 0);
    const [backup] = backupsIn(folder);
    const { code, err } = await ran(RESTORE, backup?.path ?? '');
    other.kill();
    await once(other, 'exit');
    expect({ code, err }).toEqual({ code: 1, err: expect.stringContaining(`in use by process ${other.pid}`) });
    expect((await ran(RESTORE, backup?.path ?? '')).code).toBe(0);
  });
});

describe('backups by themselves', () => {
  const DAY = 86_400_000;
  const names = () => readdirSync(join(folder, 'backups')).sort();

  it('are made once a day, read back whole, and seven are kept', async () => {
    const engine = await openEmbedded({ folder, clock: MACHINE_CLOCK, operation: 5_000 });
    for (let day = 1; day <= 9; day++) {
      await backUpToday(folder, engine, today + day * DAY);
      expect(await backUpToday(folder, engine, today + day * DAY + 1000)).toBe(backupsIn(folder)[0]?.made);
    }
    await engine.close();
    expect(names()).toEqual(
      [8, 9, 10, 11, 12, 13, 14].map((day) => `floorhand-2026-01-${String(day).padStart(2, '0')}.jsonl`),
    );
  });

  it('are not made of a damaged file, and take no earlier one away', async () => {
    const before = names();
    damage((file) => file.fill(0, 2 * PAGE));
    const all = (): never => {
      throw new Error('read all the same');
    };
    await expect(backUpToday(folder, { all }, today + DAY)).rejects.toThrow(StoreUnusable);
    expect(names()).toEqual(before);
  });

  it('that cannot be read are seen by the doctor', async () => {
    const [backup] = backupsIn(folder);
    truncateSync(backup?.path ?? '', 900);
    expect(await seen()).toMatch(/look +Backup +.*jsonl cannot be used/);
  });
});
