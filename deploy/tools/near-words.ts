/** English words that a word of the hazards' lexicons is one slip away from: they are never mended into it. */

import { readFileSync } from 'node:fs';
import { HOUSE_WORDS, nearest } from '../../src/hazards/hazard-spelling.ts';
import { TABLES } from '../../src/hazards/lexicon/all-hazards.ts';

/** A list of 78,000 English words with their endings, made of SCOWL's 12Dicts (public domain). */
const DICTIONARY = 'node_modules/categorized-words/2of12id.json';

/** The file that holds them, as it would be written now. */
export function nearWordsFile(mark: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of nearWords()) {
    if (line.length + word.length > 240) {
      lines.push(line.trimEnd());
      line = '';
    }
    line += `${word} `;
  }
  return `/** English words near the words of the hazards’ lexicons. ${mark} */

const WORDS = \`
${[...lines, line.trimEnd()].join('\n')}
\`;

/** None of them is ever mended into a hazard. */
export const NEAR_WORDS: ReadonlySet<string> = new Set(WORDS.trim().split(/\\s+/));
`;
}

function nearWords(): readonly string[] {
  const { words } = TABLES;
  const all = new Set(Object.values(JSON.parse(readFileSync(DICTIONARY, 'utf8')) as Record<string, string[]>).flat());
  return [...all]
    .filter(
      (word) => /^[a-z]+$/.test(word) && !words.has(word) && !HOUSE_WORDS.has(word) && nearest(word) !== undefined,
    )
    .sort();
}
