/** `npm run mutants` on a small project of its own: it sees what the tests notice, and lists what they don't. */

import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { Metric } from './bench/metric.ts';

const root = mkdtempSync(join(tmpdir(), 'mutants-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const PROJECT = {
  'src/covers.ts': `export function covers(length: number, need: number): boolean {
  return length >= need;
}
export function steps(height: number): number {
  let count = 0;
  while (height > 0) {
    height -= 7;
    count += 1;
  }
  return count;
}
export const spare = (count: number): number => count + 1;
`,
  // Nothing looks at a length that just reaches, nor at the spare one.
  'tests/covers.test.ts': `import { expect, test } from 'vitest';
import { covers, steps } from '../src/covers.ts';
test('covers', () => expect([covers(3, 2), covers(2, 3)]).toEqual([true, false]));
test('steps', () => expect([steps(7), steps(8)]).toEqual([1, 2]));
`,
  'tests/mutants/accepted.json': JSON.stringify([
    {
      file: 'src/covers.ts',
      line: 'return length >= need;',
      original: 'length >= need',
      replacement: 'length > need',
      why: 'a plank that just reaches does not matter here',
    },
  ]),
  'package.json': '{ "type": "module" }',
  'vitest.config.ts': 'export default {};',
};

test('notices the mistakes that tests notice, endless loops among them, and lists the others', () => {
  for (const [file, text] of Object.entries(PROJECT)) {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text);
  }
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ['dist/tests/mutants/main.js', '--root', root, '--rooms', 'src', '--seed', '3', '--json'],
    { encoding: 'utf8', env: { ...process.env, VITEST: undefined, NODE_ENV: undefined } },
  );
  const listed = [...stderr.matchAll(/^src\/\S+ .*$/gm)].map(([line]) => line).sort();
  expect(listed).toEqual([
    'src/covers.ts:12  no coverage',
    'src/covers.ts:12  survived',
    'src/covers.ts:2  survived: a plank that just reaches does not matter here',
  ]);
  expect(stderr).toContain('  length >= need\n  -> length > need\n');
  const figures: readonly Metric[] = JSON.parse(stdout);
  const value = (name: string) => figures.find(({ metric }) => metric === name)?.value;
  // Noticed of covers: its body, and the comparison made true, false and <. Of steps: its body, the loop's condition in
  // three ways and its body, and both sums.
  expect(['drawn', 'killed', 'timeout'].map((name) => value(`seed 3: ${name}`))).toEqual([14, 11, 0]);
  expect(value('seed 3: killed, %')).toBe(78.6);
  expect(value('survivors that nobody explained')).toBe(2);
  expect(status).toBe(1);
});
