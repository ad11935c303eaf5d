/** A sum in lengths waits for nothing that it does not use: few files are loaded for it. */

import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, expect, it } from 'vitest';

const MAIN = new URL('../../dist/src/main.js', import.meta.url).pathname;
const data = mkdtempSync(join(tmpdir(), 'loaded-'));
afterAll(() => rmSync(data, { recursive: true }));

/** Writes the address of every file that is loaded. */
const HOOKS = `
  import { writeSync } from 'node:fs';
  export async function load(url, context, next) {
    if (url.startsWith('file:')) writeSync(2, url + '\\n');
    return next(url, context);
  }`;
const asModule = (code: string): string => `data:text/javascript,${encodeURIComponent(code)}`;
const REGISTER = `import { register } from 'node:module'; register(${JSON.stringify(asModule(HOOKS))});`;

async function loadedFor(
  ...words: readonly string[]
): Promise<{ readonly out: string; readonly own: readonly string[] }> {
  const env = { PATH: process.env.PATH, FLOORHAND_DATA: data };
  const { stdout, stderr } = await promisify(execFile)(
    process.execPath,
    ['--import', asModule(REGISTER), MAIN, 'ask', ...words],
    { env },
  );
  const own = stderr.split('\n').filter((url) => url.startsWith('file:') && !url.includes('/node_modules/'));
  return { out: stdout, own };
}

it('a sum loads fewer than 150 of our files, and no command but its own', async () => {
  const { out, own } = await loadedFor('tape', '1', 'ft');
  expect(out).toContain("1 ft = 1'");
  expect(own.length).toBeGreaterThan(20);
  expect(own.length).toBeLessThan(150);
  expect(own.filter((url) => /\/commands\/(?!index)/.test(url))).toEqual([expect.stringMatching(/\/tape\.js$/)]);
  expect(own.filter((url) => /\/(?:http|metrics|start-bot|document-page|plain-sentence)\.js$/.test(url))).toEqual([]);
}, 60_000);

it('help loads every command', async () => {
  const { own } = await loadedFor('help');
  expect(own.filter((url) => /\/commands\/(?!index)/.test(url)).length).toBeGreaterThan(40);
}, 60_000);
