/** Writes what the program can write itself: parts of README.md and deploy/README.md, and whole files; with --check it names what is stale and exits 1. */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { generatedFiles } from './generated-files.ts';
import { staleParts, withParts } from './generated-part.ts';
import { generatedPages } from './readme-parts.ts';

const pages = (await generatedPages()).flatMap(({ path, parts }) => {
  const page = readFileSync(path, 'utf8');
  const stale = staleParts(page, parts);
  return stale.length > 0 ? [{ path, text: withParts(page, parts), named: `${path} (${stale.join(', ')})` }] : [];
});
const files = generatedFiles()
  .filter(({ path, text }) => !existsSync(path) || readFileSync(path, 'utf8') !== text)
  .map((file) => ({ ...file, named: file.path }));
const stale = [...pages, ...files];

if (stale.length === 0) {
  console.log('everything generated is current');
} else if (process.argv.includes('--check')) {
  console.error(`stale: ${stale.map(({ named }) => named).join(', ')}. Run: npm run generate`);
  process.exitCode = 1;
} else {
  for (const { path, text, named } of stale) {
    writeFileSync(path, text);
    console.log(`wrote ${named}`);
  }
}
