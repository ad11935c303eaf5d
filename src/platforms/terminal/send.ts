/** Sends answers to a terminal, or as JSON lines to a program. */

import type { Writable } from 'node:stream';
import type { Answer } from '../../chat/pipeline.ts';
import { DRAWING } from '../../text/drawing-text.ts';
import { type FilesTo, savedFiles } from './files.ts';
import { type ExitCode, toJson } from './json.ts';
import { COLUMNS } from './limits.ts';
import { drawingsOf, savePictures } from './pictures.ts';
import { render } from './render.ts';

/** Somewhere to write, and what is known of it. */
export interface Screen {
  readonly output: Writable & { readonly columns?: number; readonly isTTY?: boolean };
  readonly json: boolean;
  /** Folder for the answer's pictures; without one, and for a program, none are saved. */
  readonly pictures?: string | undefined;
  /** Where the files of an answer go; a program makes its own of the data. */
  readonly files?: FilesTo | undefined;
}

/** Writes the last of the answers (a terminal is not edited in place) and gives its exit code. */
export async function send(answers: AsyncIterable<Answer>, screen: Screen): Promise<ExitCode> {
  const { output, json, pictures, files } = screen;
  let last: Answer | undefined;
  for await (const answer of answers) last = answer;
  if (!last) throw new Error('an ask without an answer');
  const told = toJson(last);
  const text = json
    ? JSON.stringify(told.object)
    : render(last, { width: Math.max(20, (output.columns || COLUMNS) - 1), colour: output.isTTY === true });
  await written(`${text}\n`, screen);
  if (!json && pictures) await written(await savedLines(last, pictures), screen);
  if (!json && files) for (const line of await savedFiles(last, files)) await written(`${line}\n`, screen);
  return told.code;
}

/** Where the pictures of an answer are; a folder that cannot be written to is told, for the answer stands without them. */
async function savedLines(answer: Answer, folder: string): Promise<string> {
  try {
    const paths = await savePictures(drawingsOf(answer), folder);
    return paths.map((path) => `${DRAWING.saved(path)}\n`).join('');
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && 'syscall' in cause)) throw cause;
    return `${DRAWING.notSaved(folder, cause.message)}\n`;
  }
}

async function written(text: string, { output }: Screen): Promise<void> {
  if (text === '') return;
  await new Promise<void>((resolve, reject) => {
    output.write(text, (fault) => (fault ? reject(fault) : resolve()));
  });
}
