/** Trains the reader's model from every command's and every entry's phrases and writes it beside the built JavaScript. */

import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { commands } from '../../commands/all.ts';
import { ENTRIES } from '../../src/handbook/all-entries.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { MODEL_FILE, modelText } from '../../src/language/model.ts';
import { OTHER_MATTERS } from '../../src/language/other-matters.ts';
import { OTHER_NEAR } from '../../src/language/other-near.ts';
import { OTHER_TALK } from '../../src/language/other-talk.ts';
import { OTHER_TRADES } from '../../src/language/other-trades.ts';
import { TALK_PHRASES } from '../../src/language/talk-phrases.ts';
import { type Phrases, train } from '../../src/language/train.ts';

/** Everything that the reader can take a sentence for; an entry's intent begins with `handbook `. */
export const PHRASES: readonly Phrases[] = [
  ...commands.flatMap((command) => (command.phrases ? [{ intent: fullName(command), phrases: command.phrases }] : [])),
  ...ENTRIES.map(({ id, phrases }) => ({ intent: `handbook ${id}`, phrases })),
  ...TALK_PHRASES,
  ...OTHER_TRADES,
  ...OTHER_TALK,
  ...OTHER_NEAR,
  ...OTHER_MATTERS,
];

/** Training takes seconds: the same phrases and the same code are trained once. */
function cached(): string {
  const code = ['train', 'model'].map((name) => readFileSync(join(dirname(MODEL_FILE), `${name}.js`)));
  const hash = createHash('sha256').update(JSON.stringify(PHRASES));
  for (const one of code) hash.update(one);
  const folder = fileURLToPath(new URL('../../../node_modules/.cache/reader/', import.meta.url));
  return join(folder, `${hash.digest('hex')}.json`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const file = cached();
  if (!existsSync(file)) {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, modelText(train(PHRASES)));
  }
  copyFileSync(file, MODEL_FILE);
}
