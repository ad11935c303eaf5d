// Changes the exact code in small ways, one at a time, and reports each change that no test notices.

import { statSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

// What is changed where no file or folder is named; it takes hours.
const EXACT = ['src/units', 'src/layout', 'src/trim', 'src/prep'];

const given = process.argv.slice(2);
const files = (given.length > 0 ? given : EXACT).map((path) =>
  statSync(path).isDirectory() ? `${path.replace(/\/$/, '')}/**/*.ts` : path,
);

const results = await new Stryker({
  mutate: files,
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'deploy/tools/mutants-vitest.mjs', related: true },
  coverageAnalysis: 'perTest',
  // A constant is read once when its file is loaded: a change there would run every test.
  ignoreStatic: true,
  reporters: process.stdout.isTTY ? ['clear-text', 'progress'] : ['clear-text'],
  clearTextReporter: { reportTests: false, skipFull: true },
  allowConsoleColors: process.stdout.isTTY,
  // Stryker would rewrite tsconfig.json with a part of the compiler that TypeScript 7 no longer has.
  tsconfigFile: 'none',
  tempDirName: '.mutants',
  cleanTempDir: 'always',
  ignorePatterns: ['dist', 'pictures'],
}).runMutationTest();
process.exitCode = results.some(({ status }) => status === 'Survived' || status === 'NoCoverage') ? 1 : 0;
