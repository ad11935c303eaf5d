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

/** Writes the address of every file that is imported. */
const HOOKS = `
  import { writeSync } from 'node:fs';
  export async function load(url, context, next) {
    if (url.startsWith('file:')) writeSync(2, url + '\\n');
    return next(url, context);
  }`;
const asModule = (code: string): string => `data:text/javascript,${encodeURIComponent(code)}`;
/** Files that are required pass by the hooks; they stand in a cache at the end. */
const REGISTER = `
  import Module, { register } from 'node:module';
  import { writeSync } from 'node:fs';
  import { pathToFileURL } from 'node:url';
  register(${JSON.stringify(asModule(HOOKS))});
  process.on('exit', () => {
    for (const path of Object.keys(Module._cache)) writeSync(2, pathToFileURL(path) + '\\n');
  });`;

interface Loaded {
  readonly out: string;
  readonly own: readonly string[];
  /** Files of packages, each once. */
  readonly foreign: readonly string[];
}

async function loadedFor(...words: readonly string[]): Promise<Loaded> {
  const env = { PATH: process.env.PATH, FLOORHAND_DATA: data };
  const { stdout, stderr } = await promisify(execFile)(
    process.execPath,
    ['--import', asModule(REGISTER), MAIN, 'ask', ...words],
    { env },
  );
  const urls = [...new Set(stderr.split('\n').filter((url) => url.startsWith('file:')))];
  const isForeign = (url: string): boolean => url.includes('/node_modules/');
  return { out: stdout, own: urls.filter((url) => !isForeign(url)), foreign: urls.filter(isForeign) };
}

it('a length loads fewer than 165 of our files, 150 of packages, and no command but its own', async () => {
  const { out, own, foreign } = await loadedFor('tape', '1', 'ft');
  expect(out).toContain("1 ft = 1'");
  expect(own.length).toBeGreaterThan(20);
  expect(own.length).toBeLessThan(165);
  expect(own.filter((url) => /\/commands\/(?!index)/.test(url))).toEqual([expect.stringMatching(/\/tape\.js$/)]);
  expect(own.filter((url) => /\/(?:http|metrics|start-bot|document-page|plain-sentence)\.js$/.test(url))).toEqual([]);
  // Two thirds of them are zod, which reads the options of every command; most others open the store.
  expect(foreign.length).toBeGreaterThan(20);
  expect(foreign.length).toBeLessThan(150);
  expect(foreign.filter((url) => /\/(?:rate-limiter-flexible|piscina|mathjs|highs)\//.test(url))).toEqual([]);
}, 60_000);

it('help loads every command', async () => {
  const { own } = await loadedFor('help');
  expect(own.filter((url) => /\/commands\/(?!index)/.test(url)).length).toBeGreaterThan(40);
}, 60_000);
