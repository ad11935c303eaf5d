/** Sends answers to a terminal, or as JSON lines to a program. */

import type { Writable } from 'node:stream';
import type { Answer } from '../bot/answer.ts';
import { type ExitCode, toJson } from './json.ts';
import { COLUMNS } from './limits.ts';
import { render } from './render.ts';

/** Somewhere to write, and what is known of it. */
export interface Screen {
  readonly output: Writable & { readonly columns?: number; readonly isTTY?: boolean };
  readonly json: boolean;
}

/** Writes the last of the answers (a terminal is not edited in place) and gives its exit code. */
export async function send(answers: AsyncIterable<Answer>, { output, json }: Screen): Promise<ExitCode> {
  let last: Answer | undefined;
  for await (const answer of answers) last = answer;
  if (!last) throw new Error('an ask without an answer');
  const told = toJson(last);
  const text = json
    ? JSON.stringify(told.object)
    : render(last, { width: Math.max(20, (output.columns ?? COLUMNS) - 1), colour: output.isTTY === true });
  await new Promise<void>((resolve, reject) => {
    output.write(`${text}\n`, (fault) => (fault ? reject(fault) : resolve()));
  });
  return told.code;
}
