/** The house keeps its plan: import directions, packages, no circles, small files; and each check catches what is planted. */

import { describe, expect, test } from 'vitest';
import { cyclesIn } from './architecture/cycles.ts';
import { roomless, wrongImports } from './architecture/directions.ts';
import { brokenHabits } from './architecture/habits.ts';
import { importsOf, targetOf } from './architecture/imports.ts';
import { ROOMS, roomOf } from './architecture/rooms.ts';
import { declaredPackages, readSources } from './architecture/sources.ts';

const sources = readSources(['src', 'commands', 'deploy', 'tests']);
const declared = declaredPackages();

/** Fewer files than this in a room means that the look went wrong. */
const AT_LEAST: Readonly<Record<string, number>> = {
  units: 2,
  reply: 4,
  text: 15,
  hazards: 12,
  layout: 20,
  trim: 4,
  prep: 4,
  figures: 6,
  workers: 8,
  input: 30,
  handbook: 20,
  language: 12,
  project: 12,
  accounts: 6,
  chat: 15,
  drawing: 12,
  commands: 40,
  storage: 6,
  documents: 6,
  'platforms/discord': 10,
  'platforms/slack': 10,
  'platforms/terminal': 3,
  'platforms/web': 8,
  platforms: 1,
  server: 8,
  main: 1,
  bench: 20,
  tools: 10,
  tests: 100,
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

  test('imports are seen: every room that is no leaf imports another', () => {
    for (const room of Object.keys(ROOMS).filter((name) => (ROOMS[name]?.rooms ?? []).length > 0)) {
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
    ['../reply/reply.ts', 'src/layout/area.ts', { file: 'src/reply/reply.ts' }],
    ['./a.ts', 'commands/index.ts', { file: 'commands/a.ts' }],
    ['@scope/h/deep.js', 'src/layout/area.ts', { package: '@scope/h' }],
    ['node:fs/promises', 'src/server/log.ts', { package: 'node:fs' }],
    ['zod', 'src/chat/command.ts', { package: 'zod' }],
  ])('%s in %s', (from, importer, target) => expect(targetOf(from, importer)).toEqual(target));
});

describe('planted wrongs are caught', () => {
  const floor = {
    'src/units/length.ts': 'export const one = 1;',
    'src/reply/reply.ts': 'export interface Reply {}',
    'src/input/format.ts': `import { one } from '../units/length.ts';`,
    'src/chat/pipeline.ts': `import type { Reply } from '../reply/reply.ts';`,
    'src/chat/ports.ts': 'export interface Ports {}',
    'src/platforms/terminal/render.ts': `import type { Reply } from '../../reply/reply.ts';`,
    'src/storage/store.ts': 'export const store = 1;',
    'src/documents/make.ts': `import type { Ports } from '../chat/ports.ts';`,
    'src/main.ts': `import './chat/pipeline.ts';`,
    'src/platforms/slack/send.ts': 'export const send = 1;',
    'src/cellar/pump.ts': 'export const pump = 1;',
    'tests/setup.ts': 'export const seed = 1;',
    'commands/index.ts': `import { one } from '../src/units/length.ts';`,
  };

  test('a sound house has none but the room that the table does not know', () => {
    expect(wrongImports(planted(floor), declared)).toEqual([]);
    expect(roomless(planted(floor))).toEqual(['src/cellar/pump.ts']);
    expect(cyclesIn(planted(floor))).toEqual([]);
    expect(brokenHabits(planted(floor))).toEqual([]);
  });

  test.each<[string, string, string, string]>([
    [
      'layout imports reply',
      'src/layout/area.ts',
      `import type { Reply } from '../reply/reply.ts';`,
      'which layout may not',
    ],
    ['layout reads a file', 'src/layout/area.ts', `import fs from 'node:fs';`, 'node:fs, which layout may not'],
    ['input imports chat', 'src/input/room.ts', `import {\n  x,\n} from '../chat/pipeline.ts';`, 'which input may not'],
    [
      'a platform imports units',
      'src/platforms/terminal/send.ts',
      `export { one } from '../../units/length.ts';`,
      'platforms/terminal may not',
    ],
    [
      'a platform imports commands',
      'src/platforms/terminal/ask.ts',
      `import '../../../commands/index.ts';`,
      'platforms/terminal may not',
    ],
    [
      'a platform imports another',
      'src/platforms/terminal/ask.ts',
      `import '../slack/send.ts';`,
      'which platforms/terminal may not',
    ],
    ['storage imports the pipeline', 'src/storage/look.ts', `import '../chat/pipeline.ts';`, 'which storage may not'],
    [
      'a command imports a platform',
      'commands/a.ts',
      `import '../src/platforms/terminal/render.ts';`,
      'which commands may not',
    ],
    [
      'a command imports storage',
      'commands/a.ts',
      `await import('../src/storage/store.ts');`,
      'which commands may not',
    ],
    ['anything imports main', 'commands/a.ts', `import '../src/main.ts';`, 'imports main'],
    ['a test imports main', 'tests/main.test.ts', `import '../src/main.ts';`, 'imports main'],
    ['a bench imports main', 'tests/bench/main.ts', `import '../../src/main.ts';`, 'imports main'],
    ['an unlisted package', 'src/input/room.ts', `import x from 'left-pad';`, 'left-pad, which input may not'],
    ['a package of another room', 'src/text/chat.ts', `import { z } from 'zod';`, 'zod, which text may not'],
    ['a package of the tests', 'commands/a.ts', `import fc from 'fast-check';`, 'fast-check, which commands may not'],
    ['a computed import', 'src/main.ts', 'await import(name);', 'computed'],
    ['a file that is not there', 'src/main.ts', `import './gone.ts';`, 'no .ts file'],
    ['the product imports its tests', 'src/main.ts', `import '../tests/setup.ts';`, 'which main may not'],
  ])('%s', (_name, path, text, why) => {
    expect(wrongImports(planted({ ...floor, [path]: text }), declared)).toEqual([expect.stringContaining(why)]);
  });

  test('a listed package that package.json does not declare', () => {
    const house = planted({ ...floor, 'src/input/tape.ts': `import { add } from 'mathjs';` });
    expect(wrongImports(house, declared)).toEqual([]);
    expect(wrongImports(house, ['zod'])).toEqual([expect.stringContaining('mathjs, which input may not')]);
  });

  test('a file in no room', () => {
    const house = planted({ ...floor, 'src/loose.ts': '', 'src/attic/box.ts': '' });
    expect(roomless(house)).toEqual(['src/cellar/pump.ts', 'src/loose.ts', 'src/attic/box.ts']);
  });

  test('circles: of three, of types alone, and of one file', () => {
    const house = planted({
      'src/layout/a.ts': `import { b } from './b.ts';`,
      'src/layout/b.ts': `import type { C } from './c.ts';`,
      'src/layout/c.ts': `export { a } from './a.ts';`,
      'src/layout/d.ts': `import './d.ts';`,
    });
    expect(cyclesIn(house)).toEqual([
      'src/layout/a.ts -> src/layout/b.ts -> src/layout/c.ts -> src/layout/a.ts',
      'src/layout/d.ts -> src/layout/d.ts',
    ]);
  });

  const preferences: readonly (readonly [string, string, string])[] = [
    ['src/layout/row.ts', 'more than 600', '\n'.repeat(600)],
    ['src/layout/row-utils.ts', 'named for no thing', ''],
    ['src/helpers/row.ts', 'named for no thing', ''],
    ['src/layout/rowLine.ts', 'kebab-case', ''],
    ['src/layout/row.ts', 'barrel', `export * from './run.ts';`],
    ['src/layout/row.ts', 'exports a default', 'export default 1;'],
    [
      'src/layout/row.ts',
      'lists a namespace',
      `import * as runs from './run.ts';\nexport const all = Object.values(runs);`,
    ],
    ['src/layout/row.ts', 'silences', ['// @ts', 'ignore'].join('-')],
  ];
  test.each(preferences)('%s %s', (path, why, text) => {
    expect(brokenHabits(planted({ [path]: text }))).toEqual([expect.stringContaining(why)]);
  });

  test('a file without its opening sentence', () => {
    const wrong = (text: string) => brokenHabits(new Map([['src/layout/row.ts', text]]));
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
