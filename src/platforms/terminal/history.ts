/** The terminal's history: one ask a line, in a file the asker chose, or nowhere. */

import { appendFileSync, readFileSync } from 'node:fs';
import { HISTORY } from './limits.ts';

/** Earlier asks, the latest first; none without a file. */
export function readHistory(file: string): string[] {
  if (file === '') return [];
  try {
    return readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .slice(-HISTORY)
      .reverse();
  } catch (cause) {
    if (isMissing(cause)) return [];
    throw cause;
  }
}

/** Adds an ask at the end of the file. */
export function keepHistory(file: string, line: string): void {
  if (file !== '') appendFileSync(file, `${line}\n`, { mode: 0o600 });
}

function isMissing(cause: unknown): boolean {
  return cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
}
