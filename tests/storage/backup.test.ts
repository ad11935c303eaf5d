/** Backups: all there is comes back on any back end, a damaged file is refused, and nothing is put over what is there untold. */

import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BackupUnusable, backupLines, checkBackup, restoreLines } from '../../src/storage/backup.ts';
import type { StoredRecord } from '../../src/storage/engine.ts';
import { opener, openStore, recordReader } from '../../src/storage/store.ts';
import { listHeld } from './held.ts';

const SOON = Date.now() + 3_600_000;
const HELD: readonly StoredRecord[] = [
  { record: { kind: 'project', id: 'flat', rev: 3, text: '{"rooms":["hall","bay\u2028window","é “🪚”"]}' } },
  { record: { kind: 'project', id: 'torn', rev: 1, text: '{"rooms":' } },
  { record: { kind: 'person', id: 'slack:T1:U1', rev: 2 ** 40, text: '{}' } },
  { kept: { key: 'answer:x', text: `{"value":"\\n\u2029","expires":${SOON}}`, expires: SOON } },
  { kept: { key: 'setting', text: '{"value":1}' } },
];

async function* all(held: readonly StoredRecord[]) {
  yield* held;
}

async function* each(lines: readonly string[]) {
  yield* lines;
}

async function linesOf(held: readonly StoredRecord[]): Promise<string[]> {
  const lines: string[] = [];
  for await (const line of backupLines({ all: () => all(held) }, new Date(0))) lines.push(line);
  return lines;
}

describe('a backup', () => {
  it('read back holds the same, each a line that no reader of lines divides', async () => {
    const lines = await linesOf(HELD);
    expect(lines.join('')).not.toMatch(/[\n\r\u2028\u2029]/);
    expect(await checkBackup(each(lines))).toEqual({ records: 3, kept: 2 });
    const filled: StoredRecord[] = [];
    await restoreLines({ fill: async (held) => void filled.push(...held) }, each(lines));
    expect(filled).toEqual(HELD);
  });

  it('of nothing is whole too', async () => {
    expect(await checkBackup(each(await linesOf([])))).toEqual({ records: 0, kept: 0 });
  });

  it.each<[string, RegExp, (lines: string[]) => string[]]>([
    ['an empty file', /cut short/, () => []],
    ['one that is cut short', /cut short/, (lines) => lines.slice(0, -1)],
    ['one cut in a line', /Line 3 cannot be read/, (lines) => [...lines.slice(0, 2), (lines[2] ?? '').slice(0, 9)]],
    ['one with a changed value', /checksum/, (lines) => lines.map((line) => line.replace('hall', 'hell'))],
    ['one with a line left out', /checksum/, (lines) => lines.toSpliced(2, 1)],
    ['one with two lines exchanged', /checksum/, ([a = '', b = '', c = '', ...more]) => [a, c, b, ...more]],
    ['one with more behind its end', /after the end/, (lines) => [...lines, lines[1] ?? '']],
    ['one with other counts', /counts otherwise/, (lines) => lines.map((line) => line.replace('"kept":2', '"kept":3'))],
    ['another file', /does not begin/, () => ['{"some":"thing"}']],
    ['one of a later version', /version 2/, (lines) => lines.map((line) => line.replace('"version":1', '"version":2'))],
    ['one with a line of something else', /Line 2 holds nothing/, (lines) => lines.toSpliced(1, 0, '{"tile":{}}')],
  ])('refuses %s', async (_what, why, change) => {
    const changed = change(await linesOf(HELD));
    const check = checkBackup(each(changed));
    await expect(check).rejects.toThrow(BackupUnusable);
    await expect(check).rejects.toThrow(why);
  });
});

describe('the programs', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'floorhand-backup-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const place = (name: string) => ({ url: '', folder: join(folder, name) });
  const file = () => join(folder, 'all.jsonl');

  async function fill(name: string, held: readonly StoredRecord[]): Promise<void> {
    const engine = await opener(place(name))();
    await engine.fill(held);
    await engine.close();
  }

  it('write while a bot has the folder, and put all back into another', async () => {
    await fill('one', HELD);
    const bot = openStore({ ...place('one'), fault: () => {} });
    await bot.ping();
    expect(await run('backup', 'one', file())).toMatchObject({
      code: 0,
      out: expect.stringMatching(/3 records, 2 values/),
    });
    await bot.close();
    expect(await run('restore', 'two', file())).toMatchObject({
      code: 0,
      out: expect.stringMatching(/3 records, 2 values/),
    });
    const sorted = (held: readonly StoredRecord[]) => held.map((one) => JSON.stringify(one)).sort();
    expect(sorted(await listHeld(opener(place('two'))()))).toEqual(sorted(HELD));
  });

  it('read a folder as of one moment, whatever is put meanwhile', async () => {
    await fill('one', HELD);
    const bot = openStore({ ...place('one'), fault: () => {} });
    await bot.ping();
    const engine = await recordReader(place('one'))();
    const seen: StoredRecord[] = [];
    for await (const one of engine.all()) {
      seen.push(one);
      await bot.kept.set(`zz ${seen.length}`, 'late');
      await bot.kept.delete('setting');
    }
    await engine.close();
    await bot.close();
    const keys = seen.map((one) => ('record' in one ? one.record.id : one.kept.key));
    expect(keys.sort()).toEqual(['answer:x', 'flat', 'setting', 'slack:T1:U1', 'torn']);
  });

  it('refuse a folder in use, a store that holds something, a damaged file, and say what to do', async () => {
    await fill('one', HELD);
    await run('backup', 'one', file());
    const bot = openStore({ ...place('two'), fault: () => {} });
    await bot.kept.set('mine', 1);
    expect(await run('restore', 'two', file())).toMatchObject({
      code: 1,
      err: expect.stringMatching(/in use by process \d+/),
    });
    await bot.close();
    expect(await run('restore', 'two', file())).toMatchObject({ code: 1, err: expect.stringMatching(/--over/) });
    writeFileSync(join(folder, 'bad.jsonl'), readFileSync(file(), 'utf8').replace('hall', 'hell'));
    expect(await run('restore', 'three', join(folder, 'bad.jsonl'))).toMatchObject({
      code: 1,
      err: expect.stringMatching(/checksum/),
    });
    expect(await run('restore', 'two', file(), '--over')).toMatchObject({ code: 0 });
    expect(await listHeld(opener(place('two'))())).toHaveLength(HELD.length + 1);
  });

  it('say what is missing: a file name, the file, the folder', async () => {
    expect(await run('backup', 'one')).toMatchObject({ code: 2, err: expect.stringMatching(/FILE/) });
    expect(await run('restore', 'one', join(folder, 'none.jsonl'))).toMatchObject({
      code: 1,
      err: expect.stringMatching(/none\.jsonl/),
    });
    writeFileSync(file(), 'mine');
    await fill('one', HELD);
    expect(await run('backup', 'one', file())).toMatchObject({ code: 1, err: expect.stringMatching(/EEXIST/) });
    expect(readFileSync(file(), 'utf8')).toBe('mine');
    expect(await run('backup', 'nowhere', file())).toMatchObject({ code: 1, err: expect.stringMatching(/nowhere/) });
  });

  function run(program: string, data: string, ...words: readonly string[]) {
    const path = fileURLToPath(new URL(`../../dist/deploy/tools/${program}.js`, import.meta.url));
    const env = { ...process.env, FLOORHAND_STORE: '', FLOORHAND_DATA: join(folder, data) };
    return new Promise<{ code: number; out: string; err: string }>((resolve) => {
      execFile(process.execPath, [path, ...words], { env }, (failed, out, err) => {
        resolve({ code: failed ? Number(failed.code) : 0, out, err });
      });
    });
  }
});
