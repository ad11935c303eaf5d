/** Sentences to try the screen on, from files of one JSON object a line. */

import { readFileSync } from 'node:fs';

export interface Sentence {
  readonly text: string;
  readonly hazard?: string;
  readonly emergency?: boolean;
}

/** The sentences of a file beside this one. */
export function sentencesIn(file: string): readonly Sentence[] {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8');
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Sentence);
}
