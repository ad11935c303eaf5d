/** Writes the generated parts of README.md; with --check it writes nothing, names what is stale and exits 1. */

import { readFileSync, writeFileSync } from 'node:fs';
import { staleParts, withParts } from './generated-part.ts';
import { readmeParts } from './readme-parts.ts';

const PAGE = 'README.md';

const page = readFileSync(PAGE, 'utf8');
const parts = await readmeParts();
const stale = staleParts(page, parts);

if (!process.argv.includes('--check')) {
  if (stale.length > 0) writeFileSync(PAGE, withParts(page, parts));
  console.log(stale.length > 0 ? `${PAGE}: wrote ${stale.join(', ')}` : `${PAGE} is current`);
} else if (stale.length > 0) {
  console.error(`${PAGE} is stale: ${stale.join(', ')}. Run: npm run generate`);
  process.exitCode = 1;
} else {
  console.log(`${PAGE} is current`);
}
