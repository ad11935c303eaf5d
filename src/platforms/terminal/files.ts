/** Saves the files that an answer comes with, each under its own name. */

import { mkdir } from 'node:fs/promises';
import type { Answer } from '../../chat/pipeline.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import { FILES } from '../../text/sheets-text.ts';
import { save } from './pictures.ts';

/** Where files go, and who makes them of an answer's data. */
export interface FilesTo {
  readonly folder: string;
  makeFile(data: Result, as: FileForm): Promise<Buffer>;
}

/** A line for each file: where it is, or why it is not there. Rejects with what the maker throws. */
export async function savedFiles(answer: Answer, { folder, makeFile }: FilesTo): Promise<readonly string[]> {
  if (!('headline' in answer) || !answer.files || answer.files.length === 0) return [];
  const lines: string[] = [];
  try {
    await mkdir(folder, { recursive: true });
    // One after the other: each is large, and two of one name must not meet.
    for (const { name, as } of answer.files) {
      const [stem, ending] = [name.slice(0, name.lastIndexOf('.')), name.slice(name.lastIndexOf('.') + 1)];
      lines.push(FILES.saved(await save(await makeFile(answer.data, as), stem, ending, folder)));
    }
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && 'syscall' in cause)) throw cause;
    lines.push(FILES.notSaved(folder, cause.message));
  }
  return lines;
}
