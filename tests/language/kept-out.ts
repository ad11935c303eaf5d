/** Reads the sentences that measure hearing, from TypeScript and from the built JavaScript alike. */

import { readFileSync } from 'node:fs';

const FOLDER = new URL(
  import.meta.url.endsWith('.ts') ? '../questions/' : '../../../tests/questions/',
  import.meta.url,
);

/** A sentence and what was meant; `also` would be as right. */
export interface HeldOut {
  readonly text: string;
  readonly intent: string;
  readonly also: readonly string[];
}

export interface Danger {
  readonly text: string;
  readonly danger: 'emergency' | 'question' | 'none';
}

/** A label and what stands on it; lengths in one unit or the other. */
export interface PastedLabel {
  readonly text: string;
  readonly width_in?: number;
  readonly width_mm?: number;
  readonly length_in?: number;
  readonly length_mm?: number;
  readonly per_carton: number;
}

/** The lines of a file in tests/questions. */
export function sentencesOf<T>(name: string): readonly T[] {
  return readFileSync(new URL(name, FOLDER), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as T);
}
