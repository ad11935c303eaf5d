/** Writes what the program can write itself: parts of README.md, and files of deploy/; with --check it names what is stale and exits 1. */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { generatedFiles } from './generated-files.ts';
import { staleParts, withParts } from './generated-part.ts';
import { readmeParts } from './readme-parts.ts';

const PAGE = 'README.md';

const page = readFileSync(PAGE, 'utf8');
const parts = await readmeParts();
const stale = staleParts(page, parts);
const files = generatedFiles().filter(({ path, text }) => !existsSync(path) || readFileSync(path, 'utf8') !== text);

if (!process.argv.includes('--check')) {
  if (stale.length > 0) writeFileSync(PAGE, withParts(page, parts));
  console.log(stale.length > 0 ? `${PAGE}: wrote ${stale.join(', ')}` : `${PAGE} is current`);
  for (const { path, text } of files) {
    writeFileSync(path, text);
    console.log(`wrote ${path}`);
  }
} else if (stale.length > 0 || files.length > 0) {
  const named = [...(stale.length > 0 ? [`${PAGE} (${stale.join(', ')})`] : []), ...files.map(({ path }) => path)];
  console.error(`stale: ${named.join(', ')}. Run: npm run generate`);
  process.exitCode = 1;
} else {
  console.log(`${PAGE} and deploy/ are current`);
}
