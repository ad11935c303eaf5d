/** The house keeps its plan: import directions, packages, no circles, small files; and each check catches what is planted. */

import { describe, expect, test } from 'vitest';
import { cyclesIn } from './architecture/cycles.ts';
import { roomless, wrongImports } from './architecture/directions.ts';
import { brokenHabits } from './architecture/habits.ts';
import { importsOf, targetOf } from './architecture/imports.ts';
import { ROOMS, roomOf } from './architecture/rooms.ts';
import { declaredPackages, readSources } from './architecture/sources.ts';

const sources = readSources(['src', 'commands', 'bench', 'scripts', 'tests']);
const declared = declaredPackages();

/** Fewer files than this in a room means that the look went wrong. */
const AT_LEAST: Readonly<Record<string, number>> = {
  queue: 4,
  core: 15,
  project: 6,
  reply: 4,
  words: 5,
  trade: 5,
  measure: 20,
  draw: 4,
  solve: 5,
  store: 5,
  bot: 6,
  commands: 6,
  discord: 20,
  slack: 20,
  terminal: 1,
  web: 20,
  hazards: 15,
  host: 10,
  sheet: 12,
  wiring: 5,
  main: 1,
  bench: 1,
  scripts: 1,
  tests: 15,
};

/** Sources as a map, each planted file with a sound opening. */
function planted(files: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  return new Map(Object.entries(files).map(([path, text]) => [path, `/** A planted file. */\n${text}\n`]));
}

describe('the files of the house', () => {
  test.each(Object.entries(AT_LEAST))('%s: at least %i files are seen', (room, least) => {
    const seen = [...sources.keys()].filter((path) => roomOf(path) === room);
    expect(seen.length).toBeGreaterThanOrEqual(least);
  });

  test('imports are seen: every room but reply imports another', () => {
    for (const room of Object.keys(ROOMS).filter((name) => name !== 'reply')) {
      const texts = [...sources].filter(([path]) => roomOf(path) === room).map(([, text]) => text);
      expect(texts.flatMap(importsOf).length, room).toBeGreaterThan(0);
    }
  });

  test('every file stands in a room of the table, and every room of the table has files', () => {
    expect(roomless(sources)).toEqual([]);
    expect(Object.keys(AT_LEAST).sort()).toEqual([...Object.keys(ROOMS), 'tests'].sort());
  });

  test('imports keep to the table', () => expect(wrongImports(sources, declared)).toEqual([]));
  test('no files import each other in a circle', () => expect(cyclesIn(sources)).toEqual([]));
  test('files keep the habits', () => expect(brokenHabits(sources)).toEqual([]));
});

describe('imports are read in every form', () => {
  const text = [
    `/** import x from './comment.ts' */`,
    `import a from './a.ts';`,
    'import {',
    '  b,',
    '  type B,',
    `} from "./b.ts";`,
    `import type { C } from '../c.ts';`,
    `import './d.ts';`,
    `export { e } from './e.ts';`,
    'export type {',
    '  F,',
    `} from './f.ts';`,
    `export * from './g.ts';`,
    `export * as h from '@scope/h/deep.js';`,
    `const i = await import('node:fs/promises');`,
    `type J = import("./j.ts").J;`,
    'const k = await import(`./k.ts`);',
    `const l = require('left');`,
    `const { m } = createRequire(import.meta.url)('m');`,
    'const load = createRequire(import.meta.url);',
    `const file = createRequire(import.meta.url).resolve('fonts/one.ttf');`,
    `// import n from './n.ts';`,
    `export const from = 'nowhere'; export const n = words.import('x');`,
  ].join('\n');

  test('with its line', () => {
    expect(importsOf(text)).toEqual([
      { from: './a.ts', line: 2 },
      { from: './b.ts', line: 3 },
      { from: '../c.ts', line: 7 },
      { from: './d.ts', line: 8 },
      { from: './e.ts', line: 9 },
      { from: './f.ts', line: 10 },
      { from: './g.ts', line: 13 },
      { from: '@scope/h/deep.js', line: 14 },
      { from: 'node:fs/promises', line: 15 },
      { from: './j.ts', line: 16 },
      { from: undefined, line: 17 },
      { from: 'left', line: 18 },
      { from: 'm', line: 19 },
      { from: undefined, line: 20 },
      { from: 'fonts/one.ttf', line: 21 },
    ]);
  });

  test.each([
    ['../reply/reply.ts', 'src/core/area.ts', { file: 'src/reply/reply.ts' }],
    ['./a.ts', 'commands/index.ts', { file: 'commands/a.ts' }],
    ['@scope/h/deep.js', 'src/core/area.ts', { package: '@scope/h' }],
    ['node:fs/promises', 'src/host/log.ts', { package: 'node:fs' }],
    ['zod', 'src/bot/command.ts', { package: 'zod' }],
  ])('%s in %s', (from, importer, target) => expect(targetOf(from, importer)).toEqual(target));
});

describe('planted wrongs are caught', () => {
  const floor = {
    'src/core/length.ts': 'export const one = 1;',
    'src/reply/reply.ts': 'export interface Reply {}',
    'src/measure/say.ts': `import { one } from '../core/length.ts';`,
    'src/bot/answer.ts': `import type { Reply } from '../reply/reply.ts';`,
    'src/bot/ports.ts': 'export interface Ports {}',
    'src/terminal/render.ts': `import type { Reply } from '../reply/reply.ts';`,
    'src/host/log.ts': `import type { Ports } from '../bot/ports.ts';`,
    'src/main.ts': `import './bot/answer.ts';`,
    'src/slack/send.ts': 'export const send = 1;',
    'src/cellar/pump.ts': 'export const pump = 1;',
    'tests/setup.ts': 'export const seed = 1;',
    'commands/index.ts': `import { one } from '../src/core/length.ts';`,
  };

  test('a sound house has none but the room that the table does not know', () => {
    expect(wrongImports(planted(floor), declared)).toEqual([]);
    expect(roomless(planted(floor))).toEqual(['src/cellar/pump.ts']);
    expect(cyclesIn(planted(floor))).toEqual([]);
    expect(brokenHabits(planted(floor))).toEqual([]);
  });

  test.each<[string, string, string, string]>([
    ['core imports reply', 'src/core/area.ts', `import type { Reply } from '../reply/reply.ts';`, 'which core may not'],
    ['core reads a file', 'src/core/area.ts', `import fs from 'node:fs';`, 'node:fs, which core may not'],
    [
      'measure imports bot',
      'src/measure/room.ts',
      `import {\n  x,\n} from '../bot/answer.ts';`,
      'which measure may not',
    ],
    ['a platform imports core', 'src/terminal/send.ts', `export { one } from '../core/length.ts';`, 'terminal may not'],
    ['a platform imports commands', 'src/terminal/ask.ts', `import '../../commands/index.ts';`, 'terminal may not'],
    ['a platform imports another', 'src/terminal/ask.ts', `import '../slack/send.ts';`, 'which terminal may not'],
    ['host imports the pipeline', 'src/host/doctor.ts', `import '../bot/answer.ts';`, 'which host may not'],
    ['a command imports a platform', 'commands/a.ts', `import '../src/terminal/render.ts';`, 'which commands may not'],
    ['a command imports host', 'commands/a.ts', `await import('../src/host/log.ts');`, 'which commands may not'],
    ['anything imports main', 'commands/a.ts', `import '../src/main.ts';`, 'imports main'],
    ['a test imports main', 'tests/main.test.ts', `import '../src/main.ts';`, 'imports main'],
    ['a bench imports main', 'bench/main.ts', `import '../src/main.ts';`, 'imports main'],
    ['an unlisted package', 'src/measure/room.ts', `import x from 'left-pad';`, 'left-pad, which measure may not'],
    ['a package of another room', 'src/words/asks.ts', `import { z } from 'zod';`, 'zod, which words may not'],
    ['a package of the tests', 'commands/a.ts', `import fc from 'fast-check';`, 'fast-check, which commands may not'],
    ['a computed import', 'src/main.ts', 'await import(name);', 'computed'],
    ['a file that is not there', 'src/main.ts', `import './gone.ts';`, 'no .ts file'],
    ['the product imports its tests', 'src/main.ts', `import '../tests/setup.ts';`, 'which main may not'],
  ])('%s', (_name, path, text, why) => {
    expect(wrongImports(planted({ ...floor, [path]: text }), declared)).toEqual([expect.stringContaining(why)]);
  });

  test('a listed package that package.json does not declare', () => {
    const house = planted({ ...floor, 'src/measure/tape.ts': `import { add } from 'mathjs';` });
    expect(wrongImports(house, declared)).toEqual([]);
    expect(wrongImports(house, ['zod'])).toEqual([expect.stringContaining('mathjs, which measure may not')]);
  });

  test('a file in no room', () => {
    const house = planted({ ...floor, 'src/loose.ts': '', 'src/attic/box.ts': '' });
    expect(roomless(house)).toEqual(['src/cellar/pump.ts', 'src/loose.ts', 'src/attic/box.ts']);
  });

  test('circles: of three, of types alone, and of one file', () => {
    const house = planted({
      'src/core/a.ts': `import { b } from './b.ts';`,
      'src/core/b.ts': `import type { C } from './c.ts';`,
      'src/core/c.ts': `export { a } from './a.ts';`,
      'src/core/d.ts': `import './d.ts';`,
    });
    expect(cyclesIn(house)).toEqual([
      'src/core/a.ts -> src/core/b.ts -> src/core/c.ts -> src/core/a.ts',
      'src/core/d.ts -> src/core/d.ts',
    ]);
  });

  const habits: readonly (readonly [string, string, string])[] = [
    ['src/core/row.ts', 'more than 600', '\n'.repeat(600)],
    ['src/core/row-utils.ts', 'named for no thing', ''],
    ['src/helpers/row.ts', 'named for no thing', ''],
    ['src/core/rowLine.ts', 'kebab-case', ''],
    ['src/core/row.ts', 'barrel', `export * from './run.ts';`],
    ['src/core/row.ts', 'exports a default', 'export default 1;'],
    [
      'src/core/row.ts',
      'lists a namespace',
      `import * as runs from './run.ts';\nexport const all = Object.values(runs);`,
    ],
    ['src/core/row.ts', 'silences', ['// @ts', 'ignore'].join('-')],
  ];
  test.each(habits)('%s %s', (path, why, text) => {
    expect(brokenHabits(planted({ [path]: text }))).toEqual([expect.stringContaining(why)]);
  });

  test('a file without its opening sentence', () => {
    const wrong = (text: string) => brokenHabits(new Map([['src/core/row.ts', text]]));
    expect(wrong('/** Rows of planks. */\n')).toEqual([]);
    for (const text of [
      '',
      'export const a = 1;\n',
      '/* Rows of planks. */\n',
      '/** rows */\n',
      '\n/** Rows of planks. */\n',
    ])
      expect(wrong(text)).toEqual([expect.stringContaining('does not open')]);
  });
});
