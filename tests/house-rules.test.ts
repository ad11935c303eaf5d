/** The tree can be found in: folders, files, names and features keep the rules, and each rule catches what is planted. */

import { describe, expect, test } from 'vitest';
import {
  type Features,
  fullFolders,
  repeatedExports,
  repeatedFileNames,
  roomCycles,
  scatteredFeatures,
  splinters,
} from './architecture/house-rules.ts';
import { readSources } from './architecture/sources.ts';

const sources = readSources(['src', 'commands']);
const MOST_FILES = 445;

const FEATURES: Features = {
  moisture: ['commands/prep/moisture.ts', 'src/prep/flat-and-dry.ts', 'src/input/parse-moisture.ts'],
  lift: ['commands/prep/lift.ts', 'src/prep/safe-work.ts', 'src/input/parse-weight.ts'],
  findings: ['commands/project/found.ts', 'src/project/findings.ts', 'src/input/parse-found.ts'],
  patch: ['commands/prep/patch.ts', 'src/prep/subfloor-patch.ts', 'src/prep/joist-cut.ts', 'src/input/parse-place.ts'],
  share: [
    'commands/project/share.ts',
    'commands/project/share-list.ts',
    'src/project/shares.ts',
    'src/project/share-scope.ts',
    'src/input/parse-share.ts',
  ],
  measuring: [
    'commands/project/measure.ts',
    'commands/project/measure-room.ts',
    'src/project/measurements.ts',
    'src/input/rooms/measure-wall.ts',
    'src/input/rooms/parse-measurement.ts',
  ],
};

function planted(files: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  return new Map(Object.entries(files));
}

const long = `${'\n'.repeat(100)}export const long = 1;\n`;

describe('the house', () => {
  test(`has at most ${MOST_FILES} files`, () => {
    const files = [...sources.keys()];
    expect(files.length).toBeGreaterThan(200);
    expect(files.length).toBeLessThanOrEqual(MOST_FILES);
  });

  test('has no folder that nobody can look over', () => expect(fullFolders(sources)).toEqual([]));
  test('has no file that belongs into its only importer', () => expect(splinters(sources)).toEqual([]));
  test('has no rooms that import each other in a circle', () => expect(roomCycles(sources)).toEqual([]));
  test('gives a file name once', () => expect(repeatedFileNames(sources)).toEqual([]));
  test('exports a name from one file', () => expect(repeatedExports(sources)).toEqual([]));
  test('lets a feature be read in a few files', () => expect(scatteredFeatures(sources, FEATURES)).toEqual([]));
});

describe('planted violations are caught', () => {
  test('a folder of 41 files', () => {
    const files = Object.fromEntries(Array.from({ length: 41 }, (_, i) => [`src/layout/row-${i}.ts`, long]));
    expect(fullFolders(planted(files))).toEqual([expect.stringContaining('src/layout holds 41')]);
  });

  test('a short file with one importer in its folder, but not with two or from elsewhere', () => {
    const short = 'export const one = 1;\n';
    const importing = `import { one } from './short.ts';\n${long}`;
    expect(splinters(planted({ 'src/trim/short.ts': short, 'src/trim/a.ts': importing }))).toEqual([
      expect.stringContaining('src/trim/short.ts'),
    ]);
    const both = { 'src/trim/short.ts': short, 'src/trim/a.ts': importing, 'src/trim/b.ts': importing };
    expect(splinters(planted(both))).toEqual([]);
    const elsewhere = { 'src/trim/short.ts': short, 'src/prep/a.ts': importing.replace('./', '../trim/') };
    expect(splinters(planted(elsewhere))).toEqual([]);
    expect(splinters(planted({ 'src/trim/short.ts': long, 'src/trim/a.ts': importing }))).toEqual([]);
  });

  test('two rooms that import each other, through different files', () => {
    const files = {
      'src/trim/a.ts': `import '../prep/b.ts';`,
      'src/trim/c.ts': '',
      'src/prep/b.ts': '',
      'src/prep/d.ts': `import '../trim/c.ts';`,
    };
    expect(roomCycles(planted(files))).toEqual(['trim -> prep -> trim']);
    expect(roomCycles(planted({ ...files, 'src/prep/d.ts': '' }))).toEqual([]);
  });

  test('a file name in two rooms, but not on two platforms', () => {
    expect(repeatedFileNames(planted({ 'src/trim/walls.ts': long, 'src/layout/walls.ts': long }))).toEqual([
      expect.stringContaining('walls.ts'),
    ]);
    const twins = { 'src/platforms/discord/send.ts': long, 'src/platforms/slack/send.ts': long };
    expect(repeatedFileNames(planted(twins))).toEqual([]);
  });

  test.each([
    ['const', 'export const wall = 1;'],
    ['function', 'export async function wall() {}'],
    ['type', 'export type wall = 1;'],
    ['interface', 'export interface wall {}'],
    ['class', 'export abstract class wall {}'],
  ])('an exported %s of two files', (_kind, text) => {
    expect(repeatedExports(planted({ 'src/trim/a.ts': text, 'src/trim/b.ts': 'export const wall = 2;' }))).toEqual([
      expect.stringContaining('wall: '),
    ]);
  });

  test('a feature with a file that nobody named, with one that is gone, with too many files and folders', () => {
    const files = {
      'commands/prep/moisture.ts': `import { limit } from '../../src/prep/limit.ts';`,
      'src/prep/limit.ts': 'export const limit = 1;',
    };
    const named = ['commands/prep/moisture.ts'];
    expect(scatteredFeatures(planted(files), { moisture: named })).toEqual([
      expect.stringContaining('src/prep/limit.ts'),
    ]);
    const both = { moisture: [...named, 'src/prep/limit.ts'] };
    expect(scatteredFeatures(planted(files), both)).toEqual([]);
    expect(scatteredFeatures(planted(files), { moisture: [...both.moisture, 'src/input/gone.ts'] })).toEqual([
      expect.stringContaining('is not there'),
    ]);
    const spread = Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f'].map((name) => [`src/${name}/${name}.ts`, long]));
    expect(scatteredFeatures(planted(spread), { spread: Object.keys(spread) })).toEqual([
      'spread: 6 files',
      'spread: 6 folders',
    ]);
  });
});
